import { choice, clock, quantity } from '../calculation.js';

const DAY = 86_400;

/** What people type for a PPFD when it is none, `[low, high, sentence]` in µmol/m²/s. */
const notPpfd = [
  [-1e9, 0.5, 'With no light there is nothing to work out.'],
  [
    2000,
    1e9,
    'Full sun is about 2000, so this looks like lux, watts or a percentage: I need the PPFD (“PAR”) from a quantum sensor.',
  ],
] as const;

/** Photons of 400 to 700 nm where the coral sits, read under water. */
export const ppfd = quantity('photon flux', {
  symbol: 'P',
  name: 'PPFD (“PAR”) at the coral',
  words: ['par', 'ppfd', 'umol', 'light level'],
  range: [0.5, 2000, 'umol/m2/s'],
  usual: [20, 700, 'umol/m2/s'],
  slips: notPpfd,
  ask: 'What PPFD (“PAR”) does a quantum sensor read where the coral sits?',
  example: '200 PAR',
});

export const litHours = quantity('time', {
  symbol: 'h',
  name: 'lit hours a day',
  words: ['hours', 'hours a day', 'photoperiod', 'lit', 'lights on'],
  range: [0, 24, 'h'],
  usual: [3, 18, 'h'],
  slips: [[24, 1e6, 'A day has 24 hours.']],
  ask: 'How many hours a day is it lit?',
  example: '10 h',
  profile: 'light.hours',
});

export const rampHoursEach = quantity('time', {
  symbol: 'r',
  name: 'ramp at each end',
  words: ['ramp', 'ramps', 'ramp up', 'fade', 'sunrise', 'sunset'],
  range: [0, 12, 'h'],
  usual: [0.1, 4, 'h'],
  default: { value: 0, unit: 'h' },
  ask: 'How long does the lamp take to ramp up, and again to ramp down?',
  example: '1 h, or 0 for plain timers',
  profile: 'light.ramp_hours',
});

export const corals = choice({
  name: 'kind of corals',
  words: ['corals', 'coral'],
  needed: false,
  ask: 'Which corals is it for?',
  profile: 'display.corals',
  source: 'daily light by kind of coral: common practice, no source; ranges overlap and the coral’s look decides',
  symbols: { D_low: 'mol/(m^2 s)', D_high: 'mol/(m^2 s)' },
  options: {
    soft: {
      label: 'soft and most large-polyp corals',
      words: ['soft', 'softies', 'soft coral', 'leathers', 'mushrooms', 'zoas', 'lps', 'large polyp'],
      gives: { D_low: 3 / DAY, D_high: 6 / DAY },
    },
    mixed: {
      label: 'mixed corals',
      words: ['mixed', 'mixed reef', 'a bit of everything'],
      gives: { D_low: 6 / DAY, D_high: 12 / DAY },
    },
    stony: {
      label: 'small-polyp stony corals',
      words: ['stony', 'sps', 'small polyp', 'sticks'],
      gives: { D_low: 12 / DAY, D_high: 20 / DAY },
    },
  },
});

/** The display's lit day: when the first light comes on, and for how long there is any light. */
export const lightsOn = clock({
  symbol: 't_on',
  name: 'lights on at',
  words: ['on at', 'lights on', 'start', 'starts', 'from', 'begin'],
  ask: 'At what time does the first light come on?',
  example: '10:00 or 2:30 pm',
  profile: 'light.on',
});

/** Less than 8 hours of dark, or hardly a day, is refused. */
export const litDay = quantity('time', {
  ...litHours,
  symbol: 'h_lit',
  range: [4, 16, 'h'],
  slips: [
    [16, 24, 'That leaves less than 8 hours of dark, which fish and corals need.'],
    [24, 1e6, 'A day has 24 hours.'],
    [-1e6, 4, 'Less than 4 hours is hardly a day.'],
  ],
});
