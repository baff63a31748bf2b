import { commandList } from '../../src/compose.js';
import { createBrinewright } from '../../src/conversation/brinewright.js';
import { calculationNamed } from '../../src/conversation/catalogue.js';
import type { Store } from '../../src/conversation/ports.js';
import type { Input, LookupInput } from '../../src/core/calculation.js';
import { profileFields } from '../../src/core/profile.js';
import { readClock } from '../../src/core/quantity/clock-text.js';
import { toSI, unitNamed } from '../../src/core/quantity/units.js';
import type { Reply } from '../../src/core/reply.js';
import { openStore } from '../../src/store/open.js';
import type { Conversation, Expected, Message, Value } from './corpus.js';

export interface Verdict {
  readonly say: string;
  readonly topic: boolean;
  readonly inputs: boolean;
  /** It asked exactly when it should, for what it should. */
  readonly asked: boolean;
  /** It answered, and what it answered is not what was asked: another topic, another value, a value that nobody said. */
  readonly confidentlyWrong: boolean;
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
  const read = got.lookup?.read(want, {});
  return typeof read === 'object' && read.reading === got.text;
}

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

/** What a looked-up thing that was said brings with it: the two distances of "from 10 in to 16 in". */
function broughtBy({ calculation }: Reply, said: Readonly<Record<string, Value>>): ReadonlySet<string> {
  const inputs = calculationNamed(calculation ?? '')?.inputs ?? {};
  const read = Object.entries(said).flatMap(([id, value]) => {
    const input = inputs[id];
    return input?.kind === 'lookup' && typeof value === 'string' ? [input.read(value, {})] : [];
  });
  return new Set(read.flatMap((found) => (typeof found === 'object' ? Object.keys(found.inputs ?? {}) : [])));
}

function differences(got: Readonly<Record<string, Got>>, want: Readonly<Record<string, Value>>) {
  const wrong = Object.keys(got).filter((id) => want[id] !== undefined && !same(got[id]!, want[id]));
  const extra = Object.keys(got).filter((id) => want[id] === undefined);
  const missing = Object.keys(want).filter((id) => got[id] === undefined);
  return { wrong, extra, missing };
}

/** @param inConversation a turn names what it is judged on; what else was said before it may be used too */
async function judge(
  store: Store,
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
  const found = differences(got, inputs);
  const { wrong, missing } = found;
  const brought = broughtBy(reply, inputs);
  const extra = inConversation ? [] : found.extra.filter((id) => !brought.has(id));
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
  return { say, topic, inputs: inputsRight, asked, confidentlyWrong, why: why.join('; ') };
}

async function fresh() {
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
    verdicts.push(await judge(store, member, replies, expected, false));
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
    verdicts.push(await judge(store, 'ada', replies, expected, true));
  }
  await store.close();
  return verdicts;
}
