import { mainFirst, questionFor } from '../core/answer.js';
import type { Calculation, Input } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';
import { profileInputs } from '../core/profile.js';
import { isUnit, toSI, unitNamed } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import { countsThings } from '../language/candidates.js';
import { givenFrom, readingMeant, readingQuestion, readValue } from '../language/read-value.js';
import { hasOwnCue, type TopicScore } from '../language/topic.js';
import { noteDay } from './days.js';
import { asEarlier, type Waiting } from './dialogue.js';
import { type AskedTopic, type LikelyTopic, understoodAs } from './likeliest.js';
import { ASKS, CHANGES, LONGEST_ANSWER, tells } from './manner.js';
import { listBehind, namedFor } from './named-for.js';
import { recalled } from './press.js';
import { makeReply } from './replies.js';
import { keep } from './statement.js';
import { tankTold } from './tank-names.js';
import { hintsFor, isOfOneTank, preferencesFor, type Turn } from './turn.js';
import { askRole, askWhich, misfit, optionNamed, stillAsking } from './unclear.js';
import { type Heard, saysAnything, type Understood, understand } from './understand.js';
import { work } from './work.js';

/** From here on a message that asks nothing is a question of its topic all the same: "heater for 90 gal". */
export const STRONG = 2.2;
/** From here on a message that tells something asks it all the same: "my top-off sticks open …". */
const VERY_STRONG = 3.5;
/** A score that comes from more than the names of things; a shape of tank is only what it is. */
const saysStrongly = (topic: TopicScore): boolean =>
  topic.score >= VERY_STRONG && topic.calculation.part !== 'tank' && hasOwnCue(topic);

/** What was said before, and what is said now. */
export const over = ({ dialogue }: Turn, fresh: Given): Given => ({ ...asEarlier(dialogue.given), ...fresh });

/** Keeps how the message was read, and what it said beside the point: a room's temperature in a question about drains. */
export function remember(turn: Turn, understood: Understood): Understood {
  turn.understood = understood;
  noteDay(turn, understood.day);
  const beside = understood.assignment.beside.map(({ id, reading }) => [id, givenFrom(reading)] as const);
  turn.dialogue.known = { ...turn.dialogue.known, ...asEarlier(Object.fromEntries(beside)) };
  return understood;
}

/** Quantities that are asked for as an amount a day. */
const A_DAY: readonly string[] = ['water a day', 'alkalinity rate', 'dissolved rate'];

/** "2 gallons" to the question how much evaporates a day is 2 gallons a day. */
function inFull(input: Input, heard: Heard): Heard {
  const [mention, ...others] = heard.mentions;
  if (input.kind !== 'quantity' || !A_DAY.includes(input.quantity) || !mention || others.length > 0) return heard;
  if (mention.units.some(({ quantities }) => quantities.includes(input.quantity))) return heard;
  const units = mention.units.flatMap(({ id }) => (isUnit(`${id}/day`) ? [unitNamed(`${id}/day`)] : []));
  return units.length > 0 ? { ...heard, mentions: [{ ...mention, units }] } : heard;
}

