import type { AddressInfo } from 'node:net';
import { createActions } from './actions.js';
import { FLAG, type Message } from './api.js';
import { createFaults } from './faults.js';
import { createGateway, type Gateway } from './gateway.js';
import { createHttp, type Recorded } from './http.js';
import { createInteractions } from './interactions.js';
import { announce, type Registered, restRoutes } from './rest.js';
import { createTalk } from './talk.js';
import { type ClubSpec, createWorld } from './world.js';

export interface LoopbackSpec {
  readonly clubs?: readonly ClubSpec[];
  readonly token?: string;
  readonly acknowledgeWithin?: number;
  readonly heartbeatEvery?: number;
}

export const TOKEN = 'loopback-token';
export const APPLICATION = '1000000000000000001';

/** A Discord of one's own on 127.0.0.1: REST, gateway, members who act, and faults on demand. */
export async function startLoopback({
  clubs = [{ name: 'reef club', channels: ['help'] }],
  token = TOKEN,
  acknowledgeWithin = 3000,
  heartbeatEvery = 41_250,
}: LoopbackSpec = {}) {
  const world = createWorld(clubs, APPLICATION);
  const faults = createFaults();
  const requests: Recorded[] = [];
  const registered: Registered = { commands: [], puts: 0 };
  let gateway: Gateway;
  let port = 0;
  const address = () => `ws://127.0.0.1:${port}`;

  const interactions = createInteractions(world, acknowledgeWithin, (message) => announce(world, gateway, message));
  const routes = { ...restRoutes(world, () => gateway, address, registered), ...interactions.routes };
  const server = createHttp(routes, token, faults, requests);
  gateway = createGateway(server, world, { token, heartbeatEvery, address });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  port = (server.address() as AddressInfo).port;

  const until = async (holds: () => boolean, what: string, patience = 10_000): Promise<void> => {
    for (let waited = 0; !holds(); waited += 5) {
      if (waited > patience) throw new Error(`waited in vain: ${what}`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
  };

  return {
    apiUrl: `http://127.0.0.1:${port}/api`,
    applicationId: APPLICATION,
    token,
    requests,
    registered,
    fail: faults,
    gateway: gateway.counts,
    memberId: (name: string): string => world.member(name).id,
    clubId: (name?: string): string => world.club(name).id,
    channelId: (name?: string, club?: string): string => world.channel(world.club(club), name).id,
    closeDirectMessages: (name: string): void => void world.closed.add(world.member(name).id),
    /** What everybody in the channel can read, oldest first. */
    readIn: (channelId: string): Message[] =>
      world.messagesIn(channelId).filter(({ flags }) => !(flags & FLAG.ephemeral)),
    directMessagesOf: (name: string): Message[] => world.messagesIn(world.directChannel(world.member(name)).id),
    cutGateway: gateway.cut,
    askToReconnect: gateway.askToReconnect,
    endSessions: gateway.endSessions,
    refuseResume: gateway.refuseResume,
    stopHeartbeats: gateway.stopHeartbeats,
    until,
    /** Resolves when the bot has asked for nothing during so many milliseconds. */
    async quiet(during = 60): Promise<void> {
      for (let seen = -1; seen !== requests.length; ) {
        seen = requests.length;
        await new Promise((resolve) => setTimeout(resolve, during));
      }
    },
    ...createActions(world, gateway, interactions, registered),
    ...createTalk(world, gateway),
    async close(): Promise<void> {
      gateway.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

export type Loopback = Awaited<ReturnType<typeof startLoopback>>;
