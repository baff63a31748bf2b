import type { Reply } from '../core/reply.js';
import { placeNamed } from '../language/which-one.js';
import { calculationNamed } from './catalogue.js';
import { change } from './change.js';
import { returns } from './manner.js';
import { preferencesFor, type Turn } from './turn.js';
import type { Heard } from './understand.js';
import { wordsNaming } from './which-topic.js';
import { turnTo, work } from './work.js';

/**
 * "Back to the drain", "and the heater again, at 16 C": an earlier question of the conversation, with the numbers it had.
 * @returns undefined when no earlier question is named
 */
export async function comeBack(turn: Turn, heard: Heard): Promise<Reply[] | undefined> {
  const { dialogue } = turn;
  if (!returns(heard.text)) return undefined;
  const questions = [{ topic: dialogue.topic ?? '', given: dialogue.given }, ...(dialogue.earlier ?? [])].flatMap(
    ({ topic, given }) => {
      const calculation = calculationNamed(topic);
      return calculation ? [{ calculation, given }] : [];
    },
  );
  const place = placeNamed(
    questions.map(({ calculation }) => wordsNaming(calculation)),
    heard,
  );
  const meant = place === undefined ? undefined : questions[place];
  if (!meant || meant.calculation.id === dialogue.topic) return undefined;
  turnTo(turn, meant.calculation, meant.given);
  delete dialogue.asked;
  const changed = heard.mentions.length > 0 ? await change(turn, meant.calculation, heard) : undefined;
  return changed ?? [await work(turn, meant.calculation, meant.given, preferencesFor(turn, heard.said))];
}
