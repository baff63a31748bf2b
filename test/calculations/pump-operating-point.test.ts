import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pumpOperatingPoint } from '../../src/core/calculations/pump-operating-point.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const line: Said = {
  static_head: [1.3, 'm'],
  inside_diameter: [27.2, 'mm'],
  pipe_length: [2, 'm'],
  loss_coefficient: [6, '1'],
};
const ends: Said = { head_max: [3.5, 'm'], flow_max: [6000, 'L/h'] };
const pump = (more: Said = {}) => worked(pumpOperatingPoint, { ...line, ...ends, ...more });

/** Head [m] that a line takes, by the implicit Colebrook equation, which explicit friction formulas are fitted to. */
function byColebrook(Q: number, D: number, L: number, K: number): number {
  const V = (4 * Q) / (Math.PI * D ** 2);
  let f = 0.03;
  for (let i = 0; i < 100; i += 1)
    f = (-2 * Math.log10(1.5e-6 / D / 3.7 + 2.51 / (((V * D) / 9.4e-7) * Math.sqrt(f)))) ** -2;
  return ((f * L) / D + K) * (V ** 2 / (2 * 9.80665));
}

describe('worked examples from outside', () => {
  test('no pipe and one loss only: 4 − 4(Q/6000)² = 1 + 8·V²/2g is solved by hand', () => {
    // A = π·0.03²/4 = 7.0686e-4 m²; 8/(2g·A²) = 816 340 s²/m⁵; 4/Q_max² = 1 440 000; Q = √(3/2 256 340) = 1.15308e-3 m³/s
    const { value } = pump({
      head_max: [4, 'm'],
      static_head: [1, 'm'],
      inside_diameter: [30, 'mm'],
      pipe_length: [0, 'm'],
      loss_coefficient: [8, '1'],
    });
    expect(value('flow', 'L/h')).toBeCloseTo(4151.1, 0);
  });

  test.each([
    [20.4, 1.1, 1.5, 5],
    [27.2, 1.2, 1.8, 7],
    [34, 0.8, 3, 4],
  ])(
    '%d mm, %d m up: at its flow Colebrook takes the head that the pump gives, within 0.5 %%',
    (bore, up, length, loss) => {
      const { value } = pump({
        inside_diameter: [bore, 'mm'],
        static_head: [up, 'm'],
        pipe_length: [length, 'm'],
        loss_coefficient: [loss, '1'],
      });
      const flow = value('flow', 'L/h') / 3.6e6;
      const given = 3.5 * (1 - (flow / (6000 / 3.6e6)) ** 2);
      expect(Math.abs((up + byColebrook(flow, bore / 1000, length, loss)) / given - 1)).toBeLessThan(0.005);
    },
  );

  test('the handbook trap: 12 ft and 1500 gal/h give 633 gal/h through 3/4 in, 872 through 1 in', () => {
    const through = (size: string) =>
      worked(pumpOperatingPoint, {
        head_max: [12, 'ft'],
        flow_max: [1500, 'gal_US/h'],
        static_head: [50, 'in'],
        pipe: size,
        pipe_length: [7, 'ft'],
        loss_coefficient: [6, '1'],
      }).value('flow', 'gal_US/h');
    expect(Math.abs(through('3/4 in schedule 40') / 633 - 1)).toBeLessThan(0.01);
    expect(Math.abs(through('1 in schedule 40') / 872 - 1)).toBeLessThan(0.01);
  });
});

