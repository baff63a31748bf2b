import { REST } from 'discord.js';
import nock from 'nock';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { finalProblem, logIncident, sorry, troubleOf } from '../../src/faces/discord/errors.js';
import { createLog } from '../../src/log.js';

const rest = (retries = 0) =>
  new REST({ version: '10', retries, makeRequest: (url, init) => fetch(url, init as never) as never }).setToken('t');
const SENT = '/channels/1/messages';

beforeEach(() => nock.disableNetConnect());
afterEach(() => {
  nock.cleanAll();
  nock.enableNetConnect();
});

/** What the library throws when Discord answers so. */
async function refusal(status: number, code: number): Promise<unknown> {
  nock('https://discord.com')
    .post(`/api/v10${SENT}`)
    .reply(status, { code, message: 'as Discord words it', errors: {} });
  return rest()
    .post(SENT, { body: { content: 'x' } })
    .then(
      () => undefined,
      (error: unknown) => error,
    );
}

describe('what Discord refuses, by what there is to do', () => {
  test.each([
    [404, 10_062, 'too-late'],
    [400, 40_060, 'too-late'],
    [404, 10_015, 'too-late'],
    [403, 50_007, 'closed'],
    [403, 50_001, 'forbidden'],
    [403, 50_013, 'forbidden'],
    [404, 10_003, 'gone'],
    [404, 10_008, 'gone'],
    [404, 10_004, 'gone'],
    [400, 50_035, 'refused'],
    [413, 40_005, 'refused'],
    [500, 0, 'passing'],
    [400, 30_001, 'unknown'],
  ] as const)('%i with code %i is %s', async (status, code, trouble) => {
    expect(troubleOf(await refusal(status, code))).toBe(trouble);
  });

  test('a network that fails is passing, a fault of ours is unknown', async () => {
    nock('https://discord.com')
      .post(`/api/v10${SENT}`)
      .replyWithError(Object.assign(new Error('reset'), { code: 'ECONNRESET' }));
    const error = await rest()
      .post(SENT, { body: {} })
      .catch((thrown: unknown) => thrown);
    expect(troubleOf(error)).toBe('passing');
    expect(troubleOf(new TypeError('x is undefined'))).toBe('unknown');
    expect(troubleOf(undefined)).toBe('unknown');
  });
});

test('an incident is logged under a number that the member gets, without what was sent', async () => {
  const lines: string[] = [];
  const log = createLog('info', { write: (line: string) => void lines.push(line) });
  nock('https://discord.com').post('/api/v10/webhooks/1/secret-token').reply(400, { code: 1, message: 'no' });
  const error = await rest()
    .post('/webhooks/1/secret-token', { body: { content: 'my words' }, auth: false })
    .catch((thrown: unknown) => thrown);
  const incident = logIncident(log, new Error('could not answer', { cause: error }), '/drain');
  expect(sorry(incident)).toContain(incident);
  const entry = JSON.parse(lines[0]!) as { incident: string; err: { cause: { request: string; stack: string } } };
  expect(entry.incident).toBe(incident);
  expect(entry.err.cause.request).toBe('POST https://discord.com/api/v10/webhooks/1/…');
  expect(lines[0]).not.toMatch(/secret-token|my words/);
});

test.each([
  [Object.assign(new Error('An invalid token was provided.'), { code: 'TokenInvalid' }), /DISCORD_TOKEN/],
  [new Error('Used disallowed intents'), /intents/],
  [Object.assign(new Error(''), { code: 'ECONNREFUSED' }), /login to Discord failed: ECONNREFUSED\./],
])('%s is told in one sentence', (error, sentence) => {
  expect(finalProblem(error).message).toMatch(sentence);
});
