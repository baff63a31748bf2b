import { questionFor } from '../core/answer.js';
import type { Calculation, Input, QuantityInput } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';
import { profileInputs } from '../core/profile.js';
import { clockText } from '../core/quantity/clock-text.js';
import { withArticle } from '../core/quantity/number.js';
import { unitNamed } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import type { Preferences } from '../core/show-value.js';
import type { Mention } from '../language/measurements.js';
import { readingChoices, readValue } from '../language/read-value.js';
import { exampleOf } from '../language/readings.js';
import { NAMED, type TopicScore, topicsOf } from '../language/topic.js';
import { unitsNamed } from '../language/unit-words.js';
import { calculationList, calculationNamed } from './catalogue.js';
import { asEarlier } from './dialogue.js';
import { declined, helpTopic, type Intent, intentOf } from './intents.js';
import { reworked, workingOf } from './press.js';
import { makeReply, notice, saying } from './replies.js';
import { keep, takeBack, tankFor, tankNamed } from './statement.js';
import { hintsFor, learnUnits, preferencesFor, type Turn } from './turn.js';
import { explainMeasurements, type Heard, hearText, saysAnything, type Understood, understand } from './understand.js';
import { work } from './work.js';

/** The longest message that is read. */
export const LONGEST_MESSAGE = 4000;
/** How far the best topic must lead when another topic's question is open. */
const CLEAR_CHANGE = 2.4;

/** From here on a message that asks nothing is a question of its topic all the same: "heater for 90 gal". */
const STRONG = 2.2;
/** Numbers in a message that may still change the last question without saying so. */
const MOST_CHANGED = 2;
/** Words in a message that may still be the answer to a question. */
const LONGEST_ANSWER = 4;

const CHANGES =
  /^(?:and |but |or |ok,? |so )*(?:what about|how about|what if|what'?s it (?:at|with)|and (?:at|with|for|if|in)|same(?: again)?,?(?: but)?(?: with| at| for)?|but (?:with|at|if)|no,?\s|nope,?\s|actually|sorry,?\s|i meant|i mean|make (?:it|that|the)|change|with(?:out)? |at |if |for |use |try )/;
const CORRECTS = /^(?:no|nope|actually|sorry|i meant|i mean|oops|correction|wait)\b/;
const ASKS =
  /\?|^(?:how|what|which|why|when|where|is|are|does|do|can|could|will|would|should|calculate|work out|find|figure)\b|,\s*(?:what|is|does|how|can|will|when)\b|\bhow (?:much|many|long|big|far|high|often|fast)\b/;
const STATES =
  /^(?:ok(?:ay)?,? |so,? |hi,? |well,? )*(?:it'?s|its|it is|it has|it holds|my|mine|our|the|this|i (?:have|'ve|got|use|run|keep|am|bought|built)|i've|ive|we (?:have|'ve|use|run|keep)|there (?:is|are)|tank|display|sump|room|glass|water|new tank)/;

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
  const replies = await respond(turn, heard, why);
  return explain
    ? replies.map((reply) => ({ ...reply, read: { measurements: explainMeasurements(heard, turn.understood), why } }))
    : replies;
}

async function respond(turn: Turn, heard: Heard, why: string[]): Promise<Reply[]> {
  const refusal = declined(heard.text);
  if (refusal) return [makeReply(turn.speaker, 'refusal', refusal)];
  const open = turn.dialogue.topic === undefined ? undefined : calculationNamed(turn.dialogue.topic);
  if (turn.dialogue.doubts && open) {
    const settled = await settleDoubts(turn, open, heard);
    if (settled) return settled;
  }
  const about = helpTopic(heard.text);
  if (about !== undefined) return turn.command(`/help topic:${about}`);
  const intent = intentOf(heard.text);
  if (intent) {
    why.push(`the message is a short request: ${intent}`);
    return onIntent(turn, intent);
  }
  await learnUnits(turn, heard.said);
  const topics = topicsOf(heard.words, heard.mentions, calculationList);
  const [best] = topics;
  if (best)
    why.push(`likeliest topic: ${best.calculation.id} (${best.cues.join(', ')}), score ${best.score.toFixed(2)}`);

  if (turn.dialogue.asked !== undefined && open && !isNewQuestion(heard, topics, open)) {
    why.push(`it answers the question about ${turn.dialogue.asked}`);
    const answered = await answerAsked(turn, open, turn.dialogue.asked, heard);
    if (answered) return answered;
  }
  if (open && isChange(heard, topics, open, turn)) {
    why.push('it changes a number of the last question');
    const changed = await change(turn, open, heard);
    if (changed) return changed;
  }
  const weak = best === undefined || best.score < STRONG;
  if ((STATES.test(heard.text) || weak) && !ASKS.test(heard.text) && heard.mentions.length > 0) {
    const stated = await state(
      turn,
      heard,
      why,
      best !== undefined && best.score >= NAMED ? best.calculation : undefined,
    );
    if (stated) return stated;
  }
  if (best && best.score >= NAMED) return question(turn, heard, topics);
  if (heard.mentions.length > 0) {
    const stated = await state(turn, heard, why);
    if (stated) return stated;
  }
  return [notUnderstood(turn, topics)];
}

