import type { Entry, Tank, TankList } from './ports.js';
import { now, type Turn } from './turn.js';

/** An entry of a tank's list, read; what an older version wrote and this one cannot read is left where it is, unseen. */
export interface Listed<T> {
  readonly id: string;
  readonly value: T;
}

interface Schema<T> {
  readonly safeParse: (value: unknown) => { readonly success: true; readonly data: T } | { readonly success: false };
}

const readEntry = <T>({ id, content }: Entry, schema: Schema<T>): Listed<T>[] => {
  const read = schema.safeParse(JSON.parse(content));
  return read.success ? [{ id, value: read.data }] : [];
};

/** One kind of list that a tank keeps. */
export function tankList<T>(kind: TankList, schema: Schema<T>) {
  return {
    read: async (turn: Turn, tank: Tank): Promise<Listed<T>[]> =>
      (await turn.store.entries(turn.speaker.id, tank.id, kind)).flatMap((entry) => readEntry(entry, schema)),
    add: (turn: Turn, tank: Tank, values: readonly T[]): Promise<string[]> =>
      turn.store.addEntries(
        turn.speaker.id,
        tank.id,
        kind,
        values.map((value) => JSON.stringify(value)),
        now(turn),
      ),
    change: (turn: Turn, tank: Tank, id: string, value: T): Promise<void> =>
      turn.store.changeEntry(turn.speaker.id, tank.id, id, JSON.stringify(value), now(turn)),
    remove: (turn: Turn, tank: Tank, id: string): Promise<void> =>
      turn.store.removeEntry(turn.speaker.id, tank.id, id, now(turn)),
  };
}
