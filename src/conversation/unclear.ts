import type { Calculation, Input, QuantityInput } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';
import { clockText } from '../core/quantity/clock-text.js';
import { withArticle } from '../core/quantity/number.js';
import type { Reply } from '../core/reply.js';
import type { Mention } from '../language/measurements.js';
import { readingChoices } from '../language/read-value.js';
import { exampleOf } from '../language/readings.js';
import type { TopicScore } from '../language/topic.js';
import { calculationList } from './catalogue.js';
import { asEarlier } from './dialogue.js';
import { makeReply, notice, saying } from './replies.js';
import type { Turn } from './turn.js';
import type { Heard, Understood } from './understand.js';

/** Two readings that both fit are asked about: of a number, or of clock words. @returns undefined when nothing is unclear */
export function askWhich(
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

/** "I read 5 litres as a volume, but the room temperature is a temperature." */
export function misfit(
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
