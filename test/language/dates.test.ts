import { afterEach, describe, expect, test } from 'vitest';
import { dateAfter } from '../../src/core/quantity/date-text.js';
import { METRIC, US } from '../../src/core/show-value.js';
import { findDate, type Which } from '../../src/language/dates.js';
import { normalText } from '../../src/language/normal-text.js';

/** Thursday 4 March 2027, 20:00 in London. */
const THURSDAY = '2027-03-04T20:00:00Z';

interface Where {
  readonly now?: string;
  readonly zone?: string;
  readonly which?: Which;
  readonly us?: boolean;
}
const found = (text: string, { now = THURSDAY, zone = 'Europe/London', which, us = false }: Where = {}) =>
  findDate(normalText(text).text, { now: new Date(now), zone, preferences: us ? US : METRIC }, which);
const day = (text: string, where?: Where) => found(text, where)?.date;

describe('a day in words', () => {
  test.each([
    ['today', '2027-03-04'],
    ['Yesterday', '2027-03-03'],
    ['the day after tomorrow', '2027-03-06'],
    ['friday', '2027-03-05'],
    ['next tuesday', '2027-03-09'],
    ['last friday', '2027-02-26'],
    ['sat', '2027-03-06'],
    ['in 3 weeks', '2027-03-25'],
    ['in three weeks', '2027-03-25'],
    ['two and a half weeks ago', '2027-02-15'],
    ['in two and a half hours', '2027-03-04'],
    ['in four and a half hours', '2027-03-05'],
    ['2 1/2 weeks ago', '2027-02-15'],
    ['half a week ago', '2027-03-01'],
    ['in a month', '2027-04-04'],
    ['2 months ago', '2027-01-04'],
    ['3 weeks from today', '2027-03-25'],
    ['a week from friday', '2027-03-12'],
    ['two weeks after saturday', '2027-03-20'],
    ['3 days after the 5th', '2027-03-08'],
    ['a week after 2027-12-31', '2028-01-07'],
    ['the 5th', '2027-03-05'],
    ['on the 28th', '2027-02-28'],
    ['the 31st', '2027-03-31'],
    ['friday the 12th', '2027-03-12'],
    ['march 20', '2027-03-20'],
    ['20th of March', '2027-03-20'],
    ['twenty first of june', '2027-06-21'],
    ['june 21, 2028', '2028-06-21'],
    ['2027-12-31', '2027-12-31'],
  ])('%s', (text, date) => expect(day(text)).toBe(date));

  test.each([
    'whenever',
    'next month',
    'may',
    'at 10',
    '2027-02-30',
    'the 31st chamber is done',
    '45 each',
    'the 99th',
    'in 999999999 weeks',
    '999999999 days after friday',
    '9999-12-31',
    'a week after 2199-12-31',
  ])('%s is none', (text) => expect(day(text)).toBeUndefined());
});

describe('of several days the one that is meant', () => {
  test.each<[string, Which, string]>([
    ['saturday', 'last', '2027-02-27'],
    ['saturday', 'nearest', '2027-03-06'],
    ['monday', 'nearest', '2027-03-01'],
    ['monday', 'next', '2027-03-08'],
    ['thursday', 'last', '2027-03-04'],
    ['this saturday', 'last', '2027-03-06'],
    ['last tuesday', 'next', '2027-03-02'],
    ['the 6th', 'last', '2027-02-06'],
    ['the 3rd', 'next', '2027-04-03'],
    ['the 31st', 'last', '2027-01-31'],
    ['march 2', 'next', '2028-03-02'],
    ['3 weeks', 'next', '2027-03-25'],
  ])('%s, the %s one', (text, which, date) => expect(day(text, { which })).toBe(date));
});

describe('leap days and the ends of years', () => {
  test.each([
    ['tomorrow', '2028-02-28T12:00:00Z', '2028-02-29'],
    ['in a week', '2028-02-23T12:00:00Z', '2028-03-01'],
    ['feb 29', '2027-12-01T12:00:00Z', '2028-02-29'],
    ['the 29th', '2028-02-27T12:00:00Z', '2028-02-29'],
    ['january 3', '2027-12-30T12:00:00Z', '2028-01-03'],
    ['december 30', '2028-01-02T12:00:00Z', '2027-12-30'],
    ['in 3 weeks', '2027-12-30T12:00:00Z', '2028-01-20'],
    ['the 2nd', '2027-12-30T12:00:00Z', '2028-01-02'],
    ['yesterday', '2028-01-01T00:30:00Z', '2027-12-31'],
  ])('%s at %s', (text, now, date) => expect(day(text, { now })).toBe(date));
});

