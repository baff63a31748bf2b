import type { Calculation } from '../core/calculation.js';
import { hasOwnCue, NAMED, type TopicScore } from '../language/topic.js';
import type { Turn } from './turn.js';
import type { Heard } from './understand.js';

/** How far the best topic must lead when another topic's question is open. */
const CLEAR_CHANGE = 2.4;

/** Numbers in a message that may still change the last question without saying so. */
const MOST_CHANGED = 2;
/** Words in a message that may still change the last question. */
const LONGEST_CHANGE = 6;
/** A verb that makes a sentence of a thing and a number: "the room is 68", against "room 68". */
export const TELLS = /\b(?:is|are|was|has|have|holds|got|'s|it'?s|i'm|im|sits|runs)\b|^my\b/;
/** Words in a message that may still be the answer to a question. */
export const LONGEST_ANSWER = 4;

/** "What about …": the last question with another number. */
export const CHANGES =
  /^(?:and |but |or |ok,? |so |hmm,? |well,? |then |also )*(?:what about|how about|what if|what'?s it (?:at|with)|and (?:at|with|for|if|in|on)|same(?: again)?,?(?: but)?(?: with| at| for)?|but (?:with|at|if)|oh(?:,| and)? |my bad,? |there'?s (?=.* (?:too|as well|also)\b)|[a-z' ]+ (?=\d[^,]* not \d)|no,?\s|nope,?\s|no wait|wait|actually|sorry,?\s|i meant|i mean|make (?:it|that|the)|change|with(?:out)? |at |if |for |use |try |plus |minus )/;
/** "No, …": the last number was wrong. */
export const CORRECTS = /^(?:no|nope|no wait|actually|sorry|my bad|i meant|i mean|oops|correction|wait)\b/;
/** "What if …": what is said is only supposed. */
export const SUPPOSES = /\b(?:if|suppose)\b/;
/** "Back to the drain", "back to 2000". */
export const BACK_TO =
  /^(?:(?:ok|now|and|so|then|but),? )*(?:let'?s )?(?:(?:go |going |get )?back|return(?:ing)?) to\b/;
/** "The heater again". */
const ONCE_MORE = /\bagain\b/;
/** It may name a question that was left. */
export const returns = (text: string): boolean => BACK_TO.test(text) || ONCE_MORE.test(text);
/** It goes on where the last question stopped: "and a 300 W heater". */
const GOES_ON = /^(?:and|or|but|plus|also|with)\b/;
/** "It's 80 gallons by the way", said of what was just asked about. */
export const SAYS_IT =
  /^(?:(?:oh|well|and|btw|by the way),? )*(?:it'?s|it (?:is|was)) (?:about |around |only |really |actually )*\d/;
/** "The door is 32 inches", said where no page keeps it. */
export const SAYS_OF_THING = /^(?:(?:oh|well|and),? )*the\b/;
/** "Use that flow for the drain": the last answer feeds another question, the drain's. */
export const CARRIES =
  /^(?:and |now |ok,? |so |then |please )*(?:use|with|take|put|plug) (?:that|this|it|the same)\b.*?\b(?:for|in|into|to|on|against)\b(.*)/;
/** It asks something. */
export const ASKS =
  /\?|\b(?:how|what|whats|what's|which|when|why|where|should|calculate|work out|enough|do i|can i|will (?:it|my|the|this)|(?:can|could|does|would) (?:it|they|that|this|you|we)|volume in)\b|(?:[,.;:] (?:and |so |but )?|^)(?:is|are|does|do|can|could|will|would|find|figure|(?:the )?(?:running |monthly |yearly )?costs? of)\b/;
/** It tells something. */
export const STATES =
  /^(?:ok(?:ay)?,? |so,? |hi,? |well,? )*(?:it'?s|its|it is|it has|it holds|my|mine|our|the|this|i (?:have|'ve|got|use|run|keep|am|bought|built)|i've|ive|we (?:have|'ve|use|run|keep)|there (?:is|are)|tank|display|sump|room|glass|water|new tank)/;

/** Something that is so, said of a thing: "80 lbs of rock in there, the sandbed is an inch". */
const IS_SO =
  /\b(?:is|are|has|have|own|holds?|weighs?|measures?|runs?|sits?|stands?|comes? on|(?:just|finally) (?:measured|tested|bought|got|set up))\b|\b(?:in there|here'?s|just so you know|fyi|btw)\b/;
const BEGS =
  /\b(?:please|pls|plz)\b|^(?:tank|display|sump|room|glass|water) (?:volume|weight|litres|liters|gallons|change|turnover|in)\b/;
/** Of somebody's own: a list of numbers without it is a question's. */
const OWN = /\b(?:my|mine|our|ours|i|we|ive|i've|we've|there|here'?s)\b/;
/** It wants something worked out, without asking. */
export const WANTS =
  /\b(?:please|pls|plz|want|need|trying|wondering|figure out|tell me|give me|help|convert|siz(?:e|ing)|check|calc(?:ulation)?|question|problem)\b| (?:to|into|in|as) [a-z/]+(?: please| pls)?[?.! ]*$|^[^.,\d]{3,40}:/;

/** Whether a message may go on with the open question although its words are another's too. */
export const goesOn = (text: string): boolean => GOES_ON.test(text) && !ASKS.test(text) && !OWN.test(text);

/** Whether a message only tells something. */
export const tells = (text: string): boolean =>
  !ASKS.test(text) &&
  !BEGS.test(text) &&
  (STATES.test(text) || (OWN.test(text) && IS_SO.test(text) && !WANTS.test(text)));

/** Whether a message names another topic than the open one. */
function namesOther(topics: readonly TopicScore[], open: Calculation, least: number): boolean {
  const [best] = topics;
  // Words alone, without a cue, do not lead away from an open question.
  if (!best || best.cues.length === 0 || best.calculation.id === open.id || best.score < least) return false;
  const own = topics.find(({ calculation }) => calculation.id === open.id)?.score ?? 0;
  return own < best.score;
}

/** A message of its own topic, rather than an answer to the open question: it asks, or it is longer than an answer. */
export const isNewQuestion = (heard: Heard, topics: readonly TopicScore[], open: Calculation): boolean =>
  namesOther(topics, open, NAMED) && (ASKS.test(heard.text) || heard.words.list.length > LONGEST_ANSWER);

/** Numbers of a message, of which joined sizes are one. */
const saidApart = ({ mentions }: Heard): number =>
  mentions.filter(({ group }, i) => !group || group.id !== mentions[i - 1]?.group?.id).length;

/** A message that changes a number of the open question. */
export function isChange(heard: Heard, topics: readonly TopicScore[], open: Calculation, { dialogue }: Turn): boolean {
  if (CHANGES.test(heard.text) || returns(heard.text)) return !namesOther(topics.filter(hasOwnCue), open, CLEAR_CHANGE);
  if (dialogue.stated || dialogue.answer === undefined) return false;
  if (heard.mentions.length === 0 && heard.words.list.length <= LONGEST_CHANGE) return !namesOther(topics, open, NAMED);
  if (STATES.test(heard.text) && (TELLS.test(heard.text) || heard.words.list.length > LONGEST_CHANGE)) return false;
  const short = heard.mentions.length > 0 || heard.words.list.length <= LONGEST_CHANGE;
  return !namesOther(topics, open, NAMED) && short && saidApart(heard) <= MOST_CHANGED;
}
