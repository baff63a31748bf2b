import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { drainEmergency } from '../../src/core/calculations/drain-emergency.js';
import { drainOpen } from '../../src/core/calculations/drain-open.js';
import { drainSiphon } from '../../src/core/calculations/drain-siphon.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const line: Said = { drop: [90, 'cm'], pipe_length: [1.2, 'm'], loss_coefficient: [3, '1'] };
const emergency = (bore: number, litres: number, head: number) =>
  worked(drainEmergency, {
    ...line,
    inside_diameter: [bore, 'mm'],
    flow: [litres, 'L/h'],
    head_available: [head, 'mm'],
  });

describe('worked the other way', () => {
  const litres = fc.double({ min: 500, max: 8000, noNaN: true });

  test('with the water it asks for over its rim, the inlet takes just the flow', () => {
    fc.assert(
      fc.property(fc.double({ min: 20, max: 80, noNaN: true }), litres, (bore, flow) => {
        const needed = emergency(bore, flow, 60).value('head_needed_vented', 'mm');
        fc.pre(needed < 500);
        const inlet = worked(drainOpen, { inside_diameter: [bore, 'mm'], head: [needed, 'mm'] });
        expect(inlet.value('inlet_capacity', 'L/h') / flow).toBeCloseTo(1, 9);
      }),
    );
  });

  test('running full it is a siphon', () => {
    const siphon = worked(drainSiphon, { ...line, inside_diameter: [34, 'mm'] });
    expect(emergency(34, 3000, 60).value('full_bore_flow', 'L/h')).toBeCloseTo(siphon.value('flow', 'L/h'), 9);
  });

  test('by hand: 2 L/s over the rim of a 50 mm pipe, (0.002/(1.84·π·0.05))^(2/3) = 36.3 mm', () => {
    expect(emergency(50, 7200, 60).value('head_needed_weir', 'mm')).toBeCloseTo(36.3, 1);
  });
});

test('it is taken to pass outright only when the head is there with air in the pipe', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 500, max: 6000, noNaN: true }),
      fc.double({ min: 5, max: 200, noNaN: true }),
      (flow, head) => {
        const { outcome, value } = emergency(34, flow, head);
        const passes = outcome.results.find(({ id }) => id === 'passes_vented')!.value;
        expect(passes).toBe(head >= value('head_needed_vented', 'mm') && value('full_bore_flow', 'L/h') >= flow);
        const warned = outcome.cautions.some(({ text }) => text.startsWith('Do not trust it'));
        expect(passes && warned).toBe(false);
      },
    ),
  );
});

describe('the first line', () => {
  test.each([
    ['passes', 60, 3000, 100, /^It passes/],
    ['only if it primes', 34, 3484, 60, /^Only if it primes/],
    ['the rim comes first', 34, 3484, 20, /^Hardly/],
    ['too small whatever happens', 20, 6000, 60, /^It does not pass/],
  ])('%s', (_, bore, flow, head, expected) => {
    expect(answerIn(emergency(bore, flow, head).outcome, METRIC).headline).toMatch(expected);
  });

  test('water enough over the rim is no use to a line that cannot carry it away', () => {
    const long: Said = { ...line, drop: [10, 'cm'], pipe_length: [6, 'm'], loss_coefficient: [12, '1'] };
    const said: Said = { ...long, inside_diameter: [34, 'mm'], flow: [2000, 'L/h'], head_available: [200, 'mm'] };
    const { outcome, value } = worked(drainEmergency, said);
    expect(value('head_needed_vented', 'mm')).toBeLessThan(200);
    expect(answerIn(outcome, METRIC).headline).toMatch(/^It does not pass/);
    expect(outcome.results.find(({ id }) => id === 'passes_vented')!.value).toBe(false);
  });

  test('a room within the 15 % that the method is good to is called close', () => {
    const needed = emergency(60, 3000, 100).value('head_needed_vented', 'mm');
    const close = (head: number) =>
      emergency(60, 3000, head).outcome.cautions.some(({ text }) => text.startsWith('It is close'));
    expect([close(needed * 1.1), close(needed * 1.2), close(needed * 0.9)]).toEqual([true, false, false]);
  });

  test('what would flood is stopped', () => {
    const stops = (bore: number, flow: number, head: number) =>
      emergency(bore, flow, head).outcome.cautions.filter(({ level }) => level === 'stop').length;
    expect([stops(60, 3000, 100), stops(34, 3484, 60), stops(34, 3484, 20), stops(20, 6000, 60)]).toEqual([0, 0, 1, 1]);
  });
});

test('asks for what is missing, refuses no head', () => {
  expect(told(outcomeOf(drainEmergency, line))).toEqual(['inside_diameter', 'flow', 'head_available']);
  const said: Said = { ...line, inside_diameter: [34, 'mm'], flow: [3000, 'L/h'], head_available: [0, 'cm'] };
  expect(outcomeOf(drainEmergency, said).kind).toBe('refusal');
});
