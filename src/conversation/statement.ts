import { inputIn } from '../core/answer.js';
import type { Calculation, ProfileKey, QuantityInput } from '../core/calculation.js';
import type { Given, GivenValue, UsedInput } from '../core/outcome.js';
import { type ProfileField, profileFields } from '../core/profile.js';
import { refusalForRange } from '../core/refusal.js';
import type { Reply } from '../core/reply.js';
import { run } from '../core/run.js';
import type { Preferences } from '../core/show-value.js';
import { calculationList } from './catalogue.js';
import type { StoredValue, Tank } from './ports.js';
import { makeReply, notice, saying } from './replies.js';
import { changedAnswers, type Standing, standings, tankAnswers } from './tank-answers.js';
import { tankFor, tankMeant } from './tank-names.js';
import { fromStored, inputsOfTank, toStored } from './tank-values.js';
import { forgetSaid, now, preferencesFor, replaceSaid, type Turn } from './turn.js';

/** A stored or said value of a field as a person reads it. */
export function shownField({ input, key }: ProfileField, value: GivenValue, preferences: Preferences): string {
  const used: UsedInput = {
    id: key,
    from: 'profile',
    input,
    name: input.name,
    ...('si' in value ? { si: value.si, ...(value.unit ? { unit: value.unit } : {}) } : { text: value.text }),
  };
  return inputIn(used, preferences).shown;
}

export const shownStored = (field: ProfileField, stored: StoredValue, preferences: Preferences): string =>
  shownField(field, fromStored(stored), preferences);

type Stored = Readonly<Record<string, StoredValue>>;

/** Values that cannot be: outside a field's range, or against each other (glass thicker than the tank). */
function problemsOf(values: Given, kept: Stored): { key: string; text: string }[] {
  const ranges = Object.entries(values).flatMap(([key, value]) => {
    const input = profileFields.get(key as never)?.input;
    if (input?.kind !== 'quantity' || !('si' in value)) return [];
    const refusal = refusalForRange(key, input as QuantityInput, value.si, value.unit);
    return refusal ? [{ key, text: refusal.text }] : [];
  });
  const before = rulesBroken(kept, {});
  const after = rulesBroken(kept, values).filter(({ text }) => !before.some((known) => known.text === text));
  const against = after.flatMap(({ text, keys }) => {
    const key = keys.find((name) => name in values);
    return key === undefined || ranges.some((entry) => entry.key === key) ? [] : [{ key, text }];
  });
  return [...ranges, ...against.filter(({ text }, i, all) => all.findIndex((other) => other.text === text) === i)];
}

function rulesBroken(kept: Stored, values: Given): { text: string; keys: string[] }[] {
  return calculationList
    .filter(({ part }) => part === 'tank')
    .flatMap((calculation) => {
      const given = givenFor(calculation, kept, values);
      if (Object.keys(given).length < 2) return [];
      const outcome = run(calculation, given, { spread: false });
      if (outcome.kind !== 'refusal') return [];
      return outcome.refusals
        .filter(({ code }) => code === 'rule')
        .map(({ text, input }) => ({
          text,
          keys: [
            calculation.inputs[input ?? '']?.profile ?? '',
            ...Object.values(calculation.inputs).flatMap(({ profile }) => profile ?? []),
          ],
        }));
    });
}

const givenFor = (calculation: Calculation, kept: Stored, values: Given): Given =>
  inputsOfTank(calculation, (key) => {
    const stored = kept[key];
    return values[key] ?? (stored && fromStored(stored));
  });

/** Keeps what was said about a tank and says what was understood, what changed, and what was not kept. */
export async function keep(
  turn: Turn,
  name: string | undefined,
  values: Given,
  preferences: Preferences,
  guessed: readonly string[],
  notKept: readonly string[] = [],
): Promise<Reply> {
  const problems = problemsOf(values, tankMeant(turn, name)?.values ?? {});
  const good = Object.fromEntries(
    Object.entries(values).filter(([key]) => !problems.some((problem) => problem.key === key)),
  );
  if (Object.keys(good).length === 0) {
    delete turn.dialogue.stated;
    const others = problems.slice(1).map(({ text }) => text);
    return makeReply(turn.speaker, 'refusal', problems[0]?.text ?? 'I found nothing in that to keep.', {
      body: [...others, 'Nothing was changed.'].join('\n'),
    });
  }
  const { tank, created } = await tankFor(turn, name);
  const stored = Object.fromEntries(Object.entries(good).map(([key, value]) => [key, toStored(value)]));
  await turn.store.saveValues(turn.speaker.id, tank.id, stored, now(turn));
  turn.dialogue.stated = {
    tank: tank.id,
    before: Object.fromEntries(Object.keys(good).map((key) => [key, tank.values[key] ?? null])),
  };
  replaceSaid(turn, good);
  const lines = inPageOrder(good).map(([key, value]) => fieldLine(key, value, tank, preferences));
  const after = standings({ ...tank.values, ...stored });
  const headline = `${created ? 'Started' : 'Kept for'} your ${created ? 'tank ' : ''}“${tank.name}”: ${lines.join('; ')}.`;
  const body = [
    ...guessLine(guessed, good, preferences),
    ...Object.keys(good).flatMap((key) => profileFields.get(key as never)?.input.onKeeping ?? []),
    ...problems.map(({ text }) => `Not kept: ${text}`),
    ...notKept,
    ...(isOtherTank(tank.values, stored) ? [OTHER_TANK] : []),
    ...changes(tank.values, stored, after, preferences),
    nextStep(after),
  ];
  return notice(turn.speaker, headline, {
    body: body.join('\n'),
    private: true,
    actions: [saying('Show my tank', '/tank show'), saying('How much water?', 'how much water does it hold')],
  });
}

