import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { HEATER, program } from './asking.js';

const { folder, run } = program();

const json = (stdout: string) =>
  stdout
    .split('\n')
    .filter(Boolean)
    .map((line) => JSON.parse(line));

/** One line, which is a sentence and no stack. */
const ONE_SENTENCE = /^[A-Z][^\n]{20,400}\n$/;

describe('the program', () => {
  test('answers a message, and prints nothing else', () => {
    const plain = run(['--data', ':memory:', HEATER]);
    expect(plain).toMatchObject({ status: 0, stderr: '' });
    const asJson = run(['--json', '--data', ':memory:', ...HEATER.split(' ')]);
    expect(asJson).toMatchObject({ status: 0, stderr: '' });
    const [reply, ...more] = json(asJson.stdout);
    expect(more).toEqual([]);
    expect(reply.kind).toBe('answer');
    expect(plain.stdout).toBe(`${reply.text}\n`);
  });

  test('answers lines in one conversation; a bad line and a refusal are no failure', () => {
    const lines = [
      HEATER,
      '{bad',
      '{"say":"what if the room is 60F","explain":true}',
      'heater for -90 gal at 78F, room 66F',
    ];
    const { status, stdout, stderr } = run(['--json', '--data', ':memory:'], `${lines.join('\r\n')}\r\n`);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const replies = json(stdout);
    expect(replies.map(({ line, kind }) => [line, kind])).toEqual([
      [1, 'answer'],
      [2, 'error'],
      [3, 'answer'],
      [4, 'refusal'],
    ]);
    expect(replies[2].read.measurements).toHaveLength(1);
  });

  test('says nothing where nothing is asked', () => {
    expect(run(['--json', '--data', ':memory:'])).toEqual({ status: 0, stdout: '', stderr: '' });
  });

  test('keeps tanks of members and of files apart, from one process to the next', () => {
    const page = (data: string, member: string) => run(['--data', data, '--member', member, 'show my tank']).stdout;
    run(['--data', 'one.db', '--member', 'ada', 'my tank is 131x60x55 cm']);
    run(['--data', 'two.db', '--member', 'ada', 'my tank is 87x45x50 cm']);
    expect(page('one.db', 'ada')).toContain('131 cm');
    expect(page('one.db', 'ada')).not.toContain('87 cm');
    expect(page('two.db', 'ada')).toContain('87 cm');
    expect(page('one.db', 'bea')).not.toContain('131');
    expect(page('one.db', 'me')).not.toContain('131');
    expect(page(':memory:', 'ada')).not.toContain('131');
  });

  test('goes on with the conversation of the process before', () => {
    run(['--data', 'talk.db', HEATER]);
    const [reply] = json(run(['--json', '--data', 'talk.db', 'what if the room is 60F']).stdout);
    expect(reply).toMatchObject({ kind: 'answer', calculation: 'heater.size' });
    expect(reply.inputs.find(({ id }: { id: string }) => id === 'heater_power')).toMatchObject({
      si: 300,
      from: 'earlier',
    });
  });

  test('keeps its database where .env says', () => {
    writeFileSync(join(folder, '.env'), 'DATABASE=from-env.db\n');
    run(['my tank is 131x60x55 cm']);
    expect(existsSync(join(folder, 'from-env.db'))).toBe(true);
    expect(readdirSync(folder)).not.toContain('brinewright.db');
  });
});

describe('a failure is one sentence on standard error, and status 1', () => {
  test.each([
    ['an unknown option', ['--jsn', 'hello'], /There is no option --jsn/],
    ['an option without its value', ['--member'], /The option --member needs a value/],
    ['a database in a folder that cannot be', ['--data', '/dev/null/a.db', 'hello'], /\/dev\/null/],
  ])('%s', (_, args, says) => {
    const { status, stdout, stderr } = run(args);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(says);
    expect(stderr).toMatch(ONE_SENTENCE);
  });

  test('a damaged database, which stays as it is', () => {
    const path = join(folder, 'damaged.db');
    writeFileSync(path, 'this is no database, '.repeat(500));
    const before = readFileSync(path);
    const { status, stdout, stderr } = run(['--data', 'damaged.db', 'hello']);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(/damaged or is not a database/);
    expect(stderr).toMatch(ONE_SENTENCE);
    expect(readFileSync(path).equals(before)).toBe(true);
  });
});

