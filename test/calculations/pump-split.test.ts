import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pumpSplit } from '../../src/core/calculations/pump-split.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const line: Said = {
  head_max: [4, 'm'],
  flow_max: [8000, 'L/h'],
  static_head: [1.4, 'm'],
  inside_diameter: [27.2, 'mm'],
  pipe_length: [1.6, 'm'],
  loss_coefficient: [3, '1'],
  branch_length: [0.6, 'm'],
  branch_loss: [3, '1'],
};
const alike: Said = { outlets: [2, 'count'], branch_diameter: [21.2, 'mm'] };
const split = (more: Said = alike) => worked(pumpSplit, { ...line, ...more });

/** Darcy friction factor by the implicit Colebrook equation. */
function colebrook(V: number, D: number): number {
  let f = 0.03;
  for (let i = 0; i < 100; i += 1)
    f = (-2 * Math.log10(1.5e-6 / D / 3.7 + 2.51 / (((V * D) / 9.4e-7) * Math.sqrt(f)))) ** -2;
  return f;
}
const lost = (V: number, D: number, L: number, K: number) => ((colebrook(V, D) * L) / D + K) * (V ** 2 / (2 * 9.80665));

describe('from outside', () => {
  test.each([1, 2, 3, 4])('%d outlets alike: heads by Colebrook close the balance within 1 %%', (n) => {
    const { value } = split({ outlets: [n, 'count'], branch_diameter: [21.2, 'mm'] });
    const flow = value('flow', 'L/h') / 3.6e6;
    const riser = lost(flow / ((Math.PI * 0.0272 ** 2) / 4), 0.0272, 1.6, 3);
    const branch = lost(flow / n / ((Math.PI * 0.0212 ** 2) / 4), 0.0212, 0.6, 3);
    const pump = 4 * (1 - (flow / (8000 / 3.6e6)) ** 2);
    expect(Math.abs((1.4 + riser + branch) / pump - 1)).toBeLessThan(0.01);
  });

  test('two outlets that differ share as area over the root of their loss: 25 and 20 mm without pipe, as 21.2² to 17²', () => {
    const { value } = split({ outlet_sizes: 'outlets 25 mm and 20 mm', branch_length: [0, 'm'] });
    expect(value('flow_outlet_1', 'L/h') / value('flow_outlet_2', 'L/h')).toBeCloseTo((21.2 / 17) ** 2, 2);
    expect(value('flow_outlet_1', 'L/h') + value('flow_outlet_2', 'L/h')).toBeCloseTo(value('flow', 'L/h'), 6);
  });

  test('sizes that are the same give what outlets alike give', () => {
    const listed = split({ outlet_sizes: 'outlets 25 mm, 25 mm and 25 mm' });
    const bore = split({ outlets: [3, 'count'], branch_pipe: '25 mm' });
    expect(listed.value('flow', 'L/h')).toBeCloseTo(bore.value('flow', 'L/h'), 6);
    expect(listed.value('flow_outlet_3', 'L/h')).toBeCloseTo(bore.value('flow_per_outlet', 'L/h'), 6);
  });

  test('fittings on the riser count without the exit, which stands at the outlets: 2 elbows of 0.668', () => {
    const { loss_coefficient: _, ...rest } = line;
    const outcome = outcomeOf(pumpSplit, { ...rest, ...alike, pipe: '1 in schedule 40', fittings: '2 elbows' });
    if (outcome.kind !== 'answer') throw new Error('no answer');
    expect(outcome.steps.find(({ step }) => step.symbol === 'K_r')!.si).toBeCloseTo(2 * 0.668, 2);
  });
});

test('more outlets let more through in all and less each', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 7 }), fc.double({ min: 8, max: 40, noNaN: true }), (n, bore) => {
      const [few, more] = [n, n + 1].map((count) =>
        split({ outlets: [count, 'count'], branch_diameter: [bore, 'mm'] }),
      );
      expect(more!.value('flow', 'L/h')).toBeGreaterThan(few!.value('flow', 'L/h'));
      expect(more!.value('flow_per_outlet', 'L/h')).toBeLessThan(few!.value('flow_per_outlet', 'L/h'));
    }),
  );
});

test('the first line of every kind', () => {
  const first = (more: Said) => read(pumpSplit, { ...line, ...more }).headline;
  expect(first(alike)).toMatch(/^Each of the 2 outlets gives/);
  expect(first({ ...alike, outlets: [1, 'count'] })).toMatch(/^The one outlet gives/);
  expect(first({ outlet_sizes: '25 mm and 20 mm' })).toMatch(/^The first outlet gives .*, the second/);
  expect(first({ outlet_sizes: '25 mm, 25 mm and 20 mm' })).toMatch(/^Together the outlets give/);
  expect(first({ ...alike, static_head: [5, 'm'] })).toMatch(/^No water reaches the outlets/);
});

test('warnings on both sides', () => {
  const at = (more: Said, text: RegExp) => warns(pumpSplit, { ...line, ...alike, ...more }, text);
  expect([at({}, /riser is the narrow part/), at({ inside_diameter: [60, 'mm'] }, /riser is the narrow part/)]).toEqual(
    [true, false],
  );
  expect([at({}, /moves nothing/), at({ static_head: [5, 'm'] }, /moves nothing/)]).toEqual([false, true]);
  expect([at({}, /drains must carry/), at({ static_head: [5, 'm'] }, /drains must carry/)]).toEqual([true, false]);
});

test('asks for what is missing, refuses outlets it cannot read', () => {
  expect(told(outcomeOf(pumpSplit, { outlet_sizes: 'outlets 25 mm and 20 mm' }))).not.toContain('outlets');
  expect(told(outcomeOf(pumpSplit, {}))).toContain('branch_diameter');
  expect(told(outcomeOf(pumpSplit, { ...line, outlet_sizes: 'outlets 7 mm and 9 mm' })).join()).toMatch(
    /by their pipe size/,
  );
});
