/** Mentions, custom emoji and time stamps: signs of the chat platform, full of digits that nobody said. */
export const SIGNS = /<(?:@[!&]?|#)\d+>|<a?:\w+:\d+>|<t:-?\d+(?::\w)?>|<\/[^:>]+:\d+>/g;

/** A message with nothing where its signs stood, and everything else in its place. */
export const withoutSigns = (text: string): string => text.replace(SIGNS, (sign) => ' '.repeat(sign.length));