describe('3/4 is read in the order that the member writes', () => {
  test.each<[string, Where, string]>([
    ['3/4', { zone: 'Europe/Berlin' }, '2027-04-03'],
    ['3/4', { zone: 'Australia/Lord_Howe' }, '2027-04-03'],
    ['3/4', { zone: 'America/St_Johns' }, '2027-03-04'],
    ['3/4', { zone: 'Pacific/Honolulu' }, '2027-03-04'],
    ['3/4', { us: true }, '2027-03-04'],
    ['3/4/2028', {}, '2028-04-03'],
    ['3/4/28', { us: true }, '2028-03-04'],
    ['on friday 5/3', {}, '2027-03-05'],
  ])('%s %j', (text, where, date) =>
    expect(found(text, where)).toMatchObject({ date, ambiguous: text.match(/\d\/\d/)?.[0] }),
  );

  test.each(['5/30', '30/5'])('%s has one reading', (text) => {
    for (const us of [true, false]) {
      expect(day(text, { us })).toBe('2027-05-30');
      expect(found(text, { us })).not.toHaveProperty('ambiguous');
    }
  });
  test.each(['3/3', '3 april', '2027-04-03'])('so has %s', (text) =>
    expect(found(text)).not.toHaveProperty('ambiguous'),
  );
});

describe('what measures something is no date', () => {
  test.each([
    '1/2 in pipe',
    'with 3/8 acrylic',
    '1-1/2 bulkheads',
    'glued with 3/4 pvc',
    '6 ft 1 1/2 in',
    '5\'6" by 3/4',
    '72x18x21',
    'at 18 s for 8 hours',
    'how long does the sun shine',
    'the water sat for two days',
    'two 3/4 elbows on 1/2 pipe',
  ])('%s', (text) => expect(found(text)).toBeUndefined());

  test.each([
    ['glued the 1/2 in pipe on friday', '2027-03-05'],
    ['glued the fittings on 3/4 with solvent', '2027-04-03'],
    ['the 3/4 pipe is in since 1/2', '2027-02-01'],
    ['how long does the sun shine at 25 n on 21 june', '2027-06-21'],
    ['12 mm glass came on the 5th', '2027-03-05'],
    ['at 18 s on 5/30', '2027-05-30'],
  ])('%s: beside it a day is found', (text, date) => expect(day(text)).toBe(date));

  test.each('jan feb mar apr may jun jul aug sep oct nov dec'.split(' '))('a number before %s is its day', (month) => {
    const number = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ').indexOf(month) + 1;
    for (const text of [`5 ${month} 2027`, `on 5 ${month} 2027`, `${month} 5 2027`])
      expect(day(text), text).toBe(`2027-${String(number).padStart(2, '0')}-05`);
  });
});

test.each([
  ['today', true],
  ['friday', true],
  ['in 3 weeks', true],
  ['the 5th', true],
  ['march 20', false],
  ['3/4', false],
  ['2027-03-05', false],
])('%s is counted from today: %s', (text, counted) => expect(found(text)?.counted).toBe(counted));

test('where in the text', () => {
  const text = 'i glued the rock on friday with mortar';
  const { start, end } = found(text)!;
  expect(text.slice(start, end)).toBe('on friday');
});

describe('one instant is another day elsewhere, whatever the zone of the machine', () => {
  const before = process.env.TZ;
  afterEach(() => {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });
  const machines = ['UTC', 'America/New_York', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'Africa/Cairo'];
  // In the hour that Berlin, New York, Lord Howe and Cairo skip, and at midnight.
  const zones: [string, string, string, string][] = [
    ['2027-03-02T00:30:00Z', 'Pacific/Auckland', '2027-03-02', '2027-03-05'],
    ['2027-03-02T00:30:00Z', 'Pacific/Honolulu', '2027-03-01', '2027-02-26'],
    ['2027-03-28T00:59:00Z', 'Europe/Berlin', '2027-03-28', '2027-03-26'],
    ['2027-03-14T06:59:00Z', 'America/New_York', '2027-03-14', '2027-03-12'],
    ['2027-10-02T15:29:00Z', 'Australia/Lord_Howe', '2027-10-03', '2027-10-01'],
    ['2027-04-29T22:00:00Z', 'Africa/Cairo', '2027-04-30', '2027-04-30'],
    ['2027-12-31T18:14:00Z', 'Asia/Kathmandu', '2027-12-31', '2027-12-31'],
    ['2027-12-31T18:15:00Z', 'Asia/Kathmandu', '2028-01-01', '2027-12-31'],
  ];
  test.each(machines.flatMap((machine) => zones.map((row) => [machine, ...row] as const)))(
    'on a machine in %s at %s in %s',
    (machine, now, zone, today, friday) => {
      process.env.TZ = machine;
      expect(day('today', { now, zone })).toBe(today);
      expect(day('friday', { now, zone })).toBe(friday);
      expect(day('in 3 weeks', { now, zone })).toBe(dateAfter(today, 21));
    },
  );
});
