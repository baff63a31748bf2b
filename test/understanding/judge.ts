import { commandList } from '../../src/compose.js';
import { createBrinewright } from '../../src/conversation/brinewright.js';
import { calculationNamed } from '../../src/conversation/catalogue.js';
import type { Brinewright, Store } from '../../src/conversation/ports.js';
import type { Input, LookupInput } from '../../src/core/calculation.js';
import { profileFields } from '../../src/core/profile.js';
import { readClock } from '../../src/core/quantity/clock-text.js';
import { toSI, unitNamed } from '../../src/core/quantity/units.js';
import type { Reply } from '../../src/core/reply.js';
import { openStore } from '../../src/store/open.js';
import { asCalled, type Conversation, type Expected, type Message, type Value } from './corpus.js';

export interface Verdict {
  readonly say: string;
  readonly topic: boolean;
  readonly inputs: boolean;
  /** It asked exactly when it should, for what it should. */
  readonly asked: boolean;
  /** It answered, and what it answered is not what was asked: another topic, another value, a value that nobody said. */
  readonly confidentlyWrong: boolean;
  /** "heater.size for heater.outage": the topic that was taken for the one that is right. */
  readonly took?: string;
  /** What went wrong, for a reader. */
  readonly why: string;
}

const CLOCK = { now: () => new Date('2027-03-01T12:00:00Z') };

const KELVIN = 0.05;
const GRAVITY = 0.00005;

function sameNumber(got: number, [value, unit]: readonly [number, string], quantity: string | undefined): boolean {
  const want = toSI(value, unitNamed(unit));
  if (quantity === 'temperature') return Math.abs(got - want) <= KELVIN;
  if (quantity === 'specific gravity') return Math.abs(got - want) <= GRAVITY;
  if (quantity === 'count') return got === want;
  return Math.abs(got - want) <= 1e-6 * Math.max(Math.abs(want), Math.abs(got));
}

interface Got {
  readonly si: number | null;
  readonly text: string;
  readonly quantity: string | undefined;
  readonly lookup: LookupInput | undefined;
  readonly clock: boolean;
}

const gotFor = (input: Input | undefined, si: number | null, text: string): Got => ({
  si: input?.kind === 'quantity' ? si : null,
  text,
  quantity: input?.kind === 'quantity' ? input.quantity : undefined,
  lookup: input?.kind === 'lookup' ? input : undefined,
  clock: input?.kind === 'clock',
});

function same(got: Got, want: Value): boolean {
  if (typeof want !== 'string') return got.si !== null && sameNumber(got.si, want, got.quantity);
  if (got.text.toLowerCase() === want.toLowerCase()) return true;
  // "2 elbows" and "two 90 degree elbows" are one list: what the table makes of them counts.
  if (got.clock) return readClock(want) === readClock(got.text);
  const readingOf = (text: string): string => {
    const read = got.lookup?.read(text, {});
    return withoutFactors(typeof read === 'object' ? read.reading : text);
  };
  return got.lookup !== undefined && [withoutFactors(got.text), readingOf(got.text)].includes(readingOf(want));
}

/** What a fitting costs depends on the pipe it sits in, which a label does not say again. */
const withoutFactors = (reading: string): string => reading.replace(/ \([\d.]+\)/g, '');

/** @param inConversation what was said before counts too */
function gotOf(reply: Reply, inConversation: boolean): Record<string, Got> {
  const inputs = calculationNamed(reply.calculation ?? '')?.inputs ?? {};
  const said = reply.inputs.filter(
    ({ from, id }) =>
      id in inputs && (from === 'message' || (inConversation && (from === 'earlier' || from === 'profile'))),
  );
  return Object.fromEntries(said.map(({ id, si, value }) => [id, gotFor(inputs[id], si, String(value))]));
}

async function keptOf(store: Store, member: string): Promise<Record<string, Got>> {
  const tank = (await store.tanks(member)).find(({ current }) => current);
  return Object.fromEntries(
    Object.entries(tank?.values ?? {}).map(([key, { si, text }]) => [
      key,
      gotFor(profileFields.get(key)?.input, si ?? null, text ?? ''),
    ]),
  );
}

type Labels = Readonly<Record<string, Value>>;

/** The numbers that a looked-up thing stands for: the two distances of "from 10 in to 16 in". */
function numbersOf(input: Input | undefined, value: Value): Readonly<Record<string, number>> | undefined {
  const read = input?.kind === 'lookup' && typeof value === 'string' ? input.read(value, {}) : undefined;
  return typeof read === 'object' ? read.inputs : undefined;
}

const close = (a: number | null | undefined, b: number): boolean =>
  typeof a === 'number' && Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

/** 150 ppm of calcium carbonate is 150 ppm or an alkalinity of 3 meq/L, under one id or the other. */
function saidUnderOther(id: string, value: Value, inputs: Inputs, got: Readonly<Record<string, Got>>): string[] {
  const other = inputs[id]?.standsFor;
  const same = typeof value !== 'string' && close(got[other ?? '']?.si, toSI(value[0], unitNamed('mg/L CaCO3')));
  return other !== undefined && same && /^(?:ppm|mg\/L)$/.test(value[1] as string) ? [other] : [];
}

type Inputs = Readonly<Record<string, Input>>;

