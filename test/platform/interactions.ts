import { performance } from 'node:perf_hooks';
import { ApiError, FLAG, invalidBody, type Message, type MessageBody, type SentFile, type User } from './api.js';
import { checkModal, type Modal } from './check-components.js';
import type { Routes } from './http.js';
import { editMessage, postMessage } from './messages.js';
import { messageJson } from './payloads.js';
import type { Channel, World } from './world.js';

const CALLBACK = { message: 4, deferred: 5, deferredUpdate: 6, update: 7, choices: 8, modal: 9 } as const;

export interface Choice {
  readonly name: string;
  readonly value: string | number;
}

/** One event that a member caused, and everything that the bot answered to it so far. */
export interface Exchange {
  readonly id: string;
  readonly token: string;
  readonly member: User;
  readonly channel: Channel;
  /** The message whose button or menu was used. */
  readonly on?: Message;
  readonly startedAt: number;
  /** Kind of the first answer, and after how many milliseconds it came. */
  acknowledged?: { readonly type: number; readonly after: number };
  /** The answer, in its present state; gone when it was deleted. */
  original?: Message;
  readonly followUps: Message[];
  modal?: Modal;
  choices?: readonly Choice[];
  /** Nothing came in time: the member reads that the application did not respond. */
  failed: boolean;
  deferredAsEphemeral: boolean;
}

export interface Interactions {
  readonly routes: Routes;
  readonly begin: (member: User, channel: Channel, on?: Message) => Exchange;
  /** Resolves when the member sees an answer, when the waiting is taken back, or when nothing came in time. */
  readonly settled: (exchange: Exchange) => Promise<Exchange>;
}

export function createInteractions(
  world: World,
  acknowledgeWithin: number,
  announce: (message: Message) => void,
): Interactions {
  const byToken = new Map<string, Exchange>();
  const waiting = new Map<string, () => void>();
  const settle = ({ token }: Exchange) => waiting.get(token)?.();
  const exchangeOf = (token: string): Exchange => {
    const exchange = byToken.get(token);
    if (!exchange) throw new ApiError(404, 10062, 'Unknown interaction');
    return exchange;
  };
  const acknowledgedOf = (token: string): Exchange => {
    const exchange = byToken.get(token);
    if (!exchange?.acknowledged) throw new ApiError(404, 10015, 'Unknown Webhook');
    return exchange;
  };
  const answerOf = ({ original, followUps }: Exchange, id: string): Message => {
    const message = id === '@original' ? original : followUps.find((followUp) => followUp.id === id);
    if (!message) throw new ApiError(404, 10008, 'Unknown Message');
    return message;
  };
  const post = ({ channel, member }: Exchange, body: MessageBody, files: readonly SentFile[]): Message => {
    const message = postMessage(world, { channel, author: world.bot, body, files, askedBy: member });
    if (!(message.flags & FLAG.ephemeral)) announce(message);
    return message;
  };

  function acknowledge(exchange: Exchange, type: number, data: never, files: readonly SentFile[]): void {
    switch (type) {
      case CALLBACK.message:
        exchange.original = post(exchange, data, files);
        break;
      case CALLBACK.deferred: {
        const flags = (data as MessageBody | undefined)?.flags ?? 0;
        if (flags & ~FLAG.ephemeral)
          throw invalidBody([{ path: 'data.flags', code: 'INVALID_FLAGS', message: 'Only ephemeral' }]);
        exchange.deferredAsEphemeral = flags !== 0;
        exchange.original = post(exchange, { content: '…', flags }, []);
        exchange.original.content = '';
        break;
      }
      case CALLBACK.update:
      case CALLBACK.deferredUpdate:
        if (!exchange.on)
          throw invalidBody([{ path: 'type', code: 'INVALID', message: 'There is no message to update' }]);
        exchange.original = exchange.on;
        if (type === CALLBACK.update) editMessage(exchange.on, data, files);
        break;
      case CALLBACK.choices:
        exchange.choices = checkedChoices((data as { choices: Choice[] }).choices);
        break;
      case CALLBACK.modal: {
        const problems = checkModal(data);
        if (problems.length > 0) throw invalidBody(problems);
        exchange.modal = data;
      }
    }
  }

  const routes: Routes = {
    'POST /interactions/:id/:token/callback': ({ body, files, query }, _id, token) => {
      const exchange = exchangeOf(token!);
      const after = performance.now() - exchange.startedAt;
      if (exchange.acknowledged) throw new ApiError(400, 40060, 'Interaction has already been acknowledged.');
      if (exchange.failed || after > acknowledgeWithin) throw new ApiError(404, 10062, 'Unknown interaction');
      const { type, data } = body as { type: number; data: never };
      acknowledge(exchange, type, data, files);
      exchange.acknowledged = { type, after };
      if (type !== CALLBACK.deferred && type !== CALLBACK.deferredUpdate) settle(exchange);
      if (query.get('with_response') !== 'true') return undefined;
      const message = exchange.original ? { type, message: messageJson(exchange.original, world) } : { type };
      return { body: { interaction: { id: exchange.id, type: 2 }, resource: message } };
    },
    'POST /webhooks/:application/:token': ({ body, files }, _application, token) => {
      const exchange = acknowledgedOf(token!);
      const message = post(exchange, body as MessageBody, files);
      exchange.followUps.push(message);
      settle(exchange);
      return { body: messageJson(message, world) };
    },
    'GET /webhooks/:application/:token/messages/:message': (_, _application, token, id) => ({
      body: messageJson(answerOf(acknowledgedOf(token!), id!), world),
    }),
    'PATCH /webhooks/:application/:token/messages/:message': ({ body, files }, _application, token, id) => {
      const exchange = acknowledgedOf(token!);
      const message = answerOf(exchange, id!);
      editMessage(message, body as MessageBody, files);
      settle(exchange);
      return { body: messageJson(message, world) };
    },
    'DELETE /webhooks/:application/:token/messages/:message': (_, _application, token, id) => {
      const exchange = acknowledgedOf(token!);
      const message = answerOf(exchange, id!);
      world.messages.delete(message.id);
      if (message === exchange.original) delete exchange.original;
      else exchange.followUps.splice(exchange.followUps.indexOf(message), 1);
      settle(exchange);
      return undefined;
    },
  };

  return {
    routes,
    begin(member, channel, on) {
      const exchange: Exchange = {
        id: world.nextId(),
        token: `token-${world.nextId()}`,
        member,
        channel,
        ...(on ? { on } : {}),
        startedAt: performance.now(),
        followUps: [],
        failed: false,
        deferredAsEphemeral: false,
      };
      byToken.set(exchange.token, exchange);
      return exchange;
    },
    settled: (exchange) =>
      new Promise((resolve) => {
        const done = () => {
          clearTimeout(timer);
          resolve(exchange);
        };
        const timer = setTimeout(() => {
          if (exchange.acknowledged) return;
          exchange.failed = true;
          done();
        }, acknowledgeWithin);
        waiting.set(exchange.token, done);
      }),
  };
}

function checkedChoices(choices: readonly Choice[]): readonly Choice[] {
  const bad = choices.findIndex(
    ({ name, value }) => !name || [...name].length > 100 || [...String(value)].length > 100,
  );
  if (choices.length > 25 || bad >= 0)
    throw invalidBody([
      {
        path: `data.choices.${Math.max(bad, 0)}`,
        code: 'BASE_TYPE_BAD_LENGTH',
        message: 'Must be between 1 and 100 in length.',
      },
    ]);
  return choices;
}
