import { z } from 'zod/mini';
import { type BuildStep, buildSteps } from '../../data/build-steps.js';
import { literal } from '../core/literal.js';
import { shownDate } from '../core/quantity/date-text.js';
import type { Reply } from '../core/reply.js';
import { type Build, besides, type Dated, leadsTo, schedule, tooEarly } from '../core/schedule.js';
import { capital } from '../render/text.js';
import { noteZone, today } from './days.js';
import type { Tank } from './ports.js';
import { notice, refusal, saying } from './replies.js';
import { type Listed, tankList } from './tank-list.js';
import { tankFor } from './tank-names.js';
import { currentTank, type Turn } from './turn.js';

const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/));
const entry = z.union([
  z.object({ kind: z.literal('start'), start: day, seeded: z.boolean() }),
  z.object({
    kind: z.literal('said'),
    step: z.string(),
    done: z.optional(day),
    from: z.optional(day),
    skipped: z.optional(z.boolean()),
  }),
  z.object({
    kind: z.literal('own'),
    step: z.string(),
    name: z.string(),
    days: z.number(),
    after: z.array(z.string()),
    before: z.array(z.string()),
  }),
]);
type Entry = z.infer<typeof entry>;
type Said = Extract<Entry, { kind: 'said' }>;
type Own = Extract<Entry, { kind: 'own' }>;

const list = tankList<Entry>('step', entry);

/** A member's build: what they said of it, and what follows. */
export interface BuildPlan {
  readonly tank: Tank;
  readonly entries: readonly Listed<Entry>[];
  readonly build: Build;
}

const ownStep = ({ step, name, days, after }: Own): BuildStep => ({
  id: step,
  name,
  short: name,
  words: [],
  days: [days, days],
  after: after.map((id) => [id, 'you put it there']),
});

/** The table's steps and the member's own; a step of their own that must come before another stands among what that one waits for. */
function stepsWith(own: readonly Own[]): BuildStep[] {
  const waits = (id: string) =>
    own.filter(({ before }) => before.includes(id)).map(({ step }) => [step, 'you put it there'] as const);
  return [...buildSteps, ...own.map(ownStep)].map((step) => ({ ...step, after: [...step.after, ...waits(step.id)] }));
}

/** @returns undefined while no start was said for the current tank */
export async function planOf(turn: Turn): Promise<BuildPlan | undefined> {
  const tank = currentTank(turn);
  if (!tank) return undefined;
  const entries = await list.read(turn, tank);
  const values = entries.map(({ value }) => value);
  const begun = values.find((value) => value.kind === 'start');
  if (!begun) return undefined;
  const own = values.filter((value) => value.kind === 'own');
  const said = values.filter((value) => value.kind === 'said');
  const build: Build = {
    start: begun.start,
    seeded: begun.seeded,
    steps: stepsWith(own),
    said: Object.fromEntries(
      said.map(({ step, done, from, skipped }) => [
        step,
        { ...(done && { done }), ...(from && { from }), ...(skipped && { skipped }) },
      ]),
    ),
    today: await today(turn),
  };
  return { tank, entries, build };
}

const NO_PLAN = 'No build is laid out yet: say when it starts, for example “start my build on Saturday”.';

export const noPlan = (turn: Turn): Reply =>
  notice(turn.speaker, NO_PLAN, { private: true, actions: [saying('Start today', '/plan start date:today')] });

const wordsFit = (text: string, word: string): boolean => new RegExp(`(?<![a-z])${literal(word)}(?![a-z])`).test(text);

/** The step that a text names: by the longest of its names that stands in the text. */
export function stepNamed(text: string, steps: readonly BuildStep[]): BuildStep | undefined {
  const folded = text.trim().toLowerCase();
  const named = steps.flatMap((step) =>
    [step.name.toLowerCase(), step.id.replace(/_/g, ' '), ...step.words]
      .filter((word) => wordsFit(folded, word))
      .map((word) => ({ step, length: word.length })),
  );
  return named.sort((a, b) => b.length - a.length)[0]?.step;
}

/** Lays the build out, or moves its start; what was ticked off stays. */
export async function startBuild(turn: Turn, start: string, seeded: boolean): Promise<Reply> {
  const { tank } = await tankFor(turn, undefined);
  const begun = (await list.read(turn, tank)).find(({ value }) => value.kind === 'start');
  const value: Entry = { kind: 'start', start, seeded };
  if (begun) await list.change(turn, tank, begun.id, value);
  else await list.add(turn, tank, [value]);
  const plan = (await planOf(turn))!;
  return page(
    turn,
    plan,
    begun
      ? `Moved the start of “${tank.name}” to ${shownDate(start)}.`
      : `Laid out the build of “${tank.name}” from ${shownDate(start)}.`,
    { brief: false },
  );
}

