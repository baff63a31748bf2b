import type { Constant } from './calculation.js';

/** Constants that several calculations print. */
export const pi: Constant = { value: Math.PI, unit: '1', name: 'pi' };
export const day: Constant = { value: 86_400, unit: 's', name: 'seconds in a day' };
/** Below a whole number by this much is that number: a sum that should come out whole may not to the last bit. */
export const tiny: Constant = { value: 1e-9, unit: '1', name: 'rounding guard' };
export const gravity: Constant = { value: 9.80665, unit: 'm/s^2', name: 'standard gravity' };
/** For loads: no reef tank's water is heavier by much. */
export const heavySeawater: Constant = { value: 1025, unit: 'kg/m^3', name: 'density of seawater, rounded up' };