describe('--catalogue', () => {
  interface Entry {
    id: string;
    slash: string;
    inputs: Record<
      string,
      { kind: string; unit?: string; range?: { low: number; high: number; si: number[] }; default?: object }
    >;
    results: Record<string, { name: string; kind: string; si_unit?: string }>;
    sources: string[];
  }
  const read = (): { calculations: Entry[]; functions: { name: string; meaning: string; source: string }[] } => {
    const { status, stdout, stderr } = run(['--catalogue', '--data', 'untouched.db']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.trim().split('\n')).toHaveLength(1);
    return JSON.parse(stdout);
  };

  test('is one JSON document in which every calculation says what it takes and gives', () => {
    const { calculations, functions } = read();
    expect(existsSync(join(folder, 'untouched.db'))).toBe(false);
    expect(calculations.length).toBeGreaterThan(40);
    for (const { id, slash, inputs, results, sources } of calculations) {
      expect(id).toMatch(/^[a-z_]+\.[a-z_]+$/);
      expect(slash).toMatch(/^[a-z]+ [a-z0-9-]+$/);
      expect(sources.length, id).toBeGreaterThan(0);
      expect(Object.keys(results).length, id).toBeGreaterThan(0);
      for (const [name, { kind, unit, range }] of Object.entries(inputs)) {
        expect(kind, `${id} ${name}`).toMatch(/^(?:quantity|choice|clock|date|lookup)$/);
        if (kind !== 'quantity') continue;
        expect(unit, `${id} ${name}`).toEqual(expect.any(String));
        expect(range!.low, `${id} ${name}`).toBeLessThan(range!.high);
        expect(range!.si[0], `${id} ${name}`).toBeLessThan(range!.si[1]!);
      }
      for (const result of Object.values(results)) expect(result.name).toEqual(expect.any(String));
    }
    const heater = calculations.find(({ id }) => id === 'heater.size')!;
    expect(heater.inputs.heaters!.default).toMatchObject({ value: 1 });
    expect(heater.results.total_loss).toMatchObject({ kind: 'quantity', si_unit: 'W' });
    for (const { name, meaning, source } of functions) expect([name, meaning, source].every(Boolean)).toBe(true);
  });

  test('names every input and result of the check values', () => {
    const byId = new Map(read().calculations.map((entry) => [entry.id, entry]));
    const cases = ['build-physics', 'water', 'light', 'water-and-light'].flatMap(
      (file): { calculation: string; inputs: object; expected: object }[] =>
        JSON.parse(readFileSync(new URL(`./reference/${file}.json`, import.meta.url), 'utf8')),
    );
    const known = cases.filter(({ calculation }) => byId.has(calculation));
    expect(known.length).toBeGreaterThan(200);
    for (const { calculation, inputs, expected } of known) {
      const entry = byId.get(calculation)!;
      for (const id of Object.keys(inputs)) expect(entry.inputs, calculation).toHaveProperty([id]);
      for (const id of Object.keys(expected)) {
        if (ABOUT_THE_REPLY.includes(id)) continue;
        const named = [id, id.replace(/_(?:us|imperial|mg)$/, '')].some(
          (name) => name in entry.results || name in entry.inputs,
        );
        expect(named, `${calculation} ${id}`).toBe(true);
      }
    }
  });
});

/** What a check value expects of a reply that is no result: that it refuses or asks, and why. */
const ABOUT_THE_REPLY = ['refused', 'because', 'asks'];
