import { describe, expect, test } from 'vitest';
import { brokenHours, zoneNames } from '../../data/time-zones.js';
import { wallClock } from '../../src/core/wall-clock.js';
import { knownZone, shownZone } from '../../src/core/zone.js';
import { normalText } from '../../src/language/normal-text.js';
import { zoneNamed, zoneOfPlace, zonesToOffer } from '../../src/language/zones.js';

const named = (text: string) => zoneNamed(normalText(text).text);

describe('what people call time zones', () => {
  test.each(zoneNames)('$called', ({ called, also, zones }) => {
    for (const [, zone] of zones) expect(knownZone(zone), zone).toBeDefined();
    const [[, zone]] = zones as [[string, string]];
    for (const name of [called, ...also, `the ${called} zone`, `${also[0] ?? called} standard time`])
      expect(named(name), name).toEqual(
        zones.length > 1 ? { between: zones.map(([of, one]) => ({ of, zone: one })) } : { zone },
      );
  });

  test('no name stands twice', () => {
    const names = zoneNames.flatMap(({ called, also }) => [called.toLowerCase().replace(/ time$/, ''), ...also]);
    expect(names).toEqual([...new Set(names)]);
  });

  test.each(Object.entries(brokenHours))('%s is the offset all year', (offset, zone) => {
    const [, sign, hours, minutes] = offset.match(/^([+-])(\d+):(\d\d)$/)!;
    const ahead = (sign === '-' ? -1 : 1) * (Number(hours) * 3600 + Number(minutes) * 60);
    for (const month of ['01', '07'])
      expect(wallClock(new Date(`2027-${month}-10T12:00:00Z`), zone).seconds).toBe(43_200 + ahead);
    expect(named(`UTC${offset}`)).toEqual({ zone });
  });
});

test.each([
  ['Europe/Lisbon', 'Europe/Lisbon'],
  ['america/new_york', 'America/New_York'],
  ['New York', 'America/New_York'],
  ['St. John’s', 'America/St_Johns'],
  ['Port-au-Prince', 'America/Port-au-Prince'],
  ['isle of man time', 'Europe/Isle_of_Man'],
  ['Lord Howe', 'Australia/Lord_Howe'],
  ['Kolkata', 'Asia/Kolkata'],
  ['kyiv', 'Europe/Kyiv'],
  ['Ho Chi Minh', 'Asia/Ho_Chi_Minh'],
  ['Japan', 'Asia/Tokyo'],
  ['US/Eastern', 'America/New_York'],
  ['UTC+2', 'Etc/GMT-2'],
  ['gmt -3', 'Etc/GMT+3'],
  ['UTC−10', 'Etc/GMT+10'],
  ['+05:30', 'Asia/Kolkata'],
  ['utc +0545', 'Asia/Kathmandu'],
  ['UTC+0', 'UTC'],
  ['gmt', 'UTC'],
])('%s is %s', (text, zone) => expect(named(text)).toEqual({ zone }));

test.each(['nonsense', '', 'UTC+15', 'utc-3:30', 'met', 'the', 'europe', 'Europe/', '../etc', 'x'.repeat(5000)])(
  '%s is no zone',
  (text) => expect(named(text)).toBeUndefined(),
);

test('an abbreviation is no place', () => {
  for (const text of ['est', 'cet', 'pacific', 'utc+2']) expect(zoneOfPlace(text)).toBeUndefined();
});

test('a fixed offset is shown with the sign that people write', () => {
  expect(['Etc/GMT-2', 'Etc/GMT+10', 'Europe/Lisbon', 'UTC'].map(shownZone)).toEqual([
    'UTC+2',
    'UTC-10',
    'Europe/Lisbon',
    'UTC',
  ]);
});

test('whatever is offered is understood', () => {
  for (const text of zonesToOffer()) expect(named(text), text).toBeDefined();
});
