import { caution, label, quantity, result, step } from '../calculation.js';
import { changeLightSlowly, meterUnderBlue, readingIsForOnePlace } from '../cautions/light.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { corals, litHours, ppfd, rampHoursEach } from '../inputs/light.js';

const oneChannel = { ...ppfd, range: [0, 2000, 'umol/m2/s'] } as const;

export const lightIntegral = calculation({
  id: 'light.integral',
  slash: 'light integral',
  title: 'Light a coral gets in a day',
  question: 'How much light does a spot get in a day, and does that suit its corals?',
  part: 'light',
  cues: [
    'par meter',
    'dli',
    'daily light',
    'light integral',
    'daily light integral',
    'how much light',
    'light a day',
    'light per day',
    'mol a day',
    'par for',
    'enough par',
    'right for my corals',
    '~par',
    'ppfd',
  ],
  inputs: {
    ppfd,
    hours: litHours,
    ppfd_blue: quantity('photon flux', {
      ...oneChannel,
      symbol: 'P_b',
      name: 'PPFD of the blue channel alone',
      words: ['blue', 'blues', 'actinic', 'blue channel'],
      byName: true,
      ask: 'What PPFD does the blue channel give alone, white off?',
      example: '90 PAR',
    }),
    hours_blue: quantity('time', {
      ...litHours,
      symbol: 'h_b',
      name: 'hours of the blue channel',
      words: ['blue', 'blues', 'actinic', 'blue for', 'blue hours'],
      byName: true,
      ask: 'How many hours a day is the blue channel on?',
      example: '11 h',
    }),
    ppfd_white: quantity('photon flux', {
      ...oneChannel,
      symbol: 'P_w',
      name: 'PPFD of the white channel alone',
      words: ['white', 'whites', 'white channel', 'daylight channel'],
      byName: true,
      ask: 'What PPFD does the white channel give alone, blue off?',
      example: '140 PAR',
    }),
    hours_white: quantity('time', {
      symbol: 'h_w',
      name: 'hours of the white channel',
      words: ['white', 'whites', 'white for', 'white hours'],
      range: [0, 24, 'h'],
      slips: [[24, 1e6, 'A day has 24 hours.']],
      byName: true,
      ask: 'How many hours a day is the white channel on?',
      example: '7 h',
    }),
    ramp_hours_each: rampHoursEach,
    corals,
  },
  oneOf: [
    ['ppfd', 'hours'],
    ['ppfd_blue', 'hours_blue', 'ppfd_white', 'hours_white'],
  ],
  constants: { day },
  rules: [
    {
      refuse: { all: [{ given: 'ppfd' }, { given: 'ppfd_blue' }] },
      because: 'That is one reading for all light and one for blue alone: give either the whole or the channels.',
      about: 'ppfd_blue',
    },
    {
      refuse: 'h_w > h_b',
      because: 'White runs inside blue, but its hours are longer here: are the two swapped?',
      about: 'hours_white',
    },
    {
      refuse: { all: [{ given: 'ppfd' }, '2*r > h'] },
      because: 'Two ramps of that length do not fit into the lit hours.',
      about: 'ramp_hours_each',
    },
    {
      refuse: { all: [{ given: 'ppfd_blue' }, { any: ['2*r > h_b', '2*r > h_w'] }] },
      because: 'Two ramps of that length do not fit into the hours of a channel.',
      about: 'ramp_hours_each',
    },
  ],
  steps: [
    step('I_b', 'P_b*(h_b - r)/day', 'light integral', 'light of the blue channel, two straight ramps losing one'),
    step('I_w', 'P_w*(h_w - r)/day', 'light integral', 'light of the white channel'),
    step('I', 'P*(h - r)/day', 'light integral', 'light a day, two straight ramps losing one'),
    step('I', 'I_b + I_w', 'light integral', 'light a day, both channels'),
    step('P_peak', 'P_b + P_w', 'photon flux', 'PPFD while both channels run'),
  ],
  results: {
    daily_light_integral: result('I', 'light integral', 'light a day'),
    daily_light_integral_blue: result('I_b', 'light integral', 'light of the blue channel a day'),
    daily_light_integral_white: result('I_w', 'light integral', 'light of the white channel a day'),
    ppfd_peak: result('P_peak', 'photon flux', 'PPFD while both channels run'),
    target_low: result('D_low', 'light integral', 'low end of what is common for these corals'),
    target_high: result('D_high', 'light integral', 'high end of what is common for these corals'),
    against_target: label(
      'against what is common for these corals',
      [
        ['below', 'below it', 'I < D_low'],
        ['above', 'above it', 'I > D_high'],
        ['within', 'within it'],
      ],
      { given: 'corals' },
    ),
  },
  headline: [
    {
      text: 'That is {daily_light_integral}, less than is common for {corals}: {target_low} to {target_high}.',
      when: { all: [{ given: 'corals' }, 'I < D_low'] },
    },
    {
      text: 'That is {daily_light_integral}, more than is common for {corals}: {target_low} to {target_high}.',
      when: { all: [{ given: 'corals' }, 'I > D_high'] },
    },
    {
      text: 'That is {daily_light_integral}, within what is common for {corals}: {target_low} to {target_high}.',
      when: { given: 'corals' },
    },
    { text: 'That spot gets {daily_light_integral} of light.' },
  ],
  cautions: [
    caution(
      'caution',
      'Each channel’s reading must be taken with the other off: a reading with both on, entered twice, counts the light double.',
      { given: 'ppfd_blue' },
    ),
    caution(
      'caution',
      'Equal light a day is not equal light: a short bright day stresses corals more than a long mild one. Don’t trade below 6 hours.',
      {
        any: [{ all: [{ given: 'ppfd' }, 'h < 21600'] }, { all: [{ given: 'ppfd_blue' }, 'h_b < 21600'] }],
      },
    ),
    changeLightSlowly,
    readingIsForOnePlace,
    meterUnderBlue,
    caution(
      'note',
      'What corals want is common practice, not law: species, depth and history differ, and the coral’s look decides.',
      { given: 'corals' },
    ),
  ],
  sources: [
    'definition of the daily light integral; ramps as a trapezoid',
    'ranges for corals: common practice, no source',
  ],
  examples: [
    '200 PAR for 10 hours, how much light is that a day for SPS?',
    'what DLI do I get from 150 PAR over 9 h with 1 h ramps',
    'daily light from blue 90 PAR for 11 h and white 140 PAR for 7 h, mixed corals',
  ],
});