/** Whether a message names another topic than the open one. */
function namesOther(topics: readonly TopicScore[], open: Calculation, least: number): boolean {
  const [best] = topics;
  if (!best || best.calculation.id === open.id || best.score < least) return false;
  const own = topics.find(({ calculation }) => calculation.id === open.id)?.score ?? 0;
  return own < best.score;
}

/** A message of its own topic, rather than an answer to the open question: it asks, or it is longer than an answer. */
const isNewQuestion = (heard: Heard, topics: readonly TopicScore[], open: Calculation): boolean =>
  namesOther(topics, open, NAMED) && (ASKS.test(heard.text) || heard.words.list.length > LONGEST_ANSWER);

function isChange(heard: Heard, topics: readonly TopicScore[], open: Calculation, { dialogue }: Turn): boolean {
  if (CHANGES.test(heard.text)) return !namesOther(topics, open, CLEAR_CHANGE);
  if (dialogue.stated || dialogue.answer === undefined || STATES.test(heard.text)) return false;
  return !namesOther(topics, open, NAMED) && heard.mentions.length > 0 && heard.mentions.length <= MOST_CHANGED;
}

async function onIntent(turn: Turn, intent: Intent): Promise<Reply[]> {
  const { speaker, dialogue } = turn;
  switch (intent) {
    case 'help':
      return turn.command('/help');
    case 'tank':
      return turn.command('/tank show');
    case 'tanks':
      return turn.command('/tank list');
    case 'greeting':
      return [
        notice(speaker, 'Hello. Tell me about your tank, or ask me something about building it.', {
          actions: [saying('What can I ask?', '/help')],
        }),
      ];
    case 'thanks':
      return [notice(speaker, 'You are welcome.')];
    case 'never-mind':
      delete dialogue.asked;
      delete dialogue.doubts;
      return [notice(speaker, 'Fine, I leave it. What you told me so far is kept.')];
    case 'forget':
      return [await takeBack(turn)];
    case 'working':
      return [await workingOf(turn, dialogue.answer)];
    case 'unsure':
      return [unsure(turn)];
    default:
      return [await reworked(turn, dialogue.answer, intent)];
  }
}

function unsure(turn: Turn): Reply {
  const open = calculationNamed(turn.dialogue.topic ?? '');
  const input = open?.inputs[turn.dialogue.asked ?? ''];
  if (!open || !input)
    return notice(turn.speaker, 'Ask me about a number of your build and I say what I need for it.', {
      actions: [saying('What can I ask?', '/help')],
    });
  return makeReply(
    turn.speaker,
    'question',
    `I can’t guess the ${input.name} fairly, so measure it or read it off the label, and come back: what you told me is kept.`,
    {
      calculation: open.id,
      body: questionFor(open, turn.dialogue.asked!),
      asks: [turn.dialogue.asked!],
    },
  );
}

async function answerAsked(turn: Turn, open: Calculation, asked: string, heard: Heard): Promise<Reply[] | undefined> {
  const input = open.inputs[asked];
  if (!input) return undefined;
  const hints = hintsFor(turn, heard.said);
  const understood = remember(turn, await understand(heard, open.inputs, hints, asked));
  const preferences = preferencesFor(turn, heard.said);
  const unclear = askWhich(turn, open, over(turn, understood.given), understood);
  if (unclear) return [unclear];
  if (saysAnything(understood)) return [await work(turn, open, over(turn, understood.given), preferences)];
  const read = await readValue(input, heard.original, hints);
  if ('value' in read) return [await work(turn, open, over(turn, { [asked]: read.value }), preferences)];
  const stated = heard.mentions.length > 0 ? await state(turn, heard, []) : undefined;
  if (stated) {
    const again = makeReply(turn.speaker, 'question', questionFor(open, asked), {
      calculation: open.id,
      asks: [asked],
    });
    return [...stated, again];
  }
  if ('problem' in read && heard.words.list.length <= LONGEST_ANSWER) {
    return [
      makeReply(turn.speaker, 'question', read.problem, {
        calculation: open.id,
        body: questionFor(open, asked),
        asks: [asked],
      }),
    ];
  }
  return undefined;
}

