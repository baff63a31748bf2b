import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

/** One clear sentence: what was wrong, what would be right. */
const SENTENCE = /^.{20,400}[.?!]$/s;

describe('bad input gets one clear sentence, and nothing is lost', () => {
  const cases: readonly [what: string, say: string, says: RegExp][] = [
    ['zero', 'how much salt for 0 L at 35 ppt', /0 L.*above 0/],
    ['negative', 'heater for -90 gal at 78F, room 66F', /−90 US gal.*above 0/],
    ['absurd size', 'the tank is 40 m long', /40 m.*0\.03 to 6 m.*check the unit/],
    ['absurd temperature', 'the water is 200 °C', /200 °C.*10 to 35 °C/],
    ['wrong dimension', 'the room is 5 litres', /“5 litres” as a volume, but the room temperature is a temperature/],
    ['Fahrenheit given as Celsius', 'heater for 90 gal at 78 C, room 66F', /78 °C.*did you mean 78 °F/i],
    ['a lost decimal point', 'salinity for sg 1.26', /1\.26.*1\.026/],
    ['a density for a specific gravity', 'what salinity is sg 1025', /1,?025/],
    ['glass thicker than the tank', 'how much water in a 60x30x30 cm tank with 160 mm glass', /No inside is left/],
    [
      'freeboard over the height',
      'how much water in a 60x30x20 cm tank, water 25 cm below the rim',
      /No water is left|as high as the tank/,
    ],
    ['a 25 hour day', '200 PAR for 25 hours', /A day has 24 hours/],
  ];
  for (const [what, say, says] of cases) {
    test(what, async () => {
      const reply = await talk.says(say);
      expect(reply.kind, reply.text).toBe('refusal');
      expect(reply.headline).toMatch(says);
      expect(reply.headline).toMatch(SENTENCE);
    });
  }

  test('a refused number is corrected by the next message; the rest was kept', async () => {
    const refused = await talk.says('is 300 W enough for 90 gal at 78 C in a 66F room');
    expect(refused.body).toMatch(/Kept: .*room temperature 66 °F/);
    const answer = await talk.says('78F');
    expect(answer.kind, answer.text).toBe('answer');
    expect(answer.inputs.find(({ id }) => id === 'room_temperature')!.from).toBe('earlier');
  });

  test('what cannot be goes not onto the tank’s page; the rest of the message does', async () => {
    await talk.says('my tank is 60x30x30 cm');
    const reply = await talk.says('the glass is 160 mm thick and the room is 20 C');
    expect(reply.headline).toContain('room temperature 20 °C');
    expect(reply.body).toMatch(/Not kept: .*pane thickness|Not kept: .*No inside is left/);
    const page = (await talk.says('show my tank')).body!;
    expect(page).toContain('tank length 60 cm');
    expect(page).not.toContain('160');
  });

  test('a statement that is refused whole keeps nothing: no tank is begun, and there is nothing to take back', async () => {
    const refused = await talk.says('the room is 300 F');
    expect(refused.kind).toBe('refusal');
    expect(refused.body).toContain('Nothing was changed');
    expect(await talk.store.tanks('ada')).toEqual([]);
    const undone = await talk.says('take that back');
    expect(undone.text).not.toMatch(/Taken back/);
    await talk.says('the room is 20 C');
    await talk.says('the room is 300 F');
    expect((await talk.says('show my tank')).body).toContain('20 °C');
  });

  test('an empty message, a hundred thousand characters, and a table', async () => {
    expect((await talk.says('   ')).kind).toBe('refusal');
    const long = await talk.says('x'.repeat(100_000));
    expect(long.headline).toContain('100,000 characters');
    const many = await talk.says(Array.from({ length: 500 }, (_, i) => `${i + 1} cm`).join(', '));
    expect(many.headline.length).toBeLessThan(2000);
  });

  test.each([
    '💡🐠🌊',
    'מה גודל האקווריום שלי',
    'ما حجم حوضي',
    '\u202Eevil\u202C',
    '\u0000\u0007',
    '<@123> <@&5> @everyone',
  ])('strange text is answered plainly: %j', async (say) => {
    const reply = await talk.says(say);
    expect(['notice', 'refusal']).toContain(reply.kind);
  });

  test('Arabic digits and full-width digits are digits', async () => {
    const reply = await talk.says('how much salt for １００ L at 35 ppt');
    expect(reply.inputs.find(({ id }) => id === 'volume')!.si).toBeCloseTo(0.1, 12);
  });

  test.each([
    '/nonsense',
    '/heater',
    '/heater nonsense',
    '/heater size nonsense:4',
    '/heater size 300',
    '/tank use name:nowhere',
    '/tank set field:colour value:blue',
    '/units system:furlongs',
  ])('a command that does not exist says which do: %s', async (say) => {
    const reply = await talk.says(say);
    expect(['refusal', 'notice']).toContain(reply.kind);
    expect(reply.text.length).toBeGreaterThan(20);
  });

  test('a slash option of the wrong kind says what would be right', async () => {
    const reply = await talk.says('/heater size room_temperature:5 litres');
    expect(reply.headline).toMatch(/“5 litres” as a volume, but the room temperature is a temperature/);
  });
});
