import type { Calculation, ProfileKey } from '../core/calculation.js';
import type { Given, GivenValue } from '../core/outcome.js';
import { systemOf, type UnitRow } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import { METRIC, type Preferences, preferencesFrom } from '../core/show-value.js';
import type { KeepFile } from '../keep-file.js';
import type { Hints } from '../language/readings.js';
import { calculationNamed } from './catalogue.js';
import type { Command } from './command.js';
import { asEarlier, type Dialogue, dialogueFrom } from './dialogue.js';
import { withFed, workedOut } from './feeders.js';
import type { Clock, Speaker, Store, Tank } from './ports.js';
import { fromStored } from './tank-values.js';
import type { Understood } from './understand.js';

/** What the conversation is built from. */
export interface Parts {
  readonly store: Store;
  readonly commands: readonly Command[];
  readonly keepFile: KeepFile;
}

/** One message being answered. */
export interface Turn extends Parts {
  readonly speaker: Speaker;
  readonly clock: Clock;
  readonly dialogue: Dialogue;
  tanks: readonly Tank[];
  /** The member's own units, stored or settled; undefined while nobody knows. */
  readonly preferred: Preferences | undefined;
  /** Where the member's days begin and end, by its IANA name; undefined while nobody knows. */
  zone: string | undefined;
  /** What the replies say beside what was asked: how a day was read. */
  readonly notes: Set<string>;
  /** How the message was read, for the explanation. */
  understood?: Understood;
  /** The member's data were deleted in this turn: nothing is written after it. */
  forgotten?: boolean;
  /** Runs a slash command, as if the member had typed it. */
  readonly command: (text: string) => Promise<Reply[]>;
  /** Answers free text, as if the member had typed it. */
  readonly hear: (text: string, explain?: boolean) => Promise<Reply[]>;
}

/** The two ways into the conversation that a turn may take again. */
export interface Entrances {
  readonly command: (turn: Turn, text: string) => Promise<Reply[]>;
  readonly hear: (turn: Turn, text: string, explain?: boolean) => Promise<Reply[]>;
}

const placeOf = ({ club, channel }: Speaker): string => `${club ?? 'direct'}/${channel ?? ''}`;

export async function startTurn(parts: Parts, speaker: Speaker, clock: Clock, entrances: Entrances): Promise<Turn> {
  const [state, tanks, preferred, zone] = await Promise.all([
    parts.store.dialogue(speaker.id, placeOf(speaker)),
    parts.store.tanks(speaker.id),
    parts.store.preferences(speaker.id),
    parts.store.timeZone(speaker.id),
  ]);
  const turn: Turn = {
    ...parts,
    speaker,
    clock,
    tanks,
    preferred,
    zone: zone ?? clock.zone,
    notes: new Set(),
    dialogue: dialogueFrom(state),
    command: (text) => entrances.command(turn, text),
    hear: (text, explain) => entrances.hear(turn, text, explain),
  };
  return turn;
}

export const endTurn = async (turn: Turn): Promise<void> => {
  if (!turn.forgotten)
    await turn.store.saveDialogue(turn.speaker.id, placeOf(turn.speaker), JSON.stringify(turn.dialogue));
};

/** The member's units so far: those this conversation last used, else their own; undefined while nobody knows. */
const unitsSoFar = ({ dialogue, preferred }: Turn): Preferences | undefined => dialogue.units ?? preferred;

/** The units to answer in: those of the message where it has any, else those so far. */
export const preferencesFor = (turn: Turn, said: readonly UnitRow[]): Preferences =>
  preferencesFrom(said, unitsSoFar(turn) ?? METRIC);

export const hintsFor = (turn: Turn, said: readonly UnitRow[]): Hints => ({
  preferences: unitsSoFar(turn) ?? METRIC,
  settled: unitsSoFar(turn) !== undefined,
  said,
  now: turn.clock.now(),
  zone: zoneOf(turn),
});

/** The zone in which days are counted. */
export const zoneOf = ({ zone }: Turn): string => zone ?? 'UTC';

/** Notes the units of a message: for this conversation, and as the member's own while they have none. */
export async function learnUnits(turn: Turn, said: readonly UnitRow[]): Promise<void> {
  if (!said.some((unit) => systemOf(unit) !== undefined)) return;
  const units = preferencesFor(turn, said);
  turn.dialogue.units = units;
  if (turn.preferred === undefined) await turn.store.savePreferences(turn.speaker.id, units);
}