const over = ({ dialogue }: Turn, fresh: Given): Given => ({ ...asEarlier(dialogue.given), ...fresh });

const remember = (turn: Turn, understood: Understood): Understood => {
  turn.understood = understood;
  return understood;
};

async function change(turn: Turn, open: Calculation, heard: Heard): Promise<Reply[] | undefined> {
  const understood = remember(turn, await understand(heard, open.inputs, hintsFor(turn, heard.said)));
  const preferences = preferencesFor(turn, heard.said);
  if (!saysAnything(understood)) return CORRECTS.test(heard.text) ? state(turn, heard, []) : undefined;
  const unclear = askWhich(turn, open, over(turn, understood.given), understood);
  if (unclear) return [unclear];
  const replies = [await work(turn, open, over(turn, understood.given), preferences)];
  const corrected = CORRECTS.test(heard.text)
    ? await correctTank(turn, open, understood.given, preferences)
    : undefined;
  return corrected ? [...replies, corrected] : replies;
}

/** "No, the glass is 10 mm" also mends the tank's page where it holds the old value. */
async function correctTank(
  turn: Turn,
  open: Calculation,
  given: Given,
  preferences: Preferences,
): Promise<Reply | undefined> {
  const tank = turn.tanks.find(({ current }) => current);
  const values = Object.fromEntries(
    Object.entries(given).flatMap(([id, value]) => {
      const key = open.inputs[id]?.profile;
      return key !== undefined && tank?.values[key] ? [[key, value]] : [];
    }),
  );
  return Object.keys(values).length > 0 ? keep(turn, undefined, values, preferences, []) : undefined;
}

/**
 * A statement about the tank: kept on its page.
 * @param topic the message could be this question too; it is one when the question can use more of its numbers than the tank can keep
 */
async function state(turn: Turn, heard: Heard, why: string[], topic?: Calculation): Promise<Reply[] | undefined> {
  const understood = remember(
    turn,
    await understand(heard, profileInputs, hintsFor(turn, heard.said), undefined, true),
  );
  if (!saysAnything(understood) && understood.assignment.mismatches.length === 0) return undefined;
  if (topic) {
    const asQuestion = await understand(heard, topic.inputs, hintsFor(turn, heard.said));
    const fewerLeft = asQuestion.assignment.unused.length < understood.assignment.unused.length;
    const more = Object.keys(asQuestion.given).length - Object.keys(understood.given).length;
    const moreUsed = STATES.test(heard.text) ? more > 0 : more >= 0;
    if (fewerLeft || moreUsed) return undefined;
  }
  why.push('it tells something about the tank', ...understood.why);
  const [mismatch] = understood.assignment.mismatches;
  if (mismatch && Object.keys(understood.given).length === 0) return [misfit(turn, heard, mismatch, profileInputs)];
  if (Object.keys(understood.given).length === 0 && understood.doubts.length === 0) return undefined;
  const preferences = preferencesFor(turn, heard.said);
  const name = tankNamed(heard.text, turn.tanks);
  if (understood.doubts.length > 0) {
    const doubt = understood.doubts[0]!;
    const choices = readingChoices(doubt.readings);
    const kept =
      Object.keys(understood.given).length > 0
        ? [await keep(turn, name, understood.given, preferences, understood.guessed)]
        : [];
    const sizes = understood.doubts.map(({ mention }) => mention.value).join(' x ');
    return [
      ...kept,
      makeReply(
        turn.speaker,
        'question',
        `In which unit is ${understood.doubts.length > 1 ? sizes : `the ${profileInputs[doubt.id]!.name}`}: ${choices}?`,
        { body: 'Say it again with the unit and I keep it.', asks: understood.doubts.map(({ id }) => id) },
      ),
    ];
  }
  return [await keep(turn, name, understood.given, preferences, understood.guessed)];
}