/** The answer to what was asked; whatever else it says is taken too. @returns undefined when it is no answer */
export async function answerAsked(
  turn: Turn,
  open: Calculation,
  asked: string,
  heard: Heard,
): Promise<Reply[] | undefined> {
  const input = open.inputs[asked];
  if (!input) return undefined;
  const hints = hintsFor(turn, heard.said);
  const understood = remember(turn, await understand(inFull(input, heard), open.inputs, hints, asked));
  if (asked in understood.given) turn.dialogue.lastAsked = asked;
  const preferences = preferencesFor(turn, heard.said);
  const named = namedFor(open, asked, heard.text);
  if (named) return [await work(turn, open, over(turn, named), preferences)];
  const unclear = askWhich(turn, open, over(turn, understood.given), understood);
  if (unclear) return [unclear];
  if (saysAnything(understood)) return [await work(turn, open, over(turn, understood.given), preferences)];
  const counted = heard.mentions.some((mention) => countsThings(mention, heard.text));
  const read = counted ? { problem: '' } : await readValue(input, heard.original, hints);
  if ('value' in read) return [await work(turn, open, over(turn, { [asked]: read.value }), preferences)];
  const [listId, list] = listBehind(open, asked) ?? [];
  const listed = listId !== undefined && list ? await readValue(list, heard.original, hints) : read;
  if (listId !== undefined && 'value' in listed)
    return [await work(turn, open, over(turn, { [listId]: listed.value }), preferences)];
  const stated = heard.mentions.length > 0 ? await state(turn, heard, []) : undefined;
  if (stated) {
    const again = makeReply(turn.speaker, 'question', questionFor(open, asked), {
      calculation: open.id,
      asks: [asked],
    });
    return [...stated, again];
  }
  if ('problem' in read && heard.words.list.length <= LONGEST_ANSWER) {
    return [
      makeReply(turn.speaker, 'question', counted || ASKS.test(heard.text) ? stillAsking(input) : read.problem, {
        calculation: open.id,
        body: questionFor(open, asked),
        asks: [asked],
      }),
    ];
  }
  return undefined;
}

const told = new WeakMap<Heard, Promise<Understood>>();

/** A message read as numbers of the tank: once, though it may be looked at as a statement at several places. */
function asTold(turn: Turn, heard: Heard): Promise<Understood> {
  const known = told.get(heard);
  if (known) return known;
  const reading = understand(heard, profileInputs, hintsFor(turn, heard.said), undefined, true);
  told.set(heard, reading);
  return reading;
}

/**
 * A statement about the tank: kept on its page.
 * @param topic the message could be this question too; it is one when the question can use more of its numbers than the tank can
 *   keep, or as many where its words say it strongly
 */
export async function state(
  turn: Turn,
  heard: Heard,
  why: string[],
  topic?: LikelyTopic,
): Promise<Reply[] | undefined> {
  const understood = remember(turn, await asTold(turn, heard));
  const { others } = understood.assignment;
  const nothing = !saysAnything(understood) && understood.assignment.mismatches.length === 0;
  if (nothing && (topic || others.length === 0)) return undefined;
  const notKept = others.map(
    ({ thing, said }) => `Not kept: ${said}, for a tank’s page has no place for the size of a ${thing}.`,
  );
  if (nothing) return [makeReply(turn.speaker, 'refusal', notKept[0]!, { body: 'Nothing was changed.' })];
  if (topic) {
    const asQuestion = await understoodAs(turn, heard, topic);
    const fewerLeft = asQuestion.assignment.unused.length < understood.assignment.unused.length;
    // Numbers decide: some common word always chooses something of all that a tank can keep.
    const more = asQuestion.assignment.roles.length - understood.assignment.roles.length;
    const moreUsed = tells(heard.text) && !saysStrongly(topic) ? more > 0 : more >= 0;
    if (fewerLeft || moreUsed) return undefined;
  }
  why.push('it tells something about the tank');
  const [mismatch] = understood.assignment.mismatches;
  if (mismatch && Object.keys(understood.given).length === 0) return [misfit(turn, heard, mismatch, profileInputs)];
  if (Object.keys(understood.given).length === 0 && understood.doubts.length === 0) return undefined;
  const preferences = preferencesFor(turn, heard.said);
  const name = tankTold(turn, heard.text, understood.given);
  if (understood.doubts.length > 0) {
    const doubt = understood.doubts[0]!;
    const kept =
      Object.keys(understood.given).length > 0
        ? [await keep(turn, name, understood.given, preferences, understood.guessed, notKept)]
        : [];
    const sizes = understood.doubts.map(({ mention }) => mention.value).join(' x ');
    return [
      ...kept,
      makeReply(
        turn.speaker,
        'question',
        readingQuestion(
          `is ${understood.doubts.length > 1 ? sizes : `the ${profileInputs[doubt.id]!.name}`}`,
          doubt.readings,
        ),
        { body: 'Say it again with the unit and I keep it.', asks: understood.doubts.map(({ id }) => id) },
      ),
    ];
  }
  return [await keep(turn, name, understood.given, preferences, understood.guessed, notKept)];
}

