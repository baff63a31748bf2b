import { describe, expect, test } from 'vitest';
import { HEATER, printed, replies } from './asking.js';
import { startTalk } from './conversation.js';

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
    expect(why.join('\n')).toMatch(/likeliest topic: heater power for a room \(.heater size\), because it says “/);
    expect(why.join('\n')).toMatch(/“66F” is taken as the room temperature, 66 °F: the word “room” stands beside it/);
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

  test('names the other inputs that a number could have been', async () => {
    const [reply] = await replies({ say: 'is 300 W enough for 90 gal, water at 78F, in a 66F room', explain: true });
    const { measurements } = reply!.read!;
    expect(measurements[3]).toMatchObject({ text: '66F', role: 'room_temperature' });
    expect(measurements[3]!.rivals).toContainEqual({
      role: 'target',
      likely: expect.stringMatching(/less likely|nearly/),
    });
  });

  test('says which numbers of a question each belong to where a message asks two', async () => {
    const say = 'how much salt for 100 L at 35 ppt? and how many watts to hold 80 gal at 78F in a 66F room';
    const [salt, heater] = await replies({ say, explain: true });
    expect([salt!.calculation, heater!.calculation]).toEqual(['salt.mix', 'heater.size']);
    expect(salt!.read).toEqual(heater!.read);
    const { measurements, why } = salt!.read!;
    for (const { span, text } of measurements) expect(say.slice(...span)).toBe(text);
    expect(measurements.map(({ text, role }) => [text, role])).toEqual([
      ['100 L', 'volume'],
      ['35 ppt', 'salinity'],
      ['80 gal', 'volume'],
      ['78F', 'target'],
      ['66F', 'room_temperature'],
    ]);
    expect(why.filter((line) => line.startsWith('likeliest topic'))).toHaveLength(2);
  });

  const why = async (...says: string[]) => {
    const all = await replies(...says.map((say) => ({ say, explain: true })));
    return all.at(-1)!.read!.why.join('\n');
  };

  test.each([
    [['is 300 W enough for 90 gal, water at 78F', '66F'], /answers the question about the room temperature/],
    [['is 300 W enough for 90 gal, water at 78F', '66F'], /“66F” is taken as the room temperature, 66 °F: it answers/],
    [
      ['is 300 W enough for 90 gal, water at 78F', 'never mind', '66F'],
      /left with “never mind”[\s\S]*“66F” is not used/,
    ],
    [[`${HEATER}`, 'what about 60F'], /changes a number of the last question/],
    [['the room is 20 C'], /tells something about the tank[\s\S]*the word “room(?: is)?” stands beside it/],
    [['room 20, heater for 400 L at 25'], /no unit was said, and °C is likeliest/],
    [
      ['how heavy is my tank, 60x30x30'],
      /“60” is taken as the tank length, in a unit that was not said: 60 in or 60 cm/,
    ],
    [['my tank holds 32 oz'], /32 US fl oz[\s\S]*It could also be 32 oz as a mass/],
    [
      ['how much flow in a 1 inch schedule 40 full siphon drain, 30 in drop, 40 in of pipe, 2 elbows'],
      /“2 elbows” is taken as the fittings/,
    ],
    [['cleaned the 2 skimmers'], /asks nothing that I can work out[\s\S]*“2” is not used/],
    [['bypass the gfci'], /set aside: defeating a protection/],
  ])('%j', async (says, says_why) => {
    expect(await why(...says)).toMatch(says_why);
  });

  test('is printed under the reply where no JSON is asked for', async () => {
    const lines = await printed([HEATER], { json: false, explain: true });
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/^\nHow I read that\n- Likeliest topic: /);
    expect(lines[1]).toMatch(/^- “66F” is taken as the room temperature.*\.$/m);
    expect(lines[1]).not.toMatch(/[a-z]_[a-z]|\bundefined\b/);
  });

  test.each(['yes', 'true'])('is a reply of its own to /ask with explain:%s', async (explain) => {
    const talk = await startTalk();
    const [answer, explained] = await talk.all(`/ask question:${HEATER} explain:${explain}`);
    expect(answer!.kind).toBe('answer');
    expect(explained).toMatchObject({ kind: 'notice', headline: 'How I read that' });
    expect(explained!.body).toContain('“66F” is taken as the room temperature');
    expect(await talk.all(`/ask question:${HEATER} explain:no`)).toHaveLength(1);
    await talk.close();
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
