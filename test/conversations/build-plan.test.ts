import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { startTalk, type Talk } from '../conversation.js';

// The clock of these conversations stands at Tuesday 2 March 2027, 00:00 UTC.
let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

const body = async (text: string) => (await talk.says(text)).body ?? '';
const headline = async (text: string) => (await talk.says(text)).headline;

describe('the build as dated steps', () => {
  test('laid out from a day in plain words, shown, ticked off, moved, with the rest following', async () => {
    const begun = await talk.says('start my build on saturday');
    expect(begun.headline).toBe('Laid out the build of “main tank” from Sat 6 Mar.');
    expect(begun.private).toBe(true);
    expect(begun.body).toContain('Sat 6 Mar: measure the way in');
    // 1 measure, 2 stand, 1 carry, 2 pipes, 1 cure: the leak test is the seventh day after the first.
    expect(begun.body).toContain('Sat 13 Mar to Mon 15 Mar: leak test');
    expect(begun.body).toContain('(after: pipe cement cured, electrics)');

    const ticked = await talk.says('i measured the way in yesterday');
    expect(ticked.headline).toMatch(
      /^Ticked off: measure the way in.*, Mon 1 Mar\. First animals move from about .* to /,
    );
    expect(await headline('move the leak test to march 9')).toMatch(
      /can’t be on Tue 9 Mar: pipe cement and seals cure runs to Thu 11 Mar .*Fri 12 Mar is the first day that would do; nothing was moved/,
    );
    const moved = await talk.says('move the leak test to march 20');
    expect(moved.headline).toMatch(/^Moved to Sat 20 Mar: leak test/);
    const page = await body('show my schedule');
    expect(page).toContain('Done Mon 1 Mar: measure the way in');
    expect(page).toContain('Sat 20 Mar to Mon 22 Mar: leak test');
    expect(page).toContain('Tue 23 Mar: drain the test water');
  });

  test('seeded rock cycles in less time', async () => {
    await talk.says('start my build today with live rock');
    const live = await headline('when can i add fish');
    await talk.says('/plan start date:today rock:dry');
    const dry = await headline('when can i add fish');
    expect(live).toMatch(/Fri 9 Apr to/);
    expect(dry).toMatch(/Tue 4 May to/);
  });

  test('what one step waits for and why, what goes on beside it, and what can hurt', async () => {
    await talk.says('start my build today');
    const leak = await talk.says('when is the leak test?');
    expect(leak.body).toContain('Waits for pipe cement and seals cure: uncured joints give way under pressure.');
    expect(leak.body).toMatch(/Waits for this: drain the test water/);
    const drill = await talk.says('/plan steps step:drill');
    expect(drill.body).toMatch(/May go on beside it: .*dry-fit the rock/);
    expect(drill.cautions[0]!.text).toMatch(/Tempered glass/);
  });

  test('a step ticked off before what it waits for says so', async () => {
    await talk.says('start my build today');
    const glued = await talk.says('the leak test is done');
    expect(glued.cautions.map(({ text }) => text).join()).toMatch(/Pipe cement and seals cure.*is not ticked off/);
  });

  test('left out, opened again, added', async () => {
    await talk.says('start my build today');
    expect(await headline('skip drilling')).toMatch(/^Left out: drill the tank/);
    expect(await body('show my schedule')).not.toContain('drill the tank');
    expect(await headline('/plan reopen step:drill')).toMatch(/^Open again: drill the tank/);
    const added = await talk.says('/plan add-step name:paint the back days:3 after:stand before:carry');
    expect(added.headline).toMatch(/^Added: paint the back, on Fri 5 Mar/);
    const page = await body('show my schedule');
    expect(page).toMatch(/Fri 5 Mar to Sun 7 Mar: paint the back \(after: stand\)/);
    expect(page).toMatch(/Mon 8 Mar: carry the tank in .*paint the back\)/);
    expect((await talk.says('/plan add-step name:loop days:1 after:carry before:stand')).kind).toBe('refusal');
  });

  test('without a build it says how to begin; what is no day or no step changes nothing', async () => {
    expect(await headline('/plan steps')).toMatch(/No build is laid out yet/);
    expect((await talk.says('/plan start date:sometime')).kind).toBe('refusal');
    await talk.says('start my build today');
    expect(await headline('/plan done step:paint the moon')).toMatch(/has no step “paint the moon”/);
    expect(await headline('/plan move step:leak test date:whenever')).toMatch(/is no day I can read/);
  });

  test('two members, two builds', async () => {
    await talk.says('start my build today');
    expect((await talk.says('show my schedule', { id: 'ben' })).headline).toMatch(/No build/);
  });
});