const POINTS_BACK = /\b(?:that|it|this|those)\b/;
/** "That flow", "this weight": the result that is meant, by what people call its quantity. */
const NAMES_RESULT =
  /\b(?:that|this|the same) (flow|volume|amount|salinity|power|wattage|watts|weight|mass|temperature|level|height|head|evaporation|rate|current|pressure)\b/;
const QUANTITIES_CALLED: Readonly<Record<string, readonly string[]>> = {
  flow: ['flow', 'water a day'],
  volume: ['volume'],
  amount: ['volume', 'mass'],
  salinity: ['salinity', 'specific gravity', 'conductivity', 'density'],
  power: ['power'],
  wattage: ['power'],
  watts: ['power'],
  weight: ['mass'],
  mass: ['mass'],
  temperature: ['temperature'],
  level: ['length'],
  height: ['length'],
  head: ['length'],
  evaporation: ['water a day', 'flow'],
  rate: ['flow', 'water a day', 'dissolved rate', 'alkalinity rate'],
  current: ['current'],
  pressure: ['pressure'],
};
/** Quantities of one dimension: litres an hour are litres a day. */
const SAME_KIND: readonly (readonly string[])[] = [['flow', 'water a day']];
const alike = (a: string, b: string): boolean =>
  a === b || SAME_KIND.some((kinds) => kinds.includes(a) && kinds.includes(b));
/** Results that a next question may be about; a temperature or a length could be any. */
const CARRIED: readonly string[] = [
  'salinity',
  'specific gravity',
  'conductivity',
  'density',
  'concentration',
  'volume',
  'flow',
  'water a day',
  'light integral',
  'photon flux',
];

/**
 * "What sg is that": the result of the last answer where the new question lacks one of its kind. What was worked out for
 * another tank is not meant.
 */
async function fromLastAnswer(turn: Turn, calculation: Calculation, given: Given, text: string): Promise<Given> {
  if (turn.dialogue.answerLeft) return {};
  const named = QUANTITIES_CALLED[text.match(NAMES_RESULT)?.[1] ?? ''];
  const last = await recalled(turn, turn.dialogue.answer);
  if (typeof last === 'string' || last.outcome.calculation.id === calculation.id) return {};
  const { calculation: source } = last.outcome;
  const results = mainFirst(last.outcome);
  const carried = new Map<string, Given[string]>();
  const filled = new Set<string>();
  for (const [id, input] of Object.entries(calculation.inputs)) {
    if (input.kind !== 'quantity' || !(named ?? CARRIED).includes(input.quantity)) continue;
    if (input.needed !== undefined && !named) continue;
    if (given[id] || filled.has(input.quantity)) {
      filled.add(input.quantity);
      continue;
    }
    const found = results.find(({ result }) => result.kind === 'quantity' && alike(result.quantity, input.quantity));
    if (typeof found?.value !== 'number') continue;
    filled.add(input.quantity);
    const { low, high } = found;
    carried.set(id, {
      si: found.value,
      from: 'earlier',
      via: source.title.toLowerCase(),
      ...(low === undefined || high === undefined ? {} : { low, high }),
    });
  }
  return Object.fromEntries(carried);
}

