import type { Calculation, ProfileKey } from '../core/calculation.js';
import type { Given, GivenValue } from '../core/outcome.js';
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

/** Whether some calculation's result can stand in for a number of the tank. */
export const isFed = (key: ProfileKey | undefined): boolean => key !== undefined && feeders.has(key);

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

/**
 * A calculation that can work a number out from what was said does so, and takes no other calculation's word for it: the
 * weight of a tank takes its rock off the water, where the plain volume does not.
 */
function worksOutItself(calculation: Calculation, id: string, given: Given): boolean {
  const input = calculation.inputs[id];
  if (input?.kind !== 'quantity' || !calculation.steps.some(({ symbol }) => symbol === input.symbol)) return false;
  const outcome = run(calculation, given, { spread: false });
  return outcome.kind === 'answer' && outcome.at.values[input.symbol] !== undefined;
}

/**
 * Fills what is lacking with what other calculations make of the tank.
 * @param lacking inputs that nobody gave, with where a tank keeps them
 */
export function withFed(
  calculation: Calculation,
  given: Given,
  lacking: readonly (readonly [id: string, key: ProfileKey])[],
  fedAt: (key: ProfileKey) => GivenValue | undefined,
): Given {
  const all: Record<string, GivenValue> = { ...given };
  for (const [id, key] of lacking) {
    const value = worksOutItself(calculation, id, all) ? undefined : fedAt(key);
    if (value) all[id] = value;
  }
  return all;
}
