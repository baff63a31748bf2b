import { describe, expect, test } from 'vitest';
import { movableClock, readArguments, UsageError } from '../src/faces/ask.js';
import { MONDAY, printed, replies } from './asking.js';
import { inputsOf, startTalk } from './conversation.js';
import { recheckSteps } from './independent-evaluator.js';

const celsius = (t: number) => t + 273.15;
const fahrenheit = (t: number) => celsius(((t - 32) * 5) / 9);
const GALLON = 231 * 0.0254 ** 3;
const HEATER = 'is 300 W enough for 90 gal at 78F in a 66F room';
/** What one sentence may look like: it ends, and it is no stack or dump. */
const SENTENCE = /^.{15,400}[.?!]$/s;

describe('the command line', () => {
  test('the words after the options are the message', () => {
    expect(readArguments(['--json', '--member', 'ada', '--data', 'a.db', 'is', '300 W', 'enough', '--really'])).toEqual(
      {
        json: true,
        member: 'ada',
        data: 'a.db',
        catalogue: false,
        message: 'is 300 W enough --really',
      },
    );
    expect(readArguments(['--', '--json'])).toMatchObject({ json: false, member: 'me', message: '--json' });
  });

  test.each([[['--jsn']], [['--member']], [['--json', '--data']]])('%j cannot be used', (args) => {
    expect(() => readArguments(args)).toThrow(UsageError);
    expect(() => readArguments(args)).toThrow(/ask \[--json\] \[--member ID\] \[--data FILE\]/);
  });

  test('one message prints what a member reads; with --json the same reply as one line', async () => {
    const [text, ...more] = await printed([], { message: HEATER, json: false });
    const [line, ...others] = await printed([], { message: HEATER });
    expect([more, others]).toEqual([[], []]);
    const reply = JSON.parse(line!);
    expect(reply).toMatchObject({ member: 'me', kind: 'answer', calculation: 'heater.size', text });
    expect(reply).not.toHaveProperty('line');
  });
});

describe('lines of standard input', () => {
  test('are answered in order, numbered, in one conversation', async () => {
    const answered = await replies(HEATER, '', 'what if the room is 60F', 'why', 'thanks');
    expect(answered.map(({ line }) => line)).toEqual([1, 3, 4, 5]);
    expect(answered.map(({ kind }) => kind)).toEqual(['answer', 'answer', 'notice', 'notice']);
    expect(inputsOf(answered[1]!).room_temperature).toBeCloseTo(fahrenheit(60), 9);
    expect(answered[1]!.inputs.find(({ id }) => id === 'volume')!.from).toBe('earlier');
    for (const reply of answered) recheckSteps(reply);
  });

  test('several replies to one line carry its number', async () => {
    const answered = await replies(
      'my tank is 150x60x55 cm, 12 mm glass',
      'how much water does it hold',
      'no, the glass is 10 mm',
    );
    expect(answered.map(({ line }) => line)).toEqual([1, 2, 3, 3]);
    expect(answered[3]!.headline).toContain('pane thickness 10 mm (was 12 mm)');
  });

  test('without --json the texts are printed', async () => {
    const lines = await printed(['hello', 'thanks'], { json: false });
    expect(lines.join('\n')).toMatch(/^Hello\..*You are welcome\.$/s);
  });

  test('say who speaks and where: members and places are kept apart', async () => {
    const answered = await replies(
      { member: 'ada', say: 'my tank is 131x60x55 cm' },
      { member: 'bea', say: 'show my tank' },
      { member: 'ada', say: 'show my tank' },
      { member: 'ada', club: 'c1', channel: 'help', say: HEATER },
      { member: 'ada', club: 'c1', channel: 'lobby', say: 'why' },
      { member: 'ada', club: 'c1', channel: 'help', say: 'why' },
    );
    expect(answered.map(({ member }) => member)).toEqual(['ada', 'bea', 'ada', 'ada', 'ada', 'ada']);
    expect(answered[1]!.text).not.toContain('131');
    expect(answered[2]!.text).toContain('131 cm');
    expect(answered[4]!.text).not.toContain('P_evap');
    expect(answered[5]!.text).toContain('P_evap');
  });

  test('the member of the command line speaks where a line names none', async () => {
    const lines = await printed(['hello', '{"say":"hello"}', '{bad', '{"member":"bea","say":"hello"}'], {
      member: 'cy',
    });
    expect(lines.map((line) => JSON.parse(line).member)).toEqual(['cy', 'cy', 'cy', 'bea']);
  });

  test.each([
    ['{bad json', /cannot be read as JSON/],
    ['{"say":"hi"', /cannot be read as JSON/],
    ['{}', /says nothing/],
    ['{"inputs":{}}', /says nothing/],
    ['{"say":5}', /say must be a text/],
    ['{"say":"hi","member":5}', /member must be a text/],
    ['{"say":"hi","explain":"yes"}', /explain must be true or false/],
    ['{"calculation":"heater.size","inputs":[1]}', /inputs must be an object/],
    ['{"say":"hi","at":"yesterday"}', /“yesterday” is no time/],
  ])('%s is an error in a sentence, and the next line is served', async (bad, says) => {
    const [error, next] = await replies(bad, 'hello');
    expect(error).toMatchObject({ line: 1, kind: 'error', calculation: null, member: 'me' });
    expect(error!.headline).toMatch(says);
    expect(error!.text).toMatch(SENTENCE);
    expect(next).toMatchObject({ line: 2, kind: 'notice' });
  });
});

describe('the clock', () => {
  test('follows the machine until a line sets it, then moves forward and never back', () => {
    let machine = MONDAY;
    const clock = movableClock(() => machine);
    machine = new Date('2027-03-01T20:00:00-05:00');
    expect(clock.now()).toEqual(machine);
    const tuesday = new Date('2027-03-02T19:00:00-05:00');
    clock.moveTo(tuesday);
    clock.moveTo(MONDAY);
    expect(clock.now()).toEqual(tuesday);
  });

  test('dates what is kept', async () => {
    const talk = await startTalk();
    const lines = [
      'my tank is 150 cm long',
      '{"at":"2027-03-02T19:00:00-05:00","say":"my tank is 60 cm wide"}',
      '{"at":"2027-03-01T20:00:00-05:00","say":"the glass is 12 mm"}',
    ];
    await printed(lines, {}, talk);
    const { tanks } = (await talk.store.exportMember('me')) as {
      tanks: { values: Record<string, { said_at: string }[]> }[];
    };
    const said = Object.entries(tanks[0]!.values).map(([key, [first]]) => [key, first!.said_at]);
    expect(Object.fromEntries(said)).toMatchObject({
      'display.length': '2027-03-02T00:00:00.000Z',
      'display.width': '2027-03-03T00:00:00.000Z',
      'display.glass_thickness': '2027-03-03T00:00:00.000Z',
    });
    await talk.close();
  });
});

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
