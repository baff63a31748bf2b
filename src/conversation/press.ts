import type { Outcome } from '../core/outcome.js';
import type { Reply } from '../core/reply.js';
import { run } from '../core/run.js';
import { IMPERIAL, METRIC, type Preferences, US } from '../core/show-value.js';
import { calculationNamed } from './catalogue.js';
import type { Message, StoredAnswer } from './ports.js';
import { makeReply, notice } from './replies.js';
import { saveInputs } from './statement.js';
import { preferencesFor, type Turn } from './turn.js';
import { answer, type KeptAnswer } from './work.js';

const NO_ANSWER = 'There is no answer to go back to yet: ask me something first.';
const GONE = 'That answer is no longer kept: ask again and I work it out afresh.';

const keptOf = (stored: StoredAnswer): KeptAnswer => JSON.parse(stored.given) as KeptAnswer;

interface Recalled {
  readonly stored: StoredAnswer;
  readonly outcome: Outcome & { kind: 'answer' };
}

/** A stored answer worked again, or the sentence that says why not. */
export async function recalled(turn: Turn, answerId: string | undefined): Promise<Recalled | string> {
  if (answerId === undefined) return NO_ANSWER;
  const stored = await turn.store.answer(answerId);
  const calculation = stored && calculationNamed(stored.calculation);
  if (!stored || !calculation) return GONE;
  const outcome = run(calculation, keptOf(stored).values);
  return outcome.kind === 'answer' ? { stored, outcome } : GONE;
}

/** The working of an answer, whole. */
export async function workingOf(turn: Turn, answerId: string | undefined): Promise<Reply> {
  const found = await recalled(turn, answerId);
  return typeof found === 'string' ? notice(turn.speaker, found) : workingAlone(turn, found);
}

function workingAlone(turn: Turn, { outcome, stored }: Recalled): Reply {
  const { calculation, headline, inputs, steps, sources } = answer(
    turn,
    outcome,
    keptOf(stored).preferences,
    stored.id,
  );
  return makeReply(turn.speaker, 'notice', headline, {
    calculation,
    inputs,
    steps,
    sources,
    private: stored.member !== turn.speaker.id,
  });
}

type UnitWish = 'metric' | 'us' | 'imperial' | 'celsius' | 'fahrenheit';
const WISHES: Record<UnitWish, (now: Preferences) => Preferences> = {
  metric: () => METRIC,
  us: () => US,
  imperial: () => IMPERIAL,
  celsius: ({ system }) => ({ system, temperature: 'degC' }),
  fahrenheit: ({ system }) => ({ system, temperature: 'degF' }),
};

/** The last answer again in the units wished for, which are the member's from now on. */
export async function reworked(turn: Turn, answerId: string | undefined, wish: UnitWish): Promise<Reply> {
  const preferences = WISHES[wish](preferencesFor(turn, []));
  turn.dialogue.units = preferences;
  await turn.store.savePreferences(turn.speaker.id, preferences);
  const found = await recalled(turn, answerId);
  if (typeof found === 'string')
    return notice(
      turn.speaker,
      `From now on I answer in ${wish === 'us' ? 'US units' : wish === 'metric' || wish === 'imperial' ? `${wish} units` : `degrees ${wish === 'celsius' ? 'Celsius' : 'Fahrenheit'}`}.`,
    );
  return answer(turn, found.outcome, preferences, found.stored.id);
}

/** A button under an answer. Anyone who can see the answer may look at its working; only its owner's tank can be saved to. */
export async function pressed(turn: Turn, message: Extract<Message, { press: string }>): Promise<Reply> {
  const found = await recalled(turn, message.answer);
  if (typeof found === 'string') return notice(turn.speaker, found, { private: true });
  const { stored, outcome } = found;
  if (message.press === 'working') return workingAlone(turn, found);
  if (message.press === 'units') {
    return answer(turn, outcome, keptOf(stored).preferences.system === 'metric' ? US : METRIC, stored.id);
  }
  if (stored.member !== turn.speaker.id)
    return notice(turn.speaker, 'Those numbers are another member’s: ask the question yourself and save your own.', {
      private: true,
    });
  return saveInputs(turn, outcome.calculation, keptOf(stored).values, message.tank);
}
