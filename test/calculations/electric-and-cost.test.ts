import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import type { Calculation } from '../../src/core/calculation.js';
import { costBudget } from '../../src/core/calculations/cost-budget.js';
import { costRunning } from '../../src/core/calculations/cost-running.js';
import { electricBackup } from '../../src/core/calculations/electric-backup.js';
import { electricCircuit } from '../../src/core/calculations/electric-circuit.js';
import { electricCord } from '../../src/core/calculations/electric-cord.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const headline = (calculation: Calculation, said: Said) => answerIn(worked(calculation, said).outcome, METRIC).headline;
const flagOf = (calculation: Calculation, said: Said) =>
  worked(calculation, said).outcome.results.find(({ id }) => id === 'ok')!.value;
const warns = (calculation: Calculation, said: Said, words: RegExp) =>
  worked(calculation, said).outcome.cautions.some(({ text }) => words.test(text));

describe('a circuit', () => {
  const circuit = (watts: number, volts = 120, amps = 15, more: Said = {}): Said => ({
    load: [watts, 'W'],
    voltage: [volts, 'V'],
    breaker: [amps, 'A'],
    ...more,
  });
  test.each([
    // 80 % of 15 A and 20 A at 120 V; the whole rating of a 13 A fuse, 16 A and 10 A elsewhere
    [120, 15, 1440],
    [120, 20, 1920],
    [230, 13, 2990],
    [230, 16, 3680],
    [230, 10, 2300],
  ])('%d V and %d A: %d W for hours', (volts, amps, watts) => {
    const { value } = worked(electricCircuit, circuit(100, volts, amps));
    expect(value('limit_watts', 'W')).toBeCloseTo(watts, 9);
    expect(flagOf(electricCircuit, circuit(watts, volts, amps))).toBe(true);
    expect(flagOf(electricCircuit, circuit(watts + 1, volts, amps))).toBe(false);
  });
  test('a list of devices is their sum, whatever its order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 2, maxLength: 8 }), (watts) => {
        const list = (order: number[]) =>
          worked(electricCircuit, {
            loads: order.map((each) => `${each} W`).join(', '),
            voltage: [230, 'V'],
            breaker: [16, 'A'],
          }).value('load_current', 'A');
        const sum = watts.reduce((a, b) => a + b, 0);
        expect(list(watts)).toBeCloseTo(sum / 230, 9);
        expect(list([...watts].reverse())).toBeCloseTo(sum / 230, 9);
      }),
    );
  });
  test('a count before or behind stands for as many', () => {
    const amps = (loads: string) =>
      worked(electricCircuit, { loads, voltage: [120, 'V'], breaker: [15, 'A'] }).value('load_current', 'A');
    const all = (2 * 300 + 150 + 60) / 120;
    for (const text of [
      '2 x 300 W heaters, 150 W light and 60 W pump',
      'two 300W heaters, 150W light, 60 W pump',
      '300 W x 2, 150 W, 60 W',
      '[300, 300, 150, 60] W',
    ])
      expect(amps(text), text).toBeCloseTo(all, 9);
  });
  test('a poor power factor draws more', () => {
    expect(
      worked(electricCircuit, circuit(600, 120, 15, { power_factor: [0.5, '1'] })).value('load_current', 'A'),
    ).toBeCloseTo(10, 9);
  });
  test('the first line and the stop', () => {
    expect(headline(electricCircuit, circuit(1300))).toMatch(/^Within this check: 10\.8 A of the 12 A/);
    expect(headline(electricCircuit, circuit(1600))).toMatch(/^Over: 13\.3 A on a 15 A circuit/);
    expect(warns(electricCircuit, circuit(1600), /Split the load over two/)).toBe(true);
    expect(warns(electricCircuit, circuit(1600), /more than the breaker itself/)).toBe(false);
    expect(warns(electricCircuit, circuit(1900), /more than the breaker itself/)).toBe(true);
    expect(warns(electricCircuit, circuit(1300), /Split the load/)).toBe(false);
    expect(warns(electricCircuit, circuit(1300), /residual-current/)).toBe(true);
  });
  test('at 240 V the rule of North America holds unless somebody says it is elsewhere', () => {
    const limit = (more: Said = {}, volts = 240) =>
      worked(electricCircuit, circuit(3000, volts, 20, more)).value('continuous_limit', 'A');
    expect(limit({ place: 'north_america' })).toBe(16);
    expect(limit({ place: 'elsewhere' })).toBe(20);
    expect(limit()).toBe(16);
    expect(limit({}, 208)).toBe(16);
    expect(limit({}, 230)).toBe(20);
  });
  test('asks for the voltage: it is never guessed', () => {
    expect(told(outcomeOf(electricCircuit, { load: [1300, 'W'], breaker: [15, 'A'] }))).toEqual(['voltage']);
    expect(told(outcomeOf(electricCircuit, circuit(1300, 12))).join()).toMatch(/100 to 240 V/);
  });
});

