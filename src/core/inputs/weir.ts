export const weirConstants = {
  C_w: { value: 1.84, unit: 'm^0.5/s', name: 'weir coefficient (Francis 1855)' },
};

export const orificeConstants = {
  C_o: { value: 0.6, unit: '1', name: 'discharge coefficient of a sharp-edged orifice' },
};

/** Share by which thin sheets miss the formula: it was validated above 30 mm of head, our drains run below it. */
export const THIN_SHEET = 0.15;

export const WEIR_SOURCE =
  'Francis weir formula, 1.84 m^0.5/s, validated above 30 mm of head; ±15 % for the thin sheets of a tank is our judgement';
export const ORIFICE_SOURCE = 'sharp-edged orifice, discharge coefficient 0.6 (handbook value, from memory)';