async function question(turn: Turn, heard: Heard, topics: readonly TopicScore[]): Promise<Reply[]> {
  const { calculation } = topics[0]!;
  const understood = remember(turn, await understand(heard, calculation.inputs, hintsFor(turn, heard.said)));
  const preferences = preferencesFor(turn, heard.said);
  const named = tankNamed(heard.text, turn.tanks);
  const other = named === undefined ? undefined : turn.tanks.find(({ name }) => name === named);
  if (other && !other.current) {
    const { tank } = await tankFor(turn, other.name);
    turn.tanks = turn.tanks.map((entry) => ({ ...entry, current: entry.id === tank.id }));
  }
  const goesOn = turn.dialogue.asked !== undefined || !saysAnything(understood) || CHANGES.test(heard.text);
  const sameTopic = turn.dialogue.topic === calculation.id && goesOn;
  const given = sameTopic ? over(turn, understood.given) : understood.given;
  const unclear = askWhich(turn, calculation, given, understood);
  if (unclear) return [unclear];
  delete turn.dialogue.stated;
  return [await work(turn, calculation, given, preferences)];
}

/** Two readings that both fit are asked about: of a number, or of clock words. @returns undefined when nothing is unclear */
function askWhich(
  turn: Turn,
  calculation: Calculation,
  given: Given,
  { doubts, windows }: Understood,
): Reply | undefined {
  const { dialogue } = turn;
  const [first] = doubts;
  if (!first && windows.length === 0) return undefined;
  dialogue.topic = calculation.id;
  dialogue.given = asEarlier(given);
  if (!first) {
    dialogue.asked = Object.keys(calculation.inputs).find((id) => calculation.inputs[id]!.kind === 'clock')!;
    const choices = windows.map(({ on, off }) => `${clockText(on)} to ${clockText(off)}`).join(' or ');
    return makeReply(turn.speaker, 'question', `Which hours do you mean: ${choices}?`, {
      calculation: calculation.id,
      asks: ['light_window'],
    });
  }
  dialogue.doubts = doubts.map(({ id, readings }) => ({
    id,
    readings: readings.map(({ si, unit }) => ({ si, unit: unit.id })),
  }));
  const what =
    doubts.length > 1
      ? `are the sizes ${doubts.map(({ mention }) => mention.value).join(' x ')}`
      : `is the ${calculation.inputs[first.id]!.name}`;
  return makeReply(turn.speaker, 'question', `In which unit ${what}: ${readingChoices(first.readings)}?`, {
    calculation: calculation.id,
    asks: doubts.map(({ id }) => id),
  });
}

/** "cm", or the number again with its unit. */
async function settleDoubts(turn: Turn, open: Calculation, heard: Heard): Promise<Reply[] | undefined> {
  const { doubts } = turn.dialogue;
  const named = [
    ...heard.said,
    ...heard.words.list.flatMap(({ text }) => unitsNamed(text)),
    ...unitsNamed(heard.text),
  ].map(({ id }) => id);
  const chosen = doubts!.flatMap(({ id, readings }) => {
    const reading = readings.find(({ unit }) => named.includes(unit));
    return reading ? [[id, { si: reading.si, unit: reading.unit, from: 'message' as const }] as const] : [];
  });
  delete turn.dialogue.doubts;
  if (chosen.length === 0 || heard.mentions.length > doubts!.length) return undefined;
  const preferences = preferencesFor(
    turn,
    chosen.map(([, { unit }]) => unitNamed(unit)),
  );
  return [await work(turn, open, over(turn, Object.fromEntries(chosen)), preferences)];
}

/** "I read 5 litres as a volume, but the room temperature is a temperature." */
function misfit(
  turn: Turn,
  heard: Heard,
  { id, mention }: { id: string; mention: Mention },
  inputs: Readonly<Record<string, Input>>,
): Reply {
  const input = inputs[id] as QuantityInput;
  const said = heard.text.slice(mention.start, mention.end);
  return makeReply(
    turn.speaker,
    'refusal',
    `I read “${said}” as ${withArticle(mention.units[0]!.quantities[0]!)}, but the ${input.name} is ${withArticle(input.quantity)}: ${exampleOf(input)} would be right.`,
    { body: 'Nothing was changed.' },
  );
}

const MOST_SUGGESTED = 3;

/** Plainly said, with the nearest things that can be asked. */
export function notUnderstood(turn: Turn, topics: readonly TopicScore[]): Reply {
  const near = topics.slice(0, MOST_SUGGESTED).map(({ calculation }) => calculation);
  const offered =
    near.length > 0
      ? near
      : calculationList.filter(({ id }) => ['volume.rectangular', 'heater.size', 'drain.siphon'].includes(id));
  return notice(turn.speaker, 'I did not understand that as something about building a reef tank.', {
    body: [
      `Nearest things I can do:`,
      ...offered.map(({ question: ask, examples }) => `- ${ask} Try: “${examples[0]}”`),
      'Or /help for the whole list.',
    ].join('\n'),
    actions: [saying('What can I ask?', '/help')],
  });
}
