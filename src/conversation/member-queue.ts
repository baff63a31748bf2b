/** Runs the work of one member in the order it came; different members do not wait for each other. */
export interface MemberQueue {
  readonly run: <T>(member: string, work: () => Promise<T>) => Promise<T>;
  /** Resolves when everything that was begun is done. */
  readonly idle: () => Promise<void>;
}

export function memberQueue(): MemberQueue {
  const last = new Map<string, Promise<unknown>>();
  return {
    run(member, work) {
      const turn = (last.get(member) ?? Promise.resolve()).then(work);
      const done = turn
        .catch(() => undefined)
        .finally(() => {
          if (last.get(member) === done) last.delete(member);
        });
      last.set(member, done);
      return turn;
    },
    async idle() {
      while (last.size > 0) await Promise.all(last.values());
    },
  };
}
