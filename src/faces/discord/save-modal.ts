import { type APIModalInteractionResponseCallbackData, ComponentType, TextInputStyle } from 'discord.js';
import type { Command } from '../../conversation/command.js';
import type { Speaker } from '../../conversation/ports.js';
import { clipped, LIMITS } from '../../render/limits.js';
import type { Bot } from './bot.js';
import { customId } from './custom-ids.js';

export const TANK_FIELD = 'tank';
const LONGEST_NAME = 60;

/** Asks which tank an answer's numbers go to; the member's present one stands in the field already. */
export async function saveModal(
  bot: Bot,
  speaker: Speaker,
  answer: string,
): Promise<APIModalInteractionResponseCallbackData> {
  const value = clipped((await presentTank(bot, speaker)) ?? '', LONGEST_NAME);
  return {
    custom_id: customId({ verb: 'save-to', answer }) ?? '',
    title: 'Save to my tank',
    components: [
      {
        type: ComponentType.Label,
        label: 'Tank',
        description: clipped(
          'The numbers you gave are kept under this name. A new name makes a new tank.',
          LIMITS.modalDescription,
        ),
        component: {
          type: ComponentType.TextInput,
          custom_id: TANK_FIELD,
          style: TextInputStyle.Short,
          required: false,
          max_length: LONGEST_NAME,
          placeholder: 'your present tank',
          ...(value ? { value } : {}),
        },
      },
    ],
  };
}

/** The first of the names that are suggested where a command asks for a tank. */
async function presentTank({ brinewright, commands, log }: Bot, speaker: Speaker): Promise<string | undefined> {
  const place = commands.flatMap(tankOption)[0];
  if (!place) return undefined;
  try {
    const [name] = await brinewright.complete(speaker, place.path, place.option, '');
    return name;
  } catch (error) {
    log.warn({ err: error }, 'no tank names');
    return undefined;
  }
}

const tankOption = ({ name, actions = [] }: Command): { path: string; option: string }[] =>
  actions.flatMap((action) =>
    action.options
      .filter(({ suggest }) => suggest === 'tank')
      .map((option) => ({ path: `${name} ${action.name}`, option: option.name })),
  );
