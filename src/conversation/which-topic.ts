import type { Calculation } from '../core/calculation.js';
import type { Reply } from '../core/reply.js';
import { stillToAsk } from '../core/run.js';
import { wordsOf } from '../language/cues.js';
import { placeNamed } from '../language/which-one.js';
import { calculationNamed } from './catalogue.js';
import type { LikelyTopic } from './likeliest.js';
import { makeReply, saying } from './replies.js';
import { question } from './topics.js';
import { gather, type Turn } from './turn.js';
import { type Heard, hearText } from './understand.js';

/** So little ahead of the second, the first topic is a guess. */
const HARDLY_AHEAD = 0.35;

/**
 * The two topics that a message could be about as well as one another. People mostly say all that their question needs: one
 * that would ask for more than the other is not as likely.
 */
export function twoLikely(
  turn: Turn,
  [first, second]: readonly LikelyTopic[],
): readonly [LikelyTopic, LikelyTopic] | undefined {
  if (first?.worth === undefined || second?.worth === undefined) return undefined;
  if (first.worth - second.worth >= HARDLY_AHEAD) return undefined;
  return lacking(turn, second) > lacking(turn, first) ? undefined : [first, second];
}

const lacking = (turn: Turn, { calculation, understood }: LikelyTopic): number =>
  stillToAsk(calculation, gather(turn, calculation, understood?.given ?? {})).length;

/** "Do you mean: 1. …, or 2. …?" The message waits for the answer. */
export function askTopic({ dialogue, speaker }: Turn, heard: Heard, topics: readonly LikelyTopic[]): Reply {
  dialogue.choosing = { say: heard.original, topics: topics.map(({ calculation }) => calculation.id) };
  delete dialogue.asked;
  const asked = topics.map(({ calculation }, i) => `${i + 1}. ${calculation.question}`);
  return makeReply(speaker, 'question', `I can read that in two ways. Which one do you mean, 1 or 2?`, {
    body: asked.join('\n'),
    actions: topics.map(({ calculation }, i) => saying(`${i + 1}. ${calculation.title}`, String(i + 1))),
  });
}

/** What people say when they mean one of a few questions. */
export const wordsNaming = ({ cues, title, question: asks }: Calculation): string[] => [
  ...cues,
  ...wordsOf(`${title} ${asks}`.toLowerCase()).list.map(({ text }) => text),
];

/** The message that waited, as the question that is meant. @returns undefined when the answer says something else */
export async function settleTopic(turn: Turn, answer: Heard): Promise<Reply[] | undefined> {
  const { say, topics } = turn.dialogue.choosing!;
  delete turn.dialogue.choosing;
  const calculations = topics.flatMap((id) => calculationNamed(id) ?? []);
  const place = placeNamed(calculations.map(wordsNaming), answer);
  const calculation = place === undefined ? undefined : calculations[place];
  return calculation && question(turn, hearText(say), { calculation });
}
