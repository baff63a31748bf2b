import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Store } from '../../src/conversation/ports.js';
import { openStore } from '../../src/store/open.js';

export const MONDAY = '2027-03-01T09:00:00.000Z';
export const TUESDAY = '2027-03-02T09:00:00.000Z';
export const WEDNESDAY = '2027-03-03T09:00:00.000Z';

/** An empty folder that goes with the test. */
export function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'brinewright-store-'));
  onTestFinished(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

/** A store in a file, closed with the test. */
export async function store(path = join(folder(), 'a.db')): Promise<Store> {
  const opened = await openStore(path);
  onTestFinished(() => opened.close());
  return opened;
}
