import { inputIn } from '../core/answer.js';
import type { Calculation } from '../core/calculation.js';
import type { Given, GivenValue } from '../core/outcome.js';
import type { Reply } from '../core/reply.js';
import type { Preferences } from '../core/show-value.js';
import { BACK_TO, CORRECTS, SUPPOSES } from './manner.js';
import { keep } from './statement.js';
import { over, remember, state } from './topics.js';
import { currentTank, gather, hintsFor, preferencesFor, type Turn } from './turn.js';
import { askWhich, askWhichOne } from './unclear.js';
import { type Heard, hearText, type Understood, understand } from './understand.js';
import { whatChanges } from './what-changes.js';
import { work } from './work.js';

/** What a change could mean is decided by the values it could change. */
const uncontested = (understood: Understood): Understood => ({
  ...understood,
  assignment: { ...understood.assignment, contests: [] },
});

/** The open question with what the message changes. @returns undefined when it changes nothing */
export async function change(turn: Turn, open: Calculation, whole: Heard): Promise<Reply[] | undefined> {
  // "Back to 2000": no more is said than the number, and nothing of water that drains back.
  const heard = BACK_TO.test(whole.text) ? hearText(whole.text.replace(BACK_TO, '')) : whole;
  const mended = CORRECTS.test(heard.text) ? turn.dialogue.lastAsked : undefined;
  const hints = hintsFor(turn, heard.said);
  const understood = remember(turn, await understand(heard, open.inputs, hints, mended));
  const preferences = preferencesFor(turn, heard.said);
  const unclear = askWhich(turn, open, over(turn, understood.given), uncontested(understood));
  if (unclear) return [unclear];
  const before = gather(turn, open, turn.dialogue.given);
  const meant = mended === undefined ? whatChanges(open, before, heard, understood, hints) : understood;
  if ('options' in meant) return [askWhichOne(turn, open, meant)];
  const { given } = meant;
  if (Object.keys(given).length === 0) return CORRECTS.test(heard.text) ? state(turn, heard, []) : undefined;
  const { known } = turn.dialogue;
  const replies = [await work(turn, open, over(turn, given), preferences)];
  // What is only supposed is not known of the tank.
  if (SUPPOSES.test(heard.text)) turn.dialogue.known = known;
  if (replies[0]!.kind === 'answer') noteChanges(turn, open, before, given, preferences);
  const corrected = CORRECTS.test(heard.text) ? await correctTank(turn, open, given, preferences) : undefined;
  return corrected ? [...replies, corrected] : replies;
}

/** Says which numbers the answer has anew, and what they were. */
function noteChanges(turn: Turn, open: Calculation, before: Given, given: Given, preferences: Preferences): void {
  const shown = (id: string, value: GivenValue): string => {
    const input = open.inputs[id]!;
    return inputIn({ ...value, id, input, name: input.name }, preferences).shown;
  };
  const changed = Object.entries(given).flatMap(([id, value]) => {
    const [is, was] = [shown(id, value), before[id] && shown(id, before[id])];
    return is === was ? [] : [`${open.inputs[id]!.name} ${is}${was === undefined ? '' : ` (was ${was})`}`];
  });
  if (changed.length > 0) turn.notes.add(`Changed: ${changed.join('; ')}.`);
}

/** "No, the glass is 10 mm" also mends the tank's page where it holds the old value. */
async function correctTank(
  turn: Turn,
  open: Calculation,
  given: Given,
  preferences: Preferences,
): Promise<Reply | undefined> {
  const tank = currentTank(turn);
  const values = Object.fromEntries(
    Object.entries(given).flatMap(([id, value]) => {
      const key = open.inputs[id]?.profile;
      return key !== undefined && tank?.values[key] ? [[key, value]] : [];
    }),
  );
  return Object.keys(values).length > 0 ? keep(turn, undefined, values, preferences, []) : undefined;
}
