import { MessageFlags, Routes, type TextChannel } from 'discord.js';
import { expect, test } from 'vitest';
import { codeOf, connected } from './library-client.js';

test.each([
  ['content of 2,001 characters', { content: 'x'.repeat(2001) }, 50_035],
  [
    'six rows',
    {
      components: Array.from({ length: 6 }, (_, i) => ({
        type: 1 as const,
        components: [{ type: 2 as const, style: 1 as const, label: 'b', custom_id: `${i}` }],
      })),
    },
    50_035,
  ],
  [
    'a custom id of 101',
    {
      components: [
        {
          type: 1 as const,
          components: [{ type: 2 as const, style: 1 as const, label: 'b', custom_id: 'x'.repeat(101) }],
        },
      ],
    },
    50_035,
  ],
  ['components without their flag', { components: [{ type: 10 as const, content: 'x' }] }, 50_035],
  [
    'content beside components',
    { content: 'x', flags: MessageFlags.IsComponentsV2 as const, components: [{ type: 10 as const, content: 'x' }] },
    50_035,
  ],
  [
    '4,001 characters in components',
    { flags: MessageFlags.IsComponentsV2 as const, components: [{ type: 10 as const, content: 'x'.repeat(4001) }] },
    50_035,
  ],
  [
    '41 components',
    {
      flags: MessageFlags.IsComponentsV2 as const,
      components: Array.from({ length: 41 }, () => ({ type: 10 as const, content: 'x' })),
    },
    50_035,
  ],
  ['an embed description of 4,097', { embeds: [{ description: 'x'.repeat(4097) }] }, 50_035],
  [
    '6,001 characters of embeds',
    { embeds: [{ description: 'x'.repeat(4000) }, { description: 'x'.repeat(2001) }] },
    50_035,
  ],
  ['nothing at all', { content: '' }, 50_006],
])('refuses %s', async (_, body, code) => {
  const { discord, client } = await connected();
  const help = client.channels.cache.get(discord.channelId()) as TextChannel;
  await expect(help.send(body as never)).rejects.toMatchObject({ code });
});

test('refuses a modal of six fields and a list of 26 choices', async () => {
  const { discord, problems } = await connected(
    {
      interaction: async (interaction) => {
        const field = (i: number) => ({ type: 1, components: [{ type: 4, custom_id: `${i}`, label: 'x', style: 1 }] });
        if (interaction.isAutocomplete())
          await interaction.respond(Array.from({ length: 26 }, (_, i) => ({ name: `${i}`, value: `${i}` })));
        else if (interaction.isChatInputCommand())
          await interaction.showModal({
            custom_id: 'm',
            title: 't',
            components: Array.from({ length: 6 }, (_, i) => field(i)),
          } as never);
      },
    },
    { acknowledgeWithin: 200 },
  );
  await expect(
    discord.autocomplete({ member: 'a', command: 'echo', options: { text: '' }, typing: 'text' }),
  ).rejects.toThrow('no choices');
  expect((await discord.slash({ member: 'a', command: 'echo' })).failed).toBe(true);
  expect(problems.map(codeOf)).toEqual([50_035, 50_035]);
});

test('a second callback, one that is too late, and an edit before the first are refused', async () => {
  const { discord, problems, client } = await connected(
    {
      interaction: async (interaction) => {
        if (!interaction.isChatInputCommand()) return;
        const answer = () =>
          client.rest.post(Routes.interactionCallback(interaction.id, interaction.token), {
            body: { type: 4, data: { content: 'x' } },
            auth: false,
          });
        const edit = client.rest.patch(Routes.webhookMessage(discord.applicationId, interaction.token), {
          body: { content: 'x' },
          auth: false,
        });
        await edit.catch((error: unknown) => problems.push(error));
        if (interaction.options.getString('text') === 'late') await new Promise((resolve) => setTimeout(resolve, 250));
        await answer();
        await answer();
      },
    },
    { acknowledgeWithin: 200 },
  );
  await discord.slash({ member: 'a', command: 'echo' });
  await discord.quiet();
  expect((await discord.slash({ member: 'a', command: 'echo', options: { text: 'late' } })).failed).toBe(true);
  await discord.quiet(120);
  expect(problems.map(codeOf)).toEqual([10_015, 40_060, 10_015, 10_062]);
});

test('a deferral carries no flag but ephemeral', async () => {
  const { discord, problems } = await connected(
    {
      interaction: async (interaction) =>
        interaction.isCommand() && interaction.deferReply({ flags: MessageFlags.IsComponentsV2 as never }),
    },
    { acknowledgeWithin: 100 },
  );
  expect((await discord.slash({ member: 'a', command: 'echo' })).failed).toBe(true);
  expect(problems.map(codeOf)).toEqual([50_035]);
});
