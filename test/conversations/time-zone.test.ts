import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Clock } from '../../src/conversation/ports.js';
import { startTalk, type Talk } from '../conversation.js';

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

/** Half past midnight of Tuesday 2 March 2027 in UTC: afternoon of that day in Auckland, of the day before in Honolulu. */
const clock: Clock = { now: () => new Date('2027-03-02T00:30:00Z') };
const says = async (id: string, say: string, at: Clock = clock) =>
  (await talk.brinewright.reply({ id }, { say }, at))[0]!;
const zoneOf = (id: string) => talk.store.timeZone(id);
const NOTE = /^Days are counted in UTC/;
const notes = ({ cautions }: { cautions: readonly { text: string }[] }) => cautions.map(({ text }) => text);

describe('a member says where their days begin', () => {
  test.each([
    ['my time zone is america/new_york', 'America/New_York'],
    ["i'm in Lisbon time", 'Europe/Lisbon'],
    ['I live in St. John’s', 'America/St_Johns'],
    ['we are based in Auckland', 'Pacific/Auckland'],
    ['Kathmandu time', 'Asia/Kathmandu'],
    ['time zone: EST', 'America/New_York'],
    ['Time zone: Pacific time', 'America/Los_Angeles'],
    ['pacific time', 'America/Los_Angeles'],
    ['i am in the Central European time zone', 'Europe/Berlin'],
    ['timezone CET', 'Europe/Berlin'],
    ['set my timezone to utc+2', 'Etc/GMT-2'],
    ['UTC-3', 'Etc/GMT+3'],
    ['EST', 'America/New_York'],
    ['my time zone is UTC+5:45', 'Asia/Kathmandu'],
    ['/timezone zone:Europe/Lisbon', 'Europe/Lisbon'],
    ['/timezone lisbon', 'Europe/Lisbon'],
    ['/timezone zone:us/pacific', 'America/Los_Angeles'],
  ])('%s', async (text, zone) => {
    expect((await says('ada', text)).kind).toBe('notice');
    expect(await zoneOf('ada')).toBe(zone);
  });

  test('the zone and the time there are said, to that member alone', async () => {
    const reply = await says('ada', 'time zone: EST');
    expect(reply.headline).toBe('Your time zone is America/New_York now: it is Mon 1 Mar, 19:30 there.');
    expect(reply.private).toBe(true);
    expect((await says('ada', 'what is my time zone?')).headline).toBe(
      'Your time zone is America/New_York: it is Mon 1 Mar, 19:30 there.',
    );
    const fixed = await says('ada', 'my time zone is utc+2');
    expect(fixed.headline).toBe('Your time zone is UTC+2 now: it is Tue 2 Mar, 02:30 there.');
    expect(fixed.body).toMatch(/name a city instead/);
  });

  test.each([
    ['my timezone is nonsense', 'nonsense'],
    ['time zone: UTC+15', 'UTC+15'],
    ['/timezone zone:Atlantis/Capital', 'Atlantis/Capital'],
  ])('%s: one sentence with an example', async (text, said) => {
    const reply = await says('ada', text);
    expect(reply.kind).toBe('refusal');
    expect(reply.text).toBe(
      `I know no time zone “${said}”: write a big city or a zone, such as “my time zone is Lisbon” or “Pacific time”.`,
    );
    expect(await zoneOf('ada')).toBeUndefined();
  });

  test.each([
    ['IST', 'IST', 'India, Israel or Ireland', 'india', 'Asia/Kolkata'],
    ['time zone: CST', 'CST', 'the central US, China or Cuba', 'us central', 'America/Chicago'],
    ['my time zone is bst', 'bst', 'Britain or Bangladesh', 'london', 'Europe/London'],
  ])('%s is the time of several places and asked about', async (text, name, places, answer, zone) => {
    const reply = await says('ada', text);
    expect(reply).toMatchObject({
      kind: 'question',
      asks: ['zone'],
      headline: `“${name}” is the time of ${places}: which is yours?`,
    });
    expect(await zoneOf('ada')).toBeUndefined();
    await says('ada', answer);
    expect(await zoneOf('ada')).toBe(zone);
  });

  test('a button under that question answers it', async () => {
    const [first] = (await says('ada', 'IST')).actions ?? [];
    expect(first).toEqual({ verb: 'say', label: 'India', say: '/timezone zone:Asia/Kolkata' });
  });

  test('a question about zones is left by saying something else', async () => {
    await says('ada', 'IST');
    expect((await says('ada', 'is 300 W enough for 90 gal at 78F in a 66F room')).kind).toBe('answer');
    await says('ada', 'india');
    expect(await zoneOf('ada')).toBeUndefined();
  });

  test.each([
    'i am in the middle of the cycle',
    "i'm in no time",
    'warm up time',
    'cat',
    'west',
    'we are in a flat with 66 F',
  ])('%s names no zone', async (text) => {
    await says('ada', text);
    expect(await zoneOf('ada')).toBeUndefined();
  });

  test.each(['/timezone', 'timezone', 'what time zone do you use?', 'change my time zone'])(
    '%s shows it',
    async (text) => {
      expect((await says('ada', text)).headline).toBe(
        'You said no time zone, so your days are counted in UTC, where it is Tue 2 Mar, 00:30.',
      );
    },
  );

  test('zones are suggested while one is typed', async () => {
    const complete = (typed: string) => talk.brinewright.complete({ id: 'ada' }, 'timezone', 'zone', typed);
    expect((await complete('')).slice(0, 2)).toEqual(['Eastern time', 'Central time']);
    expect(await complete('new yo')).toEqual(['America/New_York']);
    expect(await complete('lisb')).toEqual(['Europe/Lisbon']);
    expect(await complete('europe/')).toHaveLength(25);
  });
});

