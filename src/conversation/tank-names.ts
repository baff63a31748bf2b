import type { Given } from '../core/outcome.js';
import type { Reply } from '../core/reply.js';
import { wordsOf } from '../language/cues.js';
import { FIRST_TANK, tankNamed } from './named-tank.js';
import type { Tank } from './ports.js';
import { notice } from './replies.js';
import { currentTank, now, openTopic, type Turn } from './turn.js';

export const tankCalled = ({ tanks }: Turn, name: string): Tank | undefined =>
  tanks.find((tank) => tank.name.toLowerCase() === name.trim().toLowerCase());

/** What was said about one tank says nothing about the next. */
function leaveTank(turn: Turn): void {
  const { dialogue } = turn;
  dialogue.known = {};
  delete dialogue.earlier;
  dialogue.answerLeft = true;
  const asksForTank = Object.values(openTopic(turn)?.inputs ?? {}).some(({ profile }) => profile !== undefined);
  if (!asksForTank) return;
  // Numbers that no page keeps are of the old tank too: how high its water stood, how much of it was covered.
  dialogue.given = {};
  delete dialogue.doubts;
}

const withCurrent = (tanks: readonly Tank[], current: string): Tank[] =>
  tanks.map((tank) => ({ ...tank, current: tank.id === current }));

/** Makes another tank the one that is spoken of. */
export async function makeCurrent(turn: Turn, { id }: Tank): Promise<void> {
  await turn.store.useTank(turn.speaker.id, id);
  turn.tanks = withCurrent(turn.tanks, id);
  leaveTank(turn);
}

/** Starts a tank, which is the current one from now on. @throws StoreProblem `name-taken` */
export async function startTank(turn: Turn, name: string): Promise<Tank> {
  const tank = await startHere(turn, name);
  leaveTank(turn);
  return tank;
}

async function startHere(turn: Turn, name: string): Promise<Tank> {
  const tank = await turn.store.createTank(turn.speaker.id, name, now(turn));
  turn.tanks = withCurrent([...turn.tanks, tank], tank.id);
  return tank;
}

/** Deletes a tank. @returns the tank that became the current one instead, if any */
export async function removeTank(turn: Turn, { id, current }: Tank): Promise<Tank | undefined> {
  await turn.store.removeTank(turn.speaker.id, id);
  turn.tanks = turn.tanks.filter((tank) => tank.id !== id);
  if (!current) return undefined;
  const [next] = turn.tanks;
  if (next) await makeCurrent(turn, next);
  else leaveTank(turn);
  return next;
}

/** The tank that a statement is about: the named one or the current one, where there is one. */
export const tankMeant = (turn: Turn, name: string | undefined): Tank | undefined =>
  name === undefined ? currentTank(turn) : tankCalled(turn, name);

/** The tank that a statement is about: the named one, the current one, or a new one. */
export async function tankFor(turn: Turn, name: string | undefined): Promise<{ tank: Tank; created: boolean }> {
  const found = tankMeant(turn, name);
  if (found) {
    if (!found.current) await makeCurrent(turn, found);
    return { tank: found, created: false };
  }
  // A first tank without a name is the one that was spoken of before it had a page.
  const tank = name === undefined ? await startHere(turn, FIRST_TANK) : await startTank(turn, name);
  return { tank, created: true };
}

/** How much longer or shorter a tank must be than the one that is kept to be another one. */
const OTHER_SIZE = 0.02;
const NEW = /\bnew (?:tank|system|aquarium|reef)\b/;

/** The tank that a statement names; "my new tank" is another one where it has another length than the one that is kept. */
export function tankTold(turn: Turn, folded: string, values: Given): string | undefined {
  const named = tankNamed(folded, turn.tanks);
  const kept = currentTank(turn)?.values['display.length']?.si;
  const said = values['display.length'];
  if (named !== undefined || !NEW.test(folded) || kept === undefined || !said || !('si' in said)) return named;
  return Math.abs(said.si - kept) > OTHER_SIZE * kept ? 'new tank' : undefined;
}

/** Words around the name of a tank that say nothing but that it is meant now. */
const TURNS_TO = new Set(
  'for my the and what about how switch change go back over to use select open now on in please ok okay then same again with lets take tank do it one other set make current is delete remove'.split(
    ' ',
  ),
);
const SWITCHES = /\b(?:switch|change|go|back|use|select|open|make|set)\b/;
const DELETES = /\b(?:delete|remove)\b/;

export interface Named {
  /** The tank, where it is kept; it is the current one from now on. */
  readonly tank?: Tank;
  readonly name: string;
  /** The message says nothing else than what to do with it: ask the last question of it, turn to it, delete it. */
  readonly alone?: 'ask' | 'switch' | 'delete';
}

/** What people call their first tank, which had no name while it was the only one. */
const FIRST_CALLED: readonly string[] = ['main', 'display', 'big', 'bigger', 'large', 'first'];

/** The first tank, where nothing but it is named: "and the display?" */
function firstTankMeant(folded: string, tanks: readonly Tank[]): string | undefined {
  const list = wordsOf(folded).list.map(({ text }) => text);
  const only = list.every((word) => FIRST_CALLED.includes(word) || TURNS_TO.has(word));
  const hasFirst = tanks.length > 1 && tanks.some(({ name }) => name === FIRST_TANK);
  return only && hasFirst && list.some((word) => FIRST_CALLED.includes(word)) ? FIRST_TANK : undefined;
}

/** Makes the tank current that a text names, before it is read: what it says itself is about that tank. */
export async function turnToNamed(turn: Turn, folded: string): Promise<Named | undefined> {
  const name = tankNamed(folded, turn.tanks) ?? firstTankMeant(folded, turn.tanks);
  if (name === undefined) return undefined;
  const tank = tankCalled(turn, name);
  if (tank && !tank.current) await makeCurrent(turn, tank);
  const ofName = new Set([...wordsOf(name.toLowerCase()).list.map(({ text }) => text), ...FIRST_CALLED]);
  const alone = wordsOf(folded).list.every(({ text }) => ofName.has(text) || TURNS_TO.has(text));
  const wish = DELETES.test(folded) ? 'delete' : SWITCHES.test(folded) ? 'switch' : 'ask';
  return { name, ...(tank ? { tank } : {}), ...(alone ? { alone: wish } : {}) };
}

/** A question about a tank that is not kept, while others are: their numbers say nothing about it. */
export function noSuchTank({ speaker, tanks }: Turn, name: string): Reply {
  return notice(speaker, `I know nothing of a “${name}” yet, and other tanks’ numbers say nothing about it.`, {
    body: [
      `Tell me its size, such as “${name.includes("'s ") ? name : `my ${name}`} is 60x45x40 cm”, or give the numbers with the question.`,
      `You have: ${tanks.map((tank) => tank.name).join(', ')}.`,
    ].join('\n'),
    private: true,
  });
}