describe('a curve by its points', () => {
  const points = (text: string, more: Said = {}) =>
    worked(pumpOperatingPoint, { ...line, curve_points: text, ...more });

  test('is read with the flow or the head first, in feet and gallons, in any order', () => {
    const one = points('0 gph at 12 ft, 600 gph at 9 ft, 1200 gph at 4 ft').value('flow', 'L/h');
    expect(points('4 ft: 1200 gph, 12 ft: 0 gph, 9 ft: 600 gph').value('flow', 'L/h')).toBeCloseTo(one, 6);
  });

  test('with no friction it is where the line crosses the height: from 3 m at 1000 to 1 m at 3000 L/h, 2 m up', () => {
    const free: Said = {
      pipe_length: [0, 'm'],
      loss_coefficient: [0.5, '1'],
      inside_diameter: [110, 'mm'],
      static_head: [2, 'm'],
    };
    const flow = points('[[1000, 3], [3000, 1]] L/h, m', free).value('flow', 'L/h');
    expect(flow).toBeGreaterThan(1995);
    expect(flow).toBeLessThan(2000);
  });

  test('many points of the parabola give what the parabola gives', () => {
    const rows = Array.from({ length: 25 }, (_, i) => [i * 250, 3.5 * (1 - (i / 24) ** 2)]);
    const flow = points(`${JSON.stringify(rows)} L/h, m`).value('flow', 'L/h');
    expect(flow / pump().value('flow', 'L/h')).toBeCloseTo(1, 3);
  });

  test('ends at its last point, and says so', () => {
    const said: Said = { ...line, curve_points: '[[0, 4], [1000, 3.9]] L/h, m' };
    expect(worked(pumpOperatingPoint, said).value('flow', 'L/h')).toBeCloseTo(1000, 6);
    expect(warns(pumpOperatingPoint, said, /end of the points/)).toBe(true);
    expect(
      warns(pumpOperatingPoint, { ...line, curve_points: '[[0, 4], [9000, 0.5]] L/h, m' }, /end of the points/),
    ).toBe(false);
  });

  test.each([
    ['a rising curve', '[[0, 2], [1000, 3]] L/h, m', /more head/],
    ['two heads at one flow', '[[1000, 3], [1000, 2]] L/h, m', /more head/],
    ['one point', '[[1000, 3]] L/h, m', /no curve/],
    ['no numbers', 'strong', /no point I can read/],
    ['a head beyond any pump', '[[0, 300], [1000, 3]] L/h, m', /can be 0 to 30/],
  ])('refuses %s', (_, curve, sentence) => {
    expect(told(outcomeOf(pumpOperatingPoint, { ...line, curve_points: curve })).join()).toMatch(sentence);
  });

  test('a pump that does not reach gives nothing', () => {
    const said: Said = { ...line, static_head: [5, 'm'], curve_points: '[[0, 4], [3000, 1]] L/h, m' };
    expect(worked(pumpOperatingPoint, said).value('flow', 'L/h')).toBe(0);
    expect(read(pumpOperatingPoint, said).headline).toMatch(/^No water reaches the display: by its curve/);
  });
});

test('more height, more fittings, more pipe and less bore all give less; never more than the label', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 3, noNaN: true }),
      fc.double({ min: 12, max: 60, noNaN: true }),
      fc.double({ min: 1, max: 15, noNaN: true }),
      (up, bore, loss) => {
        const at = (more: Said = {}) =>
          pump({ static_head: [up, 'm'], inside_diameter: [bore, 'mm'], loss_coefficient: [loss, '1'], ...more }).value(
            'flow',
            'L/h',
          );
        const flow = at();
        expect(flow).toBeGreaterThan(0);
        expect(flow).toBeLessThanOrEqual(6000);
        expect(at({ static_head: [up + 0.2, 'm'] })).toBeLessThan(flow);
        expect(at({ loss_coefficient: [loss + 1, '1'] })).toBeLessThan(flow);
        expect(at({ pipe_length: [4, 'm'] })).toBeLessThan(flow);
        expect(at({ inside_diameter: [bore + 2, 'mm'] })).toBeGreaterThan(flow);
      },
    ),
  );
});

