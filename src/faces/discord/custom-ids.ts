import type { Press } from '../../render/discord.js';
import { LIMITS } from '../../render/limits.js';

/** What a button or a modal of this bot stands for. */
export type CustomId = Press | { readonly verb: 'save-to'; readonly answer: string };

const VERSION = 'v1';
const PRESSES = ['working', 'units', 'save', 'save-to'] as const;
const isPress = (verb: string): verb is (typeof PRESSES)[number] => PRESSES.some((known) => known === verb);

/** @returns undefined when it does not fit into a custom id */
export function customId(id: CustomId): string | undefined {
  const text = id.verb === 'say' ? `${VERSION}:say:${id.member}:${id.say}` : `${VERSION}:${id.verb}:${id.answer}`;
  return [...text].length <= LIMITS.customId ? text : undefined;
}

/** @returns undefined for one of an older version, or of nobody's making */
export function readCustomId(text: string): CustomId | undefined {
  const [version, verb = '', subject = '', ...rest] = text.split(':');
  if (version !== VERSION || subject === '') return undefined;
  if (verb === 'say') return rest.length > 0 ? { verb, member: subject, say: rest.join(':') } : undefined;
  return isPress(verb) ? { verb, answer: [subject, ...rest].join(':') } : undefined;
}
