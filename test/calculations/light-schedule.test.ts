import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { lightSchedule } from '../../src/core/calculations/light-schedule.js';
import { clockText } from '../../src/core/quantity/clock-text.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const times = (said: Said) => {
  const { outcome } = worked(lightSchedule, said);
  const at = (id: string) => outcome.results.find((entry) => entry.id === id)?.value;
  return ['blue_on', 'white_on', 'white_off', 'blue_off'].map((id) => clockText(at(id) as number));
};
const lit = (on: string, hours: number, more: Said = {}): Said => ({ blue_on: on, blue_hours: [hours, 'h'], ...more });

describe('worked by hand', () => {
  test('from 10:00, 10 h, white for 8: an hour of blue at each end', () => {
    expect(times(lit('10:00', 10, { white_share: [0.8, 'fraction'] }))).toEqual(['10:00', '11:00', '19:00', '20:00']);
  });
  test('9 h of blue and 8 h of white on a timer of 15 min steps: half an hour at each end', () => {
    const said = lit('9:00', 9, { white_hours: [8, 'h'], timer_step: [15, 'min'] });
    expect(times(said)).toEqual(['09:00', '09:30', '17:30', '18:00']);
  });
  test('half a step is rounded up: a lead of 7.5 min becomes 15', () => {
    const said = lit('9:00', 8, { white_hours: [7.75, 'h'], timer_step: [15, 'min'] });
    expect(times(said)).toEqual(['09:00', '09:15', '16:45', '17:00']);
  });
  test('seen from 20:00 to 1:00 with 90 min of blue: 18:30 to 2:30', () => {
    const said: Said = { view_from: '20:00', view_to: '1:00', white_lead: [1.5, 'h'] };
    expect(times(said)).toEqual(['18:30', '20:00', '01:00', '02:30']);
  });
});

test('white lies inside blue with an equal lead at both ends, to the step, and the day adds up', () => {
  fc.assert(
    fc.property(
      fc.nat(1439),
      fc.integer({ min: 4 * 60, max: 16 * 60 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.constantFrom(1, 5, 15, 30, 60),
      (on, minutes, share, step) => {
        const said = lit(clockText(on * 60), minutes / 60, {
          white_share: [share, 'fraction'],
          timer_step: [step, 'min'],
        });
        const { value, outcome } = worked(lightSchedule, said);
        const lead = value('white_lead', 'min');
        expect(Math.abs(lead / step - Math.round(lead / step))).toBeLessThan(1e-9);
        const wanted = Math.min((minutes * (1 - share)) / 2, Math.floor(minutes / 2 / step) * step);
        expect(Math.abs(lead - wanted)).toBeLessThanOrEqual(step / 2 + 1e-6);
        expect(value('white_hours', 'min')).toBeGreaterThan(-1e-6);
        expect(value('white_hours', 'min') + 2 * lead).toBeCloseTo(minutes, 6);
        expect(value('dark_hours', 'min')).toBeCloseTo(1440 - minutes, 6);
        const crosses = outcome.results.find(({ id }) => id === 'crosses_midnight')?.value;
        expect(crosses).toBe(on + minutes > 1440);
      },
    ),
  );
});

describe('cautions', () => {
  const says = (said: Said, words: RegExp) =>
    worked(lightSchedule, said).outcome.cautions.some(({ text }) => words.test(text));
  test('less than ten hours of dark', () => {
    expect(says(lit('8:00', 15), /10 hours of dark/)).toBe(true);
    expect(says(lit('8:00', 14), /10 hours of dark/)).toBe(false);
  });
  test('hardly any blue alone', () => {
    expect(says(lit('8:00', 10, { white_hours: [9.5, 'h'] }), /half an hour/)).toBe(true);
    expect(says(lit('8:00', 10, { white_hours: [9, 'h'] }), /half an hour/)).toBe(false);
  });
  test('a time between the steps of the timer', () => {
    expect(says(lit('8:10', 10, { timer_step: [15, 'min'] }), /step of this timer/)).toBe(true);
    expect(says(lit('8:15', 10, { timer_step: [15, 'min'] }), /step of this timer/)).toBe(false);
  });
});

test('what was asked to be seen wins over the lit day the tank remembers', () => {
  const said: Said = { ...lit('10:00', 10), view_from: '17:00', view_to: '23:00' };
  expect(times(said)).toEqual(['16:00', '17:00', '23:00', '00:00']);
});

test('asks for what is missing', () => {
  expect(told(outcomeOf(lightSchedule, { blue_on: '10:00' }))).toEqual(['blue_hours']);
  expect(told(outcomeOf(lightSchedule, { view_from: '17:00' }))).toEqual(['view_to']);
});

test.each([
  [lit('6:00', 18), /8 hours of dark/],
  [lit('6:00', 3), /hardly a day/],
  [lit('9:00', 8, { white_hours: [10, 'h'] }), /longer than blue/],
  [{ view_from: '8:00', view_to: '23:00' }, /8 hours of dark/],
  [{ view_from: '8:00', view_to: '8:00' }, /hardly a day/],
  [lit('25:00', 8), /time of day/],
] as [Said, RegExp][])('%j is refused', (said, because) => {
  const outcome = outcomeOf(lightSchedule, said);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});

test('no white at all on a timer too coarse for half the day: white comes neither early nor for less than nothing', () => {
  const said = lit('10:00', 9, { white_share: [0, 'fraction'], timer_step: [60, 'min'] });
  const { outcome, value } = worked(lightSchedule, said);
  expect([value('white_lead', 'h'), value('white_hours', 'h')]).toEqual([4, 1]);
  const even = worked(lightSchedule, lit('10:00', 8, { white_share: [0, 'fraction'], timer_step: [60, 'min'] }));
  expect(answerIn(even.outcome, METRIC).headline).toMatch(/^Blue 10:00 to 18:00 and no white/);
  expect(answerIn(outcome, METRIC).headline).toMatch(/white 14:00 to 15:00/);
});
