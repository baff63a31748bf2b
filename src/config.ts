import { z } from 'zod';
import { DEFAULT_DATABASE } from './database-path.js';

const LEVELS = ['trace', 'debug', 'info', 'warn', 'error', 'fatal', 'silent'] as const;

/** An empty variable counts as one that is not set. */
const optional = <T extends z.ZodType>(schema: T) =>
  z.preprocess((value) => (value === '' ? undefined : value), schema.optional());

const schema = z.object({
  DISCORD_TOKEN: optional(z.string().regex(/^\S+$/, 'must be the token alone, without spaces or quotes')),
  DISCORD_APPLICATION_ID: optional(z.string().regex(/^\d+$/, 'must be the application’s number, digits only')),
  DISCORD_API_URL: optional(
    z.url({ protocol: /^https?$/, error: 'must be an address that begins with http:// or https://' }),
  ),
  DATABASE: optional(z.string()),
  LOG_LEVEL: optional(z.enum(LEVELS, { error: `must be one of ${LEVELS.join(', ')}` })),
});

export interface Config {
  /** Given when the bot is to run. */
  readonly discord?: { readonly token: string; readonly applicationId: string; readonly apiUrl?: string | undefined };
  readonly database: string;
  readonly logLevel: (typeof LEVELS)[number];
}

/** A variable of the environment that cannot be used; its value is never repeated. */
export class ConfigProblem extends Error {
  override readonly name = 'ConfigProblem';
}

/** @throws ConfigProblem that names the first bad variable in one sentence */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const read = schema.safeParse(environment);
  if (!read.success) {
    const [issue] = read.error.issues;
    throw new ConfigProblem(`${issue?.path.join('.')} ${issue?.message}.`);
  }
  const {
    DISCORD_TOKEN: token,
    DISCORD_APPLICATION_ID: applicationId,
    DISCORD_API_URL: apiUrl,
    DATABASE,
    LOG_LEVEL,
  } = read.data;
  const common = { database: DATABASE ?? DEFAULT_DATABASE, logLevel: LOG_LEVEL ?? ('info' as const) };
  if (token === undefined) return common;
  if (applicationId === undefined)
    throw new ConfigProblem(
      'DISCORD_APPLICATION_ID must be set beside DISCORD_TOKEN: the number on the application’s General Information page.',
    );
  return { ...common, discord: { token, applicationId, apiUrl } };
}
