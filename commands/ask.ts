import type { Command } from '../src/conversation/command.js';
import { notice } from '../src/conversation/replies.js';
import { explanationLines, HOW_I_READ } from '../src/render/explanation.js';

export const askCommand: Command = {
  name: 'ask',
  description: 'Ask in your own words, or tell me about your tank',
  actions: [
    {
      name: 'ask',
      description: 'Ask in your own words, or tell me about your tank',
      options: [
        {
          name: 'question',
          description: 'for example: is 300 W enough for 90 gal at 78 F in a 66 F room',
          required: true,
        },
        { name: 'explain', description: 'also say how the message was read', choices: ['yes', 'no'] },
      ],
      run: async (turn, { question = '', explain = 'no' }) => {
        const replies = await turn.hear(question, /^(?:yes|y|true|on)$/i.test(explain.trim()));
        const read = replies[0]?.read;
        if (!read) return replies;
        const explained = notice(turn.speaker, HOW_I_READ, {
          body: explanationLines(read),
          ...(replies.some((reply) => reply.private) ? { private: true } : {}),
        });
        return [...replies, { ...explained, read }];
      },
    },
  ],
};
