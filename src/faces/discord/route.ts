import {
  type AutocompleteInteraction,
  type ButtonInteraction,
  type APIModalInteractionResponseCallbackData as Form,
  type Interaction,
  MessageFlags,
  type ModalSubmitInteraction,
  type RepliableInteraction,
} from 'discord.js';
import type { Command } from '../../conversation/command.js';
import type { Message } from '../../conversation/ports.js';
import { MEASURE_COMMAND } from '../../render/command-json.js';
import { unescaped } from '../../render/escape.js';
import { LIMITS, lengthOf } from '../../render/limits.js';
import { acknowledge } from './acknowledge.js';
import { type Bot, failed, sentence } from './bot.js';
import { readCustomId } from './custom-ids.js';
import { logIncident } from './errors.js';
import { answerForm, FIELD, saveForm } from './forms.js';
import { commandPath, commandText, plainWords, speakerOf } from './heard.js';
import { deliver } from './send.js';

const OLD_BUTTON =
  'That button is from an earlier time and no longer does anything. Ask again, and the new answer has fresh ones.';
const NOT_YOURS =
  'That is for the member who was asked to answer. Ask for yourself with a slash command or by mentioning me.';

/** Turns each kind of interaction into a message of the conversation, and its replies into the answer. */
export async function onInteraction(bot: Bot, interaction: Interaction): Promise<void> {
  if (interaction.isAutocomplete()) return suggest(bot, interaction);
  if (interaction.isChatInputCommand()) {
    const alone = isPrivate(bot.commands, commandPath(interaction));
    return answer(bot, interaction, alone, { say: commandText(interaction) });
  }
  if (interaction.isMessageContextMenuCommand() && interaction.commandName === MEASURE_COMMAND)
    return answer(bot, interaction, true, { measure: plainWords(interaction.targetMessage.content) });
  if (interaction.isButton()) return pressed(bot, interaction);
  if (interaction.isModalSubmit()) return submitted(bot, interaction);
  if (interaction.isRepliable()) return tell(bot, interaction, OLD_BUTTON);
}

async function answer(bot: Bot, interaction: RepliableInteraction, alone: boolean, message: Message): Promise<void> {
  const { send, drop, elapsed } = acknowledge(interaction, alone, bot.deferAfter);
  const speaker = speakerOf(interaction);
  try {
    await bot.queue.run(speaker.id, async () => {
      const replies = await bot.brinewright.reply(speaker, message, bot.clock);
      if (replies.length === 0) await drop();
      else await deliver(replies, send, interaction.inGuild(), bot.log);
    });
  } catch (error) {
    const what = 'say' in message ? (message.say.split(' ')[0] ?? '') : Object.keys(message)[0]!;
    await failed(bot, error, { what, elapsed: elapsed() }, send);
  }
}

async function tell(bot: Bot, interaction: RepliableInteraction, text: string): Promise<void> {
  const { send, elapsed } = acknowledge(interaction, true, bot.deferAfter);
  try {
    await send(sentence(text));
  } catch (error) {
    await failed(bot, error, { what: 'a notice', elapsed: elapsed() }, send);
  }
}

/** What a press shows is for the one who pressed: anyone in a channel can, and the channel need not read it each time. */
async function pressed(bot: Bot, interaction: ButtonInteraction): Promise<void> {
  const id = readCustomId(interaction.customId);
  switch (id?.verb) {
    case 'save':
      return open(bot, interaction, saveForm(bot, speakerOf(interaction), id.answer));
    case 'answer': {
      if (id.member !== interaction.user.id) return tell(bot, interaction, NOT_YOURS);
      const [question = ''] = interaction.message.content.split('\n');
      return open(bot, interaction, answerForm(id.member, unescaped(question)));
    }
    case 'working':
    case 'units':
      return answer(bot, interaction, interaction.inGuild(), { press: id.verb, answer: id.answer });
    case 'say': {
      if (id.member !== interaction.user.id) return tell(bot, interaction, NOT_YOURS);
      return answer(bot, interaction, interaction.message.flags.has(MessageFlags.Ephemeral), { say: id.say });
    }
    default:
      return tell(bot, interaction, OLD_BUTTON);
  }
}

/** A form must be the very first answer to a press. */
async function open(bot: Bot, interaction: ButtonInteraction, form: Form | Promise<Form>): Promise<void> {
  try {
    await interaction.showModal(await form);
  } catch (error) {
    await failed(bot, error, { what: 'a form', elapsed: 0 }, (message) =>
      interaction.reply({ content: message.content ?? '', flags: MessageFlags.Ephemeral }),
    );
  }
}

async function submitted(bot: Bot, interaction: ModalSubmitInteraction): Promise<void> {
  const id = readCustomId(interaction.customId);
  if (id?.verb !== 'save-to' && id?.verb !== 'answered') return tell(bot, interaction, OLD_BUTTON);
  const text = interaction.fields.getTextInputValue(FIELD).trim();
  if (id.verb === 'save-to')
    return answer(bot, interaction, interaction.inGuild(), {
      press: 'save',
      answer: id.answer,
      ...(text ? { tank: text } : {}),
    });
  return answer(bot, interaction, interaction.message?.flags.has(MessageFlags.Ephemeral) ?? false, { say: text });
}

async function suggest({ brinewright, log }: Bot, interaction: AutocompleteInteraction): Promise<void> {
  try {
    const { name, value } = interaction.options.getFocused(true);
    const path = [interaction.commandName, interaction.options.getSubcommand(false)].filter(Boolean).join(' ');
    const found = await brinewright.complete(speakerOf(interaction), path, name, value);
    const fitting = found
      .filter((text) => text !== '' && lengthOf(text) <= LIMITS.choiceValue)
      .slice(0, LIMITS.choices);
    await interaction.respond(fitting.map((text) => ({ name: text, value: text })));
  } catch (error) {
    logIncident(log, error, 'suggestions');
    await interaction.respond([]).catch(() => undefined);
  }
}

/** Whether an action's answer is the member's alone. */
const isPrivate = (commands: readonly Command[], path: string): boolean => {
  const [name, action = name] = path.split(' ');
  const found = commands.find((command) => command.name === name)?.actions?.find((entry) => entry.name === action);
  return found?.private ?? false;
};
