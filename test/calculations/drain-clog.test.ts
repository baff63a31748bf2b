import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainClog } from '../../src/core/calculations/drain-clog.js';
import { drainSiphon } from '../../src/core/calculations/drain-siphon.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const line: Said = {
  inside_diameter: [34, 'mm'],
  drop: [1.02, 'm'],
  pipe_length: [1.2, 'm'],
  loss_coefficient: [3.6, '1'],
};
const clog = (blocked: number, more: Said = {}) =>
  worked(drainClog, { ...line, blocked: [blocked, 'fraction'], ...more });

describe('worked by hand: K = ((1 + 0.707·√x − s)/s)², s = 1 − x', () => {
  test.each([
    [0.25, 0.6475], // ((1 + 0.3535 − 0.75)/0.75)²
    [0.5, 3.9994], // ((1 + 0.49992 − 0.5)/0.5)²
    [0.9, 246.7], // ((1 + 0.67072 − 0.1)/0.1)²
  ])('%d blocked', (blocked, K) => {
    expect(Math.abs(clog(blocked).value('blockage_loss', '1') / K - 1)).toBeLessThan(0.001);
  });
});

test('nothing blocked is the siphon itself; a blockage acts like a valve of its loss', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.94, noNaN: true }), (blocked) => {
      const { value } = clog(blocked);
      const valve = worked(drainSiphon, { ...line, loss_coefficient: [3.6, '1'] });
      expect(value('flow_clean', 'L/h')).toBeCloseTo(valve.value('flow', 'L/h'), 9);
      const trimmed = clog(0, { valve_loss: [value('blockage_loss', '1'), '1'] });
      expect(value('flow_clogged', 'L/h')).toBeCloseTo(trimmed.value('flow_clean', 'L/h'), 6);
    }),
  );
});

test('more blocked carries less, and a trimmed siphon shows less of it', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.05, max: 0.9, noNaN: true }), (blocked) => {
      const left = clog(blocked).value('flow_left', 'fraction');
      expect(clog(blocked + 0.05).value('flow_left', 'fraction')).toBeLessThan(left);
      expect(clog(blocked, { valve_loss: [17, '1'] }).value('flow_left', 'fraction')).toBeGreaterThan(left);
    }),
  );
});

test('a line given by its fittings is worked with their sum', () => {
  const { loss_coefficient: _, ...rest } = line;
  const said: Said = { ...rest, blocked: [0.5, 'fraction'], fittings: '2 elbows, gate valve' };
  const { outcome, value } = worked(drainClog, said);
  if (outcome.kind !== 'answer') throw new Error('no answer');
  const K = outcome.steps.find(({ step }) => step.symbol === 'K')!.si;
  const direct = worked(drainClog, { ...rest, blocked: [0.5, 'fraction'], loss_coefficient: [K, '1'] });
  expect(value('flow_clogged', 'L/h')).toBeCloseTo(direct.value('flow_clogged', 'L/h'), 9);
});

test('says whether the return flow still passes, and stops when it does not', () => {
  const passes = clog(0.5, { required_flow: [3000, 'L/h'] }).outcome;
  const fails = clog(0.95, { required_flow: [3000, 'L/h'] }).outcome;
  const flag = (outcome: typeof passes) => outcome.results.find(({ id }) => id === 'carries_return_flow')!.value;
  expect([flag(passes), flag(fails)]).toEqual([true, false]);
  expect(fails.cautions.some(({ level }) => level === 'stop')).toBe(true);
});

test('a drain that is shut is sent to the emergency drain', () => {
  expect(told(outcomeOf(drainClog, { ...line, blocked: [1, 'fraction'] })).join()).toMatch(/emergency/);
  expect(told(outcomeOf(drainClog, line))).toEqual(['blocked']);
});