export const currentTank = ({ tanks }: Turn): Tank | undefined => tanks.find(({ current }) => current);

/** The calculation that the conversation is about. */
export const openTopic = ({ dialogue }: Turn): Calculation | undefined =>
  dialogue.topic === undefined ? undefined : calculationNamed(dialogue.topic);

/** Whether the open question was left with “never mind”, and none was asked since. */
export const isLeft = ({ dialogue: { left, asked, doubts, between } }: Turn): boolean =>
  left === true && asked === undefined && doubts === undefined && between === undefined;

/** Forgets numbers of the tank that were said in this conversation, for the open question and those before it too. */
export function forgetSaid(turn: Turn, keys: readonly string[]): void {
  const { dialogue } = turn;
  const without = (values: Given, keyOf: (id: string) => string | undefined): Given =>
    Object.fromEntries(Object.entries(values).filter(([id]) => !keys.includes(keyOf(id) ?? '')));
  dialogue.known = without(dialogue.known, (key) => key);
  const withoutIn = (topic: string | undefined, given: Given): Given =>
    without(given, (id) => calculationNamed(topic ?? '')?.inputs[id]?.profile);
  dialogue.given = withoutIn(dialogue.topic, dialogue.given);
  if (dialogue.earlier)
    dialogue.earlier = dialogue.earlier.map(({ topic, given }) => ({ topic, given: withoutIn(topic, given) }));
}

/** Takes what a tank's page has from now on for what was said before. */
export function replaceSaid(turn: Turn, values: Given): void {
  const { dialogue } = turn;
  const inputs = openTopic(turn)?.inputs;
  const given = Object.entries(dialogue.given).map(([id, value]) => [id, values[inputs?.[id]?.profile ?? ''] ?? value]);
  forgetSaid(turn, Object.keys(values));
  // An open question about sizes of its own takes none from the page: the new ones must stand with it.
  dialogue.given = asEarlier(Object.fromEntries(given));
}

export const now = ({ clock }: Turn): string => clock.now().toISOString();

/** Numbers that belong to one tank and say nothing about another. */
const SIZE_OF_A_TANK = /^(?:display|sump|rock|sand|stand|overflow)\.|^water\.volume$/;
export const isOfOneTank = (key: ProfileKey): boolean => SIZE_OF_A_TANK.test(key);

/**
 * Everything a calculation can be fed with: what was said for it, then what was said about the tank in this conversation,
 * then the tank's own page, then what another calculation makes of that page. A message that describes another tank keeps
 * the page's sizes out; of alternative inputs only the ones that were begun are filled.
 */
export function gather(turn: Turn, calculation: Calculation, given: Given): Given {
  const keysSaid = Object.entries(calculation.inputs).flatMap(([id, { profile }]) =>
    given[id] && profile ? [profile] : [],
  );
  const another =
    keysSaid.includes('water.volume') || (keysSaid.includes('display.length') && keysSaid.includes('display.width'));
  const begun = calculation.oneOf.filter((ids) => ids.some((id) => given[id]));
  const closed =
    begun.length === 0 ? [] : calculation.oneOf.flat().filter((id) => !begun.some((ids) => ids.includes(id)));
  const all: Record<string, GivenValue> = {};
  const lacking: (readonly [id: string, key: ProfileKey])[] = [];
  for (const [id, { profile }] of Object.entries(calculation.inputs)) {
    const said = given[id];
    const ownSize = profile !== undefined && isOfOneTank(profile);
    const open = profile !== undefined && !(another && ownSize) && !closed.includes(id);
    const value = said ?? (open ? saidOfTank(turn, profile) : undefined);
    if (value) all[id] = value;
    else if (open) lacking.push([id, profile]);
  }
  return withFed(calculation, all, lacking, (key) => workedOut(key, (own) => saidOfTank(turn, own)));
}

/** A number of the tank: said in this conversation, or on its page. */
function saidOfTank(turn: Turn, key: ProfileKey): GivenValue | undefined {
  const stored = currentTank(turn)?.values[key];
  return turn.dialogue.known[key] ?? (stored && fromStored(stored));
}
