import { seawaterDensity } from '../../src/core/models/seawater.js';

/** Salinity [g/kg] of `V` litres of `S` once `x` litres were taken out and replaced by water of `Sn`, at 25 °C. */
export function afterSwap(V: number, S: number, x: number, Sn: number): number {
  const stays = (V - x) * seawaterDensity(S / 1000, 298.15);
  const comes = x * seawaterDensity(Sn / 1000, 298.15);
  return (stays * S + comes * Sn) / (stays + comes);
}
