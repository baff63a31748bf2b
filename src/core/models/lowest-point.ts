/** Share of the bracket that a golden-section step keeps. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;
const COARSE_STEPS = 180;

/**
 * Where a function of one variable is lowest: even steps find the neighbourhood, golden section the place.
 * @param f continuous, with no dip narrower than two of 180 steps
 * @returns the variable, to about a billionth of the stretch
 * @source golden-section search: Kiefer 1953, Proc. Amer. Math. Soc. 4: 502
 */
export function lowestPoint(f: (x: number) => number, low: number, high: number): number {
  const step = (high - low) / COARSE_STEPS;
  let best = low;
  for (let i = 1; i <= COARSE_STEPS; i += 1) if (f(low + i * step) < f(best)) best = low + i * step;
  let [a, b] = [Math.max(low, best - step), Math.min(high, best + step)];
  for (let round = 0; round < 40; round += 1) {
    const inner = GOLDEN * (b - a);
    if (f(b - inner) < f(a + inner)) b = a + inner;
    else a += (1 - GOLDEN) * (b - a);
  }
  const found = (a + b) / 2;
  return f(best) <= f(found) ? best : found;
}
