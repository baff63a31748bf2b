import { describe, expect, test } from 'vitest';
import { HEATER, replies } from './asking.js';
import { inputsOf } from './conversation.js';
import { recheckSteps } from './independent-evaluator.js';

const celsius = (t: number) => t + 273.15;
const fahrenheit = (t: number) => celsius(((t - 32) * 5) / 9);
const GALLON = 231 * 0.0254 ** 3;

describe('a calculation with no language in between', () => {
  const heater = (inputs: object) => ({ calculation: 'heater.size', inputs });

  test('takes a text with its unit, a bare number in the catalogue’s unit, and a value beside a unit', async () => {
    const [reply] = await replies(
      heater({ target: 25.5, room_temperature: '64 °F', volume: { value: 90, unit: 'gal_US' }, heater_power: '300' }),
    );
    expect(reply!.kind, reply!.text).toBe('answer');
    const inputs = inputsOf(reply!);
    expect(inputs.target).toBeCloseTo(celsius(25.5), 9);
    expect(inputs.room_temperature).toBeCloseTo(fahrenheit(64), 9);
    expect(inputs.volume).toBeCloseTo(90 * GALLON, 12);
    expect(inputs.heater_power).toBe(300);
    expect(reply!.inputs.filter(({ from }) => from === 'message').map(({ id }) => id)).toEqual([
      'target',
      'room_temperature',
      'heater_power',
      'volume',
    ]);
    recheckSteps(reply!);
  });

  test('takes a number in quotes beside its unit', async () => {
    const [reply] = await replies(
      heater({ target: 25, room_temperature: 18, volume: { value: '90', unit: 'gal_US' } }),
    );
    expect(inputsOf(reply!).volume).toBeCloseTo(90 * GALLON, 12);
  });

  test('adds nothing from the tank or the conversation', async () => {
    const [, , reply] = await replies(
      'my tank is 150x60x55 cm, 12 mm glass',
      HEATER,
      heater({ target: 25, room_temperature: 18 }),
    );
    expect(reply).toMatchObject({ kind: 'question', asks: expect.arrayContaining(['length', 'width']) });
  });

  test('asks for what is missing, and for a unit that it does not know', async () => {
    const [missing, unknown, worded] = await replies(
      heater({ target: 25, volume: 340 }),
      heater({ target: 25, room_temperature: { value: 18, unit: 'blorp' } }),
      heater({ target: 25, room_temperature: '18 blorp' }),
    );
    expect(missing).toMatchObject({ kind: 'question', asks: ['room_temperature'] });
    for (const reply of [unknown!, worded!]) {
      expect(reply).toMatchObject({ kind: 'question', asks: ['room_temperature'] });
      expect(reply.headline).toContain('In which unit');
    }
  });

  test.each([
    [{ calculation: 'heater.sise', inputs: {} }, 'error', /no calculation heater\.sise/],
    [{ calculation: '__proto__', inputs: {} }, 'error', /no calculation __proto__/],
    [heater({ colour: 'blue' }), 'refusal', /heater\.size has no input colour\. It takes: target, room_temperature/],
    [heater({ toString: 1 }), 'refusal', /has no input toString/],
    [heater({ room_temperature: '5 L' }), 'refusal', /“5 L” as a volume, but the room temperature is a temperature/],
    [heater({ room_temperature: { value: 5, unit: 'L' } }), 'refusal', /a temperature; L is a unit of volume/],
    [heater({ room_temperature: 'NaN' }), 'refusal', /can't read a number in “NaN”/],
    [heater({ room_temperature: 'Infinity' }), 'refusal', /can't read a number in “Infinity”/],
    [heater({ room_temperature: null }), 'refusal', /can't read a number in “null”/],
    [heater({ room_temperature: {} }), 'refusal', /can't read a number in “\{\}”/],
    [heater({ target: 25, room_temperature: 18, volume: -90 }), 'refusal', /−90 L.*above 0/],
    [heater({ target: 25, room_temperature: 18, volume: 0 }), 'refusal', /0 L.*above 0/],
    [heater({ target: 25, room_temperature: 18, volume: 1e308 }), 'refusal', /100,000 L/],
    [heater({ target: 25, room_temperature: -400, volume: 90 }), 'refusal', /−400 °C.*−5 to 45 °C/],
    [heater({ target: 25, room_temperature: 18, volume: 90, heaters: 1.5 }), 'refusal', /1\.5/],
    [heater({ material: 'constructor' }), 'refusal', /not one of the choices/],
  ])('%j gets a sentence', async (line, kind, says) => {
    const [reply] = await replies(line);
    expect(reply!.kind, reply!.text).toBe(kind);
    expect(reply!.headline).toMatch(says);
    expect(reply!.headline).toMatch(/[.?!]$/);
    expect(reply!.text).not.toMatch(/undefined|NaN\b(?!”)|\[object/);
  });

  test('a number too large for a double is no number', async () => {
    const [high, low] = await replies(
      '{"calculation":"heater.size","inputs":{"target":25,"room_temperature":18,"volume":1e999}}',
      '{"calculation":"heater.size","inputs":{"target":25,"room_temperature":-1e999,"volume":90}}',
    );
    for (const reply of [high!, low!]) {
      expect(reply.kind).toBe('refusal');
      expect(reply.text).toMatch(/not a number/);
    }
  });
});
