import { hasOwnCue, NAMED, topicsOf } from '../language/topic.js';
import { calculationList } from './catalogue.js';
import { intentOf } from './intents.js';
import { ASKS } from './manner.js';
import { type Heard, hearText } from './understand.js';

/** Where one question ends and another begins. */
const BETWEEN =
  /[?!]+\s+|\.\s+(?=[A-Za-z])|;\s+|,?\s+(?:and|also|then|plus|oh and|&)\s+(?=(?:also |then )?(?:how|what|whats|what's|which|is|are|can|do|does|will|would|should)\b)/i;

function namedTopic(part: Heard): string | undefined {
  const [best] = topicsOf(part.words, part.mentions, calculationList);
  return best && best.score >= NAMED && hasOwnCue(best) ? best.calculation.id : undefined;
}

/**
 * The questions of a message that asks about several things, in the order they were asked. What is only told stays with the
 * question that follows it: "my tank is 120x50x50. How much sand …".
 * @returns the message itself where it asks one thing
 */
export function questionsIn(heard: Heard): readonly Heard[] {
  const pieces = heard.original.split(BETWEEN);
  if (pieces.length < 2) return [heard];
  const parts: { text: string; topic: string | undefined }[] = [];
  let told = '';
  for (const piece of pieces) {
    const text = told === '' ? piece : `${told}. ${piece}`;
    const part = hearText(piece);
    if (intentOf(part.text) === 'greeting') continue;
    if (!ASKS.test(part.text) && part.mentions.length > 0) {
      told = text;
      continue;
    }
    parts.push({ text, topic: namedTopic(part) });
    told = '';
  }
  const topics = parts.map(({ topic }) => topic);
  const apart = told === '' && topics.every((topic) => topic !== undefined) && new Set(topics).size === topics.length;
  return apart && parts.length > 1 ? parts.map(({ text }) => hearText(text)) : [heard];
}
