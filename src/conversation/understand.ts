import type { Input, ProfileKey } from '../core/calculation.js';
import type { ClockWindow } from '../core/models/clock-window.js';
import type { Given } from '../core/outcome.js';
import { profileInputs } from '../core/profile.js';
import type { UnitRow } from '../core/quantity/units.js';
import { NEAR } from '../language/candidates.js';
import { choicesIn, lookupsIn, outside, type TextRole } from '../language/choices.js';
import { clockRoles } from '../language/clock-roles.js';
import { isLittle, type Words, wordsOf } from '../language/cues.js';
import type { DateFound } from '../language/dates.js';
import { withStartAndEnd } from '../language/from-to.js';
import { type Mention, measurementsIn } from '../language/measurements.js';
import { type NormalText, normalText, originalSpan } from '../language/normal-text.js';
import { givenFrom } from '../language/read-value.js';
import type { Hints } from '../language/readings.js';
import { type Assignment, assignRoles, type Doubt } from '../language/roles.js';
import { unitsNamed } from '../language/unit-words.js';
import { withoutSigns } from './signs.js';

/** A message cut into words and measurements, before anybody asks what it is about. */
export interface Heard {
  readonly original: string;
  readonly normal: NormalText;
  readonly text: string;
  readonly words: Words;
  readonly mentions: readonly Mention[];
  readonly said: readonly UnitRow[];
}

