import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Reply } from '../../src/core/reply.js';
import { inputsOf, startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

/** What the last of several messages, parted by " / ", is answered with. */
async function last(messages: string): Promise<Reply> {
  let reply: Reply | undefined;
  for (const message of messages.split(' / ')) reply = await talk.says(message);
  return reply!;
}

const GALLON = 0.003785411784;
const INCH = 0.0254;
const near = (value: number) => expect.closeTo(value, 6);
const TURNOVER = 'how many times an hour does 600 gph turn over 90 gallons';
const WARM_UP = 'how long does a 500 w heater take to warm 400 l from 18 to 25 C, room 20';
const RESERVOIR = 'my 20 liter ato container, tank loses 3 l a day, how many days';
const VELOCITY = 'how fast does the water move at 600 gph in a 3/4 inch pipe';
const BOX = 'how much water in a 90 x 45 x 45 cm tank';

describe('a follow-up changes what it means, and says so', () => {
  test.each([
    [
      'a bare number is in the unit of what it is nearest to',
      `${TURNOVER} / and at 700`,
      { flow: near((700 * GALLON) / 3600), volume: near(90 * GALLON) },
    ],
    [
      '"back to" says no more than the number',
      `${TURNOVER} / try 700 / back to 600 please`,
      { flow: near((600 * GALLON) / 3600) },
    ],
    [
      'a unit means an input that was given before one that was not',
      `${RESERVOIR} / what about a 50 litre one`,
      { usable_volume: near(0.05) },
    ],
    [
      '"what about" is no "about"',
      `${VELOCITY} / what about 800 gph`,
      { flow: near((800 * GALLON) / 3600), pipe: '3/4 in schedule 40' },
    ],
    ['a size names the pipe where a pipe was named', `${VELOCITY} / what about 1 inch`, { pipe: '1 in schedule 40' }],
    [
      'joined sizes are one thing',
      `${BOX} / 150 x 60 x 60?`,
      { length: near(1.5), width: near(0.6), height: near(0.6) },
    ],
    [
      'two numbers by name',
      `${BOX} / what if its 60 wide and 55 tall`,
      { length: near(0.9), width: near(0.6), height: near(0.55) },
    ],
    [
      'what follows an "and" goes on, whatever else it names',
      `${WARM_UP} / and a 300 w heater`,
      { heater_power: near(300), start_temperature: near(291.15) },
    ],
    [
      '"it’s" is said of what was asked about',
      'raise my 90 gallon from 31 to 35 ppt with salt mix / its 80 gallons by the way',
      { volume: near(80 * GALLON), salinity: near(0.031) },
    ],
    [
      'a thing that no page keeps is the question’s',
      'will my 72x30x26 inch tank fit through the door / the door is 32 inches wide',
      { door_width: near(32 * INCH), length: near(72 * INCH) },
    ],
    ['a day', 'how long is the day at 18 degrees south on 21 june / and on the 5th of april', { date: 95 }],
  ])('%s: %s', async (_kind, messages, expected) => {
    const reply = await last(messages);
    expect(reply.kind, reply.text).toBe('answer');
    expect(inputsOf(reply)).toMatchObject(expected);
    expect(reply.cautions.map(({ text }) => text).join('\n')).toContain('Changed: ');
  });

  test('the note has the value before and after', async () => {
    const reply = await last(`${TURNOVER} / and at 700`);
    expect(reply.cautions.map(({ text }) => text)).toContain('Changed: return flow 700 US gal/h (was 600 US gal/h).');
  });

  test.each([
    [
      'width or height',
      'how much water in a 48x24x20 inch tank',
      'and 22 inches',
      'the height',
      { height: near(22 * INCH), width: near(24 * INCH) },
    ],
    ['flow or volume', 'how many times an hour does 100 gph turn over 90 gallons', 'and 95', 'the volume', {}],
  ])(
    'where it is not clear it asks, changes nothing, and takes the name for an answer: %s',
    async (_kind, first, vague, named, expected) => {
      const before = inputsOf(await talk.says(first));
      const asked = await talk.says(vague);
      expect(asked.kind).toBe('question');
      expect(asked.body).toContain('Nothing was changed');
      expect(inputsOf(await talk.says('show the steps'))).toEqual(before);
      await talk.says(vague);
      const reply = await talk.says(named);
      expect(reply.kind, reply.text).toBe('answer');
      expect(inputsOf(reply)).toMatchObject(expected);
    },
  );

  test('an "and" that names another thing is another question', async () => {
    const reply = await last('how much water in a 48x24x20 inch tank / and the sand for 2 inches');
    expect(reply.calculation, reply.text).toBe('sand.mass');
  });

  test('what is only supposed is not known of the tank', async () => {
    const reply = await last(
      'my tank is 60x24x24 inches / how much water does it hold / and if it was 20 tall / what heater do i need at 78F in a 65F room',
    );
    expect(inputsOf(reply)).toMatchObject({ height: near(24 * INCH) });
  });
});

describe('an answer belongs to the question just asked', () => {
  const ASKED = 'how long does my top off reservoir last / 5 gallons';
  test.each([
    [
      'an amount is an amount a day where that was asked',
      `${ASKED} / 2 gallons`,
      { usable_volume: near(5 * GALLON), evaporation: expect.closeTo((2 * GALLON) / 86400, 12) },
    ],
    [
      'a list that is empty',
      'full siphon, 32 mm pipe, 90 cm drop, 1.2 m of pipe, how many l/h / none',
      { drop: near(0.9) },
    ],
    [
      'which of two it was does not swallow another number',
      'how many watts of heater for 78F / the room is 66F and the tank is 110 gallons',
      { volume: near(110 * GALLON), target: near(273.15 + (78 - 32) / 1.8) },
    ],
  ])('%s: %s', async (_kind, messages, expected) => {
    const reply = await last(messages);
    expect(reply.kind, reply.text).toBe('answer');
    expect(inputsOf(reply)).toMatchObject(expected);
  });
});

describe('an earlier question is come back to with its numbers', () => {
  const OTHER = 'how much salt for 20 gallons of new water at 35 ppt';
  test.each([
    [
      `${VELOCITY} / ${OTHER} / back to the pipe with 900 gph`,
      'pump.velocity',
      { flow: near((900 * GALLON) / 3600), pipe: '3/4 in schedule 40' },
    ],
    [`${VELOCITY} / what about 1 inch / ${OTHER} / back to the pipe`, 'pump.velocity', { pipe: '1 in schedule 40' }],
    [
      `how much water does 60 lb of rock displace / ${OTHER} / and the rock again with 100 lb`,
      'volume.displacement',
      { rock_mass: near(45.359237) },
    ],
  ])('%s', async (messages, calculation, expected) => {
    const reply = await last(messages);
    expect(reply.calculation, reply.text).toBe(calculation);
    expect(inputsOf(reply)).toMatchObject(expected);
  });
});

test('an earlier question takes what the page was told since', async () => {
  const reply = await last(
    'my tank is 60x24x24 in / how much water does it hold with 1/2 in glass / how much salt for 20 gallons at 35 ppt / my glass is 3/4 in / back to the water in the tank',
  );
  expect(reply.calculation, reply.text).toBe('volume.rectangular');
  expect(inputsOf(reply)).toMatchObject({ glass_thickness: near(0.75 * INCH) });
});

describe('the same question for another tank', () => {
  const BOTH = 'my tank is 120x60x60 cm / my frag tank is 60x45x30 cm';
  test.each([
    ['and the display?', { length: near(1.2) }],
    ['and for the main one?', { length: near(1.2) }],
    ['same for the other tank', { length: near(1.2) }],
    ['and the display? / same for the frag tank', { length: near(0.6) }],
  ])('%s', async (messages, expected) => {
    const reply = await last(`${BOTH} / how much water does it hold / ${messages}`);
    expect(reply.calculation, reply.text).toBe('volume.rectangular');
    expect(inputsOf(reply)).toMatchObject(expected);
  });

  test('room and water stay, sizes do not', async () => {
    const reply = await last(`${BOTH} / what heater do i need for it at 25 C in an 18 C room / and for the display?`);
    expect(inputsOf(reply)).toMatchObject({ target: near(298.15), room_temperature: near(291.15), length: near(1.2) });
  });

  test('each tank keeps its own', async () => {
    await last(`${BOTH} / how much water does it hold / and the display?`);
    const [first, second] = await talk.store.tanks('ada');
    expect([first, second].map((tank) => tank?.values['display.length']?.si).sort()).toEqual([0.6, 1.2]);
  });
});
