import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Reply } from '../../src/core/reply.js';
import { customId, readCustomId } from '../../src/faces/discord/custom-ids.js';
import { type DiscordMessage, discordMessages } from '../../src/render/discord.js';
import { buttonsOf, type Component } from '../platform/api.js';
import { answer, reply } from '../platform/replies.js';

const pressable = (message: DiscordMessage) => buttonsOf({ components: message.components as readonly Component[] });

describe('buttons', () => {
  const choices = (count: number): Reply =>
    reply({
      kind: 'question',
      actions: Array.from({ length: count }, (_, i) => ({
        verb: 'say' as const,
        label: `choice ${i}`,
        say: `say ${i % 25}`,
      })),
    });

  test('stand in rows of five, each once, twenty at most', () => {
    const [message] = discordMessages(choices(30), customId, false);
    expect(message!.components.map((row) => (row as { components: unknown[] }).components.length)).toEqual([
      5, 5, 5, 5,
    ]);
    expect(new Set(pressable(message!).map(({ custom_id }) => custom_id)).size).toBe(20);
  });

  test('one that has no room in a custom id, or no row to refer to, is left out', () => {
    const long = reply({ actions: [{ verb: 'say', label: 'long', say: 'x'.repeat(100) }] });
    expect(discordMessages(long, customId, false)[0]!.components).toEqual([]);
    const { answerId: _, ...without } = answer();
    expect(pressable(discordMessages(without, customId, false)[0]!)).toEqual([]);
  });

  test('a custom id reads back as what it was written from', () => {
    const anyId = fc.oneof(
      fc.record({
        verb: fc.constantFrom('working' as const, 'units' as const, 'save' as const, 'save-to' as const),
        answer: fc.string({ minLength: 1 }).filter((text) => !text.startsWith(':')),
      }),
      fc.record({ verb: fc.constant('say' as const), member: fc.stringMatching(/^\d{17,20}$/), say: fc.string() }),
      fc.record({
        verb: fc.constantFrom('answer' as const, 'answered' as const),
        member: fc.stringMatching(/^\d{17,20}$/),
      }),
    );
    fc.assert(
      fc.property(anyId, (id) => {
        const text = customId(id);
        if (text !== undefined) expect(readCustomId(text)).toEqual(id);
      }),
    );
  });
});

test.each([
  ['**bold** _it_ ~~no~~ `code` ||hidden||', '\\*\\*bold\\*\\* \\_it\\_ \\~\\~no\\~\\~ \\`code\\` \\|\\|hidden\\|\\|'],
  ['<@1> <@&2> <#3> <t:1:R>', '\\<@1> \\<@&2> \\<#3> \\<t:1:R>'],
  ['# title\n> quote\n- item', '\\# title\n\\> quote\n\\- item'],
  ['[here](http://x.invalid)', '\\[here\\](http://x.invalid)'],
])('nothing a member typed becomes formatting or a mention: %s', (typed, shown) => {
  const [message] = discordMessages(reply({ kind: 'question', headline: typed }), customId, false);
  expect(message!.content).toBe(shown);
});
