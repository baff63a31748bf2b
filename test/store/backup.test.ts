import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, linkSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setImmediate } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { backup } from '../../src/store/backup.js';
import { openStore } from '../../src/store/open.js';
import { compiled } from './compiled.js';
import { folder, MONDAY, store, TUESDAY } from './folder.js';

const program = compiled();

async function command(cwd: string, args: readonly string[], database?: string) {
  const { DATABASE: _, ...rest } = process.env;
  const env = { ...rest, ...(database !== undefined && { DATABASE: database }) };
  const child = spawn(process.execPath, [program.module('backup.js'), ...args], { cwd, env });
  let stdout = '';
  let stderr = '';
  child.stdout.on('data', (text) => (stdout += text));
  child.stderr.on('data', (text) => (stderr += text));
  const [code] = await once(child, 'close');
  return { code, stdout, stderr };
}

async function withTank(place: string, name = 'Reef'): Promise<string> {
  const path = join(place, 'brinewright.db');
  const opened = await store(path);
  const { id } = await opened.createTank('ada', name, MONDAY);
  await opened.saveValues('ada', id, { 'display.length': { si: 1.2 } }, TUESDAY);
  return path;
}

describe('a backup', () => {
  test('holds everything, the log included, in one file that opens as a store', async () => {
    const place = folder();
    const path = await withTank(place);
    const to = join(place, 'copy.db');
    expect(await backup(path, to)).toBe(statSync(to).size);
    expect(readdirSync(place).filter((file) => file.startsWith('copy'))).toEqual(['copy.db']);
    expect(await (await store(to)).exportMember('ada')).toEqual(await (await store(path)).exportMember('ada'));
  });

  test('does not replace a file unless it is told to', async () => {
    const place = folder();
    const path = await withTank(place);
    const to = join(place, 'old');
    writeFileSync(to, 'an older backup');
    await expect(backup(path, to)).rejects.toThrow(
      `${to} exists and was left as it is; name another file, or add --force to replace it.`,
    );
    expect(readFileSync(to, 'utf8')).toBe('an older backup');
    await backup(path, to, { force: true });
    expect(await (await store(to)).tanks('ada')).toHaveLength(1);
  });

  test('never replaces the database itself, under whatever name', async () => {
    const place = folder();
    const path = await withTank(place);
    const alias = join(place, 'alias.db');
    linkSync(path, alias);
    for (const to of [path, alias]) {
      await expect(backup(path, to, { force: true })).rejects.toThrow(
        `${to} is the database itself and was left as it is; name another file for the backup.`,
      );
    }
    expect(await (await store(path)).tanks('ada')).toHaveLength(1);
  });

  test('that fails leaves the older one and no half of a new one', async () => {
    const place = folder();
    const path = join(place, 'damaged.db');
    const made = await openStore(path);
    const { id } = await made.createTank('ada', 'Reef', MONDAY);
    await made.saveValues('ada', id, { 'display.length': { text: 'x'.repeat(50_000) } }, MONDAY);
    await made.close();
    writeFileSync(path, readFileSync(path).fill(0xa5, 4096));
    const to = join(place, 'old');
    writeFileSync(to, 'an older backup');
    await expect(backup(path, to, { force: true })).rejects.toThrow(
      `A copy of the database ${path} does not read back whole, so it was not kept; the database is probably damaged, and earlier backups were left as they are.`,
    );
    expect(readFileSync(to, 'utf8')).toBe('an older backup');
    expect(readdirSync(place).sort()).toEqual(['damaged.db', 'old']);
  });

  test('is refused where there is nothing to copy, or nowhere to put it', async () => {
    const place = folder();
    const path = await withTank(place);
    const none = join(place, 'none.db');
    await expect(backup(none, join(place, 'copy'))).rejects.toThrow(
      `There is no database ${none}; DATABASE should name the one to back up.`,
    );
    expect(existsSync(none)).toBe(false);
    await expect(backup(path, join(place, 'no', 'copy'))).rejects.toThrow(
      `There is no folder ${join(place, 'no')} for the backup; make it first.`,
    );
    mkdirSync(join(place, 'folder'));
    await expect(backup(path, join(place, 'folder'), { force: true })).rejects.toThrow(
      `${join(place, 'folder')} is no file and was left as it is; name a file for the backup.`,
    );
    const other = join(place, 'other.db');
    new Database(other).exec('create table t (x)').close();
    await expect(backup(other, join(place, 'copy'))).rejects.toMatchObject({ code: 'corrupt' });
    writeFileSync(other, 'no database at all, but a text of some length'.repeat(100));
    await expect(backup(other, join(place, 'copy'))).rejects.toMatchObject({ code: 'corrupt' });
  });

  test('comes to an end even if something is written at every chance', async () => {
    const place = folder();
    const path = await withTank(place);
    const writing = await store(path);
    const [tank] = await writing.tanks('ada');
    await writing.saveValues('ada', tank!.id, { 'sump.length': { text: 'x'.repeat(3_000_000) } }, MONDAY);
    let done = false;
    const ending = backup(path, join(place, 'copy.db')).then(() => {
      done = true;
    });
    let writes = 0;
    for (; !done && writes < 300; writes++) {
      await writing.saveDialogue('ada', 'direct', String(writes));
      await setImmediate();
    }
    expect(writes).toBeLessThan(300);
    await ending;
  });

  test('taken while another process writes holds whole transactions up to one moment', async () => {
    const place = folder();
    const path = await withTank(place);
    const [tank] = await (await store(path)).tanks('ada');
    const writer = join(program.folder, 'writer.mjs');
    writeFileSync(
      writer,
      `import { openStore } from ${JSON.stringify(program.module('store/open.js'))};
      const store = await openStore(process.argv[2]);
      for (let n = 1; ; n++) {
        const padded = { si: n, text: 'x'.repeat(2000) };
        await store.saveValues('ada', process.argv[3], { 'sump.length': padded, 'sump.width': padded }, '${TUESDAY}');
        console.log(n);
      }`,
    );
    const child = spawn(process.execPath, [writer, path, tank!.id], { stdio: ['ignore', 'pipe', 'inherit'] });
    const sizes: number[] = [];
    try {
      for await (const line of createInterface({ input: child.stdout })) {
        if (Number(line) % 50 !== 0) continue;
        const to = join(place, `copy${line}.db`);
        await backup(path, to);
        const copy = await store(to);
        const { tanks } = (await copy.exportMember('ada')) as { tanks: { values: Record<string, unknown[]> }[] };
        const { 'sump.length': lengths, 'sump.width': widths } = tanks[0]!.values;
        expect(widths).toEqual(lengths);
        expect(lengths!.length).toBeGreaterThanOrEqual(Number(line));
        sizes.push(lengths!.length);
        if (sizes.length === 4) break;
      }
    } finally {
      child.kill('SIGKILL');
    }
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
  }, 60_000);
});

