import type { Press } from '../../render/discord-buttons.js';
import { LIMITS } from '../../render/limits.js';

/** What a button or a form of this bot stands for. */
export type CustomId =
  | Press
  | { readonly verb: 'save-to'; readonly answer: string }
  | { readonly verb: 'answered'; readonly member: string };

const VERSION = 'v1';
const ABOUT_ANSWER = ['working', 'units', 'save', 'save-to'] as const;
const ABOUT_MEMBER = ['answer', 'answered'] as const;
const isOf = <T extends string>(verbs: readonly T[], verb: string): verb is T => verbs.some((known) => known === verb);

/** @returns undefined when it does not fit into a custom id */
export function customId(id: CustomId): string | undefined {
  const subject = 'answer' in id ? id.answer : 'say' in id ? `${id.member}:${id.say}` : id.member;
  const text = `${VERSION}:${id.verb}:${subject}`;
  return [...text].length <= LIMITS.customId ? text : undefined;
}

/** @returns undefined for one of an older version, or of nobody's making */
export function readCustomId(text: string): CustomId | undefined {
  const [version, verb = '', subject = '', ...rest] = text.split(':');
  if (version !== VERSION || subject === '') return undefined;
  if (verb === 'say') return rest.length > 0 ? { verb, member: subject, say: rest.join(':') } : undefined;
  if (isOf(ABOUT_MEMBER, verb)) return { verb, member: subject };
  return isOf(ABOUT_ANSWER, verb) ? { verb, answer: [subject, ...rest].join(':') } : undefined;
}
