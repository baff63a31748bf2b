import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { METRIC, US } from '../../src/core/show-value.js';
import { ANSWERS_KEPT } from '../../src/store/answers.js';
import { folder, MONDAY, store, TUESDAY } from './folder.js';

test('preferences are those saved last, of each member', async () => {
  const ours = await store();
  expect(await ours.preferences('ada')).toBeUndefined();
  await ours.savePreferences('ada', US);
  await ours.savePreferences('ada', METRIC);
  await ours.savePreferences('ben', US);
  expect(await ours.preferences('ada')).toEqual(METRIC);
  expect(await ours.preferences('ben')).toEqual(US);
});

test('a member who only made a tank has no preferences, and making one keeps them', async () => {
  const ours = await store();
  await ours.createTank('ada', 'Reef', MONDAY);
  expect(await ours.preferences('ada')).toBeUndefined();
  await ours.savePreferences('ada', US);
  await ours.createTank('ada', 'Nano', MONDAY);
  await ours.saveDialogue('ada', 'here', '{}');
  expect(await ours.preferences('ada')).toEqual(US);
});

test('the time zone is the one saved last, and stands beside the preferences', async () => {
  const ours = await store();
  expect(await ours.timeZone('ada')).toBeUndefined();
  await ours.saveTimeZone('ada', 'Europe/Lisbon');
  expect(await ours.preferences('ada')).toBeUndefined();
  await ours.savePreferences('ada', US);
  await ours.saveTimeZone('ada', 'Pacific/Auckland');
  expect(await ours.timeZone('ada')).toBe('Pacific/Auckland');
  expect(await ours.preferences('ada')).toEqual(US);
  expect(await ours.timeZone('ben')).toBeUndefined();
});

test('a dialogue has one state in each place', async () => {
  const ours = await store();
  expect(await ours.dialogue('ada', 'club/help')).toBeUndefined();
  await ours.saveDialogue('ada', 'club/help', '{"asked":"length"}');
  await ours.saveDialogue('ada', 'club/help', '{"asked":"width"}');
  await ours.saveDialogue('ada', 'direct', '{}');
  expect(await ours.dialogue('ada', 'club/help')).toBe('{"asked":"width"}');
  expect(await ours.dialogue('ada', 'direct')).toBe('{}');
  expect(await ours.dialogue('ben', 'direct')).toBeUndefined();
});

test('an answer is found by its id', async () => {
  const ours = await store();
  const answer = { member: 'ada', calculation: 'heater.size', given: '{"heaters":2}', at: MONDAY };
  const id = await ours.saveAnswer(answer);
  expect(await ours.saveAnswer(answer)).not.toBe(id);
  expect(await ours.answer(id)).toEqual({ id, ...answer });
  expect(await ours.answer('none')).toBeUndefined();
});

test('the newest answers of a member are kept, even when all were given at one instant', async () => {
  const ours = await store(':memory:');
  const save = (member: string) => ours.saveAnswer({ member, calculation: 'heater.size', given: '{}', at: MONDAY });
  const bens = await save('ben');
  const ids: string[] = [];
  for (let i = 0; i < ANSWERS_KEPT + 3; i++) ids.push(await save('ada'));
  const kept = await Promise.all(ids.map(async (id) => (await ours.answer(id)) !== undefined));
  expect(kept).toEqual(ids.map((_, i) => i >= 3));
  expect(await ours.answer(bens)).toBeDefined();
});

test('an export holds everything about a member and of nobody else', async () => {
  const ours = await store();
  const later = await ours.createTank('ada', 'Reef', TUESDAY);
  const early = await ours.createTank('ada', 'Nano', MONDAY);
  await ours.createTank('ben', 'Pool', MONDAY);
  await ours.savePreferences('ada', US);
  await ours.saveTimeZone('ada', 'Europe/Lisbon');
  await ours.saveValues('ada', early.id, { 'room.temperature': { si: 291.65, unit: 'degF', text: '65' } }, MONDAY);
  const [pump] = await ours.addEntries('ada', early.id, 'purchase', ['{"item":"pump","price":80}'], MONDAY);
  await ours.changeEntry('ada', early.id, pump!, '{"item":"pump","price":75}', TUESDAY);
  await ours.saveDialogue('ada', 'direct', '{"asked":"length"}');
  await ours.saveDialogue('ada', 'club/help', 'not JSON');
  const answer = await ours.saveAnswer({
    member: 'ada',
    calculation: 'heater.size',
    given: '{"heaters":2}',
    at: MONDAY,
  });
  const exported = await ours.exportMember('ada');
  expect(JSON.parse(JSON.stringify(exported))).toEqual(exported);
  expect(exported).toEqual({
    member: 'ada',
    preferences: US,
    time_zone: 'Europe/Lisbon',
    tanks: [
      {
        id: early.id,
        name: 'Nano',
        current: true,
        created_at: MONDAY,
        values: {
          'room.temperature': [{ si: 291.65, unit: 'degF', text: '65', said_at: MONDAY, replaced_at: null }],
        },
        lists: {
          purchase: [
            { id: pump, item: 'pump', price: 80, said_at: MONDAY, replaced_at: TUESDAY },
            { id: pump, item: 'pump', price: 75, said_at: TUESDAY, replaced_at: null },
          ],
        },
      },
      { id: later.id, name: 'Reef', current: false, created_at: TUESDAY, values: {}, lists: {} },
    ],
    dialogues: [
      { place: 'club/help', state: 'not JSON' },
      { place: 'direct', state: { asked: 'length' } },
    ],
    answers: [{ id: answer, calculation: 'heater.size', given: { heaters: 2 }, at: MONDAY }],
  });
});

test('of a member nobody knows there is nothing to export or forget', async () => {
  const ours = await store();
  const nothing = { member: 'ada', preferences: null, time_zone: null, tanks: [], dialogues: [], answers: [] };
  expect(await ours.exportMember('ada')).toEqual(nothing);
  expect(await ours.forgetMember('ada')).toBe(0);
});

test('to forget a member leaves no row and no trace in the files, and takes nothing from others', async () => {
  const place = folder();
  const ours = await store(join(place, 'a.db'));
  const reef = await ours.createTank('ada', 'Secret lagoon', MONDAY);
  await ours.saveValues('ada', reef.id, { 'display.length': { si: 1 }, 'display.width': { si: 1 } }, MONDAY);
  await ours.saveValues('ada', reef.id, { 'display.length': { si: 2, text: 'about two secret metres' } }, TUESDAY);
  await ours.addEntries('ada', reef.id, 'purchase', ['{"item":"a secret pump"}'], MONDAY);
  await ours.saveTimeZone('ada', 'Secret/Lagoon');
  await ours.saveDialogue('ada', 'direct', '"a secret state"');
  await ours.saveAnswer({ member: 'ada', calculation: 'heater.size', given: '"a secret input"', at: MONDAY });
  await ours.createTank('ben', 'Pool', MONDAY);
  const bens = await ours.exportMember('ben');
  const traces = () => readdirSync(place).filter((file) => /secret/i.test(readFileSync(join(place, file), 'latin1')));
  expect(traces()).not.toEqual([]);

  // 3 values, an entry, a tank, a dialogue, an answer and the member.
  expect(await ours.forgetMember('ada')).toBe(8);
  expect(await ours.exportMember('ada')).toMatchObject({
    preferences: null,
    time_zone: null,
    tanks: [],
    dialogues: [],
    answers: [],
  });
  expect(traces()).toEqual([]);
  expect(await ours.exportMember('ben')).toEqual(bens);
});
