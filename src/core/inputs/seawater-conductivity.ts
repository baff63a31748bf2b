/** The anchor of the practical salinity scale as a conductivity. */
export const seawaterConductivity = {
  C_0: { value: 4.2914, unit: 'S/m', name: 'conductivity of seawater of salinity 35 at 15 °C' },
};
