import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openStore } from '../../src/store/open.js';
import { folder, MONDAY, store, TUESDAY, WEDNESDAY } from './folder.js';

test('a new tank is empty and becomes the current one, in the place of the last', async () => {
  const ours = await store();
  const first = await ours.createTank('ada', 'Reef', MONDAY);
  expect(first).toEqual({ id: first.id, member: 'ada', name: 'Reef', current: true, values: {} });
  const second = await ours.createTank('ada', 'Nano', TUESDAY);
  expect(await ours.tanks('ada')).toEqual([{ ...first, current: false }, second]);
});

test('a member without tanks has none, and nobody sees those of another', async () => {
  const ours = await store();
  await ours.createTank('ada', 'Reef', MONDAY);
  expect(await ours.tanks('ben')).toEqual([]);
});

test('useTank switches the current tank', async () => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  await ours.createTank('ada', 'Nano', TUESDAY);
  const bens = await ours.createTank('ben', 'Reef', TUESDAY);
  await ours.useTank('ada', reef.id);
  await ours.useTank('ada', reef.id);
  expect((await ours.tanks('ada')).map((tank) => [tank.name, tank.current])).toEqual([
    ['Reef', true],
    ['Nano', false],
  ]);
  expect(await ours.tanks('ben')).toEqual([bens]);
});

test.each(['Reef', 'reef', 'REEF', 'Ｒeef'])('the name %s is taken once there is a Reef', async (name) => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  const nano = await ours.createTank('ada', 'Nano', TUESDAY);
  const refused = {
    code: 'name-taken',
    message: 'You already have a tank called "Reef"; nothing was changed, and any other name will do.',
  };
  await expect(ours.createTank('ada', name, WEDNESDAY)).rejects.toMatchObject(refused);
  await expect(ours.renameTank('ada', nano.id, name)).rejects.toMatchObject(refused);
  expect(await ours.tanks('ada')).toEqual([{ ...reef, current: false }, nano]);
  await expect(ours.createTank('ben', name, MONDAY)).resolves.toMatchObject({ name });
});

test('letters beyond ASCII fold too', async () => {
  const ours = await store();
  await ours.createTank('ada', 'Äquator', MONDAY);
  await expect(ours.createTank('ada', 'äQUATOR', MONDAY)).rejects.toMatchObject({ code: 'name-taken' });
});

test('a tank can change its name, or only the case of it', async () => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  await ours.renameTank('ada', reef.id, 'REEF');
  expect(await ours.tanks('ada')).toEqual([{ ...reef, name: 'REEF' }]);
  await ours.renameTank('ada', reef.id, 'Lagoon');
  await expect(ours.createTank('ada', 'Reef', TUESDAY)).resolves.toMatchObject({ current: true });
});

test('a tank that is removed takes its values along and leaves no other current', async () => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  const nano = await ours.createTank('ada', 'Nano', TUESDAY);
  await ours.saveValues('ada', nano.id, { 'display.length': { si: 0.45 } }, TUESDAY);
  await ours.removeTank('ada', nano.id);
  expect(await ours.tanks('ada')).toEqual([{ ...reef, current: false }]);
  expect(JSON.stringify(await ours.exportMember('ada'))).not.toContain('display.length');
});

test('values are kept by key as they were said, and only those named change', async () => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  const nano = await ours.createTank('ada', 'Nano', MONDAY);
  await ours.saveValues(
    'ada',
    reef.id,
    { 'display.length': { si: 1.2192, unit: 'in' }, 'display.glass': { text: 'acrylic' } },
    MONDAY,
  );
  await ours.saveValues(
    'ada',
    reef.id,
    { 'display.length': { si: 1.5, unit: 'm' }, 'room.temperature': { si: 291.65 } },
    TUESDAY,
  );
  await ours.saveValues('ada', reef.id, {}, WEDNESDAY);
  const tanks = await ours.tanks('ada');
  expect(tanks.find((tank) => tank.id === nano.id)?.values).toEqual({});
  expect(tanks.find((tank) => tank.id === reef.id)?.values).toEqual({
    'display.glass': { text: 'acrylic' },
    'display.length': { si: 1.5, unit: 'm' },
    'room.temperature': { si: 291.65 },
  });
});

test('a value that is replaced or removed stays in the history', async () => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  const key = 'display.length';
  await ours.saveValues('ada', reef.id, { [key]: { si: 1.2, unit: 'm' } }, MONDAY);
  await ours.saveValues('ada', reef.id, { [key]: { si: 1.5, unit: 'm' } }, TUESDAY);
  await ours.removeValue('ada', reef.id, key, WEDNESDAY);
  await ours.removeValue('ada', reef.id, 'display.width', WEDNESDAY);
  expect((await ours.tanks('ada'))[0]?.values).toEqual({});
  await ours.saveValues('ada', reef.id, { [key]: { si: 1.6, unit: 'm' } }, WEDNESDAY);
  expect((await ours.tanks('ada'))[0]?.values).toEqual({ [key]: { si: 1.6, unit: 'm' } });
  expect(await ours.exportMember('ada')).toMatchObject({
    tanks: [
      {
        values: {
          [key]: [
            { si: 1.2, unit: 'm', said_at: MONDAY, replaced_at: TUESDAY },
            { si: 1.5, unit: 'm', said_at: TUESDAY, replaced_at: WEDNESDAY },
            { si: 1.6, unit: 'm', said_at: WEDNESDAY, replaced_at: null },
          ],
        },
      },
    ],
  });
});

test('a tank of another member, or of nobody, is not found and not changed', async () => {
  const ours = await store();
  const reef = await ours.createTank('ada', 'Reef', MONDAY);
  await ours.saveValues('ada', reef.id, { 'display.length': { si: 1 } }, MONDAY);
  const before = await ours.exportMember('ada');
  for (const [member, tank] of [
    ['ben', reef.id],
    ['ada', 'none'],
  ] as const) {
    const calls = [
      ours.useTank(member, tank),
      ours.renameTank(member, tank, 'Mine'),
      ours.removeTank(member, tank),
      ours.saveValues(member, tank, { 'display.length': { si: 2 } }, TUESDAY),
      ours.removeValue(member, tank, 'display.length', TUESDAY),
    ];
    for (const call of calls) await expect(call).rejects.toThrow(/^no such tank$/);
  }
  expect(await ours.exportMember('ada')).toEqual(before);
});

test('everything is there again after the file was closed, and :memory: keeps nothing', async () => {
  const path = join(folder(), 'a.db');
  const first = await openStore(path);
  const reef = await first.createTank('ada', 'Reef', MONDAY);
  await first.saveValues('ada', reef.id, { 'display.length': { si: 1 / 3, unit: 'm', text: '' } }, MONDAY);
  const before = await first.exportMember('ada');
  await first.close();
  await first.close();
  expect(await (await store(path)).exportMember('ada')).toEqual(before);

  const fleeting = await openStore(':memory:');
  await fleeting.createTank('ada', 'Reef', MONDAY);
  await fleeting.close();
  expect(await (await store(':memory:')).tanks('ada')).toEqual([]);
});
