import { step } from '../calculation.js';

/** What it takes to warm the water and the rock by a degree. */
export const heatStoreConstants = {
  rho: { value: 1023.3, unit: 'kg/m^3', name: 'density of seawater at 35 ppt and 25 °C (TEOS-10)' },
  c_w: { value: 4000, unit: 'J/(kg K)', name: 'heat capacity of seawater (TEOS-10, rounded)' },
  c_r: { value: 850, unit: 'J/(kg K)', name: 'heat capacity of limestone (from memory)' },
};

/** Within this of a limit the end temperature is too uncertain to call. */
export const nearLimit = { near: { value: 1.5, unit: 'K', name: 'how close to a limit nothing can be called' } };

export const heatStoreStep = step(
  'C',
  'rho*c_w*V + c_r*m_r',
  'heat capacity',
  'heat to warm water and rock by a degree',
);