describe('one instant, two members, two days', () => {
  const kept = async (id: string) => JSON.stringify(await talk.store.exportMember(id));

  test('what is ticked off today', async () => {
    await says('moana', 'i live in Auckland');
    await says('keola', 'my time zone is Honolulu');
    for (const id of ['moana', 'keola']) await says(id, 'start my build on 2027-02-20');
    expect((await says('moana', 'i glued the rock today')).headline).toMatch(/^Ticked off: .*rock.*, Tue 2 Mar\./);
    expect((await says('keola', 'i glued the rock today')).headline).toMatch(/^Ticked off: .*rock.*, Mon 1 Mar\./);
    expect((await says('keola', 'i drilled the tank yesterday')).headline).toMatch(/, Sun 28 Feb\./);
    expect(await kept('moana')).toContain('"done":"2027-03-02"');
    expect(await kept('keola')).toContain('"done":"2027-03-01"');
  });

  test('where a build begins, and what is overdue', async () => {
    await says('moana', 'i live in Auckland');
    await says('keola', 'i live in Honolulu');
    expect((await says('moana', 'start my build')).headline).toMatch(/from Tue 2 Mar\.$/);
    expect((await says('keola', 'start my build')).headline).toMatch(/from Mon 1 Mar\.$/);
    expect((await says('keola', 'start my build tomorrow')).headline).toMatch(/to Tue 2 Mar\.$/);
    expect((await says('keola', 'show my schedule')).headline).toMatch(/^Next: measure the way in.*, Tue 2 Mar\./);
    expect((await says('moana', 'show my schedule')).headline).toMatch(/^Now: measure the way in/);
  });

  test('the day of a purchase', async () => {
    await says('moana', 'i live in Auckland');
    await says('keola', 'i live in Honolulu');
    for (const id of ['moana', 'keola']) {
      await says(id, 'add a pump and a heater at 45 to my shopping list');
      await says(id, 'add salt at 30 to my shopping list');
      await says(id, 'bought the salt');
      await says(id, 'bought the heater for 40 yesterday');
    }
    expect(await kept('moana')).toContain('"bought":"2027-03-02"');
    expect(await kept('moana')).toContain('"bought":"2027-03-01"');
    expect(await kept('keola')).toContain('"bought":"2027-03-01"');
    expect(await kept('keola')).toContain('"bought":"2027-02-28"');
  });

  test.each(['how long is the day at 25 N today', '/light day-length latitude:25 N date:today'])('%s', async (say) => {
    await says('moana', 'i live in Auckland');
    await says('keola', 'i live in Honolulu');
    expect((await says('moana', say)).text).toContain('date 2027-03-02');
    expect((await says('keola', say)).text).toContain('date 2027-03-01');
  });

  test('as the clock moves on, the day changes at midnight of the member', async () => {
    await says('ada', 'my time zone is Australia/Lord_Howe');
    const day = async (at: string) =>
      (await says('ada', 'how long is the day at 25 N today', { now: () => new Date(at) })).inputs.find(
        ({ id }) => id === 'date',
      )?.value;
    expect(await day('2027-10-02T13:29:59Z')).toBe('2027-10-02');
    expect(await day('2027-10-02T13:30:00Z')).toBe('2027-10-03');
    // The clocks were put forward by half an hour in between.
    expect(await day('2027-10-03T12:59:59Z')).toBe('2027-10-03');
    expect(await day('2027-10-03T13:00:00Z')).toBe('2027-10-04');
  });
});

