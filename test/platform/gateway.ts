import type { Server } from 'node:http';
import { type WebSocket, WebSocketServer } from 'ws';
import { clubJson, userJson } from './payloads.js';
import type { World } from './world.js';

const OP = { dispatch: 0, heartbeat: 1, identify: 2, resume: 6, reconnect: 7, invalid: 9, hello: 10, ack: 11 } as const;
const CLOSE = { authentication: 4004, intents: 4014 } as const;
export const INTENT = { guilds: 1 << 0, guildMessages: 1 << 9, directMessages: 1 << 12 } as const;
const PRIVILEGED = (1 << 1) | (1 << 8) | (1 << 15);

interface Dispatch {
  readonly op: 0;
  readonly s: number;
  readonly t: string;
  readonly d: unknown;
}
interface Identify {
  readonly token: string;
  readonly intents: number;
  readonly shard?: readonly [number, number];
}
interface Session {
  readonly id: string;
  readonly intents: number;
  readonly shard: readonly [number, number];
  readonly sent: Dispatch[];
  socket: WebSocket | undefined;
}

export interface Gateway {
  /** Sends an event to the shard of its club that asked for it; what a cut-off session misses is replayed when it resumes. */
  readonly dispatch: (event: string, data: unknown, clubId: string | undefined, intent?: number) => void;
  readonly cut: () => void;
  readonly askToReconnect: () => void;
  readonly endSessions: () => void;
  readonly refuseResume: () => void;
  /** Open connections get no more heartbeat answers; later ones do. */
  readonly stopHeartbeats: () => void;
  /** How often a client identified and resumed. */
  readonly counts: { identified: number; resumed: number };
  readonly close: () => void;
}

export function createGateway(
  server: Server,
  world: World,
  settings: { token: string; heartbeatEvery: number; address: () => string },
): Gateway {
  const sessions = new Map<string, Session>();
  const sockets = new WebSocketServer({ server });
  const counts = { identified: 0, resumed: 0 };
  const deaf = new WeakSet<WebSocket>();
  let refusesNextResume = false;

  const send = (socket: WebSocket, frame: object) => socket.send(JSON.stringify(frame));
  const push = (session: Session, t: string, d: unknown) => {
    const frame: Dispatch = { op: OP.dispatch, s: session.sent.length + 1, t, d };
    session.sent.push(frame);
    if (session.socket?.readyState === 1) send(session.socket, frame);
  };

  function identify(socket: WebSocket, d: Identify): void {
    const session: Session = { id: world.nextId(), intents: d.intents, shard: d.shard ?? [0, 1], sent: [], socket };
    sessions.set(session.id, session);
    counts.identified += 1;
    const clubs = world.clubs.filter(({ id }) => isOfShard(id, session.shard));
    push(session, 'READY', {
      v: 10,
      user: userJson(world.bot),
      guilds: clubs.map(({ id }) => ({ id, unavailable: true })),
      session_id: session.id,
      resume_gateway_url: settings.address(),
      shard: session.shard,
      application: { id: world.bot.id, flags: 0 },
    });
    if (session.intents & INTENT.guilds) for (const club of clubs) push(session, 'GUILD_CREATE', clubJson(club, world));
  }

  function admit(socket: WebSocket, d: Identify): void {
    if (d.token !== settings.token) socket.close(CLOSE.authentication, 'Authentication failed.');
    else if (d.intents & PRIVILEGED) socket.close(CLOSE.intents, 'Disallowed intent(s).');
    else identify(socket, d);
  }

  function resume(socket: WebSocket, d: { token: string; session_id: string; seq: number }): void {
    const session = sessions.get(d.session_id);
    if (!session || refusesNextResume) {
      refusesNextResume = false;
      send(socket, { op: OP.invalid, d: false });
      return;
    }
    session.socket = socket;
    counts.resumed += 1;
    for (const frame of session.sent.slice(d.seq)) send(socket, frame);
    push(session, 'RESUMED', {});
  }

  sockets.on('connection', (socket) => {
    send(socket, { op: OP.hello, d: { heartbeat_interval: settings.heartbeatEvery } });
    socket.on('message', (raw) => {
      const { op, d } = JSON.parse(String(raw)) as { op: number; d: never };
      if (op === OP.heartbeat && !deaf.has(socket)) send(socket, { op: OP.ack });
      else if (op === OP.identify) admit(socket, d);
      else if (op === OP.resume) resume(socket, d);
    });
  });

  const open = () => [...sockets.clients];
  return {
    counts,
    dispatch(event, data, clubId, intent = 0) {
      for (const session of sessions.values()) {
        const wanted = intent === 0 || (session.intents & intent) !== 0;
        if (wanted && (clubId ? isOfShard(clubId, session.shard) : session.shard[0] === 0)) push(session, event, data);
      }
    },
    cut: () => {
      for (const socket of open()) socket.terminate();
    },
    askToReconnect: () => {
      for (const socket of open()) send(socket, { op: OP.reconnect, d: null });
    },
    endSessions: () => {
      sessions.clear();
      for (const socket of open()) send(socket, { op: OP.invalid, d: false });
    },
    refuseResume: () => {
      refusesNextResume = true;
    },
    stopHeartbeats: () => {
      for (const socket of open()) deaf.add(socket);
    },
    close: () => {
      for (const socket of open()) socket.terminate();
      sockets.close();
    },
  };
}

const isOfShard = (clubId: string, [shard, count]: readonly [number, number]): boolean =>
  Number((BigInt(clubId) >> 22n) % BigInt(count)) === shard;
