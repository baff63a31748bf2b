import { type Conversation, conversations, isHeldOut, type Message, messages } from './corpus.js';
import { judgeConversation, judgeMessages, type Verdict } from './judge.js';

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

async function verdictsOf(heldOut: boolean): Promise<{ single: Verdict[]; talks: Verdict[] }> {
  const single = await judgeMessages(half<Message>(messages(), ({ say }) => say, heldOut));
  const talks = half<Conversation>(conversations(), ({ about, turns }) => `${about} ${turns[0]?.say}`, heldOut);
  return { single, talks: (await Promise.all(talks.map(judgeConversation))).flat() };
}

const tuned = await verdictsOf(false);
const held = await verdictsOf(true);
process.stdout.write(
  [
    '| half | messages | topic right | every input right | asked when it should | confidently wrong |',
    '| --- | --- | --- | --- | --- | --- |',
    line('tuned on, messages', tuned.single),
    line('tuned on, turns of conversations', tuned.talks),
    line('never looked at, messages', held.single),
    line('never looked at, turns of conversations', held.talks),
    '',
    ...[...tuned.single, ...tuned.talks]
      .filter(({ why }) => why !== '')
      .map(({ say, why, confidentlyWrong }) => `${confidentlyWrong ? 'WRONG ' : ''}${say}\n    ${why}`),
    '',
  ].join('\n'),
);
