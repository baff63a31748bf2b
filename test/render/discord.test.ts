import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Reply } from '../../src/core/reply.js';
import { customId } from '../../src/faces/discord/custom-ids.js';
import { type DiscordMessage, discordMessages, plainMessages } from '../../src/render/discord.js';
import { startTalk } from '../conversation.js';
import { buttonsOf, type Component, type MessageBody, textOf } from '../platform/api.js';
import { checkMessage } from '../platform/check-message.js';
import { answer, reply } from '../platform/replies.js';

const asSent = ({ content, components, flags }: DiscordMessage): MessageBody =>
  ({ content, components, flags }) as MessageBody;
const filesOf = ({ files }: DiscordMessage) =>
  files.map((file) => ({ name: file.name, type: '', bytes: Buffer.from('text' in file ? file.text : '') }));
const read = ({ content = '', components }: DiscordMessage): string =>
  textOf({ content, components: components as readonly Component[] });
const all = (reply: Reply, inClub = false): string => discordMessages(reply, customId, inClub).map(read).join('\n');
const pressable = (message: DiscordMessage) => buttonsOf({ components: message.components as readonly Component[] });

const step = (i: number, length = 40) => ({
  symbol: `s_${i}`,
  name: `step number ${i}`,
  formula: `a*b + ${i}`,
  values: {},
  si: i,
  si_unit: '1',
  shown: `s_${i} = ${'9'.repeat(length)}`,
});

