import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';

/** Writes a file for a member to take away. @returns its path */
export type KeepFile = (name: string, content: string) => Promise<string>;

/** Files stay in a folder of the member's own, the terminal's; none is overwritten. */
export function keepIn(folder: string): KeepFile {
  return async (name, content) => {
    const extension = extname(name);
    const path = (number: number) =>
      join(folder, number === 1 ? name : `${name.slice(0, -extension.length)}-${number}${extension}`);
    let number = 1;
    while (existsSync(path(number))) number += 1;
    writeFileSync(path(number), content, { flag: 'wx', mode: 0o600 });
    return path(number);
  };
}

/** Longer than Discord takes an answer for, so that a file is there when it is sent. */
const UNTIL_SENT = 20 * 60 * 1000;

/** Each file lies in a fresh folder that nobody else's file shares, and goes when it has been sent. */
export const keepUntilSent: KeepFile = async (name, content) => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-'));
  const path = join(folder, name);
  writeFileSync(path, content, { mode: 0o600 });
  setTimeout(() => rmSync(folder, { recursive: true, force: true }), UNTIL_SENT).unref();
  return path;
};
