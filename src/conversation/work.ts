import { answerIn, inputIn, questionFor } from '../core/answer.js';
import type { Calculation } from '../core/calculation.js';
import type { Given, Outcome, UsedInput } from '../core/outcome.js';
import type { Action, Reply } from '../core/reply.js';
import { resolve } from '../core/resolve.js';
import { run } from '../core/run.js';
import type { Preferences } from '../core/show-value.js';
import { asEarlier } from './dialogue.js';
import { makeReply } from './replies.js';
import { forgetSaid, gather, now, type Turn } from './turn.js';
import type { Understood } from './understand.js';

const MOST_KEPT_NAMED = 6;

/** What is stored of an answer: enough to work it again and show it as it was. */
export interface KeptAnswer {
  readonly values: Given;
  readonly preferences: Preferences;
}

/**
 * Works a calculation and words the outcome; remembers the topic, and what is being asked for.
 * @param alone true for a structured call: nothing is added from the conversation or the tank
 */
export async function work(
  turn: Turn,
  calculation: Calculation,
  given: Given,
  preferences: Preferences,
  { alone = false } = {},
): Promise<Reply> {
  const all = alone ? given : gather(turn, calculation, given);
  const outcome = run(calculation, all);
  rememberTopic(turn, calculation, given);
  if (outcome.kind === 'question') return ask(turn, outcome, preferences);
  if (outcome.kind === 'refusal') return refuse(turn, outcome, preferences);
  const answerId = await turn.store.saveAnswer({
    member: turn.speaker.id,
    calculation: calculation.id,
    given: JSON.stringify({ values: all, preferences } satisfies KeptAnswer),
    at: now(turn),
  });
  turn.dialogue.answer = answerId;
  delete turn.dialogue.answerLeft;
  return answer(turn, outcome, preferences, answerId, turn.understood);
}

/** A unit that was guessed is said, never silent. */
function takenForGranted(understood: Understood, inputs: Reply['inputs']): Reply['cautions'] {
  const shown = (id: string) => inputs.find((input) => input.id === id && input.from === 'message');
  const guessed = understood.guessed.flatMap((id) => shown(id) ?? []).map(({ name, shown: text }) => `${name} ${text}`);
  const meanings = understood.twoMeanings.flatMap(({ id, said }) =>
    shown(id)
      ? [
          `I read “${said}” as ${shown(id)!.shown}${/^1\.0/.test(said) ? ', a specific gravity on the 25/25 °C scale' : ''}.`,
        ]
      : [],
  );
  const texts = [
    ...(guessed.length > 0 ? [`No unit was given, so I took: ${guessed.join('; ')}. Say so if it is another.`] : []),
    ...meanings,
  ];
  return texts.map((text) => ({ level: 'note', text }));
}

/** Questions that one can come back to. */
const MOST_EARLIER = 5;

/** Makes a question the open one; the one that it follows can be come back to. */
export function turnTo({ dialogue }: Turn, next: Calculation, values: Given): void {
  const { topic, given, earlier = [] } = dialogue;
  if (topic !== undefined && topic !== next.id) {
    const others = earlier.filter((question) => question.topic !== topic && question.topic !== next.id);
    dialogue.earlier = [{ topic, given }, ...others].slice(0, MOST_EARLIER);
  }
  dialogue.topic = next.id;
  dialogue.given = asEarlier(values);
}

function rememberTopic(turn: Turn, calculation: Calculation, given: Given): void {
  const { dialogue } = turn;
  turnTo(turn, calculation, given);
  delete dialogue.asked;
  delete dialogue.left;
  delete dialogue.stated;
  for (const [id, { profile }] of Object.entries(calculation.inputs)) {
    const value = given[id];
    if (profile !== undefined && value)
      dialogue.known = { ...dialogue.known, [profile]: asEarlier({ [id]: value })[id]! };
  }
}

/**
 * An answer in given units, with what can be done next.
 * @param understood how the message was read that it answers, where it answers one
 */
export function answer(
  turn: Turn,
  outcome: Outcome & { kind: 'answer' },
  preferences: Preferences,
  answerId: string,
  understood?: Understood,
): Reply {
  const { calculation } = outcome;
  const worded = answerIn(outcome, preferences);
  return makeReply(turn.speaker, 'answer', worded.headline, {
    calculation: calculation.id,
    ...worded,
    cautions: understood ? [...worded.cautions, ...takenForGranted(understood, worded.inputs)] : worded.cautions,
    answerId,
    actions: actionsFor(outcome, preferences),
  });
}

function actionsFor(outcome: Outcome & { kind: 'answer' }, preferences: Preferences): Action[] {
  const savable = outcome.inputs.some(
    ({ input, from }) => input?.profile !== undefined && (from === 'message' || from === 'earlier'),
  );
  return [
    { verb: 'working', label: 'Show the working' },
    { verb: 'units', label: preferences.system === 'metric' ? 'In US units' : 'In metric units' },
    ...(savable ? [{ verb: 'save' as const, label: 'Save to my tank' }] : []),
  ];
}

function ask(turn: Turn, outcome: Outcome & { kind: 'question' }, preferences: Preferences): Reply {
  const [first] = outcome.asks;
  turn.dialogue.asked = first!;
  return makeReply(turn.speaker, 'question', questionFor(outcome.calculation, first!), {
    calculation: outcome.calculation.id,
    asks: outcome.asks,
    inputs: takenSoFar(outcome.inputs, preferences),
  });
}

const takenSoFar = (inputs: readonly UsedInput[], preferences: Preferences): Reply['inputs'] =>
  inputs.filter(({ from }) => from !== 'default').map((used) => inputIn(used, preferences));

/** What a question about a calculation shows as taken already. */
export const takenFor = (
  turn: Turn,
  calculation: Calculation,
  given: Given,
  preferences: Preferences,
): Reply['inputs'] => takenSoFar(resolve(calculation, gather(turn, calculation, given)).inputs, preferences);

function refuse(turn: Turn, outcome: Outcome & { kind: 'refusal' }, preferences: Preferences): Reply {
  const { calculation, refusals, inputs } = outcome;
  const [first, ...more] = refusals;
  const about = refusals.flatMap(({ input }) => input ?? []);
  const kept = inputs.filter(
    ({ id, from, input }) => from !== 'default' && from !== 'table' && input && !about.includes(id),
  );
  turn.dialogue.given = Object.fromEntries(Object.entries(turn.dialogue.given).filter(([id]) => !about.includes(id)));
  forgetSaid(
    turn,
    about.flatMap((id) => calculation.inputs[id]?.profile ?? []),
  );
  if (about[0] !== undefined && about[0] in calculation.inputs) turn.dialogue.asked = about[0];
  const keptText = kept.slice(0, MOST_KEPT_NAMED).map((used) => `${used.name} ${inputIn(used, preferences).shown}`);
  const body = [
    ...more.map(({ text }) => text),
    ...(kept.length > 0
      ? [`Kept: ${keptText.join('; ')}${kept.length > MOST_KEPT_NAMED ? ' and the rest' : ''}.`]
      : []),
  ];
  return makeReply(turn.speaker, 'refusal', first!.text, {
    calculation: calculation.id,
    ...(body.length > 0 ? { body: body.join('\n') } : {}),
    asks: about.slice(0, 1),
  });
}