describe('whatever a reply holds, Discord takes it', () => {
  const text = (most: number) =>
    fc.oneof(
      fc.string({ maxLength: most }),
      fc.lorem({ maxCount: 40, mode: 'sentences' }).map((words) => words.slice(0, most)),
      fc.constantFrom('**', '`', '<@1>', '@everyone', '\n\n', '🐠'.repeat(30), 'x'.repeat(most)),
    );
  const shown = fc.record({ name: text(60), shown: text(300) });
  const some = <T>(what: fc.Arbitrary<T>, maxLength: number) => fc.array(what, { maxLength });
  const anyReply = fc.record({
    kind: fc.constantFrom<Reply['kind']>('answer', 'question', 'notice', 'refusal', 'reminder', 'error'),
    headline: text(400).filter((headline) => headline.trim() !== ''),
    body: text(9000),
    inputs: some(shown, 25).map((list) => list.map((entry) => ({ ...answer().inputs[0]!, ...entry }))),
    results: some(shown, 25).map((list) => list.map((entry) => ({ ...answer().results[0]!, ...entry }))),
    steps: fc
      .array(fc.record({ i: fc.nat(99), length: fc.integer({ min: 1, max: 2500 }) }), { maxLength: 30 })
      .map((list) => list.map(({ i, length }) => step(i, length))),
    cautions: some(
      fc.record({ level: fc.constantFrom('stop' as const, 'caution' as const, 'note' as const), text: text(300) }),
      8,
    ),
    sources: some(text(200), 5),
    asks: fc.subarray(['drop']),
    files: some(fc.constantFrom('/tmp/plot.png', 'my plan.md', 'data.json', 'C:\\x\\y.ics'), 1),
    actions: some(
      fc.oneof(
        fc.record({
          verb: fc.constantFrom('working' as const, 'units' as const, 'save' as const),
          label: fc.string({ minLength: 1, maxLength: 90 }).filter((label) => label.trim() !== ''),
        }),
        fc.record({
          verb: fc.constant('say' as const),
          label: fc.constant('choose'),
          say: fc.string({ maxLength: 120 }),
        }),
      ),
      40,
    ),
  });

  test('drawn, and as plain text', () => {
    fc.assert(
      fc.property(anyReply, fc.boolean(), (parts, inClub) => {
        const whole = reply({ ...parts, text: `${parts.headline}\n${parts.body}`, answerId: 'a1' });
        for (const message of [...discordMessages(whole, customId, inClub), ...plainMessages(whole)])
          expect(checkMessage(asSent(message), filesOf(message), true)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a worked answer', () => {
  test('shows the bottom line first, a stop before everything else, then results and cautions', () => {
    const shown = all(
      answer({
        cautions: [
          { level: 'note', text: 'N.' },
          { level: 'caution', text: 'C.' },
          { level: 'stop', text: 'S.' },
        ],
      }),
    );
    const order = [
      '### This drain',
      '⛔ **Stop:** S.',
      'Flow at full siphon: **3,800 L/h**',
      '⚠️ **Caution:** C.',
      'ℹ️ Note: N.',
      '-# You said: drop 30 in.',
    ];
    expect(order.map((part) => shown.indexOf(part))).toEqual(
      order.map((part) => shown.indexOf(part)).sort((a, b) => a - b),
    );
    for (const part of order) expect(shown).toContain(part);
  });

  test('lists the results that the text lists: the ends of a range stand behind its result', async () => {
    const talk = await startTalk();
    const raised = await talk.says('salinity is 33 how much salt to get to 35 in 100 gal');
    expect(raised.results.map(({ id }) => id)).toEqual(expect.arrayContaining(['salt_mass', 'salt_mass_low']));
    const shown = all(raised);
    expect(shown).toMatch(/Salt mix: \*\*.*, likely /);
    expect(shown).not.toMatch(/(?:low|high) end: /);
    await talk.close();
  });

  test('keeps its steps and sources behind the button where there is one', () => {
    expect(all(answer())).not.toMatch(/Bore area|Swamee/);
    expect(all(answer({ actions: [] }))).toMatch(/\*\*1\. Bore area\*\*[\s\S]*-# Sources: Swamee and Jain 1976/);
  });

  test.each([
    ['stop', 0xc0392b],
    ['caution', 0xd68910],
    ['note', 0x2e86ab],
  ] as const)('wears the colour of its gravest caution: %s', (level, colour) => {
    const [message] = discordMessages(
      answer({
        cautions: [
          { level: 'note', text: 'n' },
          { level, text: 't' },
        ],
      }),
      customId,
      false,
    );
    expect(message!.components[0]).toMatchObject({ accent_color: colour });
  });

  test('two messages hold a middling working; no step is divided between them', () => {
    const steps = Array.from({ length: 40 }, (_, i) => step(i, 90));
    const messages = discordMessages(answer({ actions: [], steps }), customId, false);
    expect(messages).toHaveLength(2);
    for (const [i, { shown }] of steps.entries()) {
      const holding = messages.map(read).filter((text) => text.includes(`**${i + 1}. `));
      expect(holding).toHaveLength(1);
      expect(holding[0]).toContain(`\`${shown}\``);
    }
  });

  test.each([
    ['many steps', Array.from({ length: 60 }, (_, i) => step(i, 150))],
    ['a step that no message holds', [step(0, 4100)]],
  ])('%s go into a file with the whole reply; what must be seen stays', (_, steps) => {
    const whole = answer({ actions: [], steps, text: 'THE WHOLE REPLY' });
    const messages = discordMessages(whole, customId, false);
    expect(messages).toHaveLength(1);
    expect(messages[0]!.files).toEqual([{ name: 'drain-siphon.txt', text: 'THE WHOLE REPLY' }]);
    const shown = read(messages[0]!);
    for (const part of [
      'This drain carries',
      '3,800 L/h',
      'Test the drain',
      'You said: drop 30 in.',
      'drain-siphon.txt',
    ])
      expect(shown).toContain(part);
    expect(shown).not.toContain('step number');
  });

  test('shows a picture in a gallery with a description, and any other file as a file', () => {
    const [message] = discordMessages(answer({ files: ['/tmp/x/head curve.png', 'plan.md'] }), customId, false);
    const { components } = message!.components[0] as unknown as { components: Component[] };
    expect(components.find(({ type }) => type === 12)?.items).toEqual([
      { media: { url: 'attachment://head-curve.png' }, description: 'This drain carries 3,800 L/h.' },
    ]);
    expect(components.find(({ type }) => type === 13)?.file).toEqual({ url: 'attachment://plan.md' });
  });
});

describe('short messages', () => {
  test('are plain content, steps and all', () => {
    const [message] = discordMessages(reply({ kind: 'question', headline: 'Which pipe is it?' }), customId, false);
    expect(message).toMatchObject({ content: 'Which pipe is it?', components: [] });
    expect(all(reply({ steps: [step(1)] }))).toContain('**1. Step number 1**');
  });

  test('become drawn ones when they are long, and go into a file beyond two messages', () => {
    const listing = (lines: number) =>
      discordMessages(
        reply({ headline: 'All.', body: 'a line of a list\n'.repeat(lines), text: 'all' }),
        customId,
        false,
      );
    expect(listing(100).map(({ content }) => content !== undefined)).toEqual([true]);
    expect(listing(300).map(({ content }) => content !== undefined)).toEqual([false, false]);
    const [one, ...more] = listing(600);
    expect(more).toEqual([]);
    expect(one!.files).toEqual([{ name: 'notice.txt', text: 'all' }]);
    expect(read(one!)).toBe('**All.**\n\n-# All of it is in notice.txt.');
  });

  test('a question in a club says how to answer it, and has a form for it', () => {
    const question = reply({ kind: 'question', headline: 'Which pipe?', asks: ['pipe'], member: '77' });
    const [message] = discordMessages(question, customId, true);
    expect(read(message!)).toMatch(/^Which pipe\?\n\n-# Press Answer, reply to this message or mention me/);
    expect(pressable(message!).map(({ label, custom_id }) => [label, custom_id])).toEqual([['Answer', 'v1:answer:77']]);
    expect(all(question)).toBe('Which pipe?');
  });

  test('eleven files are two messages', () => {
    const messages = discordMessages(
      reply({ files: Array.from({ length: 11 }, (_, i) => `${i}.txt`) }),
      customId,
      false,
    );
    expect(messages.map(({ files }) => files.length)).toEqual([10, 1]);
  });
});
