import { caution, lookup, quantity, result, step } from '../calculation.js';
import { secondMethod } from '../cautions/salinity.js';
import { calculation } from '../define.js';
import { againstReef, densityRules, sampleTemperature } from '../inputs/salinity.js';
import { gravity, gravityScale, referenceTemperature } from '../inputs/specific-gravity.js';

const GLASS_EXPANSION = 25e-6;
const PLASTIC_EXPANSION = 2e-4;

const body = lookup({
  name: 'what the hydrometer is made of',
  words: ['glass', 'plastic', 'made of'],
  ask: 'Is it glass or plastic?',
  needed: false,
  suggestions: ['glass', 'plastic'],
  pattern: /(?:glass|plastic|acrylic)(?! (?:tank|aquarium|cube|display|lid|top))(?![a-z])/,
  read(text) {
    if (/swing/i.test(text))
      return 'A swing-arm type follows no formula: check it against a 35 ppt standard at the tank’s temperature.';
    if (/glass/i.test(text))
      return { reading: 'glass', inputs: { expansion: GLASS_EXPANSION }, source: 'soda-lime glass: ISO 1768:1975' };
    if (/plastic|acrylic/i.test(text))
      return {
        reading: 'plastic',
        inputs: { expansion: PLASTIC_EXPANSION },
        source: 'expansion of a plastic body: common practice, no source',
      };
    return `“${text}” is not glass or plastic.`;
  },
});

export const salinityHydrometer = calculation({
  id: 'salinity.hydrometer',
  slash: 'salinity hydrometer',
  title: 'Floating hydrometer at another temperature',
  question: 'What does a floating hydrometer’s reading mean in water that is not at the temperature it was made for?',
  part: 'water',
  cues: [
    'hydrometer',
    'floating hydrometer',
    'glass hydrometer',
    'hydrometer reads',
    'hydrometer shows',
    'hydrometer correction',
    'correct hydrometer',
    'swing arm',
    'swing-arm',
    'areometer',
    'hydrometer reading',
    'hydrometer says',
    'hydrometer temperature',
    'correct my hydrometer',
    'calibrated for # my hydrometer',
    '~60 60',
    '~calibrated at',
  ],
  inputs: {
    reading: quantity('specific gravity', {
      ...gravity,
      symbol: 'SG_r',
      name: 'hydrometer reading',
      words: [
        'reads',
        'shows',
        'reading',
        'hydrometer',
        'sg',
        'specific gravity',
        'says',
        'reading of',
        'floats at',
        'swing arm',
      ],
      ask: 'What does the hydrometer read?',
      example: '1.024',
    }),
    scale: gravityScale('calibration_temperature', 'reference_temperature'),
    calibration_temperature: quantity('temperature', {
      symbol: 'T_cal',
      name: 'temperature the hydrometer was made for',
      words: [
        'made for',
        'calibrated',
        'calibrated at',
        'calibrated for',
        'calibration',
        'marked',
        'printed',
        'designed for',
        'made to',
        'set for',
        'its made for',
        'it is made for',
        'calibration temperature',
        'calibration temp',
        'standard temperature',
        'reference',
      ],
      range: [0, 40, 'degC'],
      ask: 'Which temperature was the hydrometer made for? It is printed in the stem, often as a pair.',
      example: '60/60 F, 20/4 or 25 C',
    }),
    temperature: quantity('temperature', {
      ...sampleTemperature,
      words: [
        'at',
        'tank',
        'water',
        'water is',
        'in water of',
        'sample',
        'temp',
        'temperature',
        'sample temperature',
        'measured at',
        'tank is',
        'my tank',
        'in a',
      ],
    }),
    reference_temperature: quantity('temperature', {
      ...referenceTemperature,
      default: { same: 'calibration_temperature' },
      needed: false,
    }),
    body,
    expansion: quantity('thermal expansion', {
      symbol: 'beta',
      name: 'expansion of the body by volume, per degree',
      words: ['expansion', 'expands'],
      range: [0, 5e-4, '1/K'],
      default: {
        value: GLASS_EXPANSION,
        unit: '1/K',
        low: 1e-5,
        high: 3e-5,
        why: 'soda-lime glass, the conventional value of ISO 1768:1975; borosilicate glass expands least (from memory)',
      },
      ask: 'By how much does the body expand per degree?',
      example: '0.000025',
    }),
  },
  rules: densityRules('reading'),
  steps: [
    step('rho_ref', 'rho_w(T_ref)', 'density', 'density of the pure water compared with'),
    step(
      'rho',
      'SG_r*rho_ref/(1 + beta*(T - T_cal))',
      'density',
      'density of the sample: the float keeps its weight, its volume grows with warmth',
    ),
    step('S', 'S_of_density(rho, T)', 'salinity', 'salinity with that density'),
    step('SG', 'rho_sw(S, T_cal)/rho_ref', 'specific gravity', 'what it would read at the temperature it was made for'),
    step('dSG', 'SG - SG_r', 'specific gravity', 'correction'),
  ],
  results: {
    salinity: result('S', 'salinity', 'salinity', { range: [0, 42, 'g/kg'] }),
    corrected_reading: result('SG', 'specific gravity', 'reading at the temperature it was made for'),
    correction: result('dSG', 'specific gravity', 'correction to the reading'),
    density: result('rho', 'density', 'density of the sample'),
  },
  headline: againstReef('{reading} on this hydrometer in water of {temperature} is {salinity}'),
  cautions: [
    caution(
      'caution',
      'Correct once only: some scales are printed for tank temperature already. Warm water makes a hydrometer read low, cold water high.',
    ),
    caution(
      'caution',
      'Half a division (0.0005) is 0.7 ppt. Bubbles lift the float, crust sinks it; read under the curve of the surface.',
    ),
    caution(
      'note',
      'Taken as glass. A plastic float expands about eight times as much (common practice); a swing arm follows no formula, so check it against a standard at tank temperature.',
      { assumed: 'expansion' },
    ),
    secondMethod,
  ],
  sources: ['Archimedes: a float of constant mass whose volume grows with temperature; surface tension left out'],
  examples: [
    'my floating hydrometer is made for 60/60 F and reads 1.0240 in a 78F tank',
    'hydrometer calibrated at 25 C reads 1.027, the water is 20 C',
    'glass hydrometer marked 20/4 shows 1.0230 at 25 C',
  ],
});
