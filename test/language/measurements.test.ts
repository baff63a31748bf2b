import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromSI, toSI } from '../../src/core/quantity/units.js';
import { measurementsIn } from '../../src/language/measurements.js';
import { normalText, originalSpan } from '../../src/language/normal-text.js';

const INCH = 0.0254;
const FOOT = 12 * INCH;
const GALLON = 231 * INCH ** 3;

/** Every measurement of a text: SI value of its first unit, or the bare number. */
const read = (text: string): number[] =>
  measurementsIn(normalText(text).text).map(({ value, units }) => (units[0] ? toSI(value, units[0]) : value));

describe('measurements as people type them', () => {
  const cases: readonly (readonly [text: string, ...si: number[]])[] = [
    ["6'", 6 * FOOT],
    ['6ft 2in', 74 * INCH],
    ['alk 2.8 in dkh', 2.8],
    ['water is 4 euro per m3', 4],
    ['$8 per 1000 gallons', 8 / (1000 * GALLON)],
    ['€0.30 / kWh', 0.3 / 3.6e6],
    ['45 euros for 2 pumps', 45, 2],
    ['by 1.5 in 90 gallons', 1.5, 90 * GALLON],
    ['8.9 to 8.1 in 2 days', 8.9, 8.1, 172_800],
    ['5\' 10 1/2"', 70.5 * INCH],
    ['5\'6"', 66 * INCH],
    ['1m80', 1.8],
    ['72x18x21 in', 72 * INCH, 18 * INCH, 21 * INCH],
    ['72 x 18 x 21 inches', 72 * INCH, 18 * INCH, 21 * INCH],
    ['4x2x2 ft', 4 * FOOT, 2 * FOOT, 2 * FOOT],
    ['150*60*55cm', 1.5, 0.6, 0.55],
    ['122×46×53 cm', 1.22, 0.46, 0.53],
    ['120 by 50 by 50 cm', 1.2, 0.5, 0.5],
    ['½ inch', 0.5 * INCH],
    ['1-1/4"', 1.25 * INCH],
    ['47 1/4 in', 47.25 * INCH],
    ['1½ in', 1.5 * INCH],
    ['three quarter inch', 0.75 * INCH],
    ['two and a half gallons', 2.5 * GALLON],
    ['a dozen', 12],
    ['1,200 gph', (1200 * GALLON) / 3600],
    ['1k lph', 1 / 3600],
    ['75gpd', (75 * GALLON) / 86_400],
    ['78f', 298.70555555555558],
    ['26c', 299.15],
    ['-2 °C', 271.15],
    ['1.026', 1.026],
    ['35ppt', 0.035],
    ['53.0 mS', 5.3],
    ['53000 µS/cm', 5.3],
    ['0.28 €/kWh', 0.28 / 3.6e6],
    ['$0.15 per kWh', 0.15 / 3.6e6],
    ['galons: 12 galons', 12 * GALLON],
    ['25 celcius', 298.15],
    ['1.5 kW', 1500],
    ['60 psi', 413_685.43759],
    ['12 mm', 0.012],
    ['9 sq ft', 9 * FOOT ** 2],
    ['200 µmol/m²/s', 2e-4],
  ];
  for (const [text, ...expected] of cases) {
    test(text, () => {
      const got = read(text);
      expect(got).toHaveLength(expected.length);
      got.forEach((value, i) => {
        expect(Math.abs(value - expected[i]!)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected[i]!)));
      });
    });
  }

  test('a count of equal things', () => {
    for (const text of ['2x300w', '2 x 300 W', 'two 300 W heaters', '300w x2']) {
      const [mention] = measurementsIn(normalText(text).text);
      expect(mention, text).toMatchObject({ value: 300, count: 2 });
    }
  });

  test('ranges and approximations keep their ends', () => {
    expect(measurementsIn('10-12 hours')[0]).toMatchObject({ low: 10, high: 12 });
    expect(measurementsIn('10 to 12 hours')[0]).toMatchObject({ low: 10, high: 12 });
    expect(measurementsIn('about 90 gal')[0]).toMatchObject({ value: 90, about: true, low: 81 });
    expect(measurementsIn('from 32 to 35 ppt').map(({ value }) => value)).toEqual([32, 35]);
  });

  test('what measures nothing stays unread', () => {
    for (const text of ['no3', 'two 90s', 'h2o', 'the 5th', 'abc123', 'v2']) {
      const measured = measurementsIn(text).filter(({ units, word }) => units.length > 0 || !word);
      expect(measured, text).toEqual([]);
    }
    expect(measurementsIn('78 in a 66f room').map(({ units }) => units.map(({ id }) => id)[0])).toEqual([
      undefined,
      'degF',
    ]);
  });

  test('a difference is no temperature', () => {
    expect(measurementsIn('5 degrees colder')[0]!.difference).toBe(true);
    expect(measurementsIn('5 c warmer than the room')[0]!.difference).toBe(true);
    expect(measurementsIn('78f in the tank')[0]!.difference).toBeUndefined();
  });
});