function differences(got: Readonly<Record<string, Got>>, want: Labels, inputs: Inputs) {
  const looked = Object.entries(want).flatMap(([id, value]) => {
    const numbers = numbersOf(inputs[id], value);
    return numbers ? [{ id, numbers }] : [];
  });
  const inOtherWords = new Set([
    ...looked
      .filter(({ numbers }) => Object.entries(numbers).every(([id, si]) => close(got[id]?.si, si)))
      .map(({ id }) => id),
    ...looked.filter(({ id }) => got[id] !== undefined).flatMap(({ numbers }) => Object.keys(numbers)),
    ...Object.entries(want).flatMap(([id, value]) => {
      const others = saidUnderOther(id, value, inputs, got);
      return others.length > 0 ? [id, ...others] : [];
    }),
  ]);
  const wrong = Object.keys(got).filter((id) => want[id] !== undefined && !same(got[id]!, want[id]));
  // An option that stands there anyway, said or not, changes nothing.
  const isDefault = (id: string): boolean => {
    const input = inputs[id];
    return input?.kind === 'choice' && input.default === got[id]!.text;
  };
  const extra = Object.keys(got).filter((id) => want[id] === undefined && !inOtherWords.has(id) && !isDefault(id));
  const missing = Object.keys(want).filter((id) => got[id] === undefined && !inOtherWords.has(id));
  return { wrong, extra, missing };
}

/** What the labels alone, without any language, are refused with. */
async function refusalOf(brinewright: Brinewright, { topic, inputs = {} }: Expected): Promise<string | undefined> {
  if (topic === undefined || !calculationNamed(topic)) return undefined;
  const called = { calculation: topic, inputs: asCalled(inputs) };
  const [reply] = await brinewright.reply({ id: 'without-language' }, called, CLOCK);
  return reply?.kind === 'refusal' ? reply.headline : undefined;
}

/** @param inConversation a turn names what it is judged on; what else was said before it may be used too */
async function judge(
  { store, brinewright }: Desk,
  member: string,
  replies: readonly Reply[],
  expected: Expected,
  inConversation: boolean,
): Promise<Verdict> {
  const { say, inputs = {}, asks } = expected;
  const reply = replies[0]!;
  const kept = replies.some(({ headline }) => /^(?:Kept for|Started) your/.test(headline));
  const told = reply.calculation ?? (kept ? 'tank' : 'none');
  const topic = expected.topic === undefined || told === expected.topic;
  const got =
    expected.topic === 'tank' || (kept && reply.calculation === null)
      ? await keptOf(store, member)
      : gotOf(reply, inConversation);
  const inputsAsked = calculationNamed(reply.calculation ?? '')?.inputs ?? {};
  // A refusal lists no inputs: it is right where the labels lead to the same sentence.
  const refusedAlike = reply.kind === 'refusal' && topic && (await refusalOf(brinewright, expected)) === reply.headline;
  const found = refusedAlike ? { wrong: [], missing: [], extra: [] } : differences(got, inputs, inputsAsked);
  const { wrong, missing } = found;
  const extra = inConversation ? [] : found.extra;
  const inputsRight = topic && wrong.length + extra.length + missing.length === 0;
  const question = reply.kind === 'question' ? (reply.asks[0] ?? '') : undefined;
  const asked = asks === undefined ? question === undefined : question === asks;
  const spoke = reply.kind === 'answer' || kept;
  const confidentlyWrong =
    spoke && (!topic || wrong.length > 0 || extra.length > 0 || (asks !== undefined && reply.kind === 'answer'));
  const why = [
    topic ? '' : `topic ${told}, not ${expected.topic}`,
    wrong.length > 0 ? `wrong ${wrong.map((id) => `${id} ${got[id]!.si ?? got[id]!.text}`).join(', ')}` : '',
    extra.length > 0 ? `nobody said ${extra.map((id) => `${id} ${got[id]!.si ?? got[id]!.text}`).join(', ')}` : '',
    missing.length > 0 ? `dropped ${missing.join(', ')}` : '',
    asked
      ? ''
      : `asked ${question ?? 'nothing'}, not ${asks ?? 'nothing'} (${reply.kind}: ${reply.headline.slice(0, 100)})`,
  ].filter(Boolean);
  return {
    say,
    topic,
    inputs: inputsRight,
    asked,
    confidentlyWrong,
    why: why.join('; '),
    ...(topic ? {} : { took: `${told} for ${expected.topic}` }),
  };
}

interface Desk {
  readonly store: Store;
  readonly brinewright: Brinewright;
}

async function fresh(): Promise<Desk> {
  const store = await openStore(':memory:');
  const brinewright = createBrinewright({ store, commands: commandList, keepFile: async (name) => name });
  return { store, brinewright };
}

export async function judgeMessages(list: readonly Message[]): Promise<Verdict[]> {
  const { store, brinewright } = await fresh();
  const verdicts: Verdict[] = [];
  for (const [i, expected] of list.entries()) {
    const member = `member-${i}`;
    const replies = await brinewright.reply({ id: member }, { say: expected.say }, CLOCK);
    verdicts.push(await judge({ store, brinewright }, member, replies, expected, false));
  }
  await store.close();
  return verdicts;
}

/** One verdict a turn. */
export async function judgeConversation({ turns }: Conversation): Promise<Verdict[]> {
  const { store, brinewright } = await fresh();
  const verdicts: Verdict[] = [];
  for (const expected of turns) {
    const replies = await brinewright.reply({ id: 'ada' }, { say: expected.say }, CLOCK);
    verdicts.push(await judge({ store, brinewright }, 'ada', replies, expected, true));
  }
  await store.close();
  return verdicts;
}