describe('a chain of lights', () => {
  const chain = (count: number, more: Said = {}): Said => ({
    watts_each: [190, 'W'],
    count: [count, 'count'],
    voltage: [120, 'V'],
    ...more,
  });
  test('the most that fit do fit, one more does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 60, max: 700 }), fc.integer({ min: 5, max: 20 }), (watts, amps) => {
        const said = (count: number): Said => chain(count, { watts_each: [watts, 'W'], cord_rating: [amps, 'A'] });
        const most = worked(electricCord, said(1)).value('most_fixtures', 'count');
        if (most >= 1) expect(flagOf(electricCord, said(most))).toBe(true);
        expect(flagOf(electricCord, said(most + 1))).toBe(false);
      }),
    );
  });
  test.each([
    ['18 AWG', 10],
    ['16 AWG', 13],
    ['14 gauge', 18],
  ])('%s carries %d A', (cord, amps) => {
    expect(worked(electricCord, chain(2, { cord })).value('limit', 'A')).toBe(amps);
  });
  test('the smaller of cord and maker’s limit counts; without a maker’s limit it says to ask', () => {
    expect(worked(electricCord, chain(4, { cord: '18 AWG', maker_limit: [8, 'A'] })).value('limit', 'A')).toBe(8);
    expect(warns(electricCord, chain(4, { cord: '18 AWG' }), /Ask the maker/)).toBe(true);
    expect(warns(electricCord, chain(4, { cord: '18 AWG', maker_limit: [8, 'A'] }), /Ask the maker/)).toBe(false);
    expect(headline(electricCord, chain(4, { cord: '18 AWG', maker_limit: [8, 'A'] }))).toMatch(
      /^Within this check: 4 lights draw 6\.67 A of the 8 A/,
    );
    expect(headline(electricCord, chain(7, { cord: '18 AWG' }))).toMatch(/^Over: 7 lights .* 6 are the most/);
  });
  test('an unknown wire size, a lamp no cord carries', () => {
    expect(told(outcomeOf(electricCord, chain(2, { cord: '20 AWG' }))).join()).toMatch(/18 AWG|12, 14/);
    expect(
      told(
        outcomeOf(electricCord, chain(1, { watts_each: [5000, 'W'], cord_rating: [10, 'A'], voltage: [100, 'V'] })),
      ).join(),
    ).toMatch(/check the watts/);
  });
});

describe('hours on a battery', () => {
  const pack = (more: Said): Said => ({ battery_energy: [1000, 'Wh'], load: [25, 'W'], ...more });
  test('a kind of battery sets the share that may be used; unknown, the answer is a range between both', () => {
    const hours = (more: Said) => worked(electricBackup, pack(more)).value('runtime', 'h');
    expect(hours({ battery_kind: 'lithium' })).toBeCloseTo(27.2, 9);
    expect(hours({ battery_kind: 'lead' })).toBeCloseTo(17, 9);
    const either = worked(electricBackup, pack({}));
    expect(either.low('runtime', 'h')).toBeCloseTo(17, 9);
    expect(either.high('runtime', 'h')).toBeCloseTo(27.2, 9);
    expect(headline(electricBackup, pack({}))).toMatch(/^It lasts .* likely/);
  });
  test('twice the load, half the hours; amp hours and volts are the same energy', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 500 }), (watts) => {
        const at = (load: number) =>
          worked(electricBackup, pack({ load: [load, 'W'], battery_kind: 'lead' })).value('runtime', 'h');
        expect(at(watts)).toBeCloseTo(2 * at(2 * watts), 9);
      }),
    );
    const charged: Said = {
      battery_charge: [50, 'Ah'],
      battery_voltage: [20, 'V'],
      load: [25, 'W'],
      battery_kind: 'lead',
    };
    expect(worked(electricBackup, charged).value('runtime', 'h')).toBeCloseTo(17, 9);
  });
  test('heaters last, air first; the generator is warned of always', () => {
    expect(warns(electricBackup, pack({ load: [300, 'W'] }), /Heaters empty/)).toBe(true);
    expect(warns(electricBackup, pack({}), /Heaters empty/)).toBe(false);
    expect(warns(electricBackup, pack({}), /Oxygen goes first/)).toBe(true);
    expect(warns(electricBackup, pack({}), /outdoors only/)).toBe(true);
  });
  test('asks for the energy, or for the volts beside amp hours', () => {
    expect(told(outcomeOf(electricBackup, { load: [25, 'W'] }))).toEqual(['battery_energy']);
    expect(told(outcomeOf(electricBackup, { load: [25, 'W'], battery_charge: [100, 'Ah'] }))).toEqual([
      'battery_voltage',
    ]);
  });
});

