import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';

export const volumeConvert = calculation({
  id: 'volume.convert',
  slash: 'volume convert',
  title: 'One volume in litres and both gallons',
  question: 'What is this volume in litres, US gallons and imperial gallons?',
  part: 'tank',
  cues: [
    'how many litres is # gallons',
    'how many litres is',
    'how many liters is',
    'imperial gallons is',
    'convert',
    'in litres',
    'in liters',
    'in gallons',
    'in us gallons',
    'in imperial gallons',
    'to litres',
    'to liters',
    'to gallons',
    'to imperial',
    'to us gallons',
    'gallons in',
    'how many uk gallons',
    'how many us gallons',
    'how many imperial gallons',
    'uk gallons',
    'imperial gallons',
  ],
  inputs: {
    volume: quantity('volume', {
      symbol: 'V',
      name: 'volume',
      words: ['volume', 'convert'],
      range: [0, 1_000_000, 'L'],
      ask: 'Which volume?',
      example: '400 L, 105 US gal or 88 imperial gallons',
    }),
  },
  constants: {
    litre: { value: 1e-3, unit: 'm^3', name: 'a litre' },
    gal_us: { value: 3.785411784e-3, unit: 'm^3', name: 'a US gallon, 231 in³ exactly' },
    gal_imp: { value: 4.54609e-3, unit: 'm^3', name: 'an imperial gallon, exactly' },
  },
  steps: [
    step('n_L', 'V/litre', 'ratio', 'in litres'),
    step('n_us', 'V/gal_us', 'ratio', 'in US gallons'),
    step('n_imp', 'V/gal_imp', 'ratio', 'in imperial gallons'),
  ],
  results: {
    volume: result('V', 'volume', 'volume', { figures: 6 }),
    litres: result('n_L', 'ratio', 'in litres', { figures: 6 }),
    us_gallons: result('n_us', 'ratio', 'in US gallons', { figures: 6 }),
    imperial_gallons: result('n_imp', 'ratio', 'in imperial gallons', { figures: 6 }),
  },
  headline: [{ text: '{litres} L = {us_gallons} US gallons = {imperial_gallons} imperial gallons.' }],
  cautions: [
    caution(
      'note',
      'A gallon with no country beside it is read as a US gallon. An imperial one is 1.20095 times as large: say “imperial” if you mean it.',
    ),
  ],
  sources: [
    'NIST SP 811 (litre, US gallon 231 in³) and the UK Weights and Measures Act (imperial gallon 4.54609 L), exact',
  ],
  examples: ['convert 125 gallons to litres', 'what is 500 L in imperial gallons', '90 imperial gallons in US gallons'],
});
