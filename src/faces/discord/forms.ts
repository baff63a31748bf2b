import {
  type APIModalInteractionResponseCallbackData,
  type APITextInputComponent,
  ComponentType,
  TextInputStyle,
} from 'discord.js';
import type { Command } from '../../conversation/command.js';
import type { Speaker } from '../../conversation/ports.js';
import { clipped, LIMITS } from '../../render/limits.js';
import type { Bot } from './bot.js';
import { type CustomId, customId } from './custom-ids.js';

type Form = APIModalInteractionResponseCallbackData;

/** The one field of each form. */
export const FIELD = 'text';
const LONGEST_NAME = 60;
const LONGEST_ANSWER = 400;

const form = (
  id: CustomId,
  title: string,
  label: string,
  description: string,
  input: Partial<APITextInputComponent>,
): Form => ({
  custom_id: customId(id) ?? '',
  title,
  components: [
    {
      type: ComponentType.Label,
      label,
      description: clipped(description, LIMITS.modalDescription),
      component: { type: ComponentType.TextInput, custom_id: FIELD, style: TextInputStyle.Short, ...input },
    },
  ],
});

/** Asks which tank an answer's numbers go to; the member's present one stands in the field already. */
export async function saveForm(bot: Bot, speaker: Speaker, answer: string): Promise<Form> {
  const value = clipped((await presentTank(bot, speaker)) ?? '', LONGEST_NAME);
  const about = 'The numbers you gave are kept under this name. A new name makes a new tank.';
  return form({ verb: 'save-to', answer }, 'Save to my tank', 'Tank', about, {
    required: false,
    max_length: LONGEST_NAME,
    placeholder: 'your present tank',
    ...(value ? { value } : {}),
  });
}

/** A place to type the answer to a question. @param question as it stands in the channel */
export const answerForm = (member: string, question: string): Form =>
  form({ verb: 'answered', member }, 'Your answer', 'Answer', question || 'With its unit, as you would say it', {
    required: true,
    max_length: LONGEST_ANSWER,
  });

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
