import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { inputsOf, startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

const topics = async (say: string) => (await talk.all(say)).map(({ calculation }) => calculation);

describe('two questions in one message are two answers', () => {
  test.each([
    ['how much salt for 100 L at 35 ppt, and what heater do i need for 90 gal at 78F in a 66F room'],
    ['How much salt for 100 L at 35 ppt? What heater do I need for 90 gal at 78F in a 66F room?'],
    ['how much salt for 100 L at 35 ppt. also what heater do i need for 90 gal at 78F, room 66F'],
  ])('each with its own numbers: %s', async (say) => {
    const replies = await talk.all(say);
    expect(replies.map(({ calculation }) => calculation)).toEqual(['salt.mix', 'heater.size']);
    expect(inputsOf(replies[0]!)).toMatchObject({ volume: 0.1 });
    expect(inputsOf(replies[1]!)).toMatchObject({ volume: expect.closeTo(0.340687, 5) });
  });

  test('a question that asks back is answered first; the other one waits and is not lost', async () => {
    const [asked, ...others] = await talk.all('what heater for 90 gal at 78F? also how much salt for 100 L at 35 ppt?');
    expect(asked!.kind).toBe('question');
    expect(others).toEqual([]);
    const replies = await talk.all('66F');
    expect(replies.map(({ calculation, kind }) => [calculation, kind])).toEqual([
      ['heater.size', 'answer'],
      ['salt.mix', 'answer'],
    ]);
  });

  test('after never mind nothing waits', async () => {
    await talk.all('what heater for 90 gal at 78F? also how much salt for 100 L at 35 ppt?');
    await talk.all('never mind');
    expect(await topics('how much water is in a 120x50x50 cm tank')).toEqual(['volume.rectangular']);
  });

  test('what is only told goes with the question behind it, and one question with two parts is one', async () => {
    expect(await topics('my tank is 120x50x50 cm. how much sand for 5 cm?')).toEqual(['sand.mass']);
    expect(await topics('is 300 W enough for 90 gal at 78F in a 66F room and how long is it on?')).toHaveLength(1);
  });
});
