import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { inputsOf, startTalk, type Talk } from '../conversation.js';

const INCH = 0.0254;
const FOOT = 12 * INCH;
const GALLON = 231 * INCH ** 3;
const F = (t: number) => ((t - 32) * 5) / 9 + 273.15;
const C = (t: number) => t + 273.15;
const KWH = 3.6e6;

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

describe('what has two meanings is read as the question needs it', () => {
  const cases: readonly [say: string, inputs: Readonly<Record<string, number>>][] = [
    ['how much water in a 48x24x24', { length: 48 * INCH, width: 24 * INCH, height: 24 * INCH }],
    ['how much water in a 120x50x50', { length: 1.2, width: 0.5, height: 0.5 }],
    ['how much water in a 4x2x2', { length: 4 * FOOT, width: 2 * FOOT, height: 2 * FOOT }],
    ['how much water in a 4ft x 18" x 24"', { length: 4 * FOOT, width: 18 * INCH, height: 24 * INCH }],
    ["how much water in a 6' x 24 x 24", { length: 6 * FOOT, width: 24 * INCH, height: 24 * INCH }],
    ['how much water in a 48L x 24W x 20H inches', { length: 48 * INCH, width: 24 * INCH, height: 20 * INCH }],
    ['how much water in a 120cmx60cmx55cm', { length: 1.2, width: 0.6, height: 0.55 }],
    ['how much water in a 1m20 x 60 cm x 55 cm tank', { length: 1.2, width: 0.6, height: 0.55 }],
    ['how much salt for 100g at 35 ppt', { volume: 100 * GALLON }],
    ['how much salt for a hundred and fifty gallons at 35ppt', { volume: 150 * GALLON }],
    ['heater for 125g at 78 in a 66 room', { volume: 125 * GALLON, target: F(78), room_temperature: F(66) }],
    ['is 2x300w enough for 340 l at 26 in a 20 room', { heaters: 2, heater_power: 300, target: C(26) }],
    ['heater for 90 gal at 78 degrees, room 66 degrees', { target: F(78), room_temperature: F(66) }],
    ['heater for 400 l, water 26c, room 20c', { target: C(26), room_temperature: C(20) }],
    ['what does a 120 w pump cost running 24 h a day at 22c', { price: 0.22 / KWH }],
    ["turnover 3000 l/h, 1'200 l", { flow: 3 / 3600, volume: 1.2 }],
    ['turnover 1,200 gph 90 gal', { flow: (1200 * GALLON) / 3600 }],
    ['turnover 1k lph 400 l', { flow: 1 / 3600 }],
  ];
  test.each(cases)('%s', async (say, expected) => {
    const reply = await talk.says(say);
    const inputs = inputsOf(reply);
    for (const [id, si] of Object.entries(expected))
      expect(Math.abs(Number(inputs[id]) - si), `${id} in ${reply.text}`).toBeLessThan(1e-6 * Math.abs(si));
  });
});

test('a range stays a range, and the answer has both ends', async () => {
  const reply = await talk.says('heater for 90 gal, room 65-68F, tank 78F');
  expect(reply.text).toMatch(/room temperature 65 to 68 °F|65 °F to 68 °F/);
});

test('a unit that was guessed is shown', async () => {
  expect((await talk.says('how much water in a 48x24x24')).text).toMatch(/No unit was given, so I took: .*48 in/);
  expect((await talk.says('heater for 90 gal at 78 in a 66 room')).text).toMatch(/so I took: .*66 °F.*78 °F/);
});

test('two units that fit alike are asked', async () => {
  const sizes = await talk.says('how much water in a 60x60x60');
  expect(sizes.kind).toBe('question');
  expect(sizes.headline).toMatch(/60 in or 60 cm/);
  expect(inputsOf(await talk.says('cm')).length).toBeCloseTo(0.6, 9);
  const weight = await talk.says(
    'will the floor hold 1 ton, joists across, span 4 m, spacing 40 cm, tank 150x60 cm, wall gap 10 cm',
  );
  expect(weight.kind).toBe('question');
  expect(weight.headline).toMatch(/1 t or 1 US tons or 1 imperial tons/);
});

test('digits with two meanings are asked, and settled by the number or by the unit', async () => {
  for (const [answer, flow] of [
    ['1200 l/h', 1.2 / 3600],
    ['1.2', 1.2e-3 / 3600],
  ] as const) {
    const asked = await talk.says('turnover of 1.200 l/h through 400 l');
    expect(asked.kind).toBe('question');
    expect(asked.headline).toMatch(/Which is the return flow: 1.2 L\/h or 1,?200 L\/h/);
    expect(Number(inputsOf(await talk.says(answer)).flow)).toBeCloseTo(flow, 12);
  }
  const say = 'will the floor hold 1 ton, joists across, span 4 m, spacing 40 cm, tank 150x60 cm, wall gap 10 cm';
  await talk.says(say);
  expect(inputsOf(await talk.says('us tons')).total_mass).toBeCloseTo(907.18474, 6);
  await talk.says(say);
  expect(inputsOf(await talk.says('metric tons')).total_mass).toBeCloseTo(1000, 6);
});

test('sizes with their directions go where they say', async () => {
  const inputs = inputsOf(await talk.says('how much water in a 24"W x 48"L x 20"H'));
  expect([inputs.length, inputs.width, inputs.height]).toEqual(
    [48, 24, 20].map((size) => expect.closeTo(size * INCH, 9)),
  );
});

test('an explanation says bounds and other ways to read the digits', async () => {
  const [reply] = await talk.sends({ say: 'turnover of 1.200 l/h through under 400 l', explain: true });
  const [flow, volume] = reply!.read!.measurements;
  expect(flow).toMatchObject({
    quantity: 'flow',
    alternatives: expect.arrayContaining([
      expect.objectContaining({ unit: 'L/h', si: expect.closeTo(1.2 / 3600, 12) }),
    ]),
  });
  expect(volume).toMatchObject({ high: expect.closeTo(0.4, 12) });
  expect(volume!.low).toBeUndefined();
});

test('a size that a price and a temperature could be is settled by what was asked', async () => {
  await talk.says('what does a 120 w pump cost running 24 h a day');
  expect(inputsOf(await talk.says('22c')).price).toBeCloseTo(0.22 / KWH, 15);
});