/** Changes what is said of a step. */
async function say(
  turn: Turn,
  { tank, entries }: BuildPlan,
  step: string,
  change: (before: Said) => Said,
): Promise<BuildPlan> {
  const before = entries.find(({ value }) => value.kind === 'said' && value.step === step);
  const value = change((before?.value as Said | undefined) ?? { kind: 'said', step });
  if (before) await list.change(turn, tank, before.id, value);
  else await list.add(turn, tank, [value]);
  return (await planOf(turn))!;
}

const dateOf = (plan: BuildPlan, id: string): Dated | undefined =>
  schedule(plan.build).find(({ step }) => step.id === id);

/** What moved: the first animals are what everybody waits for. */
function consequence(before: BuildPlan, after: BuildPlan): string {
  const [was, is] = [dateOf(before, 'first_animals'), dateOf(after, 'first_animals')];
  if (!was || !is || is.state === 'done') return '';
  return was.start === is.start
    ? `First animals stay at about ${shownDate(is.start)}.`
    : `First animals move from about ${shownDate(was.start)} to ${shownDate(is.start)}.`;
}

/** Ticks a step off. */
export async function finishStep(turn: Turn, plan: BuildPlan, step: BuildStep, date: string): Promise<Reply> {
  const { waitsFor } = dateOf(plan, step.id) ?? { waitsFor: [] };
  const after = await say(turn, plan, step.id, ({ skipped: _, ...before }) => ({ ...before, done: date }));
  const open = waitsFor.map((id) => stepWith(plan, id));
  const why = (id: string) => step.after.find(([before]) => before === id)?.[1] ?? 'it comes first';
  return page(turn, after, `Ticked off: ${step.name}, ${shownDate(date)}. ${consequence(plan, after)}`.trim(), {
    cautions: open.map(({ id, name }) => ({
      level: 'caution' as const,
      text: `“${capital(name)}” is not ticked off, and it comes before: ${why(id)}. Tick it off too if it is done.`,
    })),
  });
}

export async function reopenStep(turn: Turn, plan: BuildPlan, step: BuildStep): Promise<Reply> {
  const after = await say(turn, plan, step.id, ({ kind, step: id }) => ({ kind, step: id }));
  return page(turn, after, `Open again: ${step.name}. ${consequence(plan, after)}`.trim());
}

/** Puts a step on a later day, the rest following; refuses a day before what it waits for is over. */
export async function moveStep(turn: Turn, plan: BuildPlan, step: BuildStep, date: string): Promise<Reply> {
  if (plan.build.said[step.id]?.done)
    return refusal(turn.speaker, `${capital(step.name)} is done: say it is not, and then move it.`);
  const early = tooEarly(step.id, date, plan.build);
  if (early)
    return refusal(
      turn.speaker,
      `${capital(step.name)} can’t be on ${shownDate(date)}: ${early.waitsFor.step.name} runs to ${shownDate(early.waitsFor.end)} (${early.why}). ${shownDate(early.earliest)} is the first day that would do; nothing was moved.`,
    );
  const after = await say(turn, plan, step.id, (before) => ({ ...before, from: date }));
  return page(turn, after, `Moved to ${shownDate(date)}: ${step.name}. ${consequence(plan, after)}`.trim());
}

export async function skipStep(turn: Turn, plan: BuildPlan, step: BuildStep): Promise<Reply> {
  const after = await say(turn, plan, step.id, (before) => ({ ...before, skipped: true }));
  return page(turn, after, `Left out: ${step.name}. ${consequence(plan, after)}`.trim());
}

/** Adds a step of the member's own. */
export async function addStep(
  turn: Turn,
  plan: BuildPlan,
  {
    name,
    days,
    after,
    before,
  }: { name: string; days: number; after: readonly BuildStep[]; before: readonly BuildStep[] },
): Promise<Reply> {
  const number = plan.entries.filter(({ value }) => value.kind === 'own').length + 1;
  const value: Own = {
    kind: 'own',
    step: `own_${number}`,
    name,
    days,
    after: after.map(({ id }) => id),
    before: before.map(({ id }) => id),
  };
  const circle = value.before.find((id) => leadsTo(id, value.after, (other) => waitedFor(plan, other)));
  if (circle)
    return refusal(
      turn.speaker,
      `“${name}” can’t come before ${nameOf(plan, circle)} and after what waits for it: nothing was added.`,
    );
  await list.add(turn, plan.tank, [value]);
  const grown = (await planOf(turn))!;
  return page(
    turn,
    grown,
    `Added: ${name}, on ${shownDate(dateOf(grown, value.step)!.start)}. ${consequence(plan, grown)}`.trim(),
  );
}

const stepWith = ({ build }: BuildPlan, id: string): BuildStep => build.steps.find((step) => step.id === id)!;
const nameOf = (plan: BuildPlan, id: string): string => stepWith(plan, id).name;
/** What a step waits for, left out or not: it may be wanted again. */
const waitedFor = (plan: BuildPlan, id: string): string[] => stepWith(plan, id).after.map(([before]) => before);

const span = ({ start, end }: Dated): string =>
  start === end ? shownDate(start) : `${shownDate(start)} to ${shownDate(end)}`;

