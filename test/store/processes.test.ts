import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { chmodSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { describe, expect, test } from 'vitest';
import { ANSWERS_KEPT } from '../../src/store/answers.js';
import { openStore } from '../../src/store/open.js';
import { compiled } from './compiled.js';
import { folder, MONDAY, store, TUESDAY } from './folder.js';

type History = { si: number; said_at: string; replaced_at: string | null }[];
interface Export {
  tanks: { name: string; current: boolean; values: Record<string, History> }[];
  answers: { given: unknown }[];
}

const program = compiled();

/** Runs a program that has the store of `path` open as `store`, and one argument more as `tank`. */
function start(path: string, body: string, ...more: string[]): ChildProcess {
  const file = join(program.folder, `${randomUUID()}.mjs`);
  const lines = [
    `import { openStore } from ${JSON.stringify(program.module('store/open.js'))};`,
    'const [path, tank] = process.argv.slice(2);',
    'const store = await openStore(path);',
    body,
  ];
  writeFileSync(file, lines.join('\n'));
  return spawn(process.execPath, [file, path, ...more], { stdio: ['ignore', 'pipe', 'inherit'] });
}

async function finished(child: ChildProcess): Promise<void> {
  const [code] = await once(child, 'exit');
  expect(code).toBe(0);
}

/** Twenty values that belong together, one more each time. */
const keys = Array.from({ length: 20 }, (_, i) => `display.part${i}`);
const together = `
  const keys = ${JSON.stringify(keys)};
  const exported = await store.exportMember('ada');
  let n = exported.tanks[0].values[keys[0]]?.length ?? 0;
  for (;;) {
    n++;
    await store.saveValues('ada', tank, Object.fromEntries(keys.map((key) => [key, { si: n }])), '${TUESDAY}');
    await store.saveAnswer({ member: 'ada', calculation: 'heater.size', given: String(n), at: '${TUESDAY}' });
    if (n % 3 === 0) await store.createTank('ada', 'Tank ' + n, '${TUESDAY}');
    console.log(n);
  }`;

test('a process that is killed while it writes leaves whole transactions, and every one it reported', async () => {
  const path = join(folder(), 'a.db');
  const first = await openStore(path);
  const { id } = await first.createTank('ada', 'Reef', MONDAY);
  await first.close();
  let reported = 0;
  // Killed between the values and their answer: the next process goes on with the number after it.
  const unanswered = new Set<number>();
  for (const lines of [1, 4, 9, 14]) {
    const child = start(path, together, id);
    const until = reported + lines;
    for await (const line of createInterface({ input: child.stdout! })) {
      reported = Number(line);
      if (reported === until) child.kill('SIGKILL');
    }
    const opened = await openStore(path);
    const { tanks, answers } = (await opened.exportMember('ada')) as unknown as Export;
    const histories = keys.map((key) => tanks[0]!.values[key]!.map((version) => version.si));
    const count = histories[0]!.length;
    expect(histories).toEqual(keys.map(() => Array.from({ length: count }, (_, i) => i + 1)));
    expect(count).toBeGreaterThanOrEqual(reported);
    const newest = Number(answers.at(-1)?.given);
    expect([count - 1, count]).toContain(newest);
    const written = Array.from({ length: newest }, (_, i) => i + 1).filter((n) => !unanswered.has(n));
    expect(answers.map((answer) => answer.given)).toEqual(written.slice(-ANSWERS_KEPT));
    if (newest < count) unanswered.add(count);
    expect(tanks.filter((tank) => tank.current)).toHaveLength(1);
    await opened.close();
    reported = count;
  }
}, 60_000);

const appending = (mark: number) => `
  for (let n = 1; n <= 50; n++) {
    await store.saveValues('ada', tank, { 'display.length': { si: ${mark} + n } }, '${TUESDAY}');
    await store.saveAnswer({ member: 'ada', calculation: 'heater.size', given: String(${mark} + n), at: '${TUESDAY}' });
  }
  await store.close();`;

/** Numbers 1 to 50 of each writer, in the order in which that writer wrote them. */
function complete(numbers: readonly number[], writers: readonly number[]): void {
  expect(numbers).toHaveLength(50 * writers.length);
  for (const mark of writers) {
    const own = numbers.filter((number) => number > mark && number <= mark + 50);
    expect(own).toEqual(Array.from({ length: 50 }, (_, i) => mark + i + 1));
  }
}

describe('nothing is lost when one tank is written', () => {
  async function writtenBy(write: (path: string, tank: string) => Promise<unknown>, writers: readonly number[]) {
    const path = join(folder(), 'a.db');
    const opened = await store(path);
    const { id } = await opened.createTank('ada', 'Reef', MONDAY);
    await write(path, id);
    const { tanks, answers } = (await opened.exportMember('ada')) as unknown as Export;
    const history = tanks[0]!.values['display.length']!;
    complete(
      history.map((version) => version.si),
      writers,
    );
    complete(
      answers.map((answer) => Number(answer.given)),
      writers,
    );
    expect(history.map((version) => version.replaced_at)).toEqual([...history.slice(1).map(() => TUESDAY), null]);
  }

  test('by three processes at once', async () => {
    const writers = [0, 1000, 2000];
    await writtenBy(
      (path, tank) => Promise.all(writers.map((mark) => finished(start(path, appending(mark), tank)))),
      writers,
    );
  }, 60_000);

  test('by two stores of one process at once', async () => {
    const writers = [0, 1000];
    await writtenBy(async (path, tank) => {
      const stores = [await store(path), await store(path)];
      await Promise.all(
        writers.map(async (mark, i) => {
          for (let n = 1; n <= 50; n++) {
            await stores[i]!.saveValues('ada', tank, { 'display.length': { si: mark + n } }, TUESDAY);
            const given = String(mark + n);
            await stores[i]!.saveAnswer({ member: 'ada', calculation: 'heater.size', given, at: TUESDAY });
          }
        }),
      );
    }, writers);
  }, 60_000);

  test('by calls that do not wait for each other, and closing waits for them', async () => {
    const path = join(folder(), 'a.db');
    const opened = await openStore(path);
    const { id } = await opened.createTank('ada', 'Reef', MONDAY);
    const calls = Array.from({ length: 50 }, (_, i) =>
      opened.saveValues('ada', id, { 'display.length': { si: i + 1 } }, TUESDAY),
    );
    await Promise.all([...calls, opened.close()]);
    const { tanks } = (await (await store(path)).exportMember('ada')) as unknown as Export;
    complete(
      tanks[0]!.values['display.length']!.map((version) => version.si),
      [0],
    );
  });
});

test('processes that meet at a new file all find it ready', async () => {
  const path = join(folder(), 'new', 'a.db');
  const create = (name: string) => `await store.createTank('ada', '${name}', '${MONDAY}'); await store.close();`;
  await Promise.all(['A', 'B', 'C', 'D'].map((name) => finished(start(path, create(name)))));
  const tanks = await (await store(path)).tanks('ada');
  expect(tanks.map((tank) => tank.name)).toEqual(['A', 'B', 'C', 'D']);
  expect(tanks.filter((tank) => tank.current)).toHaveLength(1);
}, 60_000);

test('a process that may not write a file leaves nothing beside it', async () => {
  const place = folder();
  const path = join(place, 'a.db');
  await (await openStore(path)).close();
  chmodSync(place, 0o777);
  chmodSync(path, 0o444);
  const body = `
    await store.close();
    if (process.getuid() === 0) process.setuid(65534);
    const refusal = await openStore(tank).catch((error) => error.code);
    process.exitCode = refusal === 'read-only' ? 0 : 1;`;
  await finished(start(':memory:', body, path));
  expect(readdirSync(place)).toEqual(['a.db']);
});
