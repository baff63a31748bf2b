import { model } from '../model.js';

export const temperatureModels = [
  model({
    name: 'celsius',
    args: { t: '1' },
    unit: 'temperature',
    meaning: 'the temperature of t °C: t + 273.15 K',
    source: 'Celsius scale (BIPM SI Brochure 9)',
    apply: (t = 0) => t + 273.15,
  }),
];
