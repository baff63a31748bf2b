import { describe, expect, test } from 'vitest';
import { movableClock, readArguments, UsageError } from '../src/faces/ask.js';
import { HEATER, MONDAY, printed, replies } from './asking.js';
import { inputsOf, startTalk } from './conversation.js';
import { recheckSteps } from './independent-evaluator.js';

const fahrenheit = (t: number) => ((t - 32) * 5) / 9 + 273.15;
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

/** Names of what a value holds, with the kind of each: `si: number`. */
const shapeOf = (value: object): Record<string, string> =>
  Object.fromEntries(Object.entries(value).map(([name, held]) => [name, Array.isArray(held) ? 'array' : typeof held]));

describe('a reply', () => {
  const FIELDS = {
    member: 'string',
    kind: 'string',
    calculation: 'string',
    headline: 'string',
    inputs: 'array',
    steps: 'array',
    results: 'array',
    cautions: 'array',
    sources: 'array',
    asks: 'array',
    files: 'array',
    text: 'string',
  };

  test('of an answer has every field, and its parts theirs', async () => {
    const [reply] = await replies(HEATER);
    expect(shapeOf(reply!)).toMatchObject({ line: 'number', ...FIELDS });
    for (const input of reply!.inputs) {
      expect(shapeOf(input)).toMatchObject({ id: 'string', unit: 'string', si_unit: 'string', from: 'string' });
      expect(['message', 'profile', 'earlier', 'default', 'table']).toContain(input.from);
    }
    for (const step of reply!.steps) {
      expect(shapeOf(step)).toMatchObject({
        symbol: 'string',
        name: 'string',
        formula: 'string',
        values: 'object',
        si: 'number',
        si_unit: 'string',
        shown: 'string',
      });
    }
    for (const result of reply!.results)
      expect(shapeOf(result)).toMatchObject({ id: 'string', unit: 'string', si_unit: 'string' });
    const guessed = reply!.results.find(({ id }) => id === 'total_loss')!;
    expect(shapeOf(guessed)).toMatchObject({ value: 'number', si: 'number', low: 'number', high: 'number' });
    for (const caution of reply!.cautions) {
      expect(shapeOf(caution)).toMatchObject({ level: 'string', text: 'string' });
      expect(['stop', 'caution', 'note']).toContain(caution.level);
    }
    expect(reply!.sources.every((source) => typeof source === 'string')).toBe(true);
  });

  test.each([
    'hello',
    'heater for -90 gal at 78F, room 66F',
    'what size heater do i need',
    '{bad',
    '/nonsense',
    '/mydata show',
  ])('to %s has every field', async (say) => {
    const [reply] = await replies(say);
    const { calculation, ...rest } = shapeOf(reply!);
    const { calculation: _, ...fields } = FIELDS;
    expect(rest).toMatchObject(fields);
    expect(reply!.calculation === null || calculation === 'string').toBe(true);
    expect(reply!.headline).not.toContain('\n');
    expect(reply!.text.startsWith(reply!.headline)).toBe(true);
  });

  test('of a question names what is asked first', async () => {
    const [reply] = await replies('what size heater do i need');
    expect(reply).toMatchObject({ kind: 'question', calculation: 'heater.size' });
    expect(reply!.asks[0]).toBe('target');
  });
});