const pageOrder = [...profileFields.keys()] as string[];

/** Values as the tank's page lists them, whatever the order they were said in. */
const inPageOrder = (values: Given): [string, GivenValue][] =>
  Object.entries(values).sort(([a], [b]) => pageOrder.indexOf(a) - pageOrder.indexOf(b));

function fieldLine(key: string, value: GivenValue, tank: Tank, preferences: Preferences): string {
  const field = profileFields.get(key as never)!;
  const shown = shownField(field, value, preferences);
  const old = tank.values[key];
  const was = old && shownStored(field, old, preferences);
  const changed = was !== undefined && was !== shown ? ` (was ${was})` : '';
  return `${field.input.name} ${shown}${changed}`;
}

/** A unit that was not said is said back, once. */
function guessLine(guessed: readonly string[], good: Given, preferences: Preferences): string[] {
  const shown = guessed.flatMap((key) => {
    const field = profileFields.get(key as never);
    return field && good[key] ? [shownField(field, good[key], preferences)] : [];
  });
  return shown.length === 0 ? [] : [`No unit was given, so I took ${shown.join(' x ')}: say so if it is another.`];
}

/** What the tank's numbers are already enough for, and what is missing for the next answer. */
function nextStep(answers: readonly Standing[]): string {
  const { ready, missing } = tankAnswers(answers);
  const can =
    ready.length > 0
      ? `That is enough for: ${ready
          .slice(0, 3)
          .map(({ title }) => title.toLowerCase())
          .join('; ')}.`
      : 'Tell me more whenever you like; I add it to the same tank.';
  const next = missing.find(({ opens }) => opens.some(({ general }) => general));
  const opened = next?.opens.find(({ general }) => general);
  const more = next && opened ? `With the ${next.name} I can also do: ${opened.title.toLowerCase()}.` : '';
  return `${can} ${more}`.trim();
}

const SIZES: readonly ProfileKey[] = ['display.length', 'display.width', 'display.height'];
const OTHER_TANK = 'If that is another tank, say “forget that”, and then “my second tank is …”.';

/** Whether the sizes that were said are hardly a correction of those that were kept. */
const isOtherTank = (kept: Stored, said: Stored): boolean =>
  SIZES.filter((key) => kept[key] && said[key] && kept[key].si !== said[key].si).length > 1;

/** Answers that are listed after a number was changed. */
const MOST_CHANGED = 4;

/** What another value of a number that was kept before changes. */
function changes(before: Stored, said: Stored, after: readonly Standing[], preferences: Preferences): string[] {
  const replaced = Object.entries(said).some(
    ([key, { si, text }]) => before[key] && (before[key].si !== si || before[key].text !== text),
  );
  const changed = replaced ? changedAnswers(standings(before), after, preferences) : [];
  if (changed.length === 0) return [];
  const left = changed.length - MOST_CHANGED;
  return [
    'That changes:',
    ...changed.slice(0, MOST_CHANGED).map((text) => `- ${text}`),
    ...(left > 0 ? [`… and ${left} more ${left === 1 ? 'answer' : 'answers'}.`] : []),
  ];
}

/** Takes back what the last statement said: the values before it stand again. */
export async function takeBack(turn: Turn): Promise<Reply> {
  const { stated } = turn.dialogue;
  if (!stated || !turn.tanks.some(({ id }) => id === stated.tank)) {
    const hadTopic = turn.dialogue.topic !== undefined;
    turn.dialogue.given = {};
    turn.dialogue.known = {};
    delete turn.dialogue.asked;
    return notice(
      turn.speaker,
      hadTopic
        ? 'Forgotten: I start that question afresh. Your tank’s page is as it was.'
        : 'There is nothing to take back.',
    );
  }
  const before = Object.entries(stated.before);
  const names = before.map(([key]) => profileFields.get(key as never)?.input.name ?? key);
  const restored = Object.fromEntries(before.flatMap(([key, value]) => (value ? [[key, value]] : [])));
  for (const [key, value] of before)
    if (!value) await turn.store.removeValue(turn.speaker.id, stated.tank, key, now(turn));
  await turn.store.saveValues(turn.speaker.id, stated.tank, restored, now(turn));
  delete turn.dialogue.stated;
  forgetSaid(turn, Object.keys(stated.before));
  const again =
    Object.keys(restored).length > 0 ? 'What stood there before stands again.' : 'The tank’s history keeps it.';
  return notice(turn.speaker, `Taken back: ${names.join('; ')}.`, { body: again, private: true });
}

/** Saves the inputs of an answer to a tank's page. */
export async function saveInputs(
  turn: Turn,
  calculation: Calculation,
  given: Given,
  tankName: string | undefined,
): Promise<Reply> {
  const values = Object.fromEntries(
    Object.entries(given).flatMap(([id, value]) => {
      const key = calculation.inputs[id]?.profile;
      return key !== undefined && (value.from === 'message' || value.from === 'earlier') ? [[key, value]] : [];
    }),
  );
  if (Object.keys(values).length === 0)
    return notice(turn.speaker, 'There is nothing in that answer that belongs on a tank’s page.', { private: true });
  return keep(turn, tankName, values, preferencesFor(turn, []), []);
}