/** What a member can do now, or what runs by itself. */
function bottomLine(all: readonly Dated[]): string {
  const open = all.filter(({ state }) => state === 'ready');
  const runs = all.filter(({ state }) => state === 'now');
  const next = all.find(({ state }) => state === 'waits');
  if (open.length > 0) return `Now: ${open.map(({ step }) => step.name).join('; ')}.`;
  if (runs.length > 0)
    return `Now waiting: ${runs.map(({ step, end }) => `${step.name}, to about ${shownDate(end)}`).join('; ')}.`;
  return next ? `Next: ${next.step.name}, ${shownDate(next.start)}.` : 'Every step is ticked off.';
}

function lineOf(dated: Dated, names: ReadonlyMap<string, string>): string {
  const { step, state, end, waitsFor } = dated;
  if (state === 'done') return `Done ${shownDate(end)}: ${step.name}`;
  const waiting = waitsFor.length > 0 ? ` (after: ${waitsFor.map((id) => names.get(id)).join(', ')})` : '';
  return `${span(dated)}: ${step.name}${waiting}`;
}

/** Steps that are listed after a change; the whole page has them all. */
const MOST_NEXT = 6;

/** The whole build on one page, in the order of days; after a change, what comes next. */
export function page(
  turn: Turn,
  { build, tank }: BuildPlan,
  first?: string,
  { cautions = [], brief = first !== undefined }: { cautions?: Reply['cautions']; brief?: boolean } = {},
): Reply {
  noteZone(turn);
  const all = schedule(build);
  const names = new Map(build.steps.map(({ id, short }) => [id, short]));
  const byDay = [...all].sort((a, b) => (a.start === b.start ? 0 : a.start < b.start ? -1 : 1));
  const listed = brief ? byDay.filter(({ state }) => state !== 'done').slice(0, MOST_NEXT) : byDay;
  const left = byDay.filter(({ state }) => state !== 'done').length - listed.length;
  const animals = all.find(({ step }) => step.id === 'first_animals');
  const lastDay = all.find(({ step }) => step.id === 'water_change')?.endAtLongest;
  const far =
    animals && animals.state !== 'done'
      ? `First animals about ${shownDate(animals.start)}${lastDay && lastDay >= animals.start ? `, or ${shownDate(lastDay)} when every step takes its longest` : ''}.`
      : '';
  const open = all.filter(({ state }) => state === 'ready');
  return notice(turn.speaker, first ?? `${bottomLine(all)} ${far}`.trim(), {
    body: [
      ...(first ? [bottomLine(all), far] : []),
      `The build of “${tank.name}”${brief ? ', what comes next' : ''}:`,
      ...listed.map((dated) => lineOf(dated, names)),
      ...(brief && left > 0 ? [`… and ${left} more: “show my schedule”.`] : []),
      'Days and order are common practice; a label’s time outranks them, and “ready” is what the test log shows.',
    ]
      .filter(Boolean)
      .join('\n'),
    cautions: [
      ...cautions,
      ...open.flatMap(({ step }) =>
        step.caution ? [{ level: 'caution' as const, text: `${capital(step.name)}: ${step.caution}` }] : [],
      ),
    ],
    private: true,
    actions: open
      .slice(0, 3)
      .map(({ step }) => saying(`Done: ${step.name}`.slice(0, 70), `/plan done step:${step.name} date:today`)),
  });
}

/** One step: when, what it waits for and why, what may be done beside it. */
export function stepPage(turn: Turn, plan: BuildPlan, step: BuildStep): Reply {
  noteZone(turn);
  const { build } = plan;
  const all = schedule(build);
  const dated = all.find(({ step: { id } }) => id === step.id);
  if (!dated)
    return refusal(
      turn.speaker,
      `${capital(step.name)} is left out of this build; say “/plan done” or “/plan reopen” to have it back.`,
    );
  const beside = besides(dated, all, build).map(({ step: { name } }) => name);
  const waits = step.after
    .filter(([id]) => dated.waitsFor.includes(id))
    .map(([id, why]) => `Waits for ${nameOf(plan, id)}: ${why}.`);
  const follow = all
    .filter(({ step: { after } }) => after.some(([id]) => id === step.id))
    .map(({ step: { name } }) => name);
  const when =
    dated.state === 'done'
      ? `${capital(step.name)}: done ${shownDate(dated.end)}.`
      : `${capital(step.name)}: ${span(dated)}${dated.endAtLongest > dated.end ? `, to ${shownDate(dated.endAtLongest)} at the longest` : ''}.`;
  return notice(turn.speaker, when, {
    body: [
      ...(dated.state === 'done' ? [] : waits),
      ...(beside.length > 0 && dated.state !== 'done' ? [`May go on beside it: ${beside.join('; ')}.`] : []),
      ...(follow.length > 0 ? [`Waits for this: ${follow.join('; ')}.`] : []),
    ].join('\n'),
    cautions: step.caution ? [{ level: 'caution', text: step.caution }] : [],
    private: true,
  });
}