describe('the backup command', () => {
  test('copies ./brinewright.db by default and says how large the copy is', async () => {
    const place = folder();
    await withTank(place);
    const { code, stdout, stderr } = await command(place, ['copy.db']);
    const size = statSync(join(place, 'copy.db')).size.toLocaleString('en');
    expect(stdout).toBe(`Backed up ./brinewright.db to copy.db: ${size} bytes.\n`);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  });

  test('takes the database from the environment, or else from .env', async () => {
    const place = folder();
    const path = await withTank(folder(), 'From the environment');
    writeFileSync(join(place, '.env'), `DATABASE=${await withTank(folder(), 'From the file')}\n`);
    await command(place, ['first.db'], path);
    await command(place, ['second.db']);
    const names = async (file: string) => (await (await store(join(place, file))).tanks('ada')).map(({ name }) => name);
    expect([await names('first.db'), await names('second.db')]).toEqual([['From the environment'], ['From the file']]);
  });

  test('refuses in one sentence, with exit code 1', async () => {
    const place = folder();
    await withTank(place);
    writeFileSync(join(place, 'old'), 'an older backup');
    expect(await command(place, ['old'])).toEqual({
      code: 1,
      stdout: '',
      stderr: 'old exists and was left as it is; name another file, or add --force to replace it.\n',
    });
    expect((await command(place, ['old', '--force'])).code).toBe(0);
  });

  test.each([[[]], [['a', 'b']], [['a', '--quick']]])(
    'with %j shows how it is used, with exit code 2',
    async (args) => {
      expect(await command(folder(), args)).toEqual({
        code: 2,
        stdout: '',
        stderr: 'Say where to: npm run backup -- TARGET [--force]\n',
      });
    },
  );
});
