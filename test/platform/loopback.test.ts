import { ChannelType, type ForumChannel, MessageFlags, type TextChannel } from 'discord.js';
import { expect, test } from 'vitest';
import { buttonsOf, textOf } from './api.js';
import { connected } from './library-client.js';

test('logs in, sees its clubs and channels, and reads back its commands', async () => {
  const { client, discord } = await connected(
    {},
    {
      clubs: [
        { name: 'a', channels: ['one', 'two'] },
        { name: 'b', channels: ['three'] },
      ],
    },
  );
  expect(client.guilds.cache.map(({ name }) => name)).toEqual(['a', 'b']);
  expect(client.channels.cache.size).toBe(3);
  const commands = await client.application!.commands.fetch();
  expect(commands.map(({ name }) => name)).toEqual(['echo', 'Read this']);
  expect(discord.registered.puts).toBe(1);
});

test('slash command: options arrive typed, the answer and a file come back', async () => {
  const { discord } = await connected({
    interaction: async (interaction) => {
      if (!interaction.isChatInputCommand()) return;
      const said = `${interaction.options.getString('text')} ${interaction.options.getInteger('count')} ${interaction.guild?.name}`;
      await interaction.reply({ content: said, files: [{ attachment: Buffer.from([0, 255, 1]), name: 'b.bin' }] });
    },
  });
  const got = await discord.slash({ member: 'ada', command: 'echo', options: { text: 'hi', count: 2 } });
  expect(got.original?.content).toBe('hi 2 reef club');
  expect(got.original?.files[0]?.bytes).toEqual(Buffer.from([0, 255, 1]));
  expect(got.acknowledged?.type).toBe(4);
  expect(got.original?.askedBy?.username).toBe('ada');
});

test('deferral, edit and follow-up, the original ephemeral throughout', async () => {
  const { discord } = await connected({
    interaction: async (interaction) => {
      if (!interaction.isChatInputCommand()) return;
      await interaction.deferReply({ flags: MessageFlags.Ephemeral });
      await interaction.editReply({ flags: MessageFlags.IsComponentsV2, components: [{ type: 10, content: 'done' }] });
      await interaction.followUp('and more');
    },
  });
  const got = await discord.slash({ member: 'ada', command: 'echo' });
  await discord.quiet();
  expect(textOf(got.original!)).toBe('done');
  expect(got.original!.flags).toBe(64 + 32_768);
  expect(got.followUps.map(({ content }) => content)).toEqual(['and more']);
  expect(discord.readIn(discord.channelId()).map(textOf)).toEqual(['and more']);
});

test('autocomplete, button, select, modal and message menu', async () => {
  const { discord } = await connected({
    interaction: async (interaction) => {
      if (interaction.isAutocomplete())
        await interaction.respond([{ name: interaction.options.getFocused(), value: 'v' }]);
      else if (interaction.isChatInputCommand())
        await interaction.reply({
          content: 'press',
          components: [
            {
              type: 1,
              components: [
                { type: 2, style: 1, label: 'Go', custom_id: 'go' },
                { type: 2, style: 1, label: 'Ask', custom_id: 'ask' },
              ],
            },
            { type: 1, components: [{ type: 3, custom_id: 'pick', options: [{ label: 'one', value: '1' }] }] },
          ],
        });
      else if (interaction.isButton() && interaction.customId === 'go')
        await interaction.update({ content: 'pressed' });
      else if (interaction.isButton())
        await interaction.showModal({
          custom_id: 'form',
          title: 'Form',
          components: [
            { type: 18, label: 'name', component: { type: 4, custom_id: 'name', style: 1, value: 'shown' } },
          ],
        });
      else if (interaction.isStringSelectMenu()) await interaction.reply(interaction.values.join());
      else if (interaction.isModalSubmit()) await interaction.reply(interaction.fields.getTextInputValue('name'));
      else if (interaction.isMessageContextMenuCommand())
        await interaction.reply(`read: ${interaction.targetMessage.content}`);
    },
  });
  const choices = await discord.autocomplete({
    member: 'ada',
    command: 'echo',
    options: { text: '1 in' },
    typing: 'text',
  });
  expect(choices).toEqual([{ name: '1 in', value: 'v' }]);
  const { original: message } = await discord.slash({ member: 'ada', command: 'echo' });
  expect(buttonsOf(message!).map(({ label }) => label)).toEqual(['Go', 'Ask']);
  const picked = await discord.select({ member: 'bo', message: message!, customId: 'pick', values: ['1'] });
  expect(picked.original?.content).toBe('1');
  const opened = await discord.button({ member: 'ada', message: message!, label: 'Ask' });
  expect((await discord.modal({ member: 'ada', opened })).original?.content).toBe('shown');
  expect((await discord.modal({ member: 'ada', opened, fields: { name: 'mine' } })).original?.content).toBe('mine');
  await discord.button({ member: 'ada', message: message!, label: 'Go' });
  expect(message!.content).toBe('pressed');
  const target = discord.post({ member: 'bo', text: 'six feet long' });
  const read = await discord.contextMenu({ member: 'ada', command: 'Read this', target });
  expect(read.original?.content).toBe('read: six feet long');
});

test('only a mention and a direct message show their text', async () => {
  const seen: string[] = [];
  const { discord } = await connected({
    message: async (message) => {
      seen.push(message.content.replace(/<@\d+>/, '@bot'));
      if (message.content) await message.reply({ content: 'heard', allowedMentions: { repliedUser: false } });
    },
  });
  discord.post({ member: 'ada', text: 'between us' });
  const answer = await discord.mention({ member: 'ada', text: 'hello' });
  expect(answer).toMatchObject({ content: 'heard', pings: [] });
  expect((await discord.directMessage({ member: 'ada', text: 'in private' })).content).toBe('heard');
  expect(seen).toEqual(['', '@bot hello', 'in private']);
});

test('threads from a message, a forum post, a private thread; an archived thread takes no edit', async () => {
  const { discord, client } = await connected(
    {},
    { clubs: [{ name: 'c', channels: ['help', { name: 'plans', kind: 'forum' }] }] },
  );
  const help = client.channels.cache.get(discord.channelId('help')) as TextChannel;
  const message = await help.send('plan');
  const thread = await message.startThread({ name: 'review' });
  await expect(message.startThread({ name: 'again' })).rejects.toMatchObject({ code: 160_004 });
  const posted = await thread.send('first remark');
  const forum = client.channels.cache.get(discord.channelId('plans')) as ForumChannel;
  const post = await forum.threads.create({ name: 'my tank', message: { content: 'the plan' } });
  expect(discord.readIn(post.id).map(textOf)).toEqual(['the plan']);
  expect((await help.threads.create({ name: 'quiet', type: ChannelType.PrivateThread })).type).toBe(
    ChannelType.PrivateThread,
  );
  await thread.setArchived(true);
  await expect(posted.edit('later')).rejects.toMatchObject({ code: 50_083 });
});
