import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { heatLoss } from '../../src/core/calculations/heat-loss.js';
import { heaterOutage } from '../../src/core/calculations/heater-outage.js';
import { METRIC } from '../../src/core/show-value.js';
import { longTank, sump } from './tanks.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const cool = (from: number, to: number, room: number, more: Said = {}) =>
  worked(heaterOutage, {
    ...longTank,
    volume: [400, 'L'],
    start_temperature: [from, 'degC'],
    limit: [to, 'degC'],
    room_temperature: [room, 'degC'],
    ...more,
  });
const lossAt = (water: number) =>
  worked(heatLoss, { ...longTank, water_temperature: [water, 'degC'], room_temperature: [16, 'degC'] }).value(
    'total_loss',
    'W',
  );

describe('worked the other way', () => {
  test('the first hundredth of a degree goes at the rate of the loss: C·ΔT/P', () => {
    const byHand = (1023.3 * 4000 * 0.4 * 0.01) / lossAt(25.495);
    expect(Math.abs(cool(25.5, 25.49, 16).value('time_to_limit', 's') / byHand - 1)).toBeLessThan(1e-4);
  });

  test('the conductance is the slope of the loss', () => {
    const slope = (lossAt(25.55) - lossAt(25.45)) / 0.1;
    expect(cool(25.5, 24, 16).value('loss_conductance', 'W/K')).toBeCloseTo(slope, 2);
  });

  test('near the end it falls as an exponential with the time constant', () => {
    const { value } = cool(20, 19, 18);
    const end = value('equilibrium_temperature', 'degC');
    const exponential = value('time_constant', 's') * Math.log((20 - end) / (19 - end));
    expect(Math.abs(value('time_to_limit', 's') / exponential - 1)).toBeLessThan(0.05);
  });
});

test('in two legs as at once', () => {
  fc.assert(
    fc.property(fc.double({ min: 22.5, max: 25, noNaN: true }), (middle) => {
      const legs =
        cool(25.5, middle, 14).value('time_to_limit', 'h') + cool(middle, 22, 14).value('time_to_limit', 'h');
      expect(legs).toBeCloseTo(cool(25.5, 22, 14).value('time_to_limit', 'h'), 3);
    }),
  );
});

test('a warmer room, more water, rock and a lid buy time', () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 17, noNaN: true }), (room) => {
      const usual = cool(25.5, 23, room).value('time_to_limit', 'h');
      for (const other of [
        cool(25.5, 23, room + 1),
        cool(25.5, 23, room, { volume: [450, 'L'] }),
        cool(25.5, 23, room, { rock_mass: [50, 'kg'] }),
        cool(25.5, 23, room, { cover: [0.2, 'fraction'] }),
      ])
        expect(other.value('time_to_limit', 'h')).toBeGreaterThan(usual);
    }),
  );
});

test('never, in a room warm enough', () => {
  const { outcome } = cool(25.5, 22, 24.5);
  expect(outcome.results.find(({ id }) => id === 'time_to_limit')!.value).toBeNull();
  expect(answerIn(outcome, METRIC).headline).toMatch(/does not fall to 22 °C/);
});

test('a limit of 75 °F stands by itself; a limit above the start is refused', () => {
  const said: Said = { ...longTank, room_temperature: [16, 'degC'], start_temperature: [25.5, 'degC'] };
  const { outcome } = worked(heaterOutage, said);
  expect(outcome.inputs.find(({ id }) => id === 'limit')).toMatchObject({ from: 'default' });
  expect(told(outcomeOf(heaterOutage, { ...said, limit: [26, 'degC'] })).join()).toMatch(/must lie below/);
  expect(told(outcomeOf(heaterOutage, longTank))).toEqual(['start_temperature', 'room_temperature']);
});

test('a volume that the sizes cannot hold, or hardly fill, is pointed out', () => {
  const warned = (litres: number, more: Said = {}) =>
    cool(25.5, 24, 16, { volume: [litres, 'L'], ...more }).outcome.cautions.some(({ text }) =>
      text.startsWith('The volume and the sizes do not agree'),
    );
  expect([warned(400), warned(600), warned(200), warned(800)]).toEqual([false, false, true, true]);
  expect([warned(480, sump), warned(620, sump)]).toEqual([false, true]);
});

test('what pumps give by day is not counted in a power cut unless somebody says so', () => {
  expect(heaterOutage.inputs.gains?.profile).toBeUndefined();
  expect(cool(25.5, 24, 16).outcome.inputs.find(({ id }) => id === 'gains')?.si).toBe(0);
});
