/** The middle of some measurements; what other programs did to a few of them does not move it. */
export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** The value that a share of the measurements does not exceed. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** Milliseconds that each item took, one after another. */
export async function timeEach<Item>(items: readonly Item[], work: (item: Item) => unknown): Promise<number[]> {
  const times: number[] = [];
  for (const item of items) {
    const start = performance.now();
    await work(item);
    times.push(performance.now() - start);
  }
  return times;
}

/** How fast a round of messages went. */
export interface Pace {
  readonly aSecond: number;
  readonly p50: number;
  readonly p99: number;
}

const paceOf = (times: readonly number[]): Pace => ({
  aSecond: (1000 * times.length) / times.reduce((sum, time) => sum + time, 0),
  p50: quantile(times, 0.5),
  p99: quantile(times, 0.99),
});

/** Medians over rounds. @param rounds milliseconds of every item, for each round */
export function medianPace(rounds: readonly (readonly number[])[]): Pace {
  const paces = rounds.map(paceOf);
  return {
    aSecond: median(paces.map(({ aSecond }) => aSecond)),
    p50: median(paces.map(({ p50 }) => p50)),
    p99: median(paces.map(({ p99 }) => p99)),
  };
}
