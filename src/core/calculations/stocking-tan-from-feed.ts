import { caution, quantity, result, step } from '../calculation.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { FEED_SOURCE, feedConstant, food, proteinFraction, vetAndWelfare } from '../inputs/nitrogen.js';
import { systemVolume } from '../inputs/system-water.js';
import { MOLAR_MASS_SOURCE, nitrate, nitrogen } from '../molar-masses.js';

export const stockingTanFromFeed = calculation({
  id: 'stocking.tan_from_feed',
  slash: 'cycle feed-nitrogen',
  title: 'Ammonia from feeding',
  question: 'How much ammonia and nitrate does a day’s food make?',
  part: 'cycle',
  cues: [
    'ammonia from feeding',
    'ammonia from food',
    'ammonia from feed',
    'ammonia does feeding',
    'ammonia does food',
    'nitrate from feeding',
    'nitrate from food',
    'nitrogen from food',
    'nitrate does feeding',
    'waste from feeding',
    'feeding produces',
    'food produces',
    'food make',
    'food makes',
    'feeding make',
    'feed nitrogen',
    'ammonia per day from',
  ],
  inputs: {
    feed_per_day: quantity('mass a day', {
      symbol: 'F',
      name: 'food a day',
      words: ['feed', 'feeding', 'food', 'feed per day', 'of food'],
      range: [0, 5000, 'g/day'],
      aboveLow: true,
      usual: [0.1, 100, 'g/day'],
      default: { formula: 'm_f*s_f/day' },
      needed: { not: { given: 'fish_mass' } },
      ask: 'How many grams of food go in a day?',
      example: '5 g a day',
    }),
    protein_fraction: proteinFraction,
    food,
    fish_mass: quantity('mass', {
      symbol: 'm_f',
      name: 'fish altogether',
      words: ['fish', 'fish mass', 'weight of fish', 'of fish'],
      range: [0, 500, 'kg'],
      usual: [5, 5000, 'g'],
      aboveLow: true,
      units: { metric: 'g', us: 'g' },
      needed: false,
      ask: 'How much do the fish weigh altogether?',
      example: '200 g',
    }),
    feed_share: quantity('fraction', {
      symbol: 's_f',
      name: 'dry food a day over the mass of the fish',
      words: ['of body weight', 'body weight', 'body mass'],
      range: [0.002, 0.1, 'fraction'],
      default: {
        value: 0.02,
        unit: 'fraction',
        low: 0.01,
        high: 0.04,
        why: 'common practice, no source',
        when: { given: 'fish_mass' },
      },
      needed: false,
      ask: 'Which share of their mass do the fish get in food a day?',
      example: '2 %',
    }),
    water_volume: quantity('volume', { ...systemVolume, needed: false }),
  },
  constants: { day, ...feedConstant, M_N: nitrogen, M_3: nitrate },
  steps: [
    step('P', 'F*q*PC*y', 'mass a day', 'ammonia given off, as nitrogen'),
    step('r', 'P/V', 'dissolved rate', 'ammonia that the bacteria must use'),
    step('r_3', 'r*M_3/M_N', 'dissolved rate', 'nitrate that it ends as'),
  ],
  results: {
    tan_per_day: result('P', 'mass a day', 'ammonia a day, as nitrogen'),
    tan_rate: result('r', 'dissolved rate', 'ammonia that the bacteria must use'),
    nitrate_rate: result('r_3', 'dissolved rate', 'nitrate a day, if nothing takes it up'),
  },
  headline: [
    {
      text: '{F} of {food} gives off {tan_per_day} of ammonia (as nitrogen): {tan_rate} in {water_volume}, which ends as {nitrate_rate} of nitrate.',
      when: { given: 'water_volume' },
    },
    { text: '{F} of {food} gives off {tan_per_day} of ammonia (as nitrogen).' },
  ],
  cautions: [
    caution(
      'caution',
      'More than 1 mg/L a day is a heavy load for a home reef: prove that pace with a dose before you feed it.',
      'r*86400 > 0.001',
    ),
    caution(
      'note',
      'All of the food is counted as eaten; what rots gives off more. Plants, corals and skimmer take a part away.',
    ),
    vetAndWelfare,
  ],
  sources: [FEED_SOURCE, MOLAR_MASS_SOURCE],
  examples: [
    'how much ammonia from feeding 10 g a day with 45% protein',
    'ammonia from food: 5 grams per day of pellets in 400 L',
    'nitrate from feeding 20 g a day of frozen mysis in 100 gal',
  ],
});
