import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';

/** lx for each µmol/m²/s, in coherent units. */
const perPhoton = (value: number, name: string) => ({ value: value * 1e6, unit: 'lx m^2 s/mol', name });

const notDaylight: Condition = {
  any: [{ is: ['lamp', 'blue_led'] }, { is: ['lamp', 'white_led'] }, { is: ['lamp', 'other'] }],
};

export const lightLux = calculation({
  id: 'light.lux',
  slash: 'light lux',
  title: 'Lux to PPFD in daylight',
  question: 'My phone or meter shows lux: what PPFD is that?',
  part: 'light',
  cues: ['lux', 'lx', 'lux to par', 'lux meter', 'phone says', 'phone app', 'light meter', 'illuminance', 'lumens'],
  inputs: {
    illuminance: quantity('illuminance', {
      symbol: 'E',
      name: 'illuminance',
      words: ['lux', 'lx', 'illuminance'],
      range: [0, 150_000, 'lx'],
      slips: [[150_000, 1e9, 'Full sun is about 120,000 lx.']],
      ask: 'How many lux does the meter show?',
      example: '8000 lux',
    }),
    lamp: choice({
      name: 'light it was read under',
      words: ['under', 'lamp', 'light'],
      ask: 'Under which light was it read?',
      options: {
        daylight: { label: 'daylight', words: ['sun', 'sunlight', 'sunshine', 'outside', 'window', 'skylight'] },
        blue_led: { label: 'blue reef LED', words: ['blue', 'blues', 'reef led', 'reef light', 'actinic', 'led'] },
        white_led: { label: 'white LED', words: ['white led', 'white leds', 'white', 'cool white', 'warm white'] },
        other: { label: 'another lamp, or unknown', words: ['halide', 'metal halide', 't5', 'tube', 'fluorescent'] },
      },
    }),
  },
  constants: {
    c: perPhoton(54, 'lux for each mol of daylight photons (54 lx per µmol/m²/s)'),
    c_most: perPhoton(58, 'the same, high end (our margin)'),
    c_least: perPhoton(50, 'the same, low end (our margin)'),
  },
  rules: [
    {
      refuse: notDaylight,
      because:
        'Lux cannot be turned into PPFD without the lamp’s spectrum: one µmol/m²/s is about 54 lx of daylight but only 7 lx of a 450 nm LED, so a blue lamp gives 2 to 7 times more than lux suggests. Use a quantum (PAR) meter.',
      about: 'lamp',
    },
  ],
  steps: [
    step('P', 'E/c', 'photon flux', 'PPFD'),
    step('P_low', 'E/c_most', 'photon flux', 'PPFD, at least'),
    step('P_high', 'E/c_least', 'photon flux', 'PPFD, at most'),
  ],
  results: {
    ppfd: result('P', 'photon flux', 'PPFD', { low: 'P_low', high: 'P_high' }),
    ppfd_low: result('P_low', 'photon flux', 'PPFD, at least'),
    ppfd_high: result('P_high', 'photon flux', 'PPFD, at most'),
  },
  headline: [{ text: '{illuminance} of daylight is about {ppfd}, {ppfd_low} to {ppfd_high}.' }],
  cautions: [
    caution(
      'caution',
      'This holds for daylight only. Under a blue reef lamp lux says too little by 2 to 7 times; factors made for plant lamps (white) don’t fit either.',
    ),
    caution(
      'note',
      'A phone’s sensor saturates, sees no violet and reads wrong at an angle. Lux is good for comparing places under the same lamp at the same setting, as a ratio.',
    ),
  ],
  sources: [
    'Thimijan and Heins 1983, HortScience 18: 818 (54 lx per µmol/m²/s of daylight, from memory); CIE D65 integrated over 400 to 700 nm gives 55.1',
  ],
  examples: ['my phone says 10800 lux in the sun, what PAR is that', 'convert 5000 lux of daylight to par'],
});
