import { caution, choice, date, label, lookup, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { LATITUDE_IN_TEXT, REEF_LATITUDES, readLatitude } from '../inputs/latitude.js';

export const lightDayLength = calculation({
  id: 'light.day_length',
  slash: 'light day-length',
  title: 'Length of the day on a reef',
  question: 'How long is the day on a reef at a latitude and date?',
  part: 'light',
  cues: [
    'day length',
    'length of the day',
    'how long is the day',
    'how long is day',
    'how long are the days',
    'hours of daylight',
    'sunrise to sunset',
    'natural day',
    'natural daylight',
    'daylight',
    'on a reef',
    'on the reef',
    'season',
  ],
  inputs: {
    reef: lookup({
      name: 'latitude with N or S, or a reef',
      words: ['latitude', 'reef at', 'reef'],
      ask: 'Where is the reef? A latitude with N or S will do.',
      example: '18 S',
      needed: false,
      suggestions: REEF_LATITUDES.map(({ name }) => name),
      pattern: LATITUDE_IN_TEXT,
      read: readLatitude,
    }),
    latitude: quantity('angle', {
      symbol: 'phi',
      name: 'latitude, south negative',
      words: ['latitude', 'lat', 'degrees north', 'degrees south'],
      range: [-89, 89, 'deg'],
      slips: [
        [89, 180, 'That looks like a longitude: I need the latitude.'],
        [-180, -89, 'That looks like a longitude: I need the latitude.'],
      ],
      ask: 'At which latitude is the reef, north or south?',
      example: '18 S, or −18 degrees',
    }),
    hemisphere: choice({
      name: 'north or south of the equator',
      words: ['hemisphere'],
      ask: 'North or south of the equator?',
      needed: false,
      options: {
        north: { label: 'north', words: ['northern'] },
        south: { label: 'south', words: ['southern'] },
      },
    }),
    date: date({
      symbol: 'n_d',
      name: 'date',
      words: ['date', 'on', 'in'],
      ask: 'For which day?',
      example: '21 June or 2027-06-21',
    }),
    day_of_year: quantity('count', {
      symbol: 'n',
      name: 'day of the year',
      words: ['on day', 'day number', 'day of the year'],
      range: [1, 366, '1'],
      whole: true,
      ask: 'For which day of the year, 1 to 366?',
      example: '172',
    }),
  },
  oneOf: [['date'], ['day_of_year']],
  constants: {
    dd: { value: (0.4 * Math.PI) / 180, unit: 'rad', name: 'spread of the declination, 0.4°' },
  },
  rules: [
    {
      refuse: { all: [{ is: ['hemisphere', 'north'] }, 'phi < 0'] },
      because: 'A negative latitude lies south of the equator, but north was said: which is it?',
      about: 'latitude',
    },
    {
      refuse: { any: ['n > n_d', 'n < n_d'] },
      because: 'The date and the day of the year are not the same day: give one of the two.',
      about: 'day_of_year',
    },
  ],
  steps: [
    step('L', '-abs(phi)', 'angle', 'latitude, south negative', { is: ['hemisphere', 'south'] }),
    step('L', 'phi', 'angle', 'latitude, south negative'),
    step('n', 'n_d', 'count', 'day of the year'),
    step('d', 'declination(n)', 'angle', 'declination of the sun'),
    step('x', 'sunrise_cosine(L, d)', 'ratio', 'cosine of the hour angle of sunrise'),
    step('T', 'day_length(L, d)', 'time', 'sunrise to sunset'),
    step('x_a', 'sunrise_cosine(L, d - dd)', 'ratio', 'the same with the sun a little south'),
    step('x_b', 'sunrise_cosine(L, d + dd)', 'ratio', 'the same with the sun a little north'),
    step('T_a', 'day_length(L, d - dd)', 'time', 'day with the sun a little south'),
    step('T_b', 'day_length(L, d + dd)', 'time', 'day with the sun a little north'),
    step('T_low', 'min(T_a, T_b)', 'time', 'shortest it can be'),
    step('T_high', 'max(T_a, T_b)', 'time', 'longest it can be'),
  ],
  results: {
    declination: result('d', 'angle', 'declination of the sun'),
    day_length: result('T', 'time', 'sunrise to sunset', {
      low: 'T_low',
      high: 'T_high',
      units: { metric: 'h', us: 'h' },
      decimals: 2,
    }),
    day_length_low: result('T_low', 'time', 'shortest it can be', { units: { metric: 'h', us: 'h' }, decimals: 2 }),
    day_length_high: result('T_high', 'time', 'longest it can be', { units: { metric: 'h', us: 'h' }, decimals: 2 }),
    state: label('state of the day', [
      ['polar_day', 'the sun does not set', 'x <= -1'],
      ['polar_night', 'the sun does not rise', 'x >= 1'],
      ['normal', 'the sun rises and sets'],
    ]),
  },
  headline: [
    { text: 'At that latitude the sun does not set on that day: 24 h.', when: 'x <= -1' },
    { text: 'At that latitude the sun does not rise on that day: 0 h.', when: 'x >= 1' },
    { text: 'From sunrise to sunset it is {day_length}.' },
  ],
  cautions: [
    caution('caution', 'It is about to turn: within the error of the method the sun may or may not rise and set.', {
      any: [
        { all: ['x_a <= -1', 'x_b > -1'] },
        { all: ['x_b <= -1', 'x_a > -1'] },
        { all: ['x_a >= 1', 'x_b < 1'] },
        { all: ['x_b >= 1', 'x_a < 1'] },
      ],
    }),
    caution('note', 'The latitude of the reef counts, not yours; south of the equator June is winter.'),
    caution(
      'note',
      'A lamp need not copy this: the first and last hour of sun carry little light, and a tank needs no seasons.',
    ),
    caution('note', 'Sea level and a clear horizon; the first and last light of twilight are not counted.'),
  ],
  sources: [
    'agrees with an astronomical almanac library within 1 min at 10° and 5 min at 60°; the spread covers the series and leap years',
  ],
  examples: [
    'how long is the day on a reef at 18 S on 21 June',
    'hours of daylight at 24 degrees north on 2027-12-21',
    'day length at latitude 10 on day 80 of the year',
  ],
});