describe('running cost', () => {
  const cost = (loads: string, price: number, more: Said = {}) =>
    worked(costRunning, { loads, price: [price, 'currency/kWh'], ...more });
  test('a kilowatt for an hour a day at 1 is 30.4375 a month', () => {
    expect(cost('1000 W 1 h', 1).value('cost_per_month', 'currency/month')).toBeCloseTo(30.4375, 9);
  });
  test('named devices in any words read as the list of pairs does', () => {
    const named = cost('heater 173 W 24 h, return pump 40W for 24 hours, lights 160 watts 10h, 30 W 24 h', 0.32);
    const paired = cost('[[173,24],[40,24],[160,10],[30,24]]', 0.32);
    expect(named.value('energy_per_day', 'kWh/day')).toBeCloseTo(7.432, 9);
    expect(paired.value('energy_per_day', 'kWh/day')).toBeCloseTo(7.432, 9);
  });
  test('the heaters’ mean adds its day', () => {
    const without = cost('40 W 24 h', 0.3).value('energy_per_day', 'kWh/day');
    expect(cost('40 W 24 h', 0.3, { heat_loss: [100, 'W'] }).value('energy_per_day', 'kWh/day') - without).toBeCloseTo(
      2.4,
      9,
    );
  });
  test('a price that looks like cents is asked about, a usual one is not', () => {
    expect(warns(costRunning, { loads: '40 W 24 h', price: [28, 'currency/kWh'] }, /looks like cents/)).toBe(true);
    expect(warns(costRunning, { loads: '40 W 24 h', price: [0.28, 'currency/kWh'] }, /looks like cents/)).toBe(false);
  });
  test('more than a day’s hours are refused; without a price there is the energy', () => {
    expect(told(outcomeOf(costRunning, { loads: '40 W 25 h', price: [0.3, 'currency/kWh'] })).join()).toMatch(
      /0 to 24 h/,
    );
    expect(headline(costRunning, { loads: '40 W 24 h' })).toBe('It uses 0.96 kWh a day, 40 W on average.');
    expect(warns(costRunning, { loads: '40 W 24 h' }, /Tell me the price/)).toBe(true);
  });
});

describe('the budget', () => {
  const budget = (items: string, more: Said = {}) => worked(costBudget, { items, ...more });
  test('text and list read alike; order does not matter', () => {
    const total = (items: string) =>
      budget(items, { tax: [8, '%'], contingency: [10, '%'] }).value('total', 'currency');
    expect(total('1 at 900, 2 at 75, 3 at 45, 20 at 4.50 and 1 at 380')).toBeCloseTo(1952.9, 9);
    expect(total('[[1,380],[20,4.5],[3,45],[2,75],[1,900]]')).toBeCloseTo(1952.9, 9);
    expect(total('20 x 4.5; 1 x 380; 3 x 45; 2 x 75; 1 x 900')).toBeCloseTo(1952.9, 9);
    expect(total('tank 900, 2 heaters at 75, 3 tests @ 45, 20 kg rock at $4.50 and stand 380')).toBeCloseTo(1952.9, 9);
  });
  test('what is kept back is 10 to 15 % unless somebody says', () => {
    const { value, low, high } = budget('1 at 1000');
    expect(value('total', 'currency')).toBeCloseTo(1100, 9);
    expect(low('total', 'currency')).toBeCloseTo(1100, 9);
    expect(high('total', 'currency')).toBeCloseTo(1150, 9);
    expect(budget('1 at 1000', { contingency: [20, '%'] }).value('total', 'currency')).toBeCloseTo(1200, 9);
  });
  test('nothing readable is refused with the way to write it', () => {
    expect(told(outcomeOf(costBudget, { items: 'a lot' })).join()).toMatch(/2 heaters at 75, tank 900/);
  });
});
