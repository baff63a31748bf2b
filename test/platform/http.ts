import { createServer, type IncomingMessage, type Server } from 'node:http';
import { performance } from 'node:perf_hooks';
import { ApiError, type SentFile } from './api.js';
import type { Faults } from './faults.js';

/** One request of the bot, as the tests see it. */
export interface Recorded {
  readonly method: string;
  /** Below the version: `/channels/1/messages`. */
  readonly path: string;
  readonly query: URLSearchParams;
  readonly body: unknown;
  readonly files: readonly SentFile[];
  /** Milliseconds on a monotonic clock. */
  readonly at: number;
  status: number;
}

type Answer = { status?: number; body?: unknown } | undefined;
export type Handler = (request: Recorded, ...ids: string[]) => Answer | Promise<Answer>;
/** A path with `:names`, which the handler gets in order. */
export type Routes = Readonly<Record<`${'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE'} /${string}`, Handler>>;

const PREFIX = /^\/api(\/v\d+)?/;
/** These carry their token in the path. */
const NEEDS_NO_TOKEN = /^\/(interactions|webhooks)\//;

async function readBody(request: IncomingMessage): Promise<{ body: unknown; files: SentFile[] }> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const raw = Buffer.concat(chunks);
  const type = request.headers['content-type'] ?? '';
  if (!type.startsWith('multipart/')) return { body: raw.length > 0 ? JSON.parse(String(raw)) : undefined, files: [] };
  const form = await new Response(raw, { headers: { 'content-type': type } }).formData();
  const files: SentFile[] = [];
  for (const [name, value] of form) {
    if (name.startsWith('files[') && typeof value !== 'string')
      files.push({ name: value.name, type: value.type, bytes: Buffer.from(await value.arrayBuffer()) });
  }
  return { body: JSON.parse(String(form.get('payload_json') ?? 'null')), files };
}

export function createHttp(routes: Routes, token: string, faults: Faults, requests: Recorded[]): Server {
  const table = Object.entries(routes).map(([route, handler]) => {
    const [method, path] = route.split(' ') as [string, string];
    return { method, pattern: new RegExp(`^${path.replace(/:\w+/g, '([^/]+)')}$`), handler };
  });

  async function answer(recorded: Recorded, authorization: string | undefined): Promise<NonNullable<Answer>> {
    faults.meet(recorded);
    if (!NEEDS_NO_TOKEN.test(recorded.path) && authorization !== `Bot ${token}`)
      throw new ApiError(401, 0, '401: Unauthorized');
    for (const { method, pattern, handler } of table) {
      const match = method === recorded.method ? recorded.path.match(pattern) : null;
      if (match) return (await handler(recorded, ...match.slice(1))) ?? { status: 204 };
    }
    throw new ApiError(404, 0, `404: Not Found (${recorded.method} ${recorded.path})`);
  }

  return createServer(async (request, response) => {
    const url = new URL(request.url ?? '/', 'http://loopback');
    const path = decodeURIComponent(url.pathname.replace(PREFIX, ''));
    const recorded: Recorded = {
      method: request.method ?? 'GET',
      path,
      query: url.searchParams,
      ...(await readBody(request)),
      at: performance.now(),
      status: 0,
    };
    requests.push(recorded);
    let result: NonNullable<Answer>;
    try {
      result = await answer(recorded, request.headers.authorization);
    } catch (error) {
      if (error instanceof ApiError) result = { status: error.status, body: error.body };
      else result = { status: 500, body: { message: String(error), code: 0 } };
    }
    recorded.status = result.status ?? 200;
    const wait = (result.body as { retry_after?: number } | undefined)?.retry_after;
    response.writeHead(recorded.status, {
      ...(result.body === undefined ? {} : { 'content-type': 'application/json' }),
      ...(recorded.status === 429 ? { 'retry-after': String(wait), 'x-ratelimit-scope': 'shared' } : {}),
    });
    response.end(result.body === undefined ? undefined : JSON.stringify(result.body));
  });
}
