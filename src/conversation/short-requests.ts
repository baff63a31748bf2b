import { questionFor } from '../core/answer.js';
import type { Reply } from '../core/reply.js';
import type { Intent } from './intents.js';
import { reworked, workingOf } from './press.js';
import { makeReply, notice, saying } from './replies.js';
import { takeBack } from './statement.js';
import { openTopic, type Turn } from './turn.js';

/** Answers a short request that is no calculation. */
export async function onIntent(turn: Turn, intent: Intent): Promise<Reply[]> {
  const { speaker, dialogue } = turn;
  switch (intent) {
    case 'help':
      return turn.command('/help');
    case 'tank':
      return turn.command('/tank show');
    case 'tanks':
      return turn.command('/tank list');
    case 'greeting':
      return [
        notice(speaker, 'Hello. Tell me about your tank, or ask me something about building it.', {
          actions: [saying('What can I ask?', '/help')],
        }),
      ];
    case 'thanks':
      return [notice(speaker, 'You are welcome.')];
    case 'never-mind':
      delete dialogue.asked;
      delete dialogue.doubts;
      delete dialogue.between;
      delete dialogue.choosing;
      delete dialogue.next;
      return [notice(speaker, 'Fine, I leave it. What you told me so far is kept.')];
    case 'forget':
      return [await takeBack(turn)];
    case 'working':
      return [await workingOf(turn, dialogue.answer)];
    case 'unsure':
      return [unsure(turn)];
    default:
      return [await reworked(turn, dialogue.answer, intent)];
  }
}

function unsure(turn: Turn): Reply {
  const open = openTopic(turn);
  const input = open?.inputs[turn.dialogue.asked ?? ''];
  if (!open || !input)
    return notice(turn.speaker, 'Ask me about a number of your build and I say what I need for it.', {
      actions: [saying('What can I ask?', '/help')],
    });
  return makeReply(
    turn.speaker,
    'question',
    `I can’t guess the ${input.name} fairly, so measure it or read it off the label, and come back: what you told me is kept.`,
    {
      calculation: open.id,
      body: questionFor(open, turn.dialogue.asked!),
      asks: [turn.dialogue.asked!],
    },
  );
}
