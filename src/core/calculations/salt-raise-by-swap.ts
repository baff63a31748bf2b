import { caution, quantity } from '../calculation.js';
import { beforeCorrecting, neverDrySaltOntoAnimals } from '../cautions/salt.js';
import { calculation } from '../define.js';
import { salinity, salinityNow, salinityTarget } from '../inputs/salinity.js';
import { paceConstants, paceInputs, paceSteps } from '../inputs/salinity-pace.js';
import { systemVolume, waterTemperature } from '../inputs/system-water.js';
import { dailySwapSteps, swapResults, swapSteps } from '../inputs/water-swap.js';

export const saltRaiseBySwap = calculation({
  id: 'salt.raise_by_swap',
  slash: 'salt raise-by-swap',
  title: 'Raising the salinity by swapping in saltier water',
  question: 'How much tank water is swapped for saltier water to bring the salinity up, and how fast?',
  part: 'water',
  cues: [
    'by exchanging',
    'swap tank water for',
    'swapping in',
    'with water changes of',
    'gallons get swapped',
    'new water of',
    'replace some',
    'raise salinity by swapping',
    'raise by swapping',
    'swap in saltier water',
    'swap for saltier water',
    'swap water of',
    'saltier water',
    'stronger salt water',
    'concentrated salt water',
    'raise salinity with water of',
    'raise salinity by water change',
    'raise salinity with a water change',
  ],
  inputs: {
    volume: systemVolume,
    salinity: salinityNow,
    target: salinityTarget,
    new_salinity: quantity('salinity', {
      ...salinity,
      symbol: 'S_n',
      name: 'salinity of the new water',
      words: ['new water', 'with water of', 'water of', 'saltier water', 'mixed at', 'swap'],
      range: [0, 60, 'g/kg'],
      usual: [36, 60, 'g/kg'],
      ask: 'How salty is the water that goes in?',
      example: '45 ppt',
    }),
    temperature: waterTemperature,
    ...paceInputs,
  },
  constants: paceConstants,
  rules: [
    {
      refuse: 'S_2 <= S_1',
      because: 'The salinity wanted is not above the present one: to bring it down, see salt lower.',
      about: 'target',
    },
    {
      refuse: 'S_n <= S_2',
      because: 'The new water must be saltier than the salinity wanted, or the tank never gets there.',
      about: 'new_salinity',
    },
  ],
  steps: [...swapSteps, ...paceSteps, ...dailySwapSteps],
  results: swapResults,
  headline: [
    {
      text: 'Swap {swap_per_day:both} on the first day, rising to {swap_last_day} on the last of {days}, {swap_total} in all, for water of {new_salinity} to bring {volume} from {salinity} to {target}.',
      when: 'n > 1',
    },
    {
      text: 'Swap {swap_volume:both}, {swap_fraction} of the system, for water of {new_salinity} to bring {volume} from {salinity} to {target}.',
    },
  ],
  cautions: [
    neverDrySaltOntoAnimals,
    ...beforeCorrecting,
    caution(
      'note',
      'The density formula was fitted to 42 ppt and is carried on to the new water: that moves the swap by less than 0.2 %.',
      'S_n > 0.042',
    ),
    caution(
      'note',
      'Take tank water out first, then pour the new water slowly into strong flow, away from animals and at the same temperature; keep the top-off off meanwhile.',
    ),
  ],
  sources: ['mass balance of salt and water'],
  examples: [
    'raise salinity from 33 to 35 ppt by swapping in saltier water of 50 ppt, 300 L system',
    'how much saltier water of 45 ppt do i swap to go from 32 ppt to 34 ppt in a 100 gal system',
  ],
});
