import { isDeepStrictEqual } from 'node:util';
import type { REST } from 'discord.js';
import { type RESTPostAPIApplicationCommandsJSONBody, Routes } from 'discord.js';

type Json = null | string | number | boolean | readonly Json[] | { readonly [key: string]: Json };

/** Given by Discord, not by us. */
const NOT_OURS = new Set(['id', 'application_id', 'guild_id', 'version', 'dm_permission', 'default_permission']);
const UNORDERED = new Set(['contexts', 'integration_types', 'channel_types']);
const isEmpty = (value: Json): boolean =>
  value === null || value === false || value === '' || (Array.isArray(value) && value.length === 0);

/** A command without what Discord adds to it, so that the one sent and the one kept compare. */
function tidied(value: Json): Json {
  if (Array.isArray(value)) return value.map(tidied);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value)
    .map(([key, inner]): [string, Json] => [
      key,
      UNORDERED.has(key) && Array.isArray(inner) ? [...inner].sort() : tidied(inner),
    ])
    .filter(([key, inner]) => !NOT_OURS.has(key) && !isEmpty(inner));
  return Object.fromEntries(entries);
}

const comparable = (commands: unknown): Json[] =>
  (commands as Json[]).map(tidied).sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));

/** Replaces the registered commands, and only when they differ from the wanted ones. */
export async function registerCommands(
  rest: REST,
  applicationId: string,
  wanted: readonly RESTPostAPIApplicationCommandsJSONBody[],
): Promise<'unchanged' | 'replaced'> {
  const route = Routes.applicationCommands(applicationId);
  const present = await rest.get(route, { query: new URLSearchParams({ with_localizations: 'true' }) });
  if (isDeepStrictEqual(comparable(present), comparable(wanted))) return 'unchanged';
  await rest.put(route, { body: wanted });
  return 'replaced';
}
