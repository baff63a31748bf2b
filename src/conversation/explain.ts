import { quantityTable } from '../../data/quantities.js';
import type { Input } from '../core/calculation.js';
import { withArticle } from '../core/quantity/number.js';
import { fromSI, toSI, type UnitRow } from '../core/quantity/units.js';
import type { ReadExplanation, ReadMeasurement } from '../core/reply.js';
import { NEAR } from '../language/candidates.js';
import { findPhrase } from '../language/cues.js';
import { cuePlaces } from '../language/input-cues.js';
import type { Mention } from '../language/measurements.js';
import { originalSpan } from '../language/normal-text.js';
import { readingChoices } from '../language/read-value.js';
import type { Rival, Role } from '../language/roles.js';
import { rank } from '../language/topic.js';
import type { LikelyTopic } from './likeliest.js';
import { asWritten, type Heard, type Understood } from './understand.js';

/** One question of a message, and how it was read. */
export interface ReadPart {
  readonly heard: Heard;
  readonly understood?: Understood | undefined;
}

/** A measurement of the whole message, and where the question that it belongs to has it. */
interface Placed extends ReadPart {
  readonly mention: Mention;
  readonly inPart: Mention;
}

const FAR = 'far less likely';
const LESS_LIKELY = ['nearly as likely', 'less likely', FAR] as const;

/** How far behind another reading was, in words. @param steps from where on it is less likely, and far less */
const behindInWords = (behind: number, [less, far]: readonly [number, number]): (typeof LESS_LIKELY)[number] =>
  LESS_LIKELY[behind < less ? 0 : behind < far ? 1 : 2];

const ROLE_STEPS = [0.3, 1.2] as const;
const TOPIC_STEPS = [0.6, 2.5] as const;
const MOST_RIVALS = 2;
const MOST_NEXT = 2;

/** How a message was read: every number of it, then why, from its topic to what was left out. */
export function explanation(heard: Heard, parts: readonly ReadPart[], why: readonly string[]): ReadExplanation {
  const placed = placedIn(heard, parts);
  return {
    measurements: placed.map((entry) => measurementOf(heard, entry)),
    why: [...why, ...placed.flatMap((entry) => numberLines(entry)), ...parts.flatMap(textLines)],
  };
}

/** Parts hold the message's measurements in its order. */
function placedIn(heard: Heard, parts: readonly ReadPart[]): Placed[] {
  const left = parts.flatMap((part) => part.heard.mentions.map((inPart) => ({ ...part, inPart })));
  return heard.mentions.map((mention) => {
    const said = asWritten(heard, mention);
    const at = left.findIndex((entry) => asWritten(entry.heard, entry.inPart) === said);
    return { ...(left.splice(at < 0 ? left.length : at, 1)[0] ?? { heard, inPart: mention }), mention };
  });
}

const sameSpan = (a: Mention, b: Mention): boolean => a.start === b.start && a.end === b.end;

const rolesOf = ({ understood, inPart }: Placed): readonly Role[] =>
  understood?.assignment.roles.filter((role) => sameSpan(role.mention, inPart)) ?? [];

/** What else the number could have been, likeliest first. */
const rivalsOf = ({ understood }: Placed, role: Role): readonly Rival[] =>
  understood?.assignment.rivalsOf(role).slice(0, MOST_RIVALS) ?? [];

function measurementOf(heard: Heard, placed: Placed): ReadMeasurement {
  const { mention } = placed;
  const [role] = rolesOf(placed);
  const unit = role?.reading.unit ?? mention.units[0];
  const si = role?.reading.si ?? (unit ? toSI(mention.value, unit) : mention.value);
  const read = (value: number, row: UnitRow) => ({
    quantity: row.quantities[0]!,
    unit: row.id,
    si: toSI(value, row),
  });
  const alternatives = [
    ...mention.units.filter((other) => other !== unit).map((other) => read(mention.value, other)),
    ...(mention.other && unit ? [read(mention.other.value, unit)] : []),
  ];
  const rivals = role
    ? rivalsOf(placed, role).map(({ id, behind }) => ({ role: id, likely: behindInWords(behind, ROLE_STEPS) }))
    : [];
  return {
    span: originalSpan(heard.normal, mention.start, mention.end),
    text: asWritten(heard, mention),
    quantity: unit?.quantities[0] ?? 'number',
    value: unit ? fromSI(si, unit) : mention.value,
    unit: unit?.id ?? '1',
    si,
    si_unit: unit ? quantityTable[unit.quantities[0]!].si : '1',
    ...(mention.low === undefined || !unit ? {} : { low: toSI(mention.low, unit) }),
    ...(mention.high === undefined || !unit ? {} : { high: toSI(mention.high, unit) }),
    ...(mention.count === undefined ? {} : { count: mention.count }),
    ...(role ? { role: role.id } : {}),
    ...(alternatives.length > 0 ? { alternatives } : {}),
    ...(rivals.length > 0 ? { rivals } : {}),
  };
}

