/**
 * Plain text as Discord shows it unchanged: nothing in it becomes formatting, a link under other words, or a mention. A
 * backslash is taken off by Discord before any character that is no letter, digit or space.
 */
export const escaped = (text: string): string =>
  text
    .replace(/[\\*_~`|[\]<]/g, '\\$&')
    .replace(/^(\s*)([#>+-])/gm, '$1\\$2')
    .replace(/@(?=everyone|here)/g, '@\u200b');

/** What an escaped text shows. */
export const unescaped = (text: string): string => text.replace(/\\([^\w\s])/g, '$1').replace(/\u200b/g, '');

/** A line in a fixed-width face, where nothing is read as formatting. */
export const fixedWidth = (text: string): string => `\`${text.replace(/`/g, '’').replace(/\s*\n\s*/g, ' ')}\``;