describe('any text', () => {
  /** What measurements are made of, so that texts of these run into each other. */
  const pieces = fc.constantFrom(
    ...'1 12 1.5 1,200 1.200 0,5 1/2 ½ 1e3 .5 999999999999999999 $ € - + ± ~ < x * / : ; , . ( ) ° % # \' " in ft feet cm m l g gal h'.split(
      ' ',
    ),
    ...'min kwh ppt c f degrees dkh a an the and or to by per of half quarter three hundred thousand dozen point minus about under over'.split(
      ' ',
    ),
    ...'between from nearly week foot inch galons no3 90s 8500k 5/30 10:30 9pm salt mix tank price L W H ² ³'.split(
      ' ',
    ),
    ' ',
    ' ',
    '\u00a0',
  );
  const anyText = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 200 }),
    fc.stringMatching(/^[0-9 xX./'"°a-z%-]{0,200}$/),
    fc.array(pieces, { maxLength: 60 }).map((list) => list.join('')),
    fc.array(pieces, { maxLength: 60 }).map((list) => list.join(' ')),
    fc
      .tuple(fc.array(pieces, { minLength: 1, maxLength: 4 }), fc.integer({ min: 1, max: 300 }))
      .map(([list, times]) => list.join('').repeat(times)),
  );

  test('is read without a failure: every span lies inside it, behind the one before, and every value is finite', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const normal = normalText(text);
        let last = 0;
        for (const { start, end, value, low = value, high = value, count = 1, group } of measurementsIn(normal.text)) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(end).toBeGreaterThan(start);
          expect(end).toBeLessThanOrEqual(normal.text.length);
          for (const each of [value, low, high, count]) expect(Number.isFinite(each)).toBe(true);
          expect(low).toBeLessThanOrEqual(high);
          if (group) expect(group.index).toBeLessThan(group.size === 2 ? 3 : group.size);
          const [from, to] = originalSpan(normal, start, end);
          expect(from).toBeLessThanOrEqual(to);
          expect(to).toBeLessThanOrEqual(text.length);
          last = end;
        }
      }),
      { numRuns: 4000 },
    );
  });

  test('a number with a unit is read back, spaced or not, in either case', () => {
    const units = ['cm', 'mm', 'in', 'ft', 'L', 'gal', 'W', 'kg', 'lb', 'gph', 'ppt', 'psi'];
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.constantFrom(...units),
        fc.constantFrom('', ' '),
        fc.boolean(),
        (tenths, unit, space, upper) => {
          const text = `${tenths / 10}${space}${upper ? unit.toUpperCase() : unit}`;
          const [mention] = measurementsIn(normalText(text).text);
          expect(mention?.value).toBeCloseTo(tenths / 10, 9);
          expect(mention?.units.length).toBeGreaterThan(0);
          for (const row of mention!.units) expect(fromSI(toSI(3.7, row), row)).toBeCloseTo(3.7, 9);
        },
      ),
    );
  });
});

describe('amperes and the article', () => {
  const unitsIn = (text: string) => measurementsIn(normalText(text).text).map(({ units }) => units[0]?.id);
  test.each(['15A breaker', '15 A breaker', 'a 10a fuse', '13 amp plug', 'it draws 6.7 A.', 'rated 16 A', '20A, 120V'])(
    '%s',
    (text) => {
      expect(unitsIn(text)[0]).toBe('A');
    },
  );
  test.each(['2 a side', '78 a bit warm', '5 a week', 'i have 3 a year old'])('%s', (text) => {
    expect(unitsIn(text)).not.toContain('A');
  });
});
