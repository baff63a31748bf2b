import type { Command } from '../src/conversation/command.js';
import { makeReply, notice } from '../src/conversation/replies.js';

export const mydataCommand: Command = {
  name: 'mydata',
  description: 'See, take away or delete what is kept about you',
  actions: [
    {
      name: 'show',
      description: 'everything that is kept about you, as a file',
      options: [],
      private: true,
      run: async (turn) => {
        const data = await turn.store.exportMember(turn.speaker.id);
        const path = await turn.keepFile('my-brinewright-data.json', `${JSON.stringify(data, null, 2)}\n`);
        const counts = Object.entries(data).flatMap(([kind, rows]) =>
          Array.isArray(rows) ? [`${kind}: ${rows.length}`] : [],
        );
        return [
          notice(turn.speaker, 'This is all that is kept about you.', {
            body: counts.join('\n'),
            files: [path],
            private: true,
          }),
        ];
      },
    },
    {
      name: 'delete',
      description: 'delete everything that is kept about you, for good',
      options: [{ name: 'confirm', description: 'write delete to confirm', required: true }],
      private: true,
      run: async (turn, { confirm = '' }) => {
        if (confirm.trim().toLowerCase() !== 'delete') {
          return [
            makeReply(
              turn.speaker,
              'refusal',
              'Nothing was deleted: write /mydata delete confirm:delete to delete all of it for good.',
              { private: true },
            ),
          ];
        }
        const rows = await turn.store.forgetMember(turn.speaker.id);
        turn.forgotten = true;
        return [
          notice(turn.speaker, `Deleted: ${rows} ${rows === 1 ? 'entry' : 'entries'} about you. Nothing is left.`, {
            private: true,
          }),
        ];
      },
    },
  ],
};
