/** A number as people write it, found at one place of a text. */
export interface NumberFound {
  readonly value: number;
  readonly end: number;
  /** Written in words; such a number is not followed by a unit letter without a space. */
  readonly word?: boolean;
  readonly other?: OtherValue;
}

/** Another way to read the digits: `1.200` is as likely 1200; `1,200` is 1.2 only where 1200 cannot be. */
export interface OtherValue {
  readonly value: number;
  readonly asLikely: boolean;
}

/** What a sticky pattern matches at one place. */
export const at = (pattern: RegExp, text: string, start: number): RegExpExecArray | undefined => {
  pattern.lastIndex = start;
  return pattern.exec(text) ?? undefined;
};

export const isDigit = (character: string | undefined): boolean =>
  character !== undefined && character >= '0' && character <= '9';

export const SMALL: Readonly<Record<string, number>> = Object.fromEntries([
  ...'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, value) => [word, value]),
  ...'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ').map((word, i) => [word, 20 + 10 * i]),
  // As often misspelt as not.
  ['fourty', 40],
  ['ninty', 90],
]);

export const SCALES: Readonly<Record<string, number>> = {
  hundred: 100,
  thousand: 1000,
  million: 1e6,
  billion: 1e9,
  trillion: 1e12,
};

const SHARES: Readonly<Record<string, number>> = {
  half: 1 / 2,
  halve: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  fourth: 1 / 4,
  fifth: 1 / 5,
  sixth: 1 / 6,
  eighth: 1 / 8,
  tenth: 1 / 10,
  sixteenth: 1 / 16,
};
/** "A fifth tank" is an ordinal; "a half" and "a third" are shares before they are that. */
const WITH_ARTICLE = 'half|third|quarter|eighth';
const COUNTS = 'one|two|three|four|five|six|seven|nine|eleven|thirteen|fifteen';
const SHARE = `(?:an?[ -](${WITH_ARTICLE})|(${COUNTS})[ -](${Object.keys(SHARES).join('|')})s?|(half|quarter))(?![a-z])`;

const ONE_SHARE = new RegExp(SHARE, 'y');
const AND_SHARE = new RegExp(`\\s+(?:and|&)\\s+(?:${SHARE})`, 'y');

function shareOf(match: RegExpExecArray | undefined, pattern: RegExp): NumberFound | undefined {
  if (!match) return undefined;
  const [, single, count, several, alone] = match;
  const value = several === undefined ? SHARES[(single ?? alone)!]! : SMALL[count!]! * SHARES[several]!;
  return { value, end: pattern.lastIndex };
}

/** "half", "a third", "three quarters". */
export const shareAt = (text: string, start: number): NumberFound | undefined =>
  shareOf(at(ONE_SHARE, text, start), ONE_SHARE);

/** " and a half", " and three quarters": what is added to the number or the unit before it. */
export const andShareAt = (text: string, start: number): NumberFound | undefined =>
  shareOf(at(AND_SHARE, text, start), AND_SHARE);

const TIMES = new RegExp(`[ -](${Object.keys(SCALES).join('|')}|dozen)s?(?![a-z])`, 'y');

/** "Million", "dozen" behind a number. */
export function timesAt(text: string, start: number): NumberFound | undefined {
  const word = at(TIMES, text, start)?.[1];
  return word === undefined ? undefined : { value: SCALES[word] ?? 12, end: TIMES.lastIndex };
}
