import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  ButtonStyle,
  ComponentType,
} from 'discord-api-types/v10';
import type { Action, Reply } from '../core/reply.js';
import { clipped, LIMITS } from './limits.js';

/** What a button under a reply asks for. Choices and answers belong to the member who was asked. */
export type Press =
  | { readonly verb: 'working' | 'units' | 'save'; readonly answer: string }
  | { readonly verb: 'say'; readonly member: string; readonly say: string }
  | { readonly verb: 'answer'; readonly member: string };

/** @returns the custom id of a button, or undefined for a press that has no room in one */
export type IdOf = (press: Press) => string | undefined;

type Button = APIButtonComponentWithCustomId;

const MOST_BUTTONS = 20;

/** The buttons of a reply, each once. A question in a club has one that opens a form, since typing there goes unheard. */
export function buttonsOf(reply: Reply, idOf: IdOf, inClub: boolean): Button[] {
  const buttons = (reply.actions ?? []).flatMap((action) => {
    const press = pressOf(reply, action);
    const style = action.verb === 'say' ? ButtonStyle.Primary : ButtonStyle.Secondary;
    return press ? button(press, action.label, style, idOf) : [];
  });
  const form =
    inClub && reply.asks.length > 0
      ? button({ verb: 'answer', member: reply.member }, 'Answer', ButtonStyle.Primary, idOf)
      : [];
  const all = [...form, ...buttons];
  return all
    .filter(({ custom_id }, i) => all.findIndex((other) => other.custom_id === custom_id) === i)
    .slice(0, MOST_BUTTONS);
}

function button(press: Press, label: string, style: Button['style'], idOf: IdOf): Button[] {
  const custom_id = idOf(press);
  if (custom_id === undefined) return [];
  return [{ type: ComponentType.Button, style, label: clipped(label, LIMITS.buttonLabel), custom_id }];
}

function pressOf({ answerId, member }: Reply, action: Action): Press | undefined {
  if (action.verb === 'say') return { verb: 'say', member, say: action.say };
  return answerId === undefined ? undefined : { verb: action.verb, answer: answerId };
}

export const rowsOf = (buttons: readonly Button[]): APIActionRowComponent<Button>[] =>
  Array.from({ length: Math.ceil(buttons.length / LIMITS.buttonsInRow) }, (_, i) => ({
    type: ComponentType.ActionRow,
    components: buttons.slice(i * LIMITS.buttonsInRow, (i + 1) * LIMITS.buttonsInRow),
  }));
