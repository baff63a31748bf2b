import { describe, expect, test } from 'vitest';
import { HEATER, replies } from './asking.js';

const fahrenheit = (t: number) => ((t - 32) * 5) / 9 + 273.15;

describe('explain', () => {
  test('gives every measurement with its place, and why it was taken as what', async () => {
    const [reply] = await replies({ say: '6ft tank, is 300 W enough at 78F in a 66F room', explain: true });
    const { measurements, why } = reply!.read!;
    expect(measurements[0]).toMatchObject({
      span: [0, 3],
      text: '6ft',
      quantity: 'length',
      value: 6,
      unit: 'ft',
      si: expect.closeTo(1.8288, 12),
      si_unit: 'm',
    });
    expect(measurements.map(({ text, si_unit }) => [text, si_unit])).toEqual([
      ['6ft', 'm'],
      ['300 W', 'W'],
      ['78F', 'K'],
      ['66F', 'K'],
    ]);
    expect(measurements[3]!.si).toBeCloseTo(fahrenheit(66), 9);
    expect(why.join('\n')).toMatch(/likeliest topic: heater\.size/);
    expect(why.join('\n')).toMatch(/“66f” is taken as the room temperature/);
  });

  test('counts places in the message as it was sent', async () => {
    const say = '  the 🐠 tank is 6½ ft  long and it’s １００ L';
    const [reply] = await replies({ say, explain: true });
    const { measurements } = reply!.read!;
    expect(measurements.map(({ value }) => value)).toEqual([6.5, 100]);
    for (const { span, text } of measurements) expect(say.slice(...span)).toBe(text);
    expect(measurements[0]!.text).toBe('6½ ft');
  });

  test('names the other readings of a measurement', async () => {
    const [reply] = await replies({ say: 'i mixed 32 oz', explain: true });
    const [measurement] = reply!.read!.measurements;
    expect(measurement!.alternatives!.length).toBeGreaterThan(0);
    for (const { unit, si, quantity } of measurement!.alternatives!)
      expect([typeof unit, typeof si, typeof quantity]).toEqual(['string', 'number', 'string']);
  });

  test.each(['/heater size room_temperature:64F', 'hello', '', 'x'.repeat(5000)])('is there for %.40s', async (say) => {
    const [reply] = await replies({ say, explain: true });
    expect(reply!.read).toEqual({ measurements: expect.any(Array), why: expect.any(Array) });
  });

  test('is absent where nobody asked for it', async () => {
    const [reply] = await replies({ say: HEATER });
    expect(reply).not.toHaveProperty('read');
  });
});

describe('nothing that can be typed ends the process', () => {
  const measurements = Array.from({ length: 500 }, (_, i) => `${i + 1} cm`).join(', ');
  test.each([
    ['100,000 characters', 'x'.repeat(100_000), /100,000 characters/],
    ['100,000 digits', '9'.repeat(100_000), /100,000 characters/],
    ['500 measurements', measurements, /./],
    ['emoji', '💡🐠🌊', /./],
    ['right to left', 'מה גודל האקווריום 120 ס״מ', /./],
    ['a direction mark', '\u202E150 cm\u202C', /./],
    ['control characters', '\u0000\u0007 150 cm long', /./],
    ['lone surrogates', '\ud83d 150 cm \udc20', /./],
    ['digits without end', `${'1'.repeat(3000)} gallons`, /./],
    ['a command of 100,000 characters', `/heater size ${'x'.repeat(100_000)}`, /./],
  ])('%s', async (_, say, says) => {
    const [reply, next] = await replies({ say }, 'hello');
    expect(reply!.headline).toMatch(says);
    expect(reply!.headline.length).toBeLessThan(2000);
    expect(reply!.text.length).toBeLessThan(20_000);
    expect(next!.headline).toMatch(/^Hello/);
  });
});
