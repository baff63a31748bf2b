import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { totalAmmonia } from '../inputs/nitrogen.js';

export const stockingRateAtLowAmmonia = calculation({
  id: 'stocking.rate_at_low_ammonia',
  slash: 'cycle low-ammonia',
  title: 'Pace of the bacteria at low ammonia',
  question: 'How fast do the bacteria work at the low ammonia that animals need?',
  part: 'cycle',
  cues: [
    'with animals in',
    'at plenty of ammonia',
    'low ammonia',
    'at 0.1 ppm ammonia',
    'at low levels',
    'at low ammonia',
    'rate at low',
    'monod',
    'half saturation',
    'slower at low',
    'why only a quarter',
    'with fish in the rate',
    'really process',
  ],
  inputs: {
    maximum_rate: quantity('dissolved rate', {
      symbol: 'r_m',
      name: 'pace at plenty of ammonia',
      words: ['maximum', 'clears', 'processes', 'full pace', 'max', 'rate'],
      range: [0, 20, 'mg/L/day'],
      aboveLow: true,
      usual: [0.2, 6, 'mg/L/day'],
      ask: 'How much ammonia does the tank clear in a day after a dose?',
      example: '2 mg/L a day',
    }),
    half_saturation: quantity('dissolved', {
      symbol: 'K_s',
      name: 'ammonia at half the pace',
      words: ['ks', 'half saturation', 'half-saturation'],
      range: [0.01, 10, 'mg/L'],
      usual: [0.1, 2, 'mg/L'],
      default: {
        value: 1,
        unit: 'mg/L',
        low: 0.1,
        high: 2,
        why: 'films in sea water, 0.1 to 2; no single source',
      },
      ask: 'At which ammonia do the bacteria work at half their pace?',
      example: '1 mg/L',
    }),
    total_ammonia_nitrogen: quantity('dissolved', {
      ...totalAmmonia,
      symbol: 'C',
      name: 'ammonia that animals live in',
      words: ['at', 'ammonia', 'tan', 'low'],
      usual: [0, 1, 'mg/L'],
      aboveLow: true,
      default: { value: 0.1, unit: 'mg/L', why: 'the most that animals should live in, common practice' },
      ask: 'At which ammonia, as nitrogen?',
      example: '0.1 mg/L',
    }),
  },
  steps: [
    step('x', 'C/(K_s + C)', 'fraction', 'share of the full pace (Monod)'),
    step('r', 'r_m*x', 'dissolved rate', 'pace at that ammonia'),
  ],
  results: {
    rate: result('r', 'dissolved rate', 'pace at that ammonia'),
    share: result('x', 'fraction', 'share of the full pace', { figures: 2 }),
  },
  headline: [
    {
      text: 'At {C} of ammonia the bacteria clear {rate:range}, about {share} of the {maximum_rate} after a dose.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'That ammonia is more than animals should live in: 0.1 mg/L is common practice.',
      'C > 0.0001000001',
    ),
    caution('caution', 'So start with a quarter of what a dose proved, or less, and raise it slowly (cycle feed).'),
    caution('note', 'Bacteria multiply with what they are fed: within weeks the pace follows the load.'),
    caution('note', 'The half-pace level is the weak point, and so the range is wide.', { assumed: 'half_saturation' }),
  ],
  sources: [
    'Monod 1949, Annual Review of Microbiology 3: 371',
    'half-saturation of marine films 0.1 to 2 mg/L: common practice, no single source',
  ],
  examples: [
    'how fast are the bacteria at low ammonia if the tank clears 2 mg/L a day',
    'rate at low ammonia 0.05 ppm, max 3 mg/L a day',
    'tank processes 1.5 ppm per day, what does it really process at low ammonia',
  ],
});
