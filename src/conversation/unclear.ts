import { exampleOf } from '../core/answer.js';
import type { Calculation, Input, QuantityInput } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';
import { clockText } from '../core/quantity/clock-text.js';
import { withArticle } from '../core/quantity/number.js';
import { unitNamed } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import { wordsOf } from '../language/cues.js';
import type { Mention } from '../language/measurements.js';
import { readingChoices } from '../language/read-value.js';
import type { Reading } from '../language/readings.js';
import type { TopicScore } from '../language/topic.js';
import { placeNamed } from '../language/which-one.js';
import { calculationList } from './catalogue.js';
import type { Waiting } from './dialogue.js';
import { makeReply, notice, saying } from './replies.js';
import { preferencesFor, type Turn } from './turn.js';
import type { Heard, Understood } from './understand.js';
import type { Between } from './what-changes.js';
import { takenFor, turnTo } from './work.js';

/** Two readings that both fit are asked about: of a number, or of clock words. @returns undefined when nothing is unclear */
export function askWhich(
  turn: Turn,
  calculation: Calculation,
  given: Given,
  { doubts, windows, assignment: { contests } }: Understood,
): Reply | undefined {
  const { dialogue } = turn;
  const [first] = doubts;
  if (!first && windows.length === 0) {
    const waiting = contests.map(({ options }) => options.map(({ id, reading }) => waitingFor(id, reading)));
    return waiting.length === 0 ? undefined : askRole(turn, calculation, given, waiting);
  }
  turnTo(turn, calculation, given);
  if (!first) {
    dialogue.asked = Object.keys(calculation.inputs).find((id) => calculation.inputs[id]!.kind === 'clock')!;
    const choices = windows.map(({ on, off }) => `${clockText(on)} to ${clockText(off)}`).join(' or ');
    return makeReply(turn.speaker, 'question', `Which hours do you mean: ${choices}?`, {
      calculation: calculation.id,
      inputs: takenFor(turn, calculation, given, preferencesFor(turn, [])),
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
    inputs: takenFor(turn, calculation, given, preferencesFor(turn, [])),
    asks: doubts.map(({ id }) => id),
  });
}

const waitingFor = (id: string, { si, unit, low, high }: Reading): Waiting[number][number] => ({
  id,
  si,
  unit: unit.id,
  ...(low === undefined || high === undefined ? {} : { low, high }),
});

const MOST_CHOICES = 4;

/** "What is 62 °F: the start temperature or the room temperature?" The numbers that wait are kept with what each could be. */
export function askRole(turn: Turn, calculation: Calculation, given: Given, waiting: Waiting): Reply {
  const { dialogue } = turn;
  const open = waiting.flatMap((options) => options.map(({ id }) => id));
  const sure = Object.fromEntries(Object.entries(given).filter(([id]) => !open.includes(id)));
  turnTo(turn, calculation, sure);
  dialogue.between = [...waiting];
  const [options] = waiting;
  const choices = options!.slice(0, MOST_CHOICES).map(({ id }) => `the ${calculation.inputs[id]!.name}`);
  const { si, unit } = options![0]!;
  return makeReply(
    turn.speaker,
    'question',
    `What is ${readingChoices([{ si, unit: unitNamed(unit) }])}: ${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}?`,
    {
      calculation: calculation.id,
      inputs: takenFor(turn, calculation, sure, preferencesFor(turn, [])),
      asks: options!.map(({ id }) => id),
    },
  );
}

/** Which of the inputs a short answer names. */
export function optionNamed(
  { inputs }: Calculation,
  options: Waiting[number],
  heard: Heard,
): Waiting[number][number] | undefined {
  const place = placeNamed(
    options.map(({ id }) => [
      ...(inputs[id]!.words ?? []),
      ...wordsOf(inputs[id]!.name.toLowerCase()).list.map(({ text }) => text),
    ]),
    heard,
  );
  return place === undefined ? undefined : options[place];
}

/** "What is 22 inches: the tank length or the tank height?" Nothing changes until that is answered. */
export function askWhichOne({ dialogue, speaker }: Turn, open: Calculation, { said, options }: Between): Reply {
  dialogue.between = [options.map(({ id, reading }) => waitingFor(id, reading))];
  const names = options.map(({ id }) => open.inputs[id]!.name);
  return makeReply(speaker, 'question', `What is ${said}: ${names.slice(0, -1).join(', ')} or ${names.at(-1)}?`, {
    calculation: open.id,
    body: `Say it with its name, such as “${names[0]} ${said}”. Nothing was changed yet.`,
    asks: options.map(({ id }) => id),
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
