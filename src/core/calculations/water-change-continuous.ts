import { caution, quantity, result, step } from '../calculation.js';
import { emergency, kitNoise } from '../cautions/water-change.js';
import { calculation } from '../define.js';
import { systemVolume } from '../inputs/system-water.js';
import { before, diluted, newWater } from '../inputs/water-change.js';

export const waterChangeContinuous = calculation({
  id: 'water_change.continuous',
  slash: 'water drip',
  title: 'Continuous water change',
  question: 'What does a steady exchange of water, drop by drop, do over days?',
  part: 'water',
  cues: [
    'continuous water change',
    'continuous exchange',
    'drip exchange',
    'drip water change',
    'automatic water change',
    'auto water change',
    'awc',
    'automatic water changes',
    'a day on',
    'day through',
    'dripped through',
    'daily water change',
    'exchange a day',
    'a day exchange',
    'exchanging',
  ],
  wording: /\b(?:automatic|auto|continuous|drip|dripped)\b/,
  inputs: {
    before,
    diluted,
    volume: systemVolume,
    exchange: quantity('water a day', {
      symbol: 'Q',
      name: 'water exchanged a day',
      words: ['exchange', 'exchanged', 'exchanging', 'a day', 'per day', 'daily', 'drip', 'dripped'],
      range: [0, 100_000, 'L/day'],
      aboveLow: true,
      usual: [0.5, 500, 'L/day'],
      ask: 'How much water is exchanged a day?',
      example: '4 L a day or 1 gal a day',
    }),
    time: quantity('time', {
      symbol: 't',
      name: 'how long it runs',
      words: ['for', 'after', 'over', 'days', 'weeks', 'running'],
      range: [0, 3650, 'day'],
      aboveLow: true,
      usual: [1, 365, 'day'],
      ask: 'Over how many days?',
      example: '30 days',
    }),
    new_water: newWater,
    rise_per_day: quantity('dissolved rate', {
      symbol: 'q',
      name: 'rise a day without the exchange',
      words: ['rise', 'rises', 'rising', 'climbs', 'goes up', 'adds', 'gains', 'produces'],
      range: [0, 1000, 'mg/L/day'],
      usual: [0.01, 10, 'mg/L/day'],
      default: { value: 0, unit: 'mg/L/day', why: 'nothing comes in; feeding usually brings some' },
      ask: 'By how much would the reading rise a day without the exchange?',
      example: '0.8 mg/L a day',
    }),
  },
  steps: [
    step('tau', 'V/Q', 'time', 'time to exchange one whole volume'),
    step('c_s', 'c_n + q*tau', 'dissolved', 'where it settles'),
    step('c_2', 'c_s + (c_1 - c_s)*exp(-t/tau)', 'dissolved', 'reading after that time'),
    step('V_out', 'Q*t', 'volume', 'new water it takes'),
    step('f_e', '1 - exp(-t/tau)', 'fraction', 'one change that would do the same, without the rise'),
  ],
  results: {
    after: result('c_2', 'dissolved', 'reading after that time'),
    settled: result('c_s', 'dissolved', 'settles at'),
    total_water: result('V_out', 'volume', 'new water it takes'),
    equivalent_fraction: result('f_e', 'fraction', 'one change that would do the same, without the rise'),
    time_constant: result('tau', 'time', 'time to exchange one whole volume', { units: { metric: 'day', us: 'day' } }),
  },
  headline: [
    {
      text: 'It climbs: from {before} to {after} in {time}, on the way to {settled}; the exchange is too small for what comes in.',
      when: 'c_2 > c_1',
    },
    {
      text: 'It falls from {before} to {after} in {time} and settles at {settled}, using {total_water} of new water.',
      when: 'q > 0',
    },
    {
      text: 'It falls from {before} to {after} in {time}, using {total_water} of new water, as one change of {equivalent_fraction} would.',
    },
  ],
  cautions: [
    emergency,
    caution('note', 'One whole volume exchanged drop by drop takes out 63 %, since new water is drained with the old.'),
    caution(
      'caution',
      'Two pumps never run alike: check the salinity weekly, and bound both containers so that neither pump can flood the floor or drain the tank alone.',
    ),
    caution('note', 'Match the salinity and alkalinity of the new water: drop by drop it sets the tank’s.'),
    kitNoise,
  ],
  sources: ['mass balance of a well-mixed tank with a steady flow through it'],
  examples: [
    'drip exchange of 40 L a day through a 400 L system for 7 days, nitrate 40',
    'automatic water change of 1.5 gal a day on 120 gal for 60 days, nitrate 30, new water 1 ppm, rises 0.8 ppm a day',
    'continuous water change 5 L/day, 250 L system, phosphate 0.3 mg/L, after 90 days',
  ],
});
