import { caution, quantity } from '../calculation.js';
import { beforeCorrecting } from '../cautions/salt.js';
import { calculation } from '../define.js';
import { salinity, salinityNow, salinityTarget } from '../inputs/salinity.js';
import { paceConstants, paceInputs, paceSteps } from '../inputs/salinity-pace.js';
import { systemVolume, waterTemperature } from '../inputs/system-water.js';
import { dailySwapSteps, swapResults, swapSteps } from '../inputs/water-swap.js';

export const saltLower = calculation({
  id: 'salt.lower',
  slash: 'salt lower',
  title: 'Lowering the salinity with fresh water',
  question: 'How much tank water is swapped for fresh to bring the salinity down, and how fast?',
  part: 'water',
  cues: [
    'lower #',
    'lower # ppt',
    'down to # ppt',
    'bring it down to',
    'lower salinity',
    'lower the salinity',
    'lower my salinity',
    'bring salinity down',
    'bring the salinity down',
    'reduce salinity',
    'reduce the salinity',
    'decrease salinity',
    'salinity too high',
    'salinity is high',
    'high salinity',
    'dilute',
    'replace with fresh',
  ],
  inputs: {
    volume: systemVolume,
    salinity: salinityNow,
    target: salinityTarget,
    fresh_salinity: quantity('salinity', {
      ...salinity,
      symbol: 'S_n',
      name: 'salinity of the water that goes in',
      words: ['replacement', 'new water', 'fresh water of', 'with water of'],
      default: { value: 0, unit: 'g/kg', why: 'pure water' },
      ask: 'How salty is the water that goes in?',
      example: '0 ppt',
    }),
    temperature: waterTemperature,
    ...paceInputs,
  },
  constants: paceConstants,
  rules: [
    {
      refuse: 'S_2 >= S_1',
      because: 'The salinity wanted is not below the present one: to bring it up, see salt raise.',
      about: 'target',
    },
    {
      refuse: 'S_n >= S_2',
      because:
        'The water that goes in is not below the salinity wanted, so the tank never gets there: use fresher water.',
      about: 'fresh_salinity',
    },
  ],
  steps: [...swapSteps, ...paceSteps, ...dailySwapSteps],
  results: swapResults,
  headline: [
    {
      text: 'Swap {swap_per_day:both} on the first day, rising to {swap_last_day} on the last of {days}, {swap_total} in all, to bring {volume} from {salinity} to {target}.',
      when: 'n > 1',
    },
    { text: 'Swap {swap_volume:both}, {swap_fraction} of the system, to bring {volume} from {salinity} to {target}.' },
  ],
  cautions: [
    ...beforeCorrecting,
    caution(
      'caution',
      'Take salt water out, then let the top-off refill it or pour fresh water in slowly, not both: with the top-off on, fresh water goes in twice.',
    ),
    caution(
      'note',
      'Alkalinity, calcium and magnesium fall by the same share as the water you swap. Match the temperature, and pour into strong flow away from animals.',
    ),
    caution('note', 'Fresh water alone, with nothing taken out, lowers it only until that water has evaporated.'),
  ],
  sources: ['mass balance of salt and water'],
  examples: [
    'lower salinity from 38 to 35 ppt in a 400 L system',
    'salinity too high, 40 ppt now, want 35 ppt in a 120 gal system, empty of animals',
  ],
});
