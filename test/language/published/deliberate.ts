/**
 * Published cases that are read otherwise here, on purpose: every case that a pattern fits is one, and is in fact read
 * otherwise.
 */
export interface Deliberate {
  readonly reason: string;
  readonly like: RegExp;
  /** Only in sets whose names begin so. */
  readonly sets?: string;
}

export const deliberate: readonly Deliberate[] = [
  { reason: 'what a number without a unit is, the question decides', like: /^\s*[-+]?[\d.]+\s*$/, sets: 'time' },
  {
    reason: 'what a number without a unit is, the question decides',
    like: /^\s*[-+]?[\d.]+\s*$/,
    sets: 'humanfriendly',
  },
  {
    reason: 'two bare numbers are two numbers, or a range, and no feet and inches',
    like: /^\s*[-+]?\d(?:[\de-]*\d)?(?: 1\/2|[ -]+\d[\d. /]*)?\s*$/,
    sets: 'footinch',
  },
  { reason: 'a lone inch mark is an inch mark', like: /^1 "$/ },
  {
    reason: 'a dash and a blank begin a list, or take something away',
    like: /^\s*- ?(?:\d|\.\d)(?=.* )/,
    sets: 'footinch',
  },
  { reason: 'a dash and a blank begin a list, or take something away', like: /^- 32 m 1 s$/ },
  { reason: 'digits with a colon are a time of day', like: /:\d/ },
  { reason: 'seconds are whole there', like: /^1\.[39]s$/ },
  { reason: 'a month is the mean one here, of 30.44 days', like: /month|\bmo$/ },
  { reason: 'a year is the mean one here, of 365.25 days', like: /\d ?y\b|years?/, sets: 'to-time' },
  { reason: 'a year is the mean one here, of 365.25 days', like: /year/, sets: 'human-interval' },
  { reason: 'w is watts', like: /\d ?w(?![a-z])/ },
  { reason: 'm is minutes or metres', like: /^12M$/ },
  { reason: 'mon is Monday', like: /\bmons?$/ },
  { reason: 'nothing at a tank lasts so short', like: /\d(?:ns|nsec|nanos|us|usec|millis)$/ },
  { reason: 'two durations, the shorter first, are not added', like: /^hundred and three seconds and/ },
  { reason: 'first and 5th are no amounts', like: /(?:\d(?:st|nd|rd|th)|th|first|second|third)$/, sets: 'words' },
  { reason: 'more than a trillion is no amount of anything here', like: /quintillion/ },
  { reason: 'nobody measures in scores, gross or baker’s dozens', like: /score|gross|baker/ },
  { reason: 'digits and words of one number are mixed', like: /^3 (?:thousand|hundred)/ },
  { reason: 'neither a thousand nor a decimal is written so', like: /^1000,524$/ },
  { reason: 'two words run into one', like: /^fourtytwo$/ },
  { reason: 'thousands stand before millions', like: /^sixty-five thousand sixty-five million/ },
  { reason: 'a number does not begin with its point', like: /^Dot two Dot$/ },
  {
    reason: 'units that no tank is measured in',
    like: /\b(?:km3|ft-us|msk|tsk|krm|kanna|kkp|glas)\b|(?:hm|dam)(?:2|\^2|²)|sq(?:uare)? (?:hm|dam|hectom|dek?am|decam)|pico|\bpm\b|light.year|cubic mile/,
  },
  { reason: 'units that no tank is measured in', like: / (?:R|ac|mW|mm3\/s|[cd]l\/s)$/ },
  { reason: 'gallons are no mass', like: /gal/, sets: 'recognizers-mass' },
  { reason: 'gr is grams before it is grains', like: /^5 gr$/ },
  { reason: 'a slip in the second word of a unit', like: /millimit(?:er|re)/ },
];
