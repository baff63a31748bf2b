import { execFileSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import type { Store } from '../../src/conversation/ports.js';
import { openFile } from '../../src/store/file.js';
import { openStore, storeOn } from '../../src/store/open.js';
import { folder, MONDAY, store, TUESDAY } from './folder.js';

const full = {
  code: 'full',
  message:
    'The disk under the database is full, so this was not saved; all that was saved before is kept, and saving works again once there is room.',
};
const large = Object.fromEntries(
  Array.from({ length: 400 }, (_, i) => [`display.part${i}`, { text: `${i} `.repeat(200) }]),
);

async function fillUp(opened: Store, tank: string): Promise<void> {
  for (let i = 0; i < 200; i++) await opened.saveValues('ada', tank, large, TUESDAY);
}

test('a database that may not grow refuses what does not fit and keeps the rest', async () => {
  const path = join(folder(), 'a.db');
  const sqlite = openFile(path);
  const opened = await storeOn(sqlite);
  onTestFinished(() => opened.close());
  const { id } = await opened.createTank('ada', 'Reef', MONDAY);
  await opened.saveValues('ada', id, { 'display.length': { si: 1 } }, MONDAY);
  const before = await opened.exportMember('ada');
  sqlite.pragma('max_page_count = 30');
  await expect(fillUp(opened, id)).rejects.toMatchObject(full);
  expect(await opened.exportMember('ada')).toEqual(before);
  await opened.saveValues('ada', id, { 'display.length': { si: 2 } }, TUESDAY);
  expect(await (await store(path)).tanks('ada')).toEqual(await opened.tanks('ada'));
});

/** A disk of half a megabyte, where this process may mount one. */
function smallDisk(): string | undefined {
  const place = folder();
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=512k', 'tmpfs', place], { stdio: 'ignore' });
  } catch {
    return undefined;
  }
  onTestFinished(() => void execFileSync('umount', ['--lazy', place]));
  return place;
}

test('a full disk loses nothing, and all goes on once there is room', async ({ skip }) => {
  const place = smallDisk() ?? skip('needs the right to mount a small disk');
  const path = join(place, 'a.db');
  const opened = await openStore(path);
  const { id } = await opened.createTank('ada', 'Reef', MONDAY);
  await opened.saveValues('ada', id, { 'display.length': { si: 1 } }, MONDAY);
  writeFileSync(join(place, 'ballast'), Buffer.alloc(100_000));
  await expect(fillUp(opened, id)).rejects.toMatchObject(full);
  const kept = await opened.exportMember('ada');
  expect(kept).toMatchObject({ tanks: [{ values: { 'display.length': [{ si: 1 }] } }] });
  rmSync(join(place, 'ballast'));
  await opened.saveValues('ada', id, { 'display.length': { si: 2 } }, TUESDAY);
  const after = await opened.exportMember('ada');
  await opened.close();
  const again = await openStore(path);
  expect(await again.exportMember('ada')).toEqual(after);
  await again.close();
});

test('a new database on a full disk is refused as full', async ({ skip }) => {
  const place = smallDisk() ?? skip('needs the right to mount a small disk');
  expect(() => writeFileSync(join(place, 'ballast'), Buffer.alloc(600_000))).toThrow(/ENOSPC/);
  await expect(openStore(join(place, 'a.db'))).rejects.toMatchObject({ code: 'full' });
});
