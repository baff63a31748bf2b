import { buildSteps } from '../../data/build-steps.js';
import { quantityTable } from '../../data/quantities.js';
import type { Input } from '../core/calculation.js';
import { profileFields } from '../core/profile.js';
import { unitNamed } from '../core/quantity/units.js';
import type { ReadExplanation, Reply } from '../core/reply.js';
import { readValue } from '../language/read-value.js';
import { zonesToOffer } from '../language/zones.js';
import { calculationNamed } from './catalogue.js';
import { noteDay } from './days.js';
import { freshDialogue } from './dialogue.js';
import { explanation } from './explain.js';
import { hear, LONGEST_MESSAGE } from './hear.js';
import { measure } from './measure.js';
import { memberQueue } from './member-queue.js';
import { type Brinewright, type Clock, type Message, type Speaker, StoreProblem } from './ports.js';
import { pressed } from './press.js';
import { makeReply, withNotes } from './replies.js';
import { calculationAt, slash } from './slash.js';
import { readInputs } from './structured.js';
import { endTurn, hintsFor, type Parts, preferencesFor, startTurn, type Turn } from './turn.js';
import { hearText } from './understand.js';
import { work } from './work.js';

const MOST_SUGGESTIONS = 25;

/** The conversation: one function that every face calls, and suggestions while an option is typed. */
export function createBrinewright(parts: Parts): Brinewright {
  const entrances = { command: slash, hear };
  const queue = memberQueue();

  const reply = (speaker: Speaker, message: Message, clock: Clock): Promise<Reply[]> =>
    queue.run(speaker.id, () => answerOne(speaker, message, clock));

  async function answerOne(speaker: Speaker, message: Message, clock: Clock): Promise<Reply[]> {
    try {
      const turn = await startTurn(parts, speaker, clock, entrances);
      const replies = withNotes(await dispatch(turn, message), turn.notes);
      await endTurn(turn);
      return replies;
    } catch (error) {
      if (error instanceof StoreProblem) return [makeReply(speaker, 'error', error.message)];
      throw error;
    }
  }

  async function complete(speaker: Speaker, command: string, option: string, typed: string): Promise<string[]> {
    const suggestions = await suggestionsFor(parts, speaker, command, option);
    const plain = (entry: string): string => entry.toLowerCase().replaceAll('_', ' ');
    const wanted = plain(typed);
    const starts = suggestions.filter((entry) => plain(entry).startsWith(wanted));
    const holds = suggestions.filter((entry) => !starts.includes(entry) && plain(entry).includes(wanted));
    return [...starts, ...holds].slice(0, MOST_SUGGESTIONS);
  }

  return { reply, complete };
}

async function dispatch(turn: Turn, message: Message): Promise<Reply[]> {
  if ('press' in message) return [await pressed(turn, message)];
  if ('measure' in message) return [measure(turn, message.measure)];
  if ('calculation' in message) return [await structured(turn, message)];
  const replies = await answerText(turn, message);
  return message.explain ? replies.map((reply) => ({ read: seenIn(message.say), ...reply })) : replies;
}

async function answerText(turn: Turn, { say, explain }: { say: string; explain?: boolean }): Promise<Reply[]> {
  const text = say.trim();
  if (text === '')
    return [makeReply(turn.speaker, 'refusal', 'That message is empty: ask about your build, or type /help.')];
  return text.startsWith('/') ? slash(turn, text) : hear(turn, say, explain);
}

/** What is explained of a command, where every number stands under its name, and of a text too long to be read. */
const seenIn = (say: string): ReadExplanation =>
  say.length > LONGEST_MESSAGE
    ? { measurements: [], why: ['it is too long to be read'] }
    : { ...explanation(hearText(say), [], []), why: ['it is a command: each option says what its value is'] };

/** One calculation with no language in between. */
async function structured(
  turn: Turn,
  { calculation: id, inputs }: Extract<Message, { calculation: string }>,
): Promise<Reply> {
  const calculation = calculationNamed(id);
  if (!calculation) return makeReply(turn.speaker, 'error', `There is no calculation ${id}: the catalogue lists them.`);
  const { given, ask, problems } = await readInputs(calculation, inputs, async (input: Input, text: string) => {
    const read = await readValue(input, text, hintsFor(turn, []));
    if ('problem' in read) return read;
    if ('value' in read) noteDay(turn, read.day);
    // Nothing is guessed in a structured call; only a count or a share needs no unit.
    const hasUnits = input.kind === 'quantity' && quantityTable[input.quantity].si !== '1';
    return 'doubt' in read || (read.guessed && hasUnits) ? 'ask' : read.value;
  });
  if (problems.length > 0)
    return makeReply(turn.speaker, 'refusal', problems[0]!, {
      calculation: id,
      ...(problems.length > 1 ? { body: problems.slice(1).join('\n') } : {}),
    });
  if (ask.length > 0) {
    const input = calculation.inputs[ask[0]!]!;
    return makeReply(turn.speaker, 'question', `In which unit is the ${input.name}? ${input.ask}`, {
      calculation: id,
      asks: ask,
    });
  }
  const units = Object.values(given).flatMap((value) => ('si' in value && value.unit ? [unitNamed(value.unit)] : []));
  // What a program asks leaves no open question behind for the member's next words.
  const apart: Turn = { ...turn, dialogue: freshDialogue() };
  return work(apart, calculation, given, preferencesFor(turn, units), { alone: true });
}

async function suggestionsFor(
  parts: Parts,
  speaker: Speaker,
  command: string,
  option: string,
): Promise<readonly string[]> {
  const [group = '', sub = ''] = command.split(' ');
  const entry = parts.commands.find(({ name }) => name === group);
  const input = entry && calculationAt(entry, sub)?.inputs[option];
  if (input?.kind === 'lookup') return input.suggestions;
  const action = entry?.actions?.find(({ name }) => name === sub || name === group);
  const suggest = action?.options.find(({ name }) => name === option)?.suggest;
  if (suggest === 'tank') {
    const tanks = await parts.store.tanks(speaker.id);
    return tanks.sort((a, b) => Number(b.current) - Number(a.current)).map(({ name }) => name);
  }
  if (suggest === 'zone') return zonesToOffer();
  if (suggest === 'step') return buildSteps.map(({ name }) => name);
  if (suggest === 'field') return [...profileFields.values()].map(({ input: field }) => field.name);
  return suggest === 'topic' ? parts.commands.map(({ name }) => name) : [];
}
