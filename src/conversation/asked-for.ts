import { findPhrase, isLittle, type Words } from '../language/cues.js';
import { cuePlaces } from '../language/input-cues.js';
import type { TopicScore } from '../language/topic.js';
import { type LikelyTopic, understoodAs } from './likeliest.js';
import { ASKS, CORRECTS, TELLS, WANTS } from './manner.js';
import type { Turn } from './turn.js';
import type { Heard } from './understand.js';

/** "Hi there, anyone awake?": what is asked there is not about the build. */
const OPENS =
  /^(?:(?:hi|hello|hey|hiya|yo|ok|good (?:morning|evening|afternoon))\b(?: there| all| guys| folks| everyone| everybody)*[,!. ]*)*(?:(?:is )?any(?:one|body) (?:awake|here|there|up|around|home|online|out there)[?!. ]*)?/;
/** "Both drains clog: does the display flood" */
const ASKS_AT_ITS_END =
  /[:,;.] *(?:so |and |but )?(?:is|are|does|do|did|can|could|will|would|should|has)\b|\b(?:does|do|can|could|will|would|should) (?:the|my|it|this|that|i|we)\b/;
/** "…, right?": a sentence that tells something, with a question mark. */
const TAG = /[,. ]+(?:right|huh|eh|lol|you know|isn'?t it|innit|no)\?+$/;

/** Words that a name may stand among and still be all that is said: "heater size for my new reef pls". */
const NEUTRAL = new Set(
  'tank reef aquarium build system setup size sizing number calculator calculation formula new next best right correct good proper pls please plz thx thanks hi hey hello ok so um and or question quick again another about'.split(
    ' ',
  ),
);

/** Whether a message says nothing but the name of a calculation and of what it takes. */
function onlyNames({ calculation, cues }: TopicScore, words: Words): boolean {
  const places = [
    ...cues.flatMap((cue) => findPhrase(words, cue)),
    ...[...cuePlaces(calculation.inputs, words).values()].flat(),
  ];
  return words.list.every(
    ({ text, start, end }) =>
      isLittle(text) || NEUTRAL.has(text) || places.some((place) => place.start <= start && place.end >= end),
  );
}

/**
 * Whether a message with words of a topic is a question of it: it asks or wants something, it has a number or another thing that
 * the question takes, or it says nothing but the topic's name. "Cleaned the skimmer today" tells something: nothing is asked back.
 */
export async function isAskedFor(turn: Turn, heard: Heard, topic: LikelyTopic): Promise<boolean> {
  if (heard.mentions.length > 0 || onlyNames(topic, heard.words)) return true;
  const text = heard.text.replace(OPENS, '').replace(TAG, '');
  if ([ASKS, ASKS_AT_ITS_END, WANTS, CORRECTS].some((pattern) => pattern.test(text))) return true;
  const { given } = await understoodAs(turn, heard, topic);
  // A choice is made by some common word: "my nitrate is high", against "drilling tempered glass".
  return Object.keys(given).some((id) => topic.calculation.inputs[id]!.kind !== 'choice' || !TELLS.test(text));
}

const FILLS = new Set(
  "what how if at about around approx roughly ok okay its it's like maybe think so say said then just only well hmm um actually no nope nah yes yeah yep yup sure".split(
    ' ',
  ),
);
const ANSWERS = /^(?:yes|yeah|yep|yup|sure|no|nope|nah)\b/;

/** Whether a message is nothing but an answer: a number, or yes or no. */
export const isBareAnswer = ({ words, mentions, text }: Heard): boolean =>
  (mentions.length > 0 || ANSWERS.test(text)) &&
  words.list.every(
    ({ text: word, start, end }) =>
      isLittle(word) || FILLS.has(word) || mentions.some((mention) => mention.start <= start && mention.end >= end),
  );
