import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { inputsOf, startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

const UNCLEAR = 'total cost of the build: 2 heaters at 75, tank 900, and 10 %';

describe('a number that two inputs could be is asked about, never guessed', () => {
  test('the question says what it could be, and shows what was taken', async () => {
    const reply = await talk.says(UNCLEAR);
    expect(reply.kind).toBe('question');
    expect(reply.headline).toMatch(/^What is 10 %: the tax .* or the .*forgotten\?$/);
    expect(reply.inputs.map(({ id }) => id)).toContain('items');
  });

  test.each(['tax', 'the tax on top', 'sales tax'])(
    'it is answered by a word that only one has: %s',
    async (answer) => {
      await talk.says(UNCLEAR);
      const reply = await talk.says(answer);
      expect(reply.kind, reply.text).toBe('answer');
      expect(inputsOf(reply)).toMatchObject({ tax: 0.1 });
    },
  );

  test('the place in the list answers too', async () => {
    const asked = await talk.says(UNCLEAR);
    const reply = await talk.says('the second one');
    expect(reply.kind, reply.text).toBe('answer');
    expect(inputsOf(reply)[asked.asks[1]!]).toBeCloseTo(0.1, 12);
  });

  test('after never mind the number belongs to nothing', async () => {
    await talk.says(UNCLEAR);
    await talk.says('never mind');
    const reply = await talk.says('tax');
    expect(reply.kind).not.toBe('answer');
  });
});

test('each line of a pasted list is a clause of its own', async () => {
  const reply = await talk.says('light per day\nPAR: 200\nHours: 10');
  expect(reply.kind, reply.text).toBe('answer');
  expect(inputsOf(reply)).toMatchObject({ ppfd: expect.closeTo(200e-6, 12), hours: 36_000 });
});

test('an arrow leads from what is to what is wanted', async () => {
  const reply = await talk.says('lower no3 50 → 15 with 15% weekly');
  expect(inputsOf(reply)).toMatchObject({ before: expect.closeTo(0.05, 12), target: expect.closeTo(0.015, 12) });
});
