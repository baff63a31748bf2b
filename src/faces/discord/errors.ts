import { DiscordAPIError, HTTPError, RateLimitError } from 'discord.js';
import type { Logger } from 'pino';

/** What has gone wrong with Discord, by what there is to do about it. */
export type Trouble =
  /** The interaction was answered too late or twice: log it and stop. */
  | 'too-late'
  /** The member takes no direct messages: never try again, refusals count towards a ban. */
  | 'closed'
  /** The bot may not write there: tell the member which permission is missing. */
  | 'forbidden'
  /** Channel, message or club are no more: drop it. */
  | 'gone'
  /** The body was refused, a fault of ours: send the plain text instead. */
  | 'refused'
  /** Rate limits, server errors, the network: the library has tried again already. */
  | 'passing'
  | 'unknown';

const TABLE: Readonly<Record<number, Trouble>> = {
  10062: 'too-late',
  40060: 'too-late',
  10015: 'too-late',
  50027: 'too-late',
  50007: 'closed',
  50001: 'forbidden',
  50013: 'forbidden',
  10003: 'gone',
  10004: 'gone',
  10008: 'gone',
  50035: 'refused',
  50006: 'refused',
  40005: 'refused',
};
const NETWORK = /^(ECONN|ETIMEDOUT|ENOTFOUND|EAI_AGAIN|EPIPE|UND_ERR)/;

export function troubleOf(error: unknown): Trouble {
  if (error instanceof DiscordAPIError)
    return TABLE[Number(error.code)] ?? (error.status >= 500 ? 'passing' : 'unknown');
  if (error instanceof RateLimitError || error instanceof HTTPError) return 'passing';
  return NETWORK.test(String((error as { code?: unknown } | null)?.code ?? '')) ? 'passing' : 'unknown';
}

export const sorry = (incident: string): string =>
  `Something went wrong on my side, so there is no answer this time. Please try again; if it keeps happening, tell whoever runs this bot the number ${incident}.`;

/** Logs an error under a short number that can be told to a member. @returns the number */
export function logIncident(log: Logger, error: unknown, what: string): string {
  const incident = crypto.randomUUID().slice(0, 6);
  log.error({ incident, what, err: error }, 'unexpected error');
  return incident;
}

/** A reason not to start, or to stop, that only the person who runs the bot can remove. */
export class FinalProblem extends Error {
  override readonly name = 'FinalProblem';
}

const FINAL: Readonly<Record<string, string>> = {
  TokenInvalid: 'Discord refuses the token in DISCORD_TOKEN: copy a fresh one from the application’s Bot page.',
  DisallowedIntents:
    'Discord refuses the intents of this bot, though it asks for no privileged one: check the application’s Bot page.',
};

/** The sentence for an error of the login. */
export function finalProblem(error: unknown): FinalProblem {
  const { code, message } = error as { code?: unknown; message?: unknown };
  const sentence = /disallowed intents/i.test(String(message)) ? FINAL.DisallowedIntents : FINAL[String(code)];
  const reason = message || code;
  return new FinalProblem(sentence ?? `The login to Discord failed: ${String(reason)}.`, { cause: error });
}
