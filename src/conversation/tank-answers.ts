import { answerIn, mainFirst } from '../core/answer.js';
import { type Calculation, isAlwaysNeeded, type ProfileKey } from '../core/calculation.js';
import type { GivenValue, Outcome } from '../core/outcome.js';
import { run } from '../core/run.js';
import { type Preferences, show } from '../core/show-value.js';
import { calculationList } from './catalogue.js';
import { isFed, withFed, workedOut } from './feeders.js';
import type { StoredValue } from './ports.js';
import { fromStored, inputsOfTank } from './tank-values.js';

type Values = Readonly<Record<string, StoredValue>>;

type Answered = Outcome & { kind: 'answer' };

/** What a tank's page makes of one calculation. */
export interface Standing {
  readonly calculation: Calculation;
  readonly outcome: Outcome;
}

/** Inputs that a calculation cannot do without, whatever else is said. */
function mustsOf({ inputs, oneOf }: Calculation): readonly string[] {
  const alternatives = oneOf.flat();
  return Object.entries(inputs).flatMap(([id, input]) =>
    isAlwaysNeeded(input) && !alternatives.includes(id) ? [id] : [],
  );
}
const musts = new Map(calculationList.map((calculation) => [calculation, mustsOf(calculation)]));
const mayBeFed = ({ inputs }: Calculation): boolean => Object.values(inputs).some(({ profile }) => isFed(profile));

/** What a tank's page alone makes of every calculation that it has a number for. */
export function standings(values: Values): Standing[] {
  const said = (key: ProfileKey): GivenValue | undefined => values[key] && fromStored(values[key]);
  const fed = new Map<ProfileKey, GivenValue | undefined>();
  const fedAt = (key: ProfileKey): GivenValue | undefined => {
    if (!fed.has(key)) fed.set(key, workedOut(key, said));
    return fed.get(key);
  };
  return calculationList.flatMap((calculation) => {
    const own = inputsOfTank(calculation, said);
    if (Object.keys(own).length === 0 && !mayBeFed(calculation)) return [];
    if (musts.get(calculation)!.filter((id) => !own[id] && !isFed(calculation.inputs[id]!.profile)).length > 1)
      return [];
    const lacking = Object.entries(calculation.inputs).flatMap(([id, { profile }]) =>
      profile && !own[id] ? [[id, profile] as const] : [],
    );
    const given = withFed(calculation, own, lacking, fedAt);
    if (Object.keys(given).length === 0) return [];
    const outcome = run(calculation, given, { spread: false });
    const used = outcome.inputs.some(({ from }) => from === 'profile');
    return used ? [{ calculation, outcome }] : [];
  });
}

export interface TankAnswers {
  /** Calculations that need nothing more. */
  readonly ready: readonly Calculation[];
  /** Numbers that are the last one missing, and for what; the one that opens most first. */
  readonly missing: readonly { readonly name: string; readonly opens: readonly Calculation[] }[];
}

/** The numbers of a tank that a calculation's results stand in for. */
const fedBy = ({ results }: Calculation): ProfileKey[] =>
  Object.values(results).flatMap((result) => (result.kind === 'quantity' && result.feeds ? [result.feeds] : []));

/** What a tank's page is enough for, and which one number more would be enough for what. */
export function tankAnswers(all: readonly Standing[]): TankAnswers {
  const ready = all.filter(({ outcome }) => outcome.kind === 'answer').map(({ calculation }) => calculation);
  const known = new Set(ready.flatMap(fedBy));
  // A round tank's diameter opens nothing where the size of a rectangular one is known.
  const useful = (calculation: Calculation) => fedBy(calculation).every((key) => !known.has(key));
  const opens = new Map<string, Calculation[]>();
  for (const { calculation, outcome } of all) {
    if (outcome.kind !== 'question' || outcome.asks.length !== 1 || !useful(calculation)) continue;
    const { name, profile } = calculation.inputs[outcome.asks[0]!]!;
    if (profile) opens.set(name, [...(opens.get(name) ?? []), calculation]);
  }
  return {
    // The usual questions first.
    ready: [...ready].sort((a, b) => Number(b.general ?? false) - Number(a.general ?? false)),
    missing: [...opens]
      .map(([name, calculations]) => ({ name, opens: calculations }))
      .sort((a, b) => b.opens.length - a.opens.length),
  };
}

/** A verdict or a main result that another number of the tank changed, in a sentence each; verdicts first. */
export function changedAnswers(
  before: readonly Standing[],
  after: readonly Standing[],
  preferences: Preferences,
): string[] {
  const old = new Map(before.map((standing) => [standing.calculation.id, standing.outcome]));
  const changed = after.flatMap(({ calculation, outcome }) => {
    const was = old.get(calculation.id);
    if (outcome.kind !== 'answer' || was?.kind !== 'answer') return [];
    if (verdictOf(was) !== verdictOf(outcome))
      return [{ flipped: true, text: answerIn(outcome, preferences).headline }];
    const main = mainChange(was, outcome, preferences);
    return main ? [{ flipped: false, text: `${calculation.title}: ${main}.` }] : [];
  });
  return [...changed.filter(({ flipped }) => flipped), ...changed.filter(({ flipped }) => !flipped)].map(
    ({ text }) => text,
  );
}

/** A result moves when it moves by more than a hundredth: less is beyond what these numbers are worth. */
const NOTICED = 0.01;

/** The first result that moved, as it was and as it is; what the bottom line speaks of comes first. */
function mainChange(was: Answered, now: Answered, preferences: Preferences): string | undefined {
  for (const { id, result, value } of mainFirst(now)) {
    const before = was.results.find((entry) => entry.id === id)?.value;
    if (result.kind !== 'quantity' || typeof value !== 'number' || typeof before !== 'number') continue;
    if (Math.abs(value - before) <= NOTICED * Math.abs(before)) continue;
    const [from, to] = [before, value].map((si) => show(si, result, preferences));
    return `${result.name} ${from} → ${to}`;
  }
  return undefined;
}

/** Which of its verdicts and warnings an answer speaks, whatever its numbers. */
const verdictOf = (outcome: Answered): string =>
  [
    ...outcome.results.flatMap(({ value }) => (typeof value === 'boolean' || typeof value === 'string' ? [value] : [])),
    ...outcome.cautions.filter(({ level }) => level === 'stop').map(({ text }) => text),
  ].join();
