import type { Reply } from '../core/reply.js';
import type { Tank } from './ports.js';
import { FIRST_TANK, makeCurrent, tankCalled } from './tank-names.js';
import { isOfOneTank, openTopic, preferencesFor, type Turn } from './turn.js';
import type { Heard } from './understand.js';
import { work } from './work.js';

/** "And for the display?", "same for the frag tank": nothing but a tank is named. */
const AGAIN_FOR =
  /^(?:(?:ok|and|now|then|so|but|also|what about|how about|same(?: again| thing| question)?|do it),? )+(?:for |in |with |on )?(?:the |my |our )?([a-z][a-z' -]*?)(?: (?:tank|one|aquarium))?(?: please)?[?.! ]*$/;
/** What people call their first tank, which had no name while it was the only one. */
const FIRST = /^(?:main|display|big|bigger|large|first)$/;

function tankSpokenOf(turn: Turn, name: string): Tank | undefined {
  const named = tankCalled(turn, name) ?? tankCalled(turn, `${name} tank`);
  if (named || turn.tanks.length < 2) return named;
  if (FIRST.test(name)) return tankCalled(turn, FIRST_TANK);
  const others = turn.tanks.filter(({ current }) => !current);
  return name === 'other' && others.length === 1 ? others[0] : undefined;
}

/**
 * The open question again, for another tank: what was said of the room and of the water stays, what is of a tank is that tank's.
 * @returns undefined when the message says something else
 */
export async function sameForTank(turn: Turn, heard: Heard): Promise<Reply[] | undefined> {
  const open = openTopic(turn);
  const name = heard.mentions.some(({ word }) => !word) ? undefined : heard.text.trim().match(AGAIN_FOR)?.[1];
  const tank = name === undefined ? undefined : tankSpokenOf(turn, name);
  if (!open || !tank) return undefined;
  const stays = Object.entries(turn.dialogue.given).filter(([id]) => {
    const profile = open.inputs[id]?.profile;
    return profile !== undefined && !isOfOneTank(profile);
  });
  if (!tank.current) await makeCurrent(turn, tank);
  turn.notes.add(`This is for your “${tank.name}”.`);
  return [await work(turn, open, Object.fromEntries(stays), preferencesFor(turn, []))];
}
