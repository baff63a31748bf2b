import type { BuildStep } from '../../data/build-steps.js';
import { dateAfter, daysBetween } from './quantity/date-text.js';

/** A step of one build: one of the table's, or the member's own. */
export type Step = BuildStep;

/** What a member has said about a step. Dates are `YYYY-MM-DD`. */
export interface StepState {
  readonly done?: string;
  /** Not before this day. */
  readonly from?: string;
  readonly skipped?: boolean;
}

export interface Build {
  readonly start: string;
  /** Live or seeded rock: the cycle is shorter. */
  readonly seeded: boolean;
  readonly steps: readonly Step[];
  readonly said: Readonly<Record<string, StepState>>;
  readonly today: string;
}

export interface Dated {
  readonly step: Step;
  readonly start: string;
  readonly end: string;
  /** The last day when every step before it and itself takes its longest. */
  readonly endAtLongest: string;
  /** `ready` can be begun today, `waits` has something before it, `now` is under way or running by itself. */
  readonly state: 'done' | 'now' | 'ready' | 'waits';
  /** Steps that are not over yet and must be. */
  readonly waitsFor: readonly string[];
}

const later = (a: string, b: string): string => (a > b ? a : b);

/** The days a step takes, usual and longest. */
export const daysOf = ({ days, seeded }: Step, isSeeded: boolean): readonly [number, number] =>
  isSeeded && seeded ? seeded : days;

/** What must be over before a step; behind a step that is left out stand the ones before that. */
export function stepsBefore(step: Step, { steps, said }: Pick<Build, 'steps' | 'said'>): readonly string[] {
  const before = step.after.flatMap(([id]): readonly string[] => {
    const found = steps.find((candidate) => candidate.id === id);
    if (!found) return [];
    return said[id]?.skipped ? stepsBefore(found, { steps, said }) : [id];
  });
  return [...new Set(before)];
}

/** @returns the steps so that each comes after what it waits for. @throws Error when two wait for each other */
export function inOrder(steps: readonly Step[]): Step[] {
  const ordered: Step[] = [];
  const left = [...steps];
  while (left.length > 0) {
    const next = left.findIndex(({ after }) => after.every(([id]) => !left.some((step) => step.id === id)));
    if (next < 0) throw new Error(`these wait for each other: ${left.map(({ id }) => id).join(', ')}`);
    ordered.push(...left.splice(next, 1));
  }
  return ordered;
}

/**
 * Dates every step as early as what comes before it lets it: a forward pass of the critical-path method (Kelley & Walker 1959).
 * A day's work ends that day and the next step begins the day after; a step that should have ended and is not done ends
 * today at the earliest, and the rest follows.
 */
export function schedule(build: Build): Dated[] {
  const { said, start, today, seeded } = build;
  const over = new Map<string, { usual: string; longest: string }>();
  return inOrder(build.steps)
    .filter(({ id }) => !said[id]?.skipped)
    .map((step): Dated => {
      const state = said[step.id];
      const before = stepsBefore(step, build);
      const dayAfter = (which: 'usual' | 'longest') =>
        before.map((id) => dateAfter(over.get(id)![which], 1)).reduce(later, start);
      const [usual, longest] = daysOf(step, seeded);
      const begins = later(dayAfter('usual'), state?.from ?? start);
      const waitsFor = before.filter((id) => said[id]?.done === undefined);
      const end = state?.done ?? later(dateAfter(begins, usual - 1), today);
      const endAtLongest =
        state?.done ?? later(end, dateAfter(later(dayAfter('longest'), state?.from ?? start), longest - 1));
      over.set(step.id, { usual: end, longest: endAtLongest });
      const standing = (): Dated['state'] => {
        if (state?.done) return 'done';
        if (waitsFor.length > 0) return 'waits';
        return begins <= today ? (step.waits ? 'now' : 'ready') : 'waits';
      };
      return {
        step,
        start: state?.done && state.done < begins ? state.done : begins,
        end,
        endAtLongest,
        state: standing(),
        waitsFor,
      };
    });
}

/** Whether a step is one of some others or, through whatever stands before them, comes before one of them. */
export function leadsTo(id: string, others: readonly string[], before: (id: string) => readonly string[]): boolean {
  const seen = new Set<string>();
  const reaches = (other: string): boolean => {
    if (other === id) return true;
    if (seen.has(other)) return false;
    seen.add(other);
    return before(other).some(reaches);
  };
  return others.some(reaches);
}

/** Steps that may be worked on while this one runs: neither waits for the other, and their days overlap. */
export function besides(dated: Dated, all: readonly Dated[], build: Build): Dated[] {
  const before = (id: string): readonly string[] =>
    build.steps.filter((step) => step.id === id).flatMap((step) => stepsBefore(step, build));
  const needs = (a: Step, b: string): boolean => leadsTo(b, before(a.id), before);
  return all.filter(
    (other) =>
      other.step.id !== dated.step.id &&
      other.state !== 'done' &&
      other.start <= dated.end &&
      other.end >= dated.start &&
      !needs(other.step, dated.step.id) &&
      !needs(dated.step, other.step.id),
  );
}

/** What keeps a step from beginning on a day: the last step before it, the first day after that, and why it must wait. */
export function tooEarly(
  id: string,
  day: string,
  build: Build,
): { waitsFor: Dated; earliest: string; why: string } | undefined {
  const all = schedule(build);
  const step = build.steps.find((candidate) => candidate.id === id)!;
  const last = stepsBefore(step, build)
    .map((before) => all.find((dated) => dated.step.id === before)!)
    .sort((a, b) => daysBetween(b.end, a.end))
    .at(-1);
  if (!last || day > last.end) return undefined;
  const why = step.after.find(([before]) => before === last.step.id)?.[1] ?? '';
  return { waitsFor: last, earliest: dateAfter(last.end, 1), why };
}
