import { literal } from '../core/literal.js';
import type { Tank } from './ports.js';
import { currentTank, now, type Turn } from './turn.js';

/** What a member's first tank is called until they name it. */
export const FIRST_TANK = 'main tank';

/** The tank that a statement is about: the named one, the current one, or a new one. */
export async function tankFor(turn: Turn, name: string | undefined): Promise<{ tank: Tank; created: boolean }> {
  const wanted = name?.toLowerCase();
  const found =
    wanted === undefined ? currentTank(turn) : turn.tanks.find((tank) => tank.name.toLowerCase() === wanted);
  if (found) {
    if (!found.current) await turn.store.useTank(turn.speaker.id, found.id);
    return { tank: found, created: false };
  }
  return { tank: await turn.store.createTank(turn.speaker.id, name ?? FIRST_TANK, now(turn)), created: true };
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
