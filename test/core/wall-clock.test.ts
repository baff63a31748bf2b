import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockText, readClock } from '../../src/core/quantity/clock-text.js';
import { dayAt, instantAt, wallClock } from '../../src/core/wall-clock.js';

/** `2027-03-28 02:30` in a zone as an instant. */
const at = (text: string, zone: string): string => {
  const [date = '', time = ''] = text.split(' ');
  return instantAt({ date, seconds: readClock(time)! }, zone).toISOString();
};
const shown = (instant: string, zone: string): string => {
  const { date, seconds } = wallClock(new Date(instant), zone);
  return `${date} ${clockText(seconds)}`;
};

// When the clocks change: IANA time zone database, files europe, northamerica, australasia and asia.
describe('a time that comes once, twice or never', () => {
  test.each([
    ['Europe/Berlin, an hour before', '2027-03-28 01:30', 'Europe/Berlin', '2027-03-28T00:30:00.000Z'],
    ['Europe/Berlin, skipped', '2027-03-28 02:30', 'Europe/Berlin', '2027-03-28T01:00:00.000Z'],
    ['Europe/Berlin, the first that is not skipped', '2027-03-28 03:00', 'Europe/Berlin', '2027-03-28T01:00:00.000Z'],
    ['Europe/Berlin, twice', '2027-10-31 02:30', 'Europe/Berlin', '2027-10-31T00:30:00.000Z'],
    ['Europe/Berlin, after both', '2027-10-31 03:00', 'Europe/Berlin', '2027-10-31T02:00:00.000Z'],
    ['America/New_York, skipped', '2027-03-14 02:30', 'America/New_York', '2027-03-14T07:00:00.000Z'],
    ['America/New_York, twice', '2027-11-07 01:30', 'America/New_York', '2027-11-07T05:30:00.000Z'],
    ['America/St_Johns, skipped', '2027-03-14 02:30', 'America/St_Johns', '2027-03-14T05:30:00.000Z'],
    ['America/St_Johns, twice', '2027-11-07 01:30', 'America/St_Johns', '2027-11-07T04:00:00.000Z'],
    [
      'Australia/Lord_Howe, half an hour is skipped',
      '2027-10-03 02:15',
      'Australia/Lord_Howe',
      '2027-10-02T15:30:00.000Z',
    ],
    [
      'Australia/Lord_Howe, behind that half hour',
      '2027-10-03 02:30',
      'Australia/Lord_Howe',
      '2027-10-02T15:30:00.000Z',
    ],
    ['Australia/Lord_Howe, half an hour twice', '2027-04-04 01:45', 'Australia/Lord_Howe', '2027-04-03T14:45:00.000Z'],
    ['Australia/Lord_Howe, after both', '2027-04-04 02:00', 'Australia/Lord_Howe', '2027-04-03T15:30:00.000Z'],
    ['Asia/Kathmandu never changes', '2027-03-28 02:30', 'Asia/Kathmandu', '2027-03-27T20:45:00.000Z'],
    ['Asia/Kathmandu in autumn', '2027-10-31 02:30', 'Asia/Kathmandu', '2027-10-30T20:45:00.000Z'],
    ['Africa/Cairo, midnight is skipped', '2027-04-30 00:00', 'Africa/Cairo', '2027-04-29T22:00:00.000Z'],
    ['Pacific/Apia, a whole day is skipped', '2011-12-30 12:00', 'Pacific/Apia', '2011-12-30T10:00:00.000Z'],
  ])('%s: %s', (_, wall, zone, instant) => expect(at(wall, zone)).toBe(instant));
});

test.each([
  ['2027-03-28T00:59:59Z', 'Europe/Berlin', '2027-03-28 02:00'],
  ['2027-03-28T01:00:00Z', 'Europe/Berlin', '2027-03-28 03:00'],
  ['2027-10-31T00:30:00Z', 'Europe/Berlin', '2027-10-31 02:30'],
  ['2027-10-31T01:30:00Z', 'Europe/Berlin', '2027-10-31 02:30'],
  ['2027-10-02T15:30:00Z', 'Australia/Lord_Howe', '2027-10-03 02:30'],
  ['2027-01-01T03:29:00Z', 'America/St_Johns', '2026-12-31 23:59'],
  ['2028-02-28T18:15:00Z', 'Asia/Kathmandu', '2028-02-29 00:00'],
])('at %s the clocks of %s show %s', (instant, zone, wall) => expect(shown(instant, zone)).toBe(wall));

test('one instant, two days', () => {
  const instant = new Date('2027-03-02T00:30:00Z');
  expect(dayAt(instant, 'Pacific/Auckland')).toBe('2027-03-02');
  expect(dayAt(instant, 'Pacific/Honolulu')).toBe('2027-03-01');
});

const ZONES = ['Europe/Berlin', 'America/New_York', 'America/St_Johns', 'Australia/Lord_Howe', 'Asia/Kathmandu'];
const anyInstant = fc.date({ min: new Date('2020-01-01'), max: new Date('2036-12-31'), noInvalidDate: true });

/** The same by the machine's own formatter. */
function formatted(instant: Date, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    dateStyle: 'short',
    timeStyle: 'medium',
    hourCycle: 'h23',
  });
  return parts.format(instant).replace(', ', ' ');
}

test.each(ZONES)('%s at any instant: as the machine formats it, and back again', (zone) => {
  fc.assert(
    fc.property(anyInstant, (instant) => {
      const wall = wallClock(instant, zone);
      const pad = (number: number) => String(number).padStart(2, '0');
      const [hour, minute, second] = [wall.seconds / 3600, (wall.seconds / 60) % 60, wall.seconds % 60].map(Math.floor);
      expect(`${wall.date} ${pad(hour!)}:${pad(minute!)}:${pad(second!)}`).toBe(formatted(instant, zone));
      const back = instantAt(wall, zone).getTime();
      const whole = Math.floor(instant.getTime() / 1000) * 1000;
      // The second time round is an hour later, half an hour on Lord Howe.
      expect([0, 1_800_000, 3_600_000]).toContain(whole - back);
      expect(wallClock(new Date(back), zone)).toEqual(wall);
    }),
  );
});

test.each([
  ['2027-02-29', 0, 'Europe/Berlin'],
  ['2027-03-01', 86_400, 'Europe/Berlin'],
  ['2027-03-01', 0, 'Atlantis/Capital'],
])('%s at %d in %s is no instant', (date, seconds, zone) =>
  expect(() => instantAt({ date, seconds }, zone)).toThrow(RangeError),
);
