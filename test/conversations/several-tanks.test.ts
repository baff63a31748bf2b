import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { inputsOf, startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

const names = async (member = 'ada') => (await talk.store.tanks(member)).map(({ name }) => name).sort();
const lengthOf = async (name: string, member = 'ada') =>
  (await talk.store.tanks(member)).find((tank) => tank.name === name)?.values['display.length']?.si;
const current = async (member = 'ada') => (await talk.store.tanks(member)).find((tank) => tank.current)?.name;

describe('a second tank does not overwrite the first', () => {
  test.each([
    ['my frag tank is 60x45x40 cm', 'frag tank'],
    ['my frag system is 60x45x40 cm', 'frag tank'],
    ['i also have a frag tank, 60x45x40 cm', 'frag tank'],
    ['my other tank is 60x45x40 cm', 'other tank'],
    ['my second tank is 60x45x40 cm', 'second tank'],
    ['another tank: 60x45x40 cm', 'second tank'],
    ['a second one, 60x45x40 cm', 'second tank'],
    ['my new tank is 60x45x40 cm', 'new tank'],
    ['my nano is 60x45x40 cm', 'nano tank'],
    ['the quarantine tank is 60x45x40 cm', 'quarantine tank'],
    ['qt is 60x45x40 cm', 'qt tank'],
    ["my wife's tank is 60x45x40 cm", "wife's tank"],
    ['my wifes tank is 60x45x40 cm', "wife's tank"],
    ['my tank called "The Big Blue" is 60x45x40 cm', 'the big blue'],
    ['my tank named ‘big blue 2’ is 60x45x40 cm', 'big blue 2'],
    ['my tank called reef in the hall is 60x45x40 cm', 'reef in the hall'],
  ])('%s', async (say, name) => {
    await talk.says("it's 150x60x55 cm, 12 mm glass");
    expect((await talk.says(say)).headline).toContain(`“${name}”`);
    expect(await names()).toEqual(['main tank', name].sort());
    expect(await lengthOf('main tank')).toBeCloseTo(1.5);
    expect(await lengthOf(name)).toBeCloseTo(0.6);
  });

  test('a third one gets the next name', async () => {
    for (const say of ['150x60x55 cm', 'another tank: 60x45x40 cm', 'another tank: 90x45x45 cm'])
      await talk.says(`it's ${say}`.replace("it's another", 'another'));
    expect(await names()).toEqual(['main tank', 'second tank', 'third tank']);
  });

  test('other sizes without a name are kept and how to part the tanks is said', async () => {
    await talk.says("it's 150x60x55 cm");
    const reply = await talk.says("it's 60x45x40 cm");
    expect(reply.headline).toContain('was 150 cm');
    expect(reply.body).toContain('my second tank is');
    await talk.says('forget that');
    await talk.says('my second tank is 60x45x40 cm');
    expect(await lengthOf('main tank')).toBeCloseTo(1.5);
  });

  test('what the tank is like is no name', async () => {
    await talk.says('my new tank is 150x60x55 cm');
    for (const say of [
      'my rimless tank is kept at 25 C',
      'my new tank is 150 cm long',
      'my whole tank has 12 mm glass',
    ])
      await talk.says(say);
    expect(await names()).toEqual(['main tank']);
  });
});

describe('tanks are spoken of by name', () => {
  beforeEach(async () => {
    await talk.says("it's 150x60x55 cm, 12 mm glass, water 4 cm below the rim");
    await talk.says('my frag tank is 60x45x40 cm, 8 mm glass, water 3 cm below the rim');
  });

  test.each([
    ['how much water does my main tank hold', 1.5],
    ['for the main tank: how much water does it hold', 1.5],
    ['how much water does my frag tank hold', 0.6],
    ['how much water is in my other tank', 1.5],
  ])('%s', async (say, length) => {
    expect(inputsOf(await talk.says(say)).length).toBeCloseTo(length);
  });

  test('to and fro, the last question follows', async () => {
    expect(inputsOf(await talk.says('how much water does my frag tank hold')).length).toBeCloseTo(0.6);
    expect(inputsOf(await talk.says('and for my main tank?')).length).toBeCloseTo(1.5);
    expect(inputsOf(await talk.says('what about the frag tank')).length).toBeCloseTo(0.6);
    expect(inputsOf(await talk.says('and my other tank?')).length).toBeCloseTo(1.5);
  });

  test.each([
    ['switch to my main tank', 'main tank'],
    ['go back to the main tank', 'main tank'],
    ['use my frag tank', 'frag tank'],
    ['for my frag tank', 'frag tank'],
  ])('%s', async (say, name) => {
    expect((await talk.says(say)).headline).toBe(`“${name}” is the current tank now.`);
    expect(await current()).toBe(name);
  });

  test.each(['delete my frag tank', 'remove the frag tank please'])(
    'nothing is deleted by the way: %s',
    async (say) => {
      expect((await talk.says(say)).headline).toContain('/tank remove name:frag tank confirm:remove');
      expect(await names()).toEqual(['frag tank', 'main tank']);
    },
  );

  test.each([
    'what heater does my nano need at 25 C in an 18 C room',
    'how much water is in my lagoon tank',
    "how heavy is ben's tank",
    "change ben's tank to 300 l",
    'for my nano',
  ])('one that is not kept gets no other tank’s numbers: %s', async (say) => {
    const reply = await talk.says(say);
    expect(reply.kind).toBe('notice');
    expect(reply.headline).toMatch(/^I know nothing of a “.+ tank” yet/);
    expect(reply.body).toContain('frag tank, main tank');
    expect(await names()).toEqual(['frag tank', 'main tank']);
  });

  test('one that is not kept is answered from what the question says', async () => {
    expect(inputsOf(await talk.says('how much water does my nano hold, 30x30x30 cm')).length).toBeCloseTo(0.3);
    expect((await talk.says('how much salt for my mixing tank of 100 L at 35 ppt')).kind).toBe('answer');
    expect(await names()).toEqual(['frag tank', 'main tank']);
  });

  test('what was said of one is not said of the other', async () => {
    await talk.says('is 200 W enough for my frag tank at 26 C in an 18 C room');
    const other = await talk.says('how many watts does my main tank need');
    expect(other.kind, other.headline).toBe('question');
  });
});

describe('one member’s words touch nobody else’s', () => {
  const ada = (say: string) => talk.says(say, { id: 'ada', club: 'c', channel: 'help' });
  const ben = (say: string) => talk.says(say, { id: 'ben', club: 'c', channel: 'help' });

  test('an answer goes to who was asked', async () => {
    expect((await ada('is 300 W enough for 90 gal, water at 78F')).asks).toEqual(['room_temperature']);
    const stray = await ben('66F');
    expect(stray.headline).toMatch(/^66F of what\?/);
    expect(stray.calculation).toBeNull();
    const answer = await ada('60F');
    expect(answer.kind).toBe('answer');
    expect(inputsOf(answer).room_temperature).toBeCloseTo(288.706, 2);
  });

  test('two open questions in one channel stay apart', async () => {
    await ada('how much salt for 100 L');
    await ben('how much salt for 200 L');
    const [hers, his] = [await ada('35 ppt'), await ben('33 ppt')];
    expect([inputsOf(hers).volume, inputsOf(hers).salinity]).toEqual([0.1, 0.035]);
    expect([inputsOf(his).volume, inputsOf(his).salinity]).toEqual([0.2, 0.033]);
  });

  test('“never mind”, “no, …” and “forget that” are about one’s own', async () => {
    await ada("it's 150x60x55 cm");
    await ada('how much salt for 100 L');
    await ben('never mind');
    await ben('no, 200 L');
    await ben('forget that');
    await ben('delete all my tanks');
    expect(await lengthOf('main tank')).toBeCloseTo(1.5);
    expect(inputsOf(await ada('35 ppt')).volume).toBeCloseTo(0.1);
  });

  test('“what about …” and “why” are about one’s own last answer', async () => {
    await ada('how much salt for 100 L at 35 ppt');
    expect((await ben('why')).headline).toMatch(/There is no answer to go back to/);
    expect((await ben('what about 30 ppt')).kind).toBe('notice');
    await ben('is 300 W enough for 90 gal, water at 78F, in a 66F room');
    expect(inputsOf(await ada('what about 30 ppt')).salinity).toBeCloseTo(0.03);
  });

  test('tanks of one name are two tanks', async () => {
    await ada("it's 150x60x55 cm");
    await ben("it's 60x45x40 cm");
    await ben('/tank rename name:main tank to:reef');
    await ben('no, 70 cm long');
    expect(await names('ada')).toEqual(['main tank']);
    expect(await lengthOf('main tank')).toBeCloseTo(1.5);
    await ben('/tank remove name:main tank confirm:remove');
    await ben('/mydata delete confirm:delete');
    expect(await names('ada')).toEqual(['main tank']);
    expect(await names('ben')).toEqual([]);
  });

  test('another’s answer can be looked at and not saved', async () => {
    const hers = await ada('how much water in a 150x60x55 cm tank');
    const press = { answer: hers.answerId!, press: 'save' } as const;
    const [reply] = await talk.sends(press, { id: 'ben', club: 'c', channel: 'help' });
    expect(reply!.headline).toMatch(/another member/);
    expect(await names('ben')).toEqual([]);
    expect(await names('ada')).toEqual([]);
  });
});
