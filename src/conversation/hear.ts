import { type Calculation, groupOf } from '../core/calculation.js';
import type { Reply } from '../core/reply.js';
import { NEAR } from '../language/candidates.js';
import { wordsOf } from '../language/cues.js';
import type { Role } from '../language/roles.js';
import { NAMED, topicsOf } from '../language/topic.js';
import { isAskedFor, isBareAnswer } from './asked-for.js';
import { buildTalk } from './build-talk.js';
import { calculationList } from './catalogue.js';
import { change } from './change.js';
import { comeBack } from './come-back.js';
import { explanation, type ReadPart, topicLines } from './explain.js';
import { helpTopic, intentOf } from './intents.js';
import { type LikelyTopic, likeliest, understoodAs } from './likeliest.js';
import {
  ASKS,
  CARRIES,
  CHANGES,
  CORRECTS,
  goesOn,
  isChange,
  isNewQuestion,
  SAYS_IT,
  SAYS_OF_THING,
  tells,
  WANTS,
} from './manner.js';
import { isVessel } from './named-tank.js';
import { makeReply, notice } from './replies.js';
import { setAsideFor } from './set-aside.js';
import { questionsIn } from './several-questions.js';
import { onIntent } from './short-requests.js';
import { type Named, noSuchTank, turnToNamed } from './tank-names.js';
import { answerAsked, question, STRONG, sameOfTank, settleDoubts, settleRole, state } from './topics.js';
import { currentTank, isLeft, learnUnits, openTopic, type Turn } from './turn.js';
import { notUnderstood, ofWhat } from './unclear.js';
import { type Heard, hearText } from './understand.js';
import { askTopic, settleTopic, twoLikely } from './which-topic.js';
import { zoneTalk } from './zone-talk.js';

/** The longest message that is read. */
export const LONGEST_MESSAGE = 4000;

/** Answers free text. */
export async function hear(turn: Turn, say: string, explain = false): Promise<Reply[]> {
  if (say.length > LONGEST_MESSAGE) {
    return [
      makeReply(
        turn.speaker,
        'refusal',
        `That message has ${say.length.toLocaleString('en')} characters and I read up to ${LONGEST_MESSAGE.toLocaleString('en')}: send the numbers in shorter pieces. Nothing was changed.`,
      ),
    ];
  }
  const heard = hearText(say);
  const why: string[] = [];
  const parts: ReadPart[] = [];
  const replies = await respondInTurn(turn, questionsIn(heard), why, parts);
  if (!explain) return replies;
  const read = explanation(heard, parts, why);
  return replies.map((reply) => ({ ...reply, read }));
}

/**
 * Another question is named, or a tank, and the open one takes all that is said: "what if it comes from a 20 L reservoir", "and
 * a 300 W heater", "it's 80 gallons by the way" where gallons were said before, "the door is 32 inches" where no page keeps it.
 */
async function fitsOpen(turn: Turn, heard: Heard, topics: readonly LikelyTopic[], open: Calculation): Promise<boolean> {
  const { dialogue } = turn;
  const [best] = topics;
  const supposes = best !== undefined && CHANGES.test(heard.text) && groupOf(best.calculation) === groupOf(open);
  const follows = dialogue.answer !== undefined && !dialogue.stated;
  const saysIt = follows && SAYS_IT.test(heard.text);
  const adds = follows && SAYS_OF_THING.test(heard.text) && currentTank(turn) === undefined;
  if (heard.mentions.length === 0 || !(supposes || saysIt || adds || (follows && goesOn(heard.text)))) return false;
  const own = topics.find(({ calculation }) => calculation === open) ?? { calculation: open };
  const { assignment, given } = await understoodAs(turn, heard, own);
  // "And the sand for 2 inches": a unit alone does not make it the open question's.
  const isOwn = ({ near, id }: Role): boolean => supposes || near >= NEAR || id in dialogue.given;
  const takesAll = assignment.roles.length > 0 && assignment.unused.length === 0 && assignment.roles.every(isOwn);
  const ids = Object.keys(given);
  if (saysIt) return takesAll && ids.every((id) => id in dialogue.given);
  return takesAll && (!adds || ids.every((id) => !(id in dialogue.given)));
}

/** Several questions are answered one after another; those behind one that asks back wait for its answer. */
async function respondInTurn(
  turn: Turn,
  questions: readonly Heard[],
  why: string[],
  parts: ReadPart[],
): Promise<Reply[]> {
  const replies: Reply[] = [];
  const waiting = [...questions];
  while (waiting.length > 0) {
    const heard = waiting.shift()!;
    delete turn.understood;
    const answered = await respond(turn, heard, why);
    parts.push({ heard, understood: turn.understood });
    replies.push(...answered);
    const asksBack = answered.some(({ kind }) => kind === 'question');
    if (asksBack && waiting.length > 0) turn.dialogue.next = waiting.map(({ original }) => original);
    if (asksBack) break;
    waiting.push(...(turn.dialogue.next ?? []).map(hearText));
    delete turn.dialogue.next;
  }
  return replies;
}

const ORDERS = /^(?:please )?(?:change|set|delete|remove|show|clear|rename)\b/;

