import type { Command } from '../src/conversation/command.js';

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
      run: async (turn, { question = '', explain }) => {
        const replies = await turn.hear(question, explain === 'yes');
        return explain === 'yes' ? replies.map(withReading) : replies;
      },
    },
  ],
};

function withReading<
  T extends {
    text: string;
    read?: {
      measurements: readonly { text: string; quantity: string; value: number; unit: string; role?: string }[];
      why: readonly string[];
    };
  },
>(reply: T): T {
  if (!reply.read) return reply;
  const measurements = reply.read.measurements.map(
    ({ text, quantity, value, unit, role }) =>
      `“${text}”: ${quantity} ${Number(value.toPrecision(6))} ${unit}${role ? `, taken as ${role}` : ', not used'}`,
  );
  return { ...reply, text: [reply.text, 'How I read that', ...measurements, ...reply.read.why].join('\n') };
}
