import type { Reply, ReplyStep } from '../core/reply.js';
import { escaped, fixedWidth } from './escape.js';
import { capital, cautionsOf, type LEVELS, listedResults, usedLines } from './text.js';

const MARKS = { stop: '⛔ **Stop:**', caution: '⚠️ **Caution:**', note: 'ℹ️ Note:' } as const;
const HEARS = '-# Press Answer, reply to this message or mention me: I hear nothing else in this channel.';

/** The bottom line, what is dangerous about it, the results, and the other cautions: what must be seen. */
export function essentials(reply: Reply): string[] {
  const { kind, headline, body = '' } = reply;
  const marked = (level: (typeof LEVELS)[number]) =>
    cautionsOf(reply, level).map((text) => `${MARKS[level]} ${escaped(text)}`);
  const line = escaped(headline);
  return [
    kind === 'answer' ? `### ${line}` : kind === 'question' ? line : `**${line}**`,
    marked('stop').join('\n'),
    escaped(body),
    listedResults(reply)
      .map(({ name, shown }) => `${escaped(capital(name))}: **${escaped(shown)}**`)
      .join('\n'),
    [...marked('caution'), ...marked('note')].join('\n'),
  ];
}

/** Every number that was used, by where it came from, in small print. */
export const used = (reply: Reply): string =>
  usedLines(reply.inputs)
    .map((line) => `-# ${escaped(line)}`)
    .join('\n');

/** Steps and sources, one block each; none while a button stands for them. */
export function working({ actions, steps, sources }: Reply): string[] {
  if (actions?.some(({ verb }) => verb === 'working')) return [];
  return [...steps.map(stepBlock), sources.length > 0 ? `-# Sources: ${escaped(sources.join('; '))}` : ''];
}

const stepBlock = ({ name, symbol, formula, shown }: ReplyStep, i: number): string =>
  [
    `**${i + 1}. ${escaped(capital(name))}**`,
    fixedWidth(`${symbol} = ${formula.replace(/\*/g, '·')}`),
    fixedWidth(shown),
  ].join('\n');

/** How to answer a question where the bot reads only what is addressed to it. */
export const howToAnswer = (reply: Reply, inClub: boolean): string => (inClub && reply.asks.length > 0 ? HEARS : '');
