/** A possible pairing and how well it fits. */
export interface Pairing<Thing> {
  readonly id: string;
  readonly mention: Thing;
  readonly score: number;
}

const key = (id: string, mention: number): string => `${mention}>${id}`;
const MOST_ROUNDS = 50;

/**
 * Pairs each thing with at most one id and each id with at most one thing so that the scores add up to the most: the best
 * pairs first, then every exchange of two that is better for both together.
 */
export function bestMatch<Thing, P extends Pairing<Thing>>(pairings: readonly P[]): P[] {
  const things = [...new Set(pairings.map(({ mention }) => mention))];
  const indexOf = new Map(things.map((thing, i) => [thing, i]));
  const byKey = new Map(pairings.map((pairing) => [key(pairing.id, indexOf.get(pairing.mention)!), pairing]));
  const chosen = new Map<number, P>();
  const taken = new Set<string>();
  for (const pairing of [...pairings].sort((a, b) => b.score - a.score)) {
    const thing = indexOf.get(pairing.mention)!;
    if (taken.has(pairing.id) || chosen.has(thing)) continue;
    chosen.set(thing, pairing);
    taken.add(pairing.id);
  }
  for (let round = 0; round < MOST_ROUNDS && exchange(); round += 1);
  return [...chosen.values()].sort((a, b) => b.score - a.score);

  /** Swaps the ids of two things, or gives one's id to another that had none, where that is better. */
  function exchange(): boolean {
    for (const [a, mine] of chosen) {
      for (let b = 0; b < things.length; b += 1) {
        if (a === b) continue;
        const theirs = chosen.get(b);
        const toThem = byKey.get(key(mine.id, b));
        if (!toThem) continue;
        const options = theirs ? [byKey.get(key(theirs.id, a))] : [];
        const free = pairings.filter((pairing) => indexOf.get(pairing.mention) === a && !taken.has(pairing.id));
        const toMe = [...options, ...free]
          .filter((pairing) => pairing !== undefined)
          .sort((x, y) => y.score - x.score)[0];
        const gain = toThem.score + (toMe?.score ?? 0) - mine.score - (theirs?.score ?? 0);
        if (gain <= 1e-9 || (theirs && !toMe)) continue;
        taken.delete(mine.id);
        if (theirs) taken.delete(theirs.id);
        if (toMe) chosen.set(a, toMe);
        else chosen.delete(a);
        chosen.set(b, toThem);
        for (const entry of [toMe, toThem]) if (entry) taken.add(entry.id);
        return true;
      }
    }
    return false;
  }
}
