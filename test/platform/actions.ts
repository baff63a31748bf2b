import { buttonsOf, everyComponent, type Message, type User } from './api.js';
import type { CommandOption } from './check-commands.js';
import type { Gateway } from './gateway.js';
import type { Choice, Exchange, Interactions } from './interactions.js';
import { channelJson, memberJson, messageJson, userJson } from './payloads.js';
import type { Registered } from './rest.js';
import { type Channel, EVERYTHING, type World } from './world.js';

/** Who does something and where: in the first channel of the first club unless said otherwise. */
export interface Place {
  readonly member: string;
  readonly club?: string;
  readonly channel?: string;
  /** In the direct messages with the bot. */
  readonly direct?: boolean;
}
type Value = string | number | boolean;
export interface SlashCall extends Place {
  readonly command: string;
  readonly subcommand?: string;
  readonly options?: Readonly<Record<string, Value>>;
}

const INTERACTION = { command: 2, component: 3, autocomplete: 4, modal: 5 } as const;
const KIND = { slash: 1, message: 3 } as const;
const OPTION = { subcommand: 1, text: 3 } as const;
const OTHER_WORDS = 'not registered';

/** What members do in front of their screens, each a gateway event and the answers to it. */
export function createActions(world: World, gateway: Gateway, interactions: Interactions, registered: Registered) {
  const whereIs = ({ member, club, channel, direct }: Place): { user: User; at: Channel } => {
    const user = world.member(member);
    return { user, at: direct ? world.directChannel(user) : world.channel(world.club(club), channel) };
  };

  function happen(user: User, at: Channel, type: number, data: object, on?: Message): Promise<Exchange> {
    const exchange = interactions.begin(user, at, on);
    const settled = interactions.settled(exchange);
    const who = at.clubId
      ? {
          guild_id: at.clubId,
          guild: { id: at.clubId, locale: 'en-US', features: [] },
          member: memberJson(user),
          context: 0,
        }
      : { user: userJson(user), context: 1 };
    const event = {
      id: exchange.id,
      token: exchange.token,
      application_id: world.bot.id,
      version: 1,
      type,
      data,
      channel: channelJson(at),
      channel_id: at.id,
      locale: 'en-US',
      app_permissions: String(EVERYTHING & ~at.denied),
      entitlements: [],
      authorizing_integration_owners: at.clubId ? { 0: at.clubId } : { 1: user.id },
      attachment_size_limit: 10_485_760,
      ...who,
      ...(on ? { message: messageJson(on, world) } : {}),
    };
    gateway.dispatch('INTERACTION_CREATE', event, at.clubId);
    return settled;
  }

  /** The command as it is registered, and the declared options at the end of the path: a member can only use what is there. */
  function declared({ command, subcommand }: SlashCall): { id: string; options: readonly CommandOption[] } {
    const found = registered.commands.find(({ name, type = KIND.slash }) => name === command && type === KIND.slash);
    const inside = subcommand ? found?.options?.find(({ name }) => name === subcommand) : found;
    if (!found || !inside) throw new Error(`/${command} ${subcommand ?? ''} is ${OTHER_WORDS}`);
    return { id: found.id, options: inside.options ?? [] };
  }

  function commandData(call: SlashCall, typing?: string): object {
    const { id, options: known } = declared(call);
    const options = Object.entries(call.options ?? {}).map(([name, value]) => {
      const option = known.find((entry) => entry.name === name);
      if (!option) throw new Error(`option ${name} of /${call.command} is ${OTHER_WORDS}`);
      if (option.choices && !option.choices.some((choice) => choice.value === value))
        throw new Error(`${value} is no choice of ${name}`);
      return { name, type: option.type, value, ...(name === typing ? { focused: true } : {}) };
    });
    const path = call.subcommand ? [{ name: call.subcommand, type: OPTION.subcommand, options }] : options;
    return { id, name: call.command, type: KIND.slash, options: path };
  }

  function press(
    place: Place,
    message: Message,
    data: (id: string) => object,
    pick: (id: string, label: string) => boolean,
  ) {
    const { user } = whereIs(place);
    const at = world.channels.get(message.channelId)!;
    const button = [...everyComponent(message.components)]
      .map(([, component]) => component)
      .find(({ custom_id = '', label = '' }) => custom_id !== '' && pick(custom_id, label));
    if (!button || button.disabled)
      throw new Error(`nothing to press among: ${buttonsOf(message).map(({ label }) => label)}`);
    return happen(user, at, INTERACTION.component, data(button.custom_id!), message);
  }

  return {
    slash(call: SlashCall): Promise<Exchange> {
      const { user, at } = whereIs(call);
      return happen(user, at, INTERACTION.command, commandData(call));
    },

    async autocomplete(call: SlashCall & { typing: string }): Promise<readonly Choice[]> {
      const { user, at } = whereIs(call);
      const { choices } = await happen(user, at, INTERACTION.autocomplete, commandData(call, call.typing));
      if (!choices) throw new Error('no choices came');
      return choices;
    },

    /** Presses the button with that label, or with that custom id whether or not it stands there. */
    button(call: Place & { message: Message; label?: string; customId?: string }): Promise<Exchange> {
      const { message, label, customId } = call;
      const data = (custom_id: string) => ({ custom_id, component_type: 2 });
      if (customId !== undefined) {
        const { user } = whereIs(call);
        return happen(user, world.channels.get(message.channelId)!, INTERACTION.component, data(customId), message);
      }
      return press(call, message, data, (_, shown) => shown === label);
    },

    select(call: Place & { message: Message; customId: string; values: readonly string[] }): Promise<Exchange> {
      const data = (custom_id: string) => ({ custom_id, component_type: 3, values: call.values });
      return press(call, call.message, data, (id) => id === call.customId);
    },

    /** Submits the modal that an exchange opened; fields that are left out keep the value they were shown with. */
    modal(call: Place & { opened: Exchange; fields?: Readonly<Record<string, string>> }): Promise<Exchange> {
      const { modal, on, channel } = call.opened;
      if (!modal) throw new Error('no modal was opened');
      const filled = (custom_id: string, shown = '') => ({
        type: 4,
        custom_id,
        value: call.fields?.[custom_id] ?? shown,
      });
      const components = modal.components.map(({ type, component, components: inside = [] }) =>
        component
          ? { type, component: filled(component.custom_id!, component.value) }
          : { type, components: inside.map(({ custom_id, value }) => filled(custom_id!, value)) },
      );
      const data = { custom_id: modal.custom_id, components };
      return happen(world.member(call.member), channel, INTERACTION.modal, data, on);
    },

    contextMenu(call: Place & { command: string; target: Message }): Promise<Exchange> {
      const { user, at } = whereIs(call);
      const found = registered.commands.find(({ name, type }) => name === call.command && type === KIND.message);
      if (!found) throw new Error(`${call.command} is ${OTHER_WORDS}`);
      const resolved = { messages: { [call.target.id]: messageJson(call.target, world) } };
      const data = { id: found.id, name: call.command, type: KIND.message, target_id: call.target.id, resolved };
      return happen(user, at, INTERACTION.command, data);
    },
  };
}