/** A new question. */
export async function question(turn: Turn, heard: Heard, topic: AskedTopic): Promise<Reply[]> {
  const { calculation } = topic;
  const understood = remember(turn, await understoodAs(turn, heard, topic));
  const preferences = preferencesFor(turn, heard.said);
  const goesOn = turn.dialogue.asked !== undefined || !saysAnything(understood) || CHANGES.test(heard.text);
  const sameTopic = turn.dialogue.topic === calculation.id && goesOn;
  const carried = POINTS_BACK.test(heard.text)
    ? await fromLastAnswer(turn, calculation, understood.given, heard.text)
    : {};
  const given = { ...carried, ...(sameTopic ? over(turn, understood.given) : understood.given) };
  const unclear = askWhich(turn, calculation, given, understood);
  if (unclear) return [unclear];
  delete turn.dialogue.stated;
  return [await work(turn, calculation, given, preferences)];
}

/** Another number instead of an answer: the one asked about is what it most likely was, and the new one is what it was not. */
function assumeFirst({ dialogue }: Turn, [first, second]: Waiting[number]): void {
  if (!first || !second) return;
  const { id, ...value } = first;
  dialogue.given = { ...dialogue.given, [id]: { ...value, from: 'earlier' } };
  dialogue.asked = second.id;
}

/** Whether a number is the one that was asked about. */
const isSaid = (value: number, options: Waiting[number]): boolean =>
  options.some(({ si, unit }) => Math.abs(toSI(value, unitNamed(unit)) - si) < 1e-6);

/** "The room": which input the number is that was asked about. @returns undefined when the message says something else */
export async function settleRole(turn: Turn, open: Calculation, heard: Heard): Promise<Reply[] | undefined> {
  const [options = [], ...others] = turn.dialogue.between!;
  delete turn.dialogue.between;
  // "The room is 66" says another number, not what the one asked about is.
  const saysOther = heard.mentions.some(({ value, word }) => !word && !isSaid(value, options));
  const meant = saysOther ? undefined : optionNamed(open, options, heard);
  // Of a number that changes something nothing is taken until it is said what it changes.
  const changes = options.some(({ id }) => id in turn.dialogue.given);
  if (!meant && !changes && heard.mentions.length > 0) assumeFirst(turn, options);
  if (!meant) return undefined;
  const waiting = others.map((each) => each.filter(({ id }) => id !== meant.id));
  const sole = waiting.filter(({ length }) => length === 1).flat();
  const settled = [meant, ...sole].map(({ id, ...value }) => [id, { ...value, from: 'message' as const }]);
  const given = over(turn, Object.fromEntries(settled));
  const still = waiting.filter(({ length }) => length > 1);
  return [
    still.length > 0
      ? askRole(turn, open, given, still)
      : await work(turn, open, given, preferencesFor(turn, heard.said)),
  ];
}

/** "cm", or the number again with its unit. */
export async function settleDoubts(turn: Turn, open: Calculation, heard: Heard): Promise<Reply[] | undefined> {
  const { doubts } = turn.dialogue;
  const chosen = doubts!.flatMap(({ id, readings }) => {
    const reading = readingMeant(heard.original, readings);
    return reading ? [[id, { si: reading.si, unit: reading.unit, from: 'message' as const }] as const] : [];
  });
  delete turn.dialogue.doubts;
  if (chosen.length === 0 || heard.mentions.length > doubts!.length) return undefined;
  const preferences = preferencesFor(
    turn,
    chosen.map(([, { unit }]) => unitNamed(unit)),
  );
  return [await work(turn, open, over(turn, Object.fromEntries(chosen)), preferences)];
}

/**
 * "And for my frag tank?": the last question, of another tank. What was said of the room and of the water stays.
 * @param before what was given to the question while it was about the first one
 */
export async function sameOfTank(turn: Turn, open: Calculation, before: Given): Promise<Reply[]> {
  const stays = Object.entries(before).filter(([id]) => {
    const profile = open.inputs[id]?.profile;
    return profile !== undefined && !isOfOneTank(profile);
  });
  return [await work(turn, open, asEarlier(Object.fromEntries(stays)), preferencesFor(turn, []))];
}
