import { literal } from '../core/literal.js';
import type { Tank } from './ports.js';
import { currentTank, now, openTopic, type Turn } from './turn.js';

/** What a member's first tank is called until they name it. */
export const FIRST_TANK = 'main tank';

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

const NO_NAME =
  /^(?:tank|sump|heater|pump|drain|light|lamp|pipe|overflow|new|big|large|small|little|own|old|main|current|reef|display|home|whole|first|glass|saltwater|salt ?water|acrylic|custom|next|dream|rectangular|empty|full|fish)$/;

/** "my frag tank is …": a tank of that name. Ordinary adjectives are no names. */
export function tankNamed(folded: string, tanks: readonly Tank[]): string | undefined {
  const known = tanks.find(
    ({ name }) => name !== FIRST_TANK && new RegExp(`(?<![a-z])${literal(name.toLowerCase())}(?![a-z])`).test(folded),
  );
  if (known) return known.name;
  const called = folded.match(
    /(?:tank|system) (?:called|named) "?([a-z0-9][a-z0-9 '-]{0,28}?)"?(?= is| has|[,.:;]|$)/,
  )?.[1];
  if (called) return called.trim();
  const other = folded.match(
    /\b(?:also (?:have|got)|another|second|other) (?:a |an )?([a-z][a-z-]{1,20})(?: tank)?\b/,
  )?.[1];
  if (other && /\b(?:also|another|second)\b/.test(folded) && !NO_NAME.test(other)) return `${other} tank`;
  const named = folded.match(/\bmy ([a-z][a-z-]{1,20}(?: [a-z][a-z-]{1,20})?) tank\b/)?.[1];
  if (!named || named.split(' ').every((word) => NO_NAME.test(word) || /^\d/.test(word))) return undefined;
  return `${named
    .split(' ')
    .filter((word) => !NO_NAME.test(word))
    .join(' ')} tank`;
}

/** Makes the tank current that a text names, before it is read: what it says itself is about that tank. */
export async function turnToNamed(turn: Turn, folded: string): Promise<void> {
  const name = tankNamed(folded, turn.tanks);
  const tank = name === undefined ? undefined : tankCalled(turn, name);
  if (tank && !tank.current) await makeCurrent(turn, tank);
}
