import type { Calculation, ProfileKey } from '../core/calculation.js';
import type { GivenValue } from '../core/outcome.js';
import { run } from '../core/run.js';
import { calculationList } from './catalogue.js';
import { inputsOfTank } from './tank-values.js';

interface Feeder {
  readonly calculation: Calculation;
  /** The result that feeds. */
  readonly id: string;
}

/** Results that stand in for a number of the tank; the whole system before the display alone. */
const feeders = new Map<ProfileKey, Feeder[]>();
for (const calculation of calculationList)
  for (const [id, result] of Object.entries(calculation.results))
    if (result.kind === 'quantity' && result.feeds)
      feeders.set(result.feeds, [...(feeders.get(result.feeds) ?? []), { calculation, id }]);
const asksFor = ({ calculation }: Feeder): number => Object.keys(calculation.inputs).length;
for (const found of feeders.values()) found.sort((a, b) => asksFor(b) - asksFor(a));

/** A number of the tank that nobody gave, as another calculation makes it of what was given. */
export function workedOut(
  key: ProfileKey,
  valueAt: (key: ProfileKey) => GivenValue | undefined,
): GivenValue | undefined {
  for (const { calculation, id } of feeders.get(key) ?? []) {
    const given = inputsOfTank(calculation, (own) => (feeders.has(own) ? undefined : valueAt(own)));
    const outcome = run(calculation, given, { spread: false });
    const worked = outcome.kind === 'answer' ? outcome.results.find((result) => result.id === id) : undefined;
    if (typeof worked?.value === 'number')
      return { si: worked.value, from: 'profile', via: calculation.title.toLowerCase() };
  }
  return undefined;
}
