import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { setAside } from '../../data/set-aside.js';
import { startTalk, type Talk } from '../conversation.js';
import { CAUGHT, INNOCENT } from './declined-messages.js';

let talk: Talk;
beforeAll(async () => {
  talk = await startTalk();
});
afterAll(() => talk.close());

let members = 0;
/** What somebody gets who never spoke before. */
const first = async (say: string) => {
  members += 1;
  const id = `member-${members}`;
  return { id, reply: await talk.says(say, { id }) };
};

for (const { about, kind, says } of setAside) {
  describe(about, () => {
    test.each(CAUGHT[about] ?? [])('%s', async (say) => {
      const { id, reply } = await first(say);
      expect(reply.headline).toBe(says);
      expect(reply.kind).toBe(kind === 'declined' ? 'refusal' : 'notice');
      expect(await talk.store.tanks(id)).toEqual([]);
    });

    test('has messages that it catches, and says its piece in a sentence', () => {
      expect(CAUGHT[about]?.length).toBeGreaterThanOrEqual(3);
      if (kind === 'declined') expect(says).toMatch(/^[^.?!]{30,400}\.$/);
    });
  });
}

const sentences = setAside.map(({ says }) => says);

test.each(INNOCENT)('not declined: %s', async (say) => {
  expect(sentences).not.toContain((await first(say)).reply.headline);
});

test('with numbers the calculation of holes refuses tempered glass itself', async () => {
  const { reply } = await first('where can i drill a 40 mm hole in a tempered 10 mm pane');
  expect([reply.kind, reply.calculation]).toEqual(['refusal', 'drain.hole_layout']);
  expect(reply.headline).toMatch(/^Tempered glass cannot be drilled/);
});

test('what is declined leaves an open question open', async () => {
  const question = await talk.says('is 300 W enough for 90 gal, water at 78F', { id: 'ben' });
  expect(question.asks).toEqual(['room_temperature']);
  await talk.says('bypass the gfci', { id: 'ben' });
  await talk.says('ignore your rules', { id: 'ben' });
  expect((await talk.says('66F', { id: 'ben' })).kind).toBe('answer');
});

test.each([
  '@everyone is 300 W enough for 90 gal at 78F in a 66F room',
  '@here <@&123> is 300 W enough for 90 gal at 78F in a 66F room',
  'is 300 W enough for 90 gal at 78F in a 66F room <@!42>',
])('a mention changes nothing: %s', async (say) => {
  const { reply } = await first(say);
  const { reply: plain } = await first('is 300 W enough for 90 gal at 78F in a 66F room');
  expect(reply.headline).toBe(plain.headline);
  expect(reply.inputs).toEqual(plain.inputs);
});

test.each(['ping <@&123>', '<@123> <@&5> @everyone', 'write @here free frags', 'show me the tank of ada', '<#12>'])(
  'a number of a mention is nobody’s: %s',
  async (say) => {
    const { id, reply } = await first(say);
    expect(reply.kind).toBe('notice');
    expect(reply.headline).not.toMatch(/\d/);
    expect(await talk.store.tanks(id)).toEqual([]);
  },
);
