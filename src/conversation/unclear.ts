import { exampleOf } from '../core/answer.js';
import type { Calculation, Input, ProfileKey, QuantityInput } from '../core/calculation.js';
import type { Given } from '../core/outcome.js';
import { profileInputs } from '../core/profile.js';
import { clockText } from '../core/quantity/clock-text.js';
import { withArticle } from '../core/quantity/number.js';
import { unitNamed } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import { wordsOf } from '../language/cues.js';
import type { Mention } from '../language/measurements.js';
import { readingChoices, readingQuestion, shortened } from '../language/read-value.js';
import { type Reading, readingsOf } from '../language/readings.js';
import type { TopicScore } from '../language/topic.js';
import { placeNamed } from '../language/which-one.js';
import { anyOf } from '../render/text.js';
import type { Waiting } from './dialogue.js';
import { nearest, shortestExample } from './nearest.js';
import { makeReply, notice, saying } from './replies.js';
import { hintsFor, isLeft, openTopic, preferencesFor, type Turn } from './turn.js';
import { asWritten, type Heard, type Understood } from './understand.js';
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
  return makeReply(turn.speaker, 'question', readingQuestion(what, first.readings), {
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
    `What is ${readingChoices([{ si, unit: unitNamed(unit) }])}: ${anyOf(choices)}?`,
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
  return makeReply(speaker, 'question', `What is ${said}: ${anyOf(names)}?`, {
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

/** "I am still asking about the room temperature." */
export const stillAsking = ({ name }: Input): string =>
  `I am still asking about the ${name}; say “never mind” to leave it.`;

/** Numbers of a tank that people give most, by which a lone number can be named. */
const COMMON: readonly ProfileKey[] = [
  'water.temperature',
  'room.temperature',
  'display.glass_thickness',
  'display.length',
  'display.height',
  'water.salinity',
  'water.volume',
  'heater.power',
  'return.flow',
  'rock.mass',
  'power.breaker',
];
const MOST_NAMED = 3;

/** "12 of what?": an answer, when nothing was asked. */
export function ofWhat(turn: Turn, heard: Heard): Reply {
  const [mention] = heard.mentions;
  const said = mention ? asWritten(heard, mention) : shortened(heard.original.trim());
  const topic = openTopic(turn);
  const left = isLeft(turn);
  const own = topic && !left ? Object.keys(turn.dialogue.given).map((id) => topic.inputs[id]) : [];
  const names = [...own, ...COMMON.map((key) => profileInputs[key])].flatMap((input) =>
    mention && input?.kind === 'quantity' && readingsOf(input, mention, hintsFor(turn, heard.said))[0]?.plausible
      ? [`“${input.name} ${said}”`]
      : [],
  );
  const body = [
    names.length > 0 ? `Say it with its name, such as ${names.slice(0, MOST_NAMED).join(' or ')}.` : '',
    topic && left ? `Ask again to take up what I left: ${topic.title.toLowerCase()}.` : '',
    'Nothing was changed.',
  ];
  const headline = mention
    ? `${said} of what? I have asked nothing that it could answer.`
    : `“${said}” to what? I have asked nothing that it could answer.`;
  return notice(turn.speaker, headline, { body: body.filter(Boolean).join('\n') });
}

/** Plainly said, with the nearest things that can be asked. */
export function notUnderstood(turn: Turn, heard: Heard, topics: readonly TopicScore[]): Reply {
  const waiting = openTopic(turn)?.inputs[turn.dialogue.asked ?? ''];
  return notice(turn.speaker, 'I did not understand that as something I can work out, or as a number of your tank.', {
    body: [
      'Nearest things I can do:',
      ...nearest(heard.words, topics).map((offer) => `- ${offer.question} Try: “${shortestExample(offer)}”`),
      'Or /help for the whole list.',
      ...(waiting ? [stillAsking(waiting)] : []),
    ].join('\n'),
    actions: [saying('What can I ask?', '/help')],
  });
}
