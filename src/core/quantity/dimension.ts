/**
 * Exponents of the base units: metre, kilogram, second, kelvin, ampere, mole, candela, and a unit of money.
 * Angles, fractions, counts and salinity (kg/kg) are plain numbers.
 */
export type Dimension = readonly number[];

const BASE = ['m', 'kg', 's', 'K', 'A', 'mol', 'cd', 'currency'] as const;

export const PLAIN: Dimension = BASE.map(() => 0);

const named = (exponents: Partial<Record<(typeof BASE)[number], number>>): Dimension =>
  BASE.map((base) => exponents[base] ?? 0);

const SYMBOLS: Record<string, Dimension> = {
  ...Object.fromEntries(BASE.map((base) => [base, named({ [base]: 1 })])),
  '1': PLAIN,
  rad: PLAIN,
  N: named({ kg: 1, m: 1, s: -2 }),
  Pa: named({ kg: 1, m: -1, s: -2 }),
  J: named({ kg: 1, m: 2, s: -2 }),
  W: named({ kg: 1, m: 2, s: -3 }),
  V: named({ kg: 1, m: 2, s: -3, A: -1 }),
  S: named({ kg: -1, m: -2, s: 3, A: 2 }),
  lx: named({ cd: 1, m: -2 }),
};

export const multiply = (a: Dimension, b: Dimension): Dimension => a.map((x, i) => x + b[i]!);
export const divide = (a: Dimension, b: Dimension): Dimension => a.map((x, i) => x - b[i]!);
export const raise = (a: Dimension, power: number): Dimension => a.map((x) => x * power);
export const same = (a: Dimension, b: Dimension): boolean => a.every((x, i) => Math.abs(x - b[i]!) < 1e-9);
export const isPlain = (a: Dimension): boolean => same(a, PLAIN);

/**
 * The dimension of a coherent unit written as text: `W/(m^2 K)`, `m^0.5/s`, `1`.
 * @throws Error when a symbol is not a coherent unit.
 */
export function dimensionOf(unit: string): Dimension {
  let dimension = PLAIN;
  let divisor = false;
  for (const [token, symbol, power] of unit.matchAll(/([A-Za-z]+|1)(?:\^(-?[\d.]+))?|\//g)) {
    if (token === '/') {
      divisor = true;
      continue;
    }
    const base = SYMBOLS[symbol!];
    if (!base) throw new Error(`"${unit}" holds ${symbol}, which is not a coherent unit`);
    const raised = raise(base, Number(power ?? 1));
    dimension = divisor ? divide(dimension, raised) : multiply(dimension, raised);
  }
  return dimension;
}

/** A dimension in words for an error message: `kg·m^2·s^-3`. */
export function dimensionText(dimension: Dimension): string {
  const parts = BASE.flatMap((base, i) => {
    const power = dimension[i]!;
    if (Math.abs(power) < 1e-9) return [];
    return power === 1 ? [base] : [`${base}^${power}`];
  });
  return parts.join('·') || 'a plain number';
}