/** A question about a tank that is not kept, while another is, and that brings no size of its own; or an order about one. */
const isUnknown = ({ tanks }: Turn, { tank, name, alone }: Named, { text, mentions }: Heard): boolean =>
  !tank &&
  tanks.length > 0 &&
  !isVessel(name) &&
  (alone !== undefined ||
    ORDERS.test(text) ||
    (ASKS.test(text) &&
      !mentions.some(({ group, units }) => group || units.some(({ quantities }) => quantities.includes('volume')))));

/** The answer to which unit, which input or which question was meant, if that was asked. */
async function settle(turn: Turn, open: Calculation | undefined, heard: Heard): Promise<Reply[] | undefined> {
  const { dialogue } = turn;
  return (
    (dialogue.doubts && open && (await settleDoubts(turn, open, heard))) ||
    (dialogue.between && open && (await settleRole(turn, open, heard))) ||
    (dialogue.choosing && (await settleTopic(turn, heard)))
  );
}

async function respond(turn: Turn, heard: Heard, why: string[]): Promise<Reply[]> {
  const aside = setAsideFor(heard);
  if (aside) {
    why.push(`the message is set aside: ${aside.about}`);
    return [makeReply(turn.speaker, aside.kind === 'declined' ? 'refusal' : 'notice', aside.says)];
  }
  const left = isLeft(turn);
  const open = left ? undefined : openTopic(turn);
  const settled = await settle(turn, open, heard);
  if (settled) return settled;
  const about = helpTopic(heard.text);
  if (about !== undefined) {
    why.push(`it asks for help on ${about}`);
    return turn.command(`/help topic:${about}`);
  }
  const intent = intentOf(heard.text);
  if (intent) {
    why.push(`the message is a short request: ${intent}`);
    return onIntent(turn, intent);
  }
  const zone = await zoneTalk(turn, heard.text.trim(), heard.original.trim());
  if (zone) {
    why.push('it speaks of the member’s time zone');
    return zone;
  }
  const build = await buildTalk(turn, heard.text.trim(), heard.original);
  if (build) {
    why.push('it speaks of the steps or the shopping list of the build');
    return build;
  }
  const answersNothing = isBareAnswer(heard);
  if (left && answersNothing) {
    why.push('it is an answer, and the question was left with “never mind”');
    return [ofWhat(turn, heard)];
  }
  await learnUnits(turn, heard.said);
  const before = turn.dialogue.given;
  const named = await turnToNamed(turn, heard.text);
  if (named && isUnknown(turn, named, heard)) {
    why.push(`it speaks of “${named.name}”, which is not kept`);
    return [noSuchTank(turn, named.name)];
  }
  if (named?.tank && named.alone) {
    why.push(`it only names the tank “${named.name}”`);
    if (named.alone === 'delete') return turn.command(`/tank remove name:${named.name} confirm:no`);
    if (open && named.alone === 'ask') return sameOfTank(turn, open, before);
    return [notice(turn.speaker, `“${named.name}” is the current tank now.`, { private: true })];
  }
  const back = await comeBack(turn, heard);
  if (back) {
    why.push('it comes back to an earlier question');
    return back;
  }
  const topics = await likeliest(turn, heard, topicsOf(heard.words, heard.mentions, calculationList, open));
  const [best] = topics;
  why.push(...topicLines(heard, topics));

  if (open && turn.dialogue.lastAsked !== undefined && CORRECTS.test(heard.text) && heard.mentions.length === 1) {
    const mended = await change(turn, open, heard);
    if (mended) return mended;
  }
  if (turn.dialogue.asked !== undefined && open && !isNewQuestion(heard, topics, open)) {
    why.push(`it answers the question about the ${open.inputs[turn.dialogue.asked]?.name}`);
    const answered = await answerAsked(turn, open, turn.dialogue.asked, heard);
    if (answered) return answered;
  }
  const target = turn.dialogue.answer === undefined ? undefined : heard.text.match(CARRIES)?.[1];
  const into = target === undefined ? [] : topicsOf(wordsOf(target), heard.mentions, calculationList);
  if (into[0] && into[0].calculation !== open) {
    why.push('it puts the last answer into another question');
    return question(turn, heard, into[0]);
  }
  if (open && (isChange(heard, topics, open, turn) || (await fitsOpen(turn, heard, topics, open)))) {
    why.push('it changes a number of the last question');
    const changed = await change(turn, open, heard);
    if (changed) return changed;
  }
  const weak = best === undefined || best.score < STRONG;
  if ((tells(heard.text) || (weak && !ASKS.test(heard.text))) && heard.mentions.length > 0) {
    const stated = await state(turn, heard, why, best !== undefined && best.score >= NAMED ? best : undefined);
    if (stated) return stated;
  }
  const two = twoLikely(turn, topics);
  if (two && !ASKS.test(heard.text) && !WANTS.test(heard.text)) {
    const stated = await state(turn, heard, why);
    if (stated) return stated;
  }
  if (best && best.score >= NAMED && (await isAskedFor(turn, heard, best)))
    return two ? [askTopic(turn, heard, two)] : question(turn, heard, best);
  if (heard.mentions.length > 0 && !ASKS.test(heard.text)) {
    const stated = await state(turn, heard, why);
    if (stated) return stated;
  }
  delete turn.understood;
  why.push(
    answersNothing
      ? 'it is an answer, and nothing was asked'
      : 'it asks nothing that I can work out and tells nothing that I keep',
  );
  return [answersNothing ? ofWhat(turn, heard) : notUnderstood(turn, heard, topics)];
}