/** "“66F” is taken as the room temperature, 66 °F: the word “room” stands beside it." */
function numberLines(placed: Placed): string[] {
  const { heard, understood, inPart } = placed;
  const said = `“${asWritten(heard, inPart)}”`;
  if (!understood) return [`${said} is not used`];
  const { assignment, inputs, texts } = understood;
  const name = (id: string) => `the ${inputs[id]!.name}`;
  const roles = rolesOf(placed);
  const [role] = roles;
  if (role) {
    const taken = roles.map(({ id, reading }) => `${name(id)}, ${readingChoices([reading]).trim()}`);
    return [
      [`${said} is taken as ${taken.join(' and ')}: ${reasonOf(placed, role)}`, ...elseOf(placed, role)].join('. '),
    ];
  }
  const doubt = assignment.doubts.find(({ mention }) => sameSpan(mention, inPart));
  if (doubt)
    return [`${said} is taken as ${name(doubt.id)}, in a unit that was not said: ${readingChoices(doubt.readings)}`];
  if (texts.some(({ start, end }) => start < inPart.end && end > inPart.start)) return [];
  if (assignment.beside.some(({ mention }) => sameSpan(mention, inPart)))
    return [`${said} is said of something that this does not ask for, and kept for later`];
  const misfit = assignment.mismatches.find(({ mention }) => sameSpan(mention, inPart));
  return [misfit ? `${said} stands by ${name(misfit.id)}, which it cannot measure` : `${said} is not used`];
}

/** Why a number is what it is taken as: the word beside it, where there is one. */
function reasonOf({ heard, understood, inPart }: Placed, { id, near, reading, reason }: Role): string {
  const word = near < NEAR || inPart.group ? undefined : wordBeside(heard, id, understood!.inputs[id]!, inPart);
  const because = word === undefined ? reason : `the word “${word}” stands beside it`;
  const guessed = reading.guessed && inPart.units.length === 0 && reading.unit.shown !== '';
  return guessed ? `${because}; no unit was said, and ${reading.unit.shown} is likeliest` : because;
}

/** The word nearest to a number that points at an input. */
function wordBeside({ words, text }: Heard, id: string, input: Input, { start, end }: Mention): string | undefined {
  const distance = (place: { start: number; end: number }) => Math.max(place.start - end, start - place.end);
  const [nearest] = [...(cuePlaces({ [id]: input }, words).get(id) ?? [])].sort((a, b) => distance(a) - distance(b));
  // A phrase may begin in the unit of its number: "cm drop".
  return nearest && text.slice(nearest.start < end && nearest.end > end ? end : nearest.start, nearest.end).trim();
}

/** Other units and other inputs that a number could have had; those that were far behind are not worth a word. */
function elseOf(placed: Placed, role: Role): string[] {
  const { heard, understood, inPart } = placed;
  const { inputs, assignment } = understood!;
  const [measured] = role.reading.unit.quantities;
  const shown = (value: number, unit: UnitRow) => readingChoices([{ ...role.reading, si: toSI(value, unit), unit }]);
  const units = inPart.units
    .filter((unit) => unit !== role.reading.unit && unit.quantities[0] !== 'temperature difference')
    .map((unit) => {
      const text = shown(inPart.value, unit);
      return unit.quantities[0] === measured ? text : `${text} as ${withArticle(unit.quantities[0]!)}`;
    });
  const digits = inPart.other ? [shown(inPart.other.value, role.reading.unit)] : [];
  const rivals = rivalsOf(placed, role).flatMap(({ id, behind }) => {
    const has = assignment.roles.find((other) => other.id === id);
    const likely = behindInWords(behind, ROLE_STEPS);
    if (has) return [`the ${inputs[id]!.name}, which “${asWritten(heard, has.mention)}” is`];
    return likely === FAR ? [] : [`the ${inputs[id]!.name}, ${likely}`];
  });
  const others = [...digits, ...units, ...rivals];
  return others.length === 0 ? [] : [`It could also be ${others.join('; or ')}`];
}

/** Choices, pipes, clock times and days that words named. */
const textLines = ({ heard, understood }: ReadPart): string[] =>
  (understood?.texts ?? []).map(({ id, start, end }) => {
    const said = heard.original.slice(...originalSpan(heard.normal, start, end));
    return `“${said}” is taken as the ${understood!.inputs[id]!.name}: it reads as one`;
  });

/** Which question a message is about, by which words, and what it could have been about instead. */
export function topicLines(heard: Heard, topics: readonly LikelyTopic[]): string[] {
  const [best, ...others] = topics;
  if (!best) return [];
  const worth = (topic: LikelyTopic) => topic.worth ?? rank(topic);
  const named = ({ calculation: { slash, title } }: LikelyTopic) => `${title.toLowerCase()} (/${slash})`;
  const said = cuesAsSaid(heard, best.cues).map((cue) => `“${cue}”`);
  const by = said.length === 0 ? 'its words are most like that question’s' : `it says ${said.join(', ')}`;
  const next = others
    .slice(0, MOST_NEXT)
    .map((other) => `${named(other)}, ${behindInWords(worth(best) - worth(other), TOPIC_STEPS)}`);
  return [
    `likeliest topic: ${named(best)}, because ${by}`,
    ...(next.length > 0 ? [`next came ${next.join('; then ')}`] : []),
  ];
}

/** The stretches of a message that are cues; of those that lie in one another the longest. */
function cuesAsSaid({ words, text }: Heard, cues: readonly string[]): string[] {
  const places = cues.flatMap((cue) => findPhrase(words, cue).slice(0, 1));
  const outer = places.filter((place, i) =>
    places.every(
      (other, k) =>
        !(other.start <= place.start && other.end >= place.end) ||
        (other.start === place.start && other.end === place.end && i <= k),
    ),
  );
  return outer.sort((a, b) => a.start - b.start).map(({ start, end }) => text.slice(start, end));
}