/** "150 long 60 wide 55 high in cm", "sizes in inches": the unit of every bare number. */
const TRAILING_UNIT =
  /\b(?:all|sizes|everything|it'?s|numbers)? ?\(?in (mm|cm|centimet(?:er|re)s|inches|feet|met(?:er|re)s)\)?[.!?]*$/;

export function hearText(original: string): Heard {
  const normal = normalText(withoutSigns(original));
  const mentions = meant(measurementsIn(normal.text), normal.text);
  const trailing = normal.text.match(TRAILING_UNIT)?.[1];
  const said = mentions.flatMap(({ units }) =>
    units.length === 1 || units.every(({ id }) => id !== 'g') ? units.slice(0, 1) : [],
  );
  const all = trailing === undefined ? said : [...said, ...unitsNamed(trailing).slice(0, 1)];
  return { original, normal, text: normal.text, words: wordsOf(normal.text), mentions, said: all };
}

const TIME_OF_DAY = /^ *(?:[ap]\.?m\b|o'?clock\b)/;
const CHANGES_ONE = /^(?:and |ok |so |but )*(?:what|make|same|with|use|try|at|if)\b/;

/**
 * Without what it is not, "80, not 75", "80 instead of 78", and without times of the day, "up since 4 am", which the clock's own
 * reader sees.
 */
function meant(mentions: Mention[], text: string): Mention[] {
  const denies = CHANGES_ONE.test(text) ? /\b(?:not|instead of|rather than)\s+$/ : /\bnot\s+$/;
  return mentions.filter(
    ({ start, end }) =>
      !TIME_OF_DAY.test(text.slice(end, end + 8)) && (mentions.length < 2 || !denies.test(text.slice(0, start))),
  );
}

/** A measurement as it was written. */
export const asWritten = ({ original, normal }: Heard, { start, end }: Mention): string =>
  original.slice(...originalSpan(normal, start, end));

export interface Understood {
  readonly given: Given;
  readonly doubts: readonly Doubt[];
  readonly assignment: Assignment;
  /** Choices, pipes, clock times and days that words named. */
  readonly texts: readonly TextRole[];
  /** The inputs that it was read for. */
  readonly inputs: Readonly<Record<string, Input>>;
  /** Stretches of the day of which the member must choose one. */
  readonly windows: readonly ClockWindow[];
  /** Values whose unit was guessed, to be said in the reply. */
  readonly guessed: readonly string[];
  /** The day that was named, where one is wanted. */
  readonly day?: DateFound;
  /** Values whose unit has two meanings, of which the question's was taken: 100 g as gallons, 1.025 as a specific gravity. */
  readonly twoMeanings: readonly { readonly id: string; readonly said: string }[];
}

/** Reads a message for a set of inputs: pipe sizes and lists first, then choices and clock times, then every number. */
export async function understand(
  heard: Heard,
  inputs: Readonly<Record<string, Input>>,
  hints: Hints,
  asked?: string,
  strict = false,
): Promise<Understood> {
  const lookups = lookupsIn(inputs, heard.text, heard.words);
  const clocks = clockRoles(inputs, heard.text, heard.words, strict);
  // "14 cents per kWh": the cents are part of the price.
  const choices = choicesIn(inputs, heard.words).filter(
    ({ start, end }) =>
      !heard.mentions.some((mention) => mention.units.length > 0 && mention.start < start && mention.end >= end),
  );
  const day = await dayIn(inputs, heard.text, hints);
  const dates = day ? [{ id: day.id, text: day.date, start: day.start, end: day.end }] : [];
  const chosen = choices.some(({ id }) => id === asked);
  const free = outside(heard.mentions, [...lookups, ...clocks.roles, ...dates]).filter(
    // "Corrected to 25" answers with a choice; its 25 is no reading.
    (mention) =>
      (!chosen || mention.units.length > 0) && !choices.some((choice) => isPartOf(mention, choice, heard.text)),
  );
  const assignment = assignRoles(inputs, withStartAndEnd(free, inputs, heard.text), heard.words, heard.text, hints, {
    asked,
    strict,
    decoys: strict ? {} : decoysFor(inputs),
  });
  // A pipe named by its size leaves its bore to the table, unless words call a number its bore.
  const filled = filledBy(lookups, inputs);
  const roles = assignment.roles.filter(({ id, near }) => near >= NEAR || !filled.has(id));
  const windows = clocks.windows ?? [];
  const texts = [...lookups, ...(windows.length > 0 ? [] : clocks.roles), ...choices, ...dates];
  const given: Given = {
    ...Object.fromEntries(roles.map(({ id, reading }) => [id, givenFrom(reading)])),
    ...clocks.given,
    ...Object.fromEntries(texts.map(({ id, text }) => [id, { text, from: 'message' as const }])),
  };
  const guessed = assignment.roles
    .filter(({ reading, mention }) => reading.guessed && mention.units.length === 0 && reading.unit.shown !== '')
    .map(({ id }) => id);
  const twoMeanings = assignment.roles
    .filter(({ mention, reading }) => isAmbiguous(mention) || reading.specificGravity !== undefined)
    .map(({ id, mention }) => ({ id, said: heard.text.slice(mention.start, mention.end) }));
  return {
    given,
    doubts: assignment.doubts,
    windows,
    assignment,
    texts,
    inputs,
    guessed,
    twoMeanings,
    ...(day ? { day } : {}),
  };
}

/** The 25 of "compensated to 25 °C" belongs to the option that is said with it. */
const isPartOf = ({ start, end }: Mention, choice: TextRole, text: string): boolean =>
  start < choice.end && end > choice.start && /\d/.test(text.slice(choice.start, choice.end));

/** Inputs whose value a looked-up thing brings with it. */
function filledBy(lookups: readonly TextRole[], inputs: Readonly<Record<string, Input>>): ReadonlySet<string> {
  const found = lookups.flatMap(({ id, text }) => {
    const input = inputs[id];
    const read = input?.kind === 'lookup' ? input.read(text, {}) : '';
    return typeof read === 'string' ? [] : Object.keys(read.inputs ?? {});
  });
  return new Set(found);
}

const decoys = new WeakMap<Readonly<Record<string, Input>>, Readonly<Record<string, Input>>>();

/** What a tank keeps and these inputs do not ask for, by its key. */
function decoysFor(inputs: Readonly<Record<string, Input>>): Readonly<Record<string, Input>> {
  const known = decoys.get(inputs);
  if (known) return known;
  const own = new Set(Object.values(inputs).flatMap(({ profile }) => profile ?? []));
  const others = Object.fromEntries(
    Object.entries(profileInputs)
      .filter(([key]) => !own.has(key as ProfileKey))
      .map(([key, input]) => [key, { ...input, words: (input.words ?? []).filter((word) => !isLittle(word)) }]),
  );
  decoys.set(inputs, others);
  return others;
}

/** g and oz are a mass or a volume. */
const isAmbiguous = ({ units }: Mention): boolean =>
  ['mass', 'volume'].every((quantity) => units.some(({ quantities }) => quantities.includes(quantity as never)));

/** The day for the input that wants one. */
async function dayIn(
  inputs: Readonly<Record<string, Input>>,
  text: string,
  hints: Hints,
): Promise<(DateFound & { readonly id: string }) | undefined> {
  const id = Object.keys(inputs).find((name) => inputs[name]!.kind === 'date');
  if (id === undefined) return undefined;
  const { findDate } = await import('../language/dates.js');
  const found = findDate(text, hints);
  return found && { id, ...found };
}

/** Inputs of a calculation that a message spoke of, whether or not it gave a number. */
export const saysAnything = ({ given, doubts, windows }: Understood): boolean =>
  Object.keys(given).length > 0 || doubts.length > 0 || windows.length > 0;
