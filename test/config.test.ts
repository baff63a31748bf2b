import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ConfigProblem, readConfig } from '../src/config.js';

const TOKEN = 'MTAw.Gx.secret-part';
const ID = '1000000000000000001';

test('without a token there is no bot, and everything has a default', () => {
  const empty = { DISCORD_TOKEN: '', DISCORD_APPLICATION_ID: '', DATABASE: '', DISCORD_API_URL: '', LOG_LEVEL: '' };
  for (const environment of [{}, empty])
    expect(readConfig(environment)).toEqual({ database: './brinewright.db', logLevel: 'info' });
});

test('everything can be set', () => {
  expect(
    readConfig({
      DISCORD_TOKEN: TOKEN,
      DISCORD_APPLICATION_ID: ID,
      DISCORD_API_URL: 'http://127.0.0.1:4000/api',
      DATABASE: '/data/club.db',
      LOG_LEVEL: 'debug',
    }),
  ).toEqual({
    discord: { token: TOKEN, applicationId: ID, apiUrl: 'http://127.0.0.1:4000/api' },
    database: '/data/club.db',
    logLevel: 'debug',
  });
});

test.each([
  [{ DISCORD_TOKEN: TOKEN }, /^DISCORD_APPLICATION_ID must be set/],
  [{ DISCORD_TOKEN: TOKEN, DISCORD_APPLICATION_ID: 'my bot' }, /^DISCORD_APPLICATION_ID must be .*digits only\.$/],
  [{ DISCORD_TOKEN: `"${TOKEN} x"` }, /^DISCORD_TOKEN must be the token alone/],
  [{ DISCORD_API_URL: 'localhost' }, /^DISCORD_API_URL must be an address/],
  [{ DISCORD_API_URL: 'ftp://x.invalid' }, /^DISCORD_API_URL must be an address/],
  [{ LOG_LEVEL: 'loud' }, /^LOG_LEVEL must be one of trace, .*silent\.$/],
])('%o is named in one sentence that does not repeat the value', (environment, sentence) => {
  const problem = (() => {
    try {
      return readConfig(environment);
    } catch (error) {
      return error;
    }
  })();
  expect(problem).toBeInstanceOf(ConfigProblem);
  expect((problem as Error).message).toMatch(sentence);
  expect((problem as Error).message).not.toContain(TOKEN);
});

test('.env.example lists every variable under a comment', () => {
  const lines = readFileSync('.env.example', 'utf8').split('\n');
  const variables = [...readFileSync('src/config.ts', 'utf8').matchAll(/^ {2}([A-Z_]+): optional/gm)].map(
    ([, name]) => name!,
  );
  expect(variables).toHaveLength(5);
  for (const name of variables) {
    const at = lines.indexOf(`${name}=`);
    expect(at, name).toBeGreaterThan(0);
    expect(lines[at - 1]).toMatch(/^# \S/);
  }
});
