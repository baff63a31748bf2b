import { caution, clock, clockResult, flag, quantity, result, step } from '../calculation.js';
import { clocksJump, lampOverWater, shieldEyes } from '../cautions/light.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { lightsOn, litDay } from '../inputs/light.js';

export const lightRefugium = calculation({
  id: 'light.refugium',
  slash: 'light refugium',
  title: 'When the algae light runs',
  question: 'When should the light over the algae run, against the display?',
  part: 'light',
  cues: [
    'refugium light',
    'fuge light',
    'algae light',
    'refugium',
    'fuge',
    'macroalgae',
    'macro algae',
    'chaeto',
    'reverse daylight',
    'reverse photoperiod',
    'opposite the display',
    'opposite schedule',
  ],
  inputs: {
    display_on: clock({
      ...lightsOn,
      name: 'display lights on at',
      words: ['display', 'on at', 'display on', 'from', 'lights on', 'main lights'],
      ask: 'At what time do the display lights come on?',
    }),
    display_hours: quantity('time', {
      ...litDay,
      symbol: 'h_d',
      name: 'lit hours of the display',
      words: ['display', 'hours', 'lit', 'display hours'],
      ask: 'For how many hours is the display lit?',
    }),
    overlap_each_end: quantity('time', {
      symbol: 'ov',
      name: 'overlap at each end',
      words: ['overlap', 'overlapping', 'each end'],
      range: [0, 3, 'h'],
      usual: [0.25, 2, 'h'],
      default: {
        value: 1,
        unit: 'h',
        why: 'common practice, no source',
        when: { not: { given: 'refugium_hours' } },
      },
      needed: false,
      ask: 'For how long should both lights run at each end?',
      example: '1 h',
    }),
    refugium_hours: quantity('time', {
      symbol: 'h_r',
      name: 'hours wanted for the algae light',
      words: ['refugium for', 'fuge for', 'algae', 'want', 'wanted', 'for the algae'],
      range: [4, 22, 'h'],
      slips: [
        [22, 24, 'A light that runs 24 hours needs no timer, and gives up the reverse effect.'],
        [24, 1e6, 'A day has 24 hours.'],
      ],
      needed: false,
      ask: 'How many hours should the algae light run?',
      example: '14 h',
      profile: 'refugium.light_hours',
    }),
  },
  constants: { day },
  rules: [
    {
      refuse: 'h_ref > 79200',
      because:
        'With that overlap the algae light would run more than 22 hours: for 24 h no timer is needed. Use less overlap.',
      about: 'overlap_each_end',
    },
    {
      refuse: { all: [{ given: 'refugium_hours' }, { given: 'overlap_each_end' }] },
      because: 'The hours wanted already fix the overlap: give one of the two.',
      about: 'overlap_each_end',
    },
  ],
  steps: [
    step('ov', '(h_r - (day - h_d))/2', 'time', 'overlap at each end (negative: a dark gap)'),
    step('on', 'mod(t_on + h_d - ov, day)', 'time', 'algae light on'),
    step('h_ref', 'day - h_d + 2*ov', 'time', 'hours of the algae light'),
    step('off', 'mod(on + h_ref, day)', 'time', 'algae light off'),
    step('h_dark', 'day - h_ref', 'time', 'hours of dark for the algae'),
  ],
  results: {
    refugium_on: clockResult('on', 'algae light on'),
    refugium_off: clockResult('off', 'algae light off'),
    refugium_hours: result('h_ref', 'time', 'hours of the algae light'),
    overlap_each_end: result('ov', 'time', 'overlap at each end (negative: a dark gap)'),
    refugium_dark_hours: result('h_dark', 'time', 'hours of dark for the algae'),
    crosses_midnight: flag('runs past midnight', 'on + h_ref > 86400'),
  },
  headline: [
    {
      text: 'Run the algae light from {refugium_on} to {refugium_off}, {refugium_hours}, in the middle of the display’s night.',
      when: 'ov < 0',
    },
    { text: 'Run the algae light from {refugium_on} to {refugium_off}, {refugium_hours}, opposite the display.' },
  ],
  cautions: [
    caution('note', 'Common practice is 10 to 18 hours for the algae light; this is outside it.', {
      any: ['h_ref < 36000', 'h_ref > 64800'],
    }),
    caution(
      'note',
      'It takes up part of the CO2 that the tank gives off at night, so the pH dips less. It flattens the day rather than lifting the mean; the CO2 of the room and aeration matter more.',
    ),
    caution(
      'caution',
      'Start new algae at 6 to 8 hours and add 1 to 2 hours a week: algae that die back release what they took up.',
    ),
    caution(
      'note',
      'Screen stray light from the display, which should be dark then; its off time is when blue goes off.',
    ),
    lampOverWater,
    shieldEyes,
    clocksJump,
  ],
  sources: ['clock arithmetic, modulo 24 h; overlap and hours: common practice, no source'],
  examples: [
    'when should my refugium light run, display on at 10:00 for 10 hours',
    'fuge light opposite the display, lights on at noon for 11 h, I want 10 h for the algae',
  ],
});