test('the range holds the flow of a straight curve and of fittings 40 % either way', () => {
  const { low, high, value } = pump();
  expect(high('flow', 'L/h')).toBeCloseTo(pump({ loss_coefficient: [3.6, '1'] }).value('flow', 'L/h'), 3);
  const straight = worked(pumpOperatingPoint, {
    ...line,
    loss_coefficient: [8.4, '1'],
    curve_points: '[[0, 3.5], [6000, 0]] L/h, m',
  });
  expect(low('flow', 'L/h')).toBeCloseTo(straight.value('flow', 'L/h'), 3);
  expect(low('flow', 'L/h')).toBeLessThan(value('flow', 'L/h'));
});

describe('the first line', () => {
  test.each([
    ['label only', {}, /^It really sends about .* of its label\.$/],
    ['with a volume', { tank_volume: [473, 'L'] }, /of its label, so the water goes through/],
    ['easily enough', { wanted_flow: [1500, 'L/h'] }, /^Yes, it reaches 1500 L\/h/],
    ['enough by the middle', { wanted_flow: [3100, 'L/h'] }, /^By the middle estimate it reaches/],
    ['short by the middle', { wanted_flow: [3500, 'L/h'] }, /^By the middle estimate it misses/],
    ['far short', { wanted_flow: [5000, 'L/h'] }, /^No, it does not reach/],
    ['too weak', { static_head: [3.6, 'm'] }, /^No water reaches the display: 3.5 m is the most/],
  ] as const)('%s', (_, more, sentence) => {
    expect(read(pumpOperatingPoint, { ...line, ...ends, ...(more as Said) }).headline).toMatch(sentence);
  });

  test('of a curve, with and without a volume', () => {
    const said: Said = { ...line, curve_points: '[[0, 4], [6000, 1]] L/h, m' };
    expect(read(pumpOperatingPoint, said).headline).toMatch(/^It really sends about .* at .* of head\.$/);
    expect(read(pumpOperatingPoint, { ...said, tank_volume: [473, 'L'] }).headline).toMatch(
      /goes through .* times an hour\.$/,
    );
  });
});

describe('cautions', () => {
  const at = (more: Said, text: RegExp) => warns(pumpOperatingPoint, { ...line, ...ends, ...more }, text);
  test('a pump that moves nothing, speed, drains, a guessed curve: each on both sides', () => {
    expect([at({}, /moves nothing/), at({ static_head: [4, 'm'] }, /moves nothing/)]).toEqual([false, true]);
    expect([at({}, /drains must carry/), at({ static_head: [4, 'm'] }, /drains must carry/)]).toEqual([true, false]);
    const speeds = [16, 27.2, 40].map((bore) => {
      const more: Said = { inside_diameter: [bore, 'mm'], loss_coefficient: [bore < 20 ? 1.5 : 6, '1'] };
      return [at(more, /ceiling of 2.4/), at(more, /may be heard/)];
    });
    expect(speeds).toEqual([
      [true, false],
      [false, true],
      [false, false],
    ]);
    expect(at({}, /curve between the two label numbers/)).toBe(true);
    expect(at({ curve_points: '[[0, 4], [6000, 1]] L/h, m' }, /curve between the two label numbers/)).toBe(false);
  });
});

test('a label flow alone asks for the maximum head first', () => {
  const outcome = outcomeOf(pumpOperatingPoint, { flow_max: [1500, 'gal_US/h'] });
  expect(told(outcome)[0]).toBe('head_max');
  expect(told(outcomeOf(pumpOperatingPoint, {}))).toEqual([
    'flow_max',
    'head_max',
    'static_head',
    'inside_diameter',
    'pipe_length',
    'loss_coefficient',
  ]);
});

test('only the outlet is counted beside the fittings that are named: 2 elbows of 0.668 and 1', () => {
  const { loss_coefficient: _, ...rest } = line;
  const outcome = outcomeOf(pumpOperatingPoint, { ...rest, ...ends, pipe: '1 in schedule 40', fittings: '2 elbows' });
  if (outcome.kind !== 'answer') throw new Error('no answer');
  const K = outcome.steps.find(({ step }) => step.symbol === 'K')!.si;
  expect(K).toBeCloseTo(2 * 0.668 + 1, 2);
});
