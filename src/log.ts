import { type DestinationStream, destination, type Logger, pino } from 'pino';

interface Described {
  readonly name?: string;
  readonly message?: string;
  readonly stack?: string;
  readonly code?: unknown;
  readonly status?: unknown;
  readonly method?: unknown;
  readonly url?: unknown;
  readonly cause?: unknown;
}

/** The token of an interaction or a webhook stands in its address. */
const withoutTokens = (url: string): string => url.replace(/\/(interactions|webhooks)\/(\d+)\/[^/?]+/, '/$1/$2/…');

/** An error without the request that caused it: that holds what members wrote. */
function errorFields(error: unknown): Record<string, unknown> {
  if (typeof error !== 'object' || error === null) return { message: String(error) };
  const { name, message, stack, code, status, method, url, cause } = error as Described;
  return {
    type: name,
    message,
    stack,
    ...(code === undefined ? {} : { code }),
    ...(status === undefined ? {} : { status }),
    ...(typeof url === 'string' ? { request: `${method} ${withoutTokens(url)}` } : {}),
    ...(cause === undefined ? {} : { cause: errorFields(cause) }),
  };
}

/** Writes lines of JSON to standard error, so that standard output stays for answers. */
export const createLog = (level: string, stream: DestinationStream = destination({ dest: 2, sync: true })): Logger =>
  pino({ level, serializers: { err: errorFields } }, stream);
