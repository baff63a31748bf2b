import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { salinityKept } from '../inputs/salinity.js';
import { systemVolume } from '../inputs/system-water.js';
import { evaporation, reservoirVolume } from '../inputs/topoff.js';

const days = { metric: 'day', us: 'day' };

export const topoffReservoir = calculation({
  id: 'topoff.reservoir',
  slash: 'topoff reservoir',
  title: 'How long a top-off reservoir lasts',
  question: 'How many days does the top-off reservoir last, and how large should it be?',
  part: 'top-off',
  cues: [
    'reservoir',
    'ato jug',
    'ato jug last',
    'ato bucket',
    'ato bucket last',
    'ato last',
    'jug last',
    'container last',
    'bucket last',
    'ato reservoir last',
    'top off reservoir last',
    'how long does my ato',
    'how long will my ato',
    'ato reservoir',
    'top off reservoir',
    'reservoir last',
    'reservoir lasts',
    'how long will the reservoir',
    'how big a reservoir',
    'what size reservoir',
    'top off container',
    'ato container',
    'days of top off',
    'top off for a week',
    'top off last',
    'on vacation',
    'on holiday',
    'while I am away',
  ],
  inputs: {
    usable_volume: quantity('volume', {
      ...reservoirVolume,
      name: 'usable water in the top-off reservoir',
      ask: 'How much water can the top-off use from its reservoir?',
      needed: { not: { given: 'days_wanted' } },
    }),
    evaporation,
    days_wanted: quantity('time', {
      symbol: 't_w',
      name: 'days it should last',
      words: ['last', 'days', 'for', 'away', 'vacation', 'holiday', 'week', 'weeks', 'want'],
      range: [0, 365, 'day'],
      aboveLow: true,
      usual: [1, 60, 'day'],
      units: days,
      needed: false,
      ask: 'How many days should it last?',
      example: '10 days',
    }),
    system_volume: quantity('volume', { ...systemVolume, needed: false }),
    salinity: quantity('salinity', { ...salinityKept, default: { value: 35, unit: 'g/kg' } }),
  },
  steps: [
    step('t', 'R/E', 'time', 'time that the reservoir lasts'),
    step('R_w', 'E*t_w', 'volume', 'reservoir for the time wanted'),
    step('S_e', 'S*V/(V + R)', 'salinity', 'salinity if all of it ran in at once'),
    step('S_e', 'S*V/(V + R_w)', 'salinity', 'salinity if all of it ran in at once'),
  ],
  results: {
    days: result('t', 'time', 'time that the reservoir lasts', { units: days, figures: 2 }),
    volume_for_days: result('R_w', 'volume', 'reservoir for the time wanted'),
    salinity_if_emptied: result('S_e', 'salinity', 'salinity if all of it ran in at once'),
  },
  headline: [
    { text: 'Yes: it lasts about {days}, and you want {days_wanted}.', when: 't >= t_w' },
    { text: 'No: it lasts about {days}; {days_wanted} takes {volume_for_days:both}.', when: 't < t_w' },
    { text: 'It lasts about {days}.', when: 't > 0' },
    { text: '{days_wanted} takes a reservoir with {volume_for_days:both} of usable water.' },
  ],
  cautions: [
    caution(
      'caution',
      'Evaporation swings with season, fans and lights: add a third for dry winter air or a heat wave, and measure your own over a week.',
    ),
    caution(
      'caution',
      'The reservoir is also the flood: if the top-off sticks open, all of it runs in. Keep it smaller than the room in the sump and in the display (topoff stuck-open and clog-flood).',
    ),
    caution(
      'stop',
      'If it all ran in at once the salinity would fall to {salinity_if_emptied}, more than 2 ppt: split it, refill it more often, or limit the run time.',
      'S - S_e > 0.002',
    ),
    caution('note', 'Count what the pump can really reach: a few centimetres stay at the bottom.'),
    caution('note', 'Tell me the water in the system and I say what it does to the salinity if all of it runs in.', {
      not: { given: 'system_volume' },
    }),
    caution('note', 'When it runs empty its pump runs dry and the return chamber sinks: a low-level alarm tells you.'),
  ],
  sources: ['volume balance', '2 ppt at once: common practice, no source'],
  examples: [
    'how long will a 20 L top off reservoir last at 5.7 L a day of evaporation',
    'what size reservoir for 10 days away, 1.5 gal a day evaporates',
    'is a 5 gal ATO reservoir enough for 4 days, evaporation 1 gal a day, 90 gal system',
  ],
});
