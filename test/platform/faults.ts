import { ApiError } from './api.js';
import type { Recorded } from './http.js';

type Where = string | RegExp;

export interface Faults {
  /** Throws the fault that is waiting for this request, once. */
  readonly meet: (request: Recorded) => void;
  /** The next request whose `METHOD /path` fits is told to come back in so many seconds. */
  readonly next429: (where: Where, seconds?: number) => void;
  readonly next502: (where: Where) => void;
  /** The next request that fits is refused with this status and Discord code. */
  readonly next: (where: Where, status: number, code: number, message?: string) => void;
}

export function createFaults(): Faults {
  const waiting: { where: Where; error: ApiError }[] = [];
  const fits = (where: Where, text: string) => (typeof where === 'string' ? text.includes(where) : where.test(text));
  return {
    meet({ method, path }) {
      const i = waiting.findIndex(({ where }) => fits(where, `${method} ${path}`));
      if (i >= 0) throw waiting.splice(i, 1)[0]!.error;
    },
    next429: (where, seconds = 0.2) =>
      void waiting.push({
        where,
        error: new ApiError(429, 0, 'You are being rate limited.', { retry_after: seconds, global: false }),
      }),
    next502: (where) => void waiting.push({ where, error: new ApiError(502, 0, '502: Bad Gateway') }),
    next: (where, status, code, message = 'as the test asked') =>
      void waiting.push({ where, error: new ApiError(status, code, message) }),
  };
}