describe('while no zone was said', () => {
  test('a reply that depends on the day says once that it is counted in UTC', async () => {
    const first = await says('ada', 'start my build today');
    expect(notes(first).filter((text) => NOTE.test(text))).toHaveLength(1);
    expect(first.text).toContain('Note: Days are counted in UTC: say, for example, “my time zone is Lisbon”');
    for (const text of ['show my schedule', 'i drilled the tank yesterday', 'how long is the day at 25 N today'])
      expect(notes(await says('ada', text)).join(), text).not.toMatch(NOTE);
  });

  test.each([
    ['how long is the day at 25 N tomorrow', true],
    ['/light day-length latitude:25 N date:today', true],
    ['/light day-length on friday at 25 N', true],
    ['how long is the day at 25 N on 21 june', false],
    ['is 300 W enough for 90 gal at 78F in a 66F room', false],
  ])('%s: %s', async (text, depends) => {
    expect(notes(await says('ada', text)).some((note) => NOTE.test(note))).toBe(depends);
  });

  test('so does a call without language', async () => {
    const inputs = { latitude: '25 deg', date: 'today' };
    const [reply] = await talk.brinewright.reply({ id: 'ada' }, { calculation: 'light.day_length', inputs }, clock);
    expect(reply!.kind).toBe('answer');
    expect(notes(reply!).some((note) => NOTE.test(note))).toBe(true);
  });

  test('the zone of the clock is the member’s, and nothing needs saying', async () => {
    const wall: Clock = { ...clock, zone: 'Pacific/Honolulu' };
    const reply = await says('ada', 'start my build today', wall);
    expect(reply.headline).toMatch(/from Mon 1 Mar\.$/);
    expect(notes(reply).join()).not.toMatch(NOTE);
    expect((await says('ada', '/timezone', wall)).headline).toBe(
      'You said no time zone, so your days are counted in Pacific/Honolulu, where it is Mon 1 Mar, 14:30.',
    );
    await says('ada', 'i live in Auckland', wall);
    expect((await says('ada', 'start my build today', wall)).headline).toMatch(/to Tue 2 Mar\.$/);
  });
});

describe('3/4 is read in the order that the member writes, and said', () => {
  test.each([
    ['Europe/Berlin', '3/4', 'Sat 3 Apr', '3 April'],
    ['America/Toronto', '3/4', 'Thu 4 Mar', '4 March'],
    ['Pacific/Honolulu', '4/3', 'Sat 3 Apr', '3 April'],
  ])('in %s %s is %s', async (zone, said, shown, long) => {
    await says('ada', `my time zone is ${zone}`);
    const reply = await says('ada', `start my build on ${said} with live rock`);
    expect(reply.headline).toContain(`from ${shown}.`);
    expect(notes(reply)).toContain(`“${said}” is read as ${long}.`);
  });

  test('with US units the month stands first', async () => {
    await says('ada', 'in us units');
    expect((await says('ada', 'start my build on 4/3')).headline).toMatch(/from Sat 3 Apr\.$/);
  });

  test('5/30 is a date only where a date is wanted, and has one reading', async () => {
    const started = await says('ada', 'start my build on 5/30');
    expect(started.headline).toMatch(/from Sun 30 May\.$/);
    expect(notes(started).join()).not.toContain('is read as');
    expect((await says('ada', '/light day-length latitude:25 N date:5/30')).text).toContain('date 2027-05-30');
    expect((await says('ada', 'how long is the day at 25 N on 3/4')).text).toContain('“3/4” is read as 3 April.');
    expect((await says('ada', 'is 300 W enough for 90 gal at 78F in a 66F room on 5/30')).text).not.toContain('May');
  });

  test.each([
    ['i glued the rock with 1/2 in rods', 'Tue 2 Mar'],
    ['i drilled the tank for 3/4 bulkheads on sunday', 'Sun 28 Feb'],
    ['i glued the rock two and a half weeks ago', 'Sat 13 Feb'],
    ['i glued the rock on the 5th', 'Fri 5 Feb'],
    ['i glued the rock and it cured in 3 days', 'Tue 2 Mar'],
    ['i glued the rock on saturday', 'Sat 27 Feb'],
  ])('%s: %s', async (text, shown) => {
    await says('ada', 'start my build on 2027-02-20');
    expect((await says('ada', text)).headline).toContain(`, ${shown}.`);
  });

  test('a day that does not exist changes nothing', async () => {
    await says('ada', 'start my build today');
    expect((await says('ada', '/plan move step:leak test date:2027-02-30')).kind).toBe('refusal');
  });
});

test('what is kept about a member holds the zone, and goes with the rest', async () => {
  await says('ada', 'i live in Lisbon');
  await says('ada', '/mydata show');
  expect(JSON.parse(talk.files.get('my-brinewright-data.json')!)).toMatchObject({ time_zone: 'Europe/Lisbon' });
  await says('ada', '/mydata delete confirm:delete');
  expect(await zoneOf('ada')).toBeUndefined();
  expect(await talk.store.exportMember('ada')).toMatchObject({ time_zone: null, dialogues: [] });
});
