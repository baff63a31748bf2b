import { NEAR } from '../language/candidates.js';
import { rank, type TopicScore } from '../language/topic.js';
import { hintsFor, type Turn } from './turn.js';
import { type Heard, type Understood, understand } from './understand.js';

/** A topic of a message, and how the message reads as its question where that was looked at. */
export interface LikelyTopic extends TopicScore {
  readonly understood?: Understood;
  /** What the topics were ordered by after a closer look, where several were looked at. */
  readonly worth?: number;
}

/** A question, and how a message reads as it where that was looked at. */
export type AskedTopic = Pick<LikelyTopic, 'calculation' | 'understood'>;

export const understoodAs = (turn: Turn, heard: Heard, { calculation, understood }: AskedTopic): Promise<Understood> =>
  understood ? Promise.resolve(understood) : understand(heard, calculation.inputs, hintsFor(turn, heard.said));

/** Topics that are looked at closely. */
const MOST_TOPICS = 10;
/** How far behind the first another topic may be and still be meant, when what the message says fits it better. */
const REACH = 4.0;
/** What it is worth that every number of a message has its place. */
const ALL_USED = 2.6;
/** What each number is worth that the words beside it give to an input of this topic. */
const NAMED_NUMBER = 0.8;
const MOST_NAMED = 4;

/**
 * The topics of a message, likeliest first, after a closer look: of those whose words stand in it, the one that has a place
 * for what the message says is meant. "How many watts … water 78, room 66" is no question about a pump.
 */
export async function likeliest(turn: Turn, heard: Heard, topics: readonly TopicScore[]): Promise<LikelyTopic[]> {
  const [best, second] = topics;
  if (!best || !second || heard.mentions.length === 0) return [...topics];
  const close = topics.slice(0, MOST_TOPICS).filter((topic) => rank(best) - rank(topic) <= REACH);
  if (close.length < 2) return [...topics];
  const weighed = await Promise.all(
    close.map(async (topic) => {
      const understood = await understoodAs(turn, heard, topic);
      const { assignment, given } = understood;
      const numbers = heard.mentions.length;
      const used = 1 - assignment.unused.length / numbers;
      const named = assignment.roles.filter(({ near }) => near >= NEAR).length;
      const others = Math.max(0, Object.keys(given).length - assignment.roles.length);
      const fit = ALL_USED * used + NAMED_NUMBER * Math.min(MOST_NAMED, named + others);
      return { ...topic, understood, worth: rank(topic) + fit };
    }),
  );
  weighed.sort((a, b) => b.worth - a.worth);
  return [...weighed, ...topics.filter((topic) => !close.includes(topic))];
}
