import { type InteractionReplyOptions, MessageFlags, type RepliableInteraction } from 'discord.js';
import type { DiscordMessage } from '../../render/discord.js';
import { attached } from './send.js';

/** Discord waits 3 s for the first sign of life; this leaves room for a busy moment and the way there. */
const DEFER_AFTER = 1200;

/** The answers to one interaction, in order; the first of them within the time Discord gives. */
export interface Acknowledgement {
  readonly send: (message: DiscordMessage) => Promise<void>;
  /** Takes back the sign that an answer is coming, when there is none. */
  readonly drop: () => Promise<void>;
  /** Milliseconds since the interaction came. */
  readonly elapsed: () => number;
}

/**
 * Starts the clock of an interaction: when no answer is there in time, it is put off visibly. Whether the answer will be
 * the member's alone is fixed at that moment, so it is chosen beforehand.
 */
export function acknowledge(
  interaction: RepliableInteraction,
  ephemeral: boolean,
  deferAfter = DEFER_AFTER,
): Acknowledgement {
  const arrived = performance.now();
  let deferral: Promise<unknown> | undefined;
  const timer = setTimeout(() => {
    deferral = interaction.deferReply(ephemeral ? { flags: MessageFlags.Ephemeral } : {});
    deferral.catch(() => undefined);
  }, deferAfter);

  async function send(message: DiscordMessage): Promise<void> {
    clearTimeout(timer);
    await deferral;
    const alone = ephemeral || message.private;
    if (!interaction.deferred && !interaction.replied) return void (await interaction.reply(replyOf(message, alone)));
    if (interaction.replied) return void (await interaction.followUp(replyOf(message, alone)));
    if (alone === ephemeral) return void (await interaction.editReply(attached(message)));
    await interaction.deleteReply();
    await interaction.followUp(replyOf(message, alone));
  }

  return {
    send,
    async drop() {
      clearTimeout(timer);
      await deferral;
      if (interaction.replied) return;
      if (!interaction.deferred) await interaction.deferReply({ flags: MessageFlags.Ephemeral });
      await interaction.deleteReply();
    },
    elapsed: () => Math.round(performance.now() - arrived),
  };
}

const replyOf = (message: DiscordMessage, ephemeral: boolean): InteractionReplyOptions => ({
  ...attached(message),
  flags: ephemeral ? [message.flags, MessageFlags.Ephemeral] : message.flags,
});
