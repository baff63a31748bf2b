import {
  type Conversation,
  conversations,
  isHeldOut,
  type Message,
  messages,
  wordingConversations,
  wordingMessages,
} from './corpus.js';
import { judgeConversation, judgeMessages, type Verdict } from './judge.js';
import { mutants } from './mutate.js';

const percent = (part: number, whole: number): string => (whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`);

function line(name: string, verdicts: readonly Verdict[]): string {
  const share = (holds: (verdict: Verdict) => boolean) => percent(verdicts.filter(holds).length, verdicts.length);
  return `| ${[
    name,
    verdicts.length,
    share(({ topic }) => topic),
    share(({ inputs }) => inputs),
    share(({ asked }) => asked),
    share(({ confidentlyWrong }) => confidentlyWrong),
  ].join(' | ')} |`;
}

const half = <T>(list: readonly T[], textOf: (entry: T) => string, heldOut: boolean): T[] =>
  list.filter((entry) => isHeldOut(textOf(entry)) === heldOut);

const turnsOf = async (talks: readonly Conversation[]): Promise<Verdict[]> =>
  (await Promise.all(talks.map(judgeConversation))).flat();

interface Half {
  readonly single: Verdict[];
  readonly talks: Verdict[];
  readonly mutated: Verdict[];
}

async function verdictsOf(heldOut: boolean): Promise<Half> {
  const own = half<Message>(messages(), ({ say }) => say, heldOut);
  const single = await judgeMessages(own);
  const mutated = await judgeMessages(mutants(own));
  const talks = half<Conversation>(conversations(), ({ about, turns }) => `${about} ${turns[0]?.say}`, heldOut);
  return { single, mutated, talks: await turnsOf(talks) };
}

const MOST_CONFUSIONS = 12;

/** Which topics are taken for which, the most frequent first. */
function confusions(name: string, verdicts: readonly Verdict[]): string[] {
  const counts = new Map<string, number>();
  for (const { took } of verdicts) if (took !== undefined) counts.set(took, (counts.get(took) ?? 0) + 1);
  const sorted = [...counts].sort((a, b) => b[1] - a[1]).slice(0, MOST_CONFUSIONS);
  return [`Confusions, ${name}: ${sorted.map(([pair, count]) => `${pair} ${count}`).join('; ') || 'none'}`];
}

const tuned = await verdictsOf(false);
const held = await verdictsOf(true);
const wording = await judgeMessages(wordingMessages());
const wordingTurns = await turnsOf(wordingConversations());
process.stdout.write(
  [
    '| half | messages | topic right | every input right | asked when it should | confidently wrong |',
    '| --- | --- | --- | --- | --- | --- |',
    line('tuned on, messages', tuned.single),
    line('tuned on, turns of conversations', tuned.talks),
    line('words were chosen by, messages', wording),
    line('rules were chosen by, turns of conversations', wordingTurns),
    line('never looked at, messages', held.single),
    line('never looked at, turns of conversations', held.talks),
    line('tuned on, mutated', tuned.mutated),
    line('never looked at, mutated', held.mutated),
    '',
    ...confusions('tuned on', [...tuned.single, ...tuned.talks]),
    ...confusions('never looked at', [...held.single, ...held.talks]),
    '',
    ...[...tuned.single, ...tuned.talks, ...wording, ...wordingTurns]
      .filter(({ why }) => why !== '')
      .map(({ say, why, confidentlyWrong }) => `${confidentlyWrong ? 'WRONG ' : ''}${say}\n    ${why}`),
    '',
  ].join('\n'),
);
