import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pumpFlowNeeded } from '../../src/core/calculations/pump-flow-needed.js';
import { pumpTurnover } from '../../src/core/calculations/pump-turnover.js';
import { refugiumTurnover } from '../../src/core/calculations/refugium-turnover.js';
import { read, warns } from './said-first.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

describe('pump.turnover by hand', () => {
  test.each([
    [3000, 500, 6, 10],
    [900, 300, 3, 20],
    [4000, 400, 10, 6],
    [1200, 200, 6, 10],
    [757.0823568, 378.5411784, 2, 30],
  ])('%d L/h through %d L: %d times an hour, %d min each', (flow, volume, times, minutes) => {
    const { value } = worked(pumpTurnover, { flow: [flow, 'L/h'], volume: [volume, 'L'] });
    expect(value('turnover', '1/h')).toBeCloseTo(times, 9);
    expect(value('turnover_time', 'min')).toBeCloseTo(minutes, 9);
  });

  test('the flows of common practice, for 473 L: 1419 and 4730 L/h', () => {
    const { value } = worked(pumpTurnover, { flow: [3484, 'L/h'], volume: [473, 'L'] });
    expect(value('flow_low', 'L/h')).toBeCloseTo(1419, 6);
    expect(value('flow_high', 'L/h')).toBeCloseTo(4730, 6);
  });

  test.each([
    [800, /less than the usual 3 to 10/, /little heat and oxygen/],
    [5000, /more than the usual 3 to 10/, /noise and bubbles/],
  ])('%d L/h through 400 L', (flow, sentence, warning) => {
    const said: Said = { flow: [flow, 'L/h'], volume: [400, 'L'] };
    expect(read(pumpTurnover, said).headline).toMatch(sentence);
    expect(warns(pumpTurnover, said, warning)).toBe(true);
    const middle: Said = { flow: [2000, 'L/h'], volume: [400, 'L'] };
    expect(read(pumpTurnover, middle).headline).toMatch(/within the usual/);
    expect(warns(pumpTurnover, middle, warning)).toBe(false);
  });

  test('asks for both, refuses no water', () => {
    expect(told(outcomeOf(pumpTurnover, {}))).toEqual(['flow', 'volume']);
    expect(outcomeOf(pumpTurnover, { flow: [2000, 'L/h'], volume: [0, 'L'] }).kind).toBe('refusal');
  });
});

describe('pump.flow_needed by hand', () => {
  test.each([
    [400, 5, 2000],
    [125 * 3.785411784, 6, 750 * 3.785411784],
    [300, 10, 3000],
    [100, 3, 300],
    [90 * 3.785411784, 8, 720 * 3.785411784],
  ])('%d L at %d times an hour', (volume, times, flow) => {
    const { value } = worked(pumpFlowNeeded, { volume: [volume, 'L'], turnover: [times, '1/h'] });
    expect(value('flow', 'L/h')).toBeCloseTo(flow, 6);
  });

  test('nobody says how often: 5 times, from 3 to 10', () => {
    const { value, low, high } = worked(pumpFlowNeeded, { volume: [400, 'L'] });
    expect([low('flow', 'L/h'), value('flow', 'L/h'), high('flow', 'L/h')].map(Math.round)).toEqual([1200, 2000, 4000]);
    expect(read(pumpFlowNeeded, { volume: [400, 'L'] }).headline).toMatch(/^Aim for about/);
    expect(read(pumpFlowNeeded, { volume: [400, 'L'], turnover: [6, '1/h'] }).headline).toMatch(/^It takes/);
  });

  test('warns of noise above 10 times an hour only', () => {
    const noisy = (times: number) =>
      warns(pumpFlowNeeded, { volume: [400, 'L'], turnover: [times, '1/h'] }, /mostly noise/);
    expect([noisy(10), noisy(11)]).toEqual([false, true]);
  });

  test('undoes pump.turnover', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 4000, noNaN: true }),
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        (volume, times) => {
          const flow = worked(pumpFlowNeeded, { volume: [volume, 'L'], turnover: [times, '1/h'] }).value('flow', 'L/h');
          fc.pre(flow <= 100_000);
          const back = worked(pumpTurnover, { volume: [volume, 'L'], flow: [flow, 'L/h'] }).value('turnover', '1/h');
          expect(back / times).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('asks for the volume, refuses a turnover nobody runs', () => {
    expect(told(outcomeOf(pumpFlowNeeded, {}))).toEqual(['volume']);
    expect(outcomeOf(pumpFlowNeeded, { volume: [400, 'L'], turnover: [400, '1/h'] }).kind).toBe('refusal');
  });
});

describe('refugium.turnover by hand', () => {
  const fuge = (flow: number, more: Said = {}): Said => ({ flow: [flow, 'L/h'], volume: [50, 'L'], ...more });
  test.each([
    [250, 5],
    [100, 2],
    [500, 10],
    [1000, 20],
    [150, 3],
  ])('%d L/h through 50 L: %d times an hour', (flow, times) => {
    expect(worked(refugiumTurnover, fuge(flow)).value('turnover', '1/h')).toBeCloseTo(times, 9);
  });

  test('a quarter of 2000 L/h is 500', () => {
    const { value } = worked(refugiumTurnover, fuge(500, { return_flow: [2000, 'L/h'] }));
    expect(value('share_of_return', '%')).toBeCloseTo(25, 9);
  });

  test.each([
    [100, /slower than the usual/],
    [300, /within the usual/],
    [900, /faster than the usual/],
  ])('%d L/h', (flow, sentence) => {
    expect(read(refugiumTurnover, fuge(flow)).headline).toMatch(sentence);
    expect(warns(refugiumTurnover, fuge(flow), /short of oxygen/)).toBe(flow === 100);
  });

  test('more than the return sends needs a pump of its own; twenty times as much is a swap', () => {
    const share = (flow: number) =>
      warns(refugiumTurnover, fuge(flow, { return_flow: [800, 'L/h'] }), /pump of its own/);
    expect([share(700), share(900)]).toEqual([false, true]);
    expect(warns(refugiumTurnover, fuge(400, { return_flow: [800, 'L/h'] }), /That is 50% of the return/)).toBe(true);
    expect(told(outcomeOf(refugiumTurnover, fuge(3000, { return_flow: [100, 'L/h'] }))).join()).toMatch(/swapped/);
    expect(told(outcomeOf(refugiumTurnover, {}))).toEqual(['flow', 'volume']);
  });
});
