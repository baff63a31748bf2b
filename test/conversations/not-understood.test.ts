import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeAll(async () => {
  talk = await startTalk();
});
afterAll(() => talk.close());

let members = 0;
/** A conversation of somebody who never spoke before. */
const somebody = () => {
  members += 1;
  const id = `member-${members}`;
  return { id, says: (say: string) => talk.says(say, { id }), tanks: () => talk.store.tanks(id) };
};

const NOT_UNDERSTOOD = /^I did not understand that/;

describe('what asks nothing and says no number is not interrogated', () => {
  test.each([
    'been up since 4 am staring at my corals',
    'hi there, anyone awake? the skimmer is gurgling',
    'hey all, anybody up? cant sleep because the drain gurgles',
    'cleaned the skimmer today',
    'cleaned my heater',
    'changed my return pump',
    'new light came today',
    'added some rock',
    'my rock is purple now',
    'just finished plumbing the drain',
    'salt is expensive these days',
    'my heater broke today',
    'i hate water changes',
    'did a water change yesterday, so tired',
    'the pump is loud',
    'the overflow is noisy, right?',
    'light bulb died',
    'my wife hates the noise of the sump',
    'going to the store to buy salt',
    'do you like reef tanks',
    'what fish should i get',
    'which coral is easiest',
    'how tall is the eiffel tower',
    'who is the best singer',
    'asdfgh',
    'weather?',
    '@everyone',
  ])('%s', async (say) => {
    const ada = somebody();
    const reply = await ada.says(say);
    expect(reply.kind, reply.headline).toBe('notice');
    expect(reply.headline).toMatch(NOT_UNDERSTOOD);
    expect(await ada.tanks()).toEqual([]);
  });
});

test.each([
  ['heater size pls', 'heater.size'],
  ['heater for my new tank', 'heater.size'],
  ['i need a heater', 'heater.size'],
  ['help me size a heater', 'heater.size'],
  ['salt mix', 'salt.mix'],
  ['drain size', 'drain.siphon'],
  ['chiller?', 'cooling.need'],
  ['ato reservoir', 'topoff.reservoir'],
  ['light schedule please', 'light.schedule'],
  ['hi, return pump size for my build', 'pump.operating_point'],
])('a name alone is a question: %s', async (say, calculation) => {
  const reply = await somebody().says(say);
  expect(reply.kind).toBe('question');
  expect(reply.calculation).toBe(calculation);
});

test.each([
  ['hi there', /^Hello/],
  ['good morning all, anyone here?', /^Hello/],
  ['ok cool thanks man', /welcome/],
  ['good night all', /^Good-bye/],
  ['are you a robot?', /^I am Brinewright, a program/],
  ['how are you today?', /thank you/],
  ['lol', /^I am here/],
  ['haha nice', /^I am here/],
  ['delete all my data', /^Nothing was deleted: write .mydata delete/],
])('small talk gets a sentence: %s', async (say, says) => {
  const reply = await somebody().says(say);
  expect(reply.headline).toMatch(says);
  expect(reply.body).toBeUndefined();
});

describe('the nearest things', () => {
  const offered = async (say: string) =>
    [...(await somebody().says(say)).body!.matchAll(/^- .*Try: “(.+)”$/gm)].map(([, ask]) => ask!);

  test.each([
    ['cleaned my heater', /300 W/],
    ['the sump looks great', /sump/],
    ['my rock is purple now', /rock/],
    ['algae everywhere', /refugium/],
    ['salt is so expensive these days', /salt|salinity/],
  ])('%s', async (say, near) => {
    expect((await offered(say))[0]).toMatch(near);
  });

  test('are three, and each is answered as it stands', async () => {
    for (const say of ['cleaned my heater', 'the sump looks great', 'new light came today', 'asdfgh']) {
      const asks = await offered(say);
      expect(new Set(asks).size).toBe(3);
      for (const ask of asks) expect((await somebody().says(ask)).kind, ask).toBe('answer');
    }
  });
});

describe('a bare answer belongs to nothing', () => {
  test.each(['12', '82F', '12 cm', 'about 12', 'yes', 'no', 'yeah'])('when nothing was asked: %s', async (say) => {
    const ada = somebody();
    const reply = await ada.says(say);
    expect(reply.kind).toBe('notice');
    expect(reply.headline).toMatch(/(?:of|to) what\? I have asked nothing/);
    expect(await ada.tanks()).toEqual([]);
  });

  test.each(['12', '66F', '90 gal', 'what about 66F', 'no, 66F', 'yes'])('after “never mind”: %s', async (say) => {
    const ada = somebody();
    expect((await ada.says('is 300 W enough for 90 gal, water at 78F')).kind).toBe('question');
    await ada.says('never mind');
    const reply = await ada.says(say);
    expect(reply.headline).toMatch(/(?:of|to) what\? I have asked nothing/);
    expect(reply.body).toContain('Nothing was changed');
    expect(reply.body).toContain('heater power for a room');
    expect(await ada.tanks()).toEqual([]);
  });

  test('also when the last question had its answer', async () => {
    const ada = somebody();
    await ada.says('is 300 W enough for 90 gal at 78F in a 66F room');
    await ada.says('never mind');
    expect((await ada.says('70F')).headline).toMatch(/^70F of what\?/);
  });

  test('what it offers is understood', async () => {
    const ada = somebody();
    const { body } = await ada.says('82F');
    const named = body!.match(/such as “(.+?)”/)![1]!;
    expect((await ada.says(named)).headline).toContain('water temperature 82 °F');
  });

  test('what was said is kept for when the question is asked again', async () => {
    const ada = somebody();
    await ada.says('is 300 W enough for 90 gal, water at 78F');
    await ada.says('never mind');
    await ada.says('how are you');
    const again = await ada.says('is 300 W enough in a 66F room');
    expect(again.kind, again.headline).toBe('answer');
  });

  test('the next question takes answers as before', async () => {
    const ada = somebody();
    await ada.says('is 300 W enough for 90 gal, water at 78F');
    await ada.says('never mind');
    expect((await ada.says('how much salt for 100 L')).asks).toEqual(['salinity']);
    expect((await ada.says('35')).kind).toBe('answer');
  });
});