describe('what people say of it', () => {
  test.each(['whats next', 'show the plan', 'show my build', 'whats todo this week'])('%s', async (text) => {
    await talk.says('start my build today');
    expect(await headline(text)).toMatch(/^Now: measure the way in/);
  });
  test('not done is open again, and never ticked off', async () => {
    await talk.says('start my build today');
    await talk.says('leak test done');
    expect(await headline('i did not do the leak test yet')).toMatch(/^Open again: leak test/);
    expect(await headline('i didnt glue the rock actually')).toMatch(/^Open again: glue the rock/);
    expect(await body('show my schedule')).not.toContain('Done');
  });
  test('later by so many days: a step, or the whole build', async () => {
    await talk.says('start my build today');
    expect(await headline('push the leak test a week')).toMatch(/^Moved to Tue 16 Mar: leak test/);
    expect(await headline('delay the build by 3 days')).toMatch(/^Moved the start of .* to Fri 5 Mar/);
  });
});

describe('the shopping list', () => {
  test('one bought of two leaves one to buy', async () => {
    await talk.says('add 2 heaters at 45 to my shopping list');
    expect(await headline('bought 1 heater for 40')).toBe('Bought: heaters, 40.00.');
    expect(await headline('ive spent how much')).toBe('Spent 40.00, still to buy 45.00, together 85.00.');
    expect(await headline('bought the other heater for 42')).not.toMatch(/42 W/);
  });

  test('added, bought for another price, totalled by part, taken off', async () => {
    expect(await headline('add 2 heaters at 45 to my shopping list')).toBe(
      'Added to heat and cooling: 2 × heaters, 45.00 each.',
    );
    expect(await headline('add a Return Pump for $80 to the shopping list')).toBe(
      'Added to return and flow: Return Pump, 80.00.',
    );
    expect(await headline('put 12 bulkheads, 9.50 each on the list')).toBe(
      'Added to plumbing: 12 × bulkheads, 9.50 each.',
    );
    expect(await headline('what have i spent')).toBe('Spent 0.00, still to buy 284.00, together 284.00.');
    // "For 84" is the price of both.
    expect(await headline('i bought the heaters for 84')).toBe('Bought: 2 × heaters, 42.00 each.');
    expect(await headline('bought the return pump')).toBe('Bought: Return Pump, 80.00.');
    const list = await talk.says('shopping list');
    expect(list.headline).toBe('Spent 164.00, still to buy 114.00, together 278.00.');
    expect(list.body).toMatch(/Plumbing: 114\.00\n {2}12 × bulkheads, 9\.50 each/);
    expect(await headline('remove bulkheads from the list')).toBe('Taken off the list: bulkheads.');
    expect(await headline('what have i spent')).toBe('Spent 164.00, still to buy 0.00, together 164.00.');
  });

  test('a price may be missing, and is counted as missing', async () => {
    await talk.says('add a refractometer to my shopping list');
    expect(await headline('shopping list')).toBe(
      'Spent 0.00, still to buy 0.00, together 0.00 without 1 item that has no price yet.',
    );
  });

  test('what is not on the list changes nothing, and a tank that was bought is no item', async () => {
    await talk.says('add glue at 12 to my shopping list');
    const refused = await talk.says('/plan bought item:a whale');
    expect(refused.kind).toBe('refusal');
    expect(refused.body).toBe('On it: glue.');
    expect((await talk.says('i bought a 72x18x21 in tank with 1/2 in glass')).headline).toMatch(/tank length 72 in/);
  });

  test.each([
    '/plan buy item:pump quantity:0',
    '/plan buy item:pump quantity:2.5',
    '/plan buy item:pump price:9999999',
  ])('%s is refused', async (text) => {
    expect((await talk.says(text)).kind).toBe('refusal');
    expect(await headline('shopping list')).toMatch(/empty/);
  });
});
