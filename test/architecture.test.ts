import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '..');

const filesBelow = (folder: string): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)));

/** The room a file is in: src/core, src/language …, commands, data; files straight in src are where the rest is put together. */
const roomOf = (file: string): string => {
  const [first, second, third] = file.split('/');
  if (first !== 'src') return first!;
  return third === undefined ? 'src' : `src/${second}`;
};

/** Who may import from whom. A new arrow is a decision, made here. */
const ARROWS: Record<string, readonly string[]> = {
  data: [],
  'src/core': ['data'],
  'src/language': ['src/core', 'data'],
  'src/render': ['src/core', 'src/conversation', 'data'],
  'src/conversation': ['src/core', 'src/language', 'src/render', 'data', 'src'],
  'src/store': ['src/conversation', 'src/core'],
  'src/faces': ['src/conversation', 'src/core', 'src/render', 'src'],
  commands: ['src/conversation', 'src/core', 'src/language', 'src/render'],
  'src/generate': ['src', 'src/conversation', 'src/core', 'src/render', 'commands'],
  src: ['src/core', 'src/conversation', 'src/store', 'src/faces', 'src/render', 'commands', 'data'],
};

/** Packages that only one room may know. */
const PACKAGES: Record<string, readonly string[]> = {
  'discord.js': ['src/faces'],
  'discord-api-types': ['src/faces', 'src/render'],
  'better-sqlite3': ['src/store'],
  kysely: ['src/store'],
  pino: ['src', 'src/faces'],
  'chrono-node': ['src/language'],
  'temporal-polyfill': ['src/core'],
};

const files = [...filesBelow('src'), ...filesBelow('commands'), ...filesBelow('data')];
const importsOf = (file: string): { from: string; typeOnly: boolean }[] =>
  [
    ...readFileSync(join(ROOT, file), 'utf8').matchAll(
      /(?:^|\n)(?:import|export)\s(type\s)?[^;]*?from '([^']+)'|import\('([^']+)'\)/g,
    ),
  ].map(([, type, named, dynamic]) => ({ from: named ?? dynamic!, typeOnly: type !== undefined }));

describe('imports point one way', () => {
  for (const file of files) {
    test(file, () => {
      const room = roomOf(file);
      for (const { from } of importsOf(file)) {
        if (from.startsWith('.')) {
          const target = roomOf(relative(ROOT, resolve(ROOT, dirname(file), from)));
          expect([room, ...(ARROWS[room] ?? [])], `${file} imports ${from}`).toContain(target);
        } else {
          const name = from.split('/')[0]!;
          if (PACKAGES[name]) expect(PACKAGES[name], `${file} imports ${from}`).toContain(room);
        }
      }
    });
  }
});

test('the core, the language and the conversation know no clock, no chance and no machine', () => {
  const pure = files.filter((file) => /^src\/(?:core|language|conversation|render)\//.test(file));
  for (const file of pure) {
    const text = readFileSync(join(ROOT, file), 'utf8');
    expect(text, file).not.toMatch(
      /Date\.now\(|new Date\(\)|Temporal\.Now|DateTimeFormat\(\)|Math\.random|process\.|from 'node:|performance\./,
    );
  }
});

test('the terminal and the scripts load the Discord library only when a token is set', () => {
  const direct = files.filter((file) => !file.startsWith('src/faces/discord/'));
  for (const file of direct) {
    const loads = importsOf(file).filter(({ from }) => from.startsWith('.') && from.includes('faces/discord'));
    for (const { from } of loads) expect(readFileSync(join(ROOT, file), 'utf8'), file).toContain(`import('${from}')`);
  }
});
