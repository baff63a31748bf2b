import { REST } from 'discord.js';
import nock from 'nock';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { registerCommands } from '../../src/faces/discord/register.js';

const APPLICATION = '1000000000000000001';
const PATH = `/api/v10/applications/${APPLICATION}/commands`;
const rest = () =>
  new REST({ version: '10', makeRequest: (url, init) => fetch(url, init as never) as never }).setToken('t');

const wanted = [
  {
    type: 1 as const,
    name: 'drain',
    description: 'Drains',
    contexts: [0, 1, 2],
    options: [
      {
        type: 1 as const,
        name: 'siphon',
        description: 'Full siphon',
        options: [{ type: 3 as const, name: 'drop', description: 'drop' }],
      },
    ],
  },
  { type: 3 as const, name: 'Work out these measurements' },
];

/** As Discord gives commands back: with its own fields, and lists in an order of its own. */
const kept = () => [
  {
    ...wanted[1],
    id: '2',
    application_id: APPLICATION,
    version: '9',
    description: '',
    nsfw: false,
    default_member_permissions: null,
  },
  {
    ...wanted[0],
    id: '1',
    application_id: APPLICATION,
    version: '8',
    contexts: [2, 0, 1],
    name_localizations: null,
    dm_permission: true,
  },
];

beforeEach(() => nock.disableNetConnect());
afterEach(() => {
  nock.cleanAll();
  nock.enableNetConnect();
});

const discord = () => nock('https://discord.com').get(PATH).query({ with_localizations: 'true' });

test('equal commands are left as they are', async () => {
  discord().reply(200, kept());
  expect(await registerCommands(rest(), APPLICATION, wanted as never)).toBe('unchanged');
});

const changes: [string, (commands: ReturnType<typeof kept>) => unknown[]][] = [
  ['nothing registered', () => []],
  ['one too many', (all) => [...all, { ...all[1], name: 'gone', id: '3' }]],
  ['another description', ([menu, drain]) => [menu, { ...drain, description: 'Pipes' }]],
  [
    'an option renamed',
    ([menu, drain]) => [menu, { ...drain, options: [{ ...wanted[0]!.options![0], name: 'open' }] }],
  ],
  ['contexts taken away', ([menu, drain]) => [menu, { ...drain, contexts: [0] }]],
  ['a translation that is not ours', ([menu, drain]) => [menu, { ...drain, name_localizations: { de: 'ablauf' } }]],
];
test.each(changes)('%s: the whole list is put', async (_, change) => {
  discord().reply(200, change(kept()) as never);
  let sent: unknown;
  nock('https://discord.com')
    .put(PATH, (body) => {
      sent = body;
      return true;
    })
    .reply(200, []);
  expect(await registerCommands(rest(), APPLICATION, wanted as never)).toBe('replaced');
  expect(sent).toEqual(wanted);
});

test('the order of options is part of a command', async () => {
  const two = [{ ...wanted[0]!, options: ['a', 'b'].map((name) => ({ type: 3 as const, name, description: name })) }];
  discord().reply(200, [{ ...two[0], options: [...two[0]!.options].reverse() }] as never);
  nock('https://discord.com').put(PATH).reply(200, []);
  expect(await registerCommands(rest(), APPLICATION, two as never)).toBe('replaced');
});
