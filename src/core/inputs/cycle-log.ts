import { type Lookup, type LookupInput, lookup } from '../calculation.js';
import { toSI, unitNamed } from '../quantity/units.js';
import { MOST_TERMS } from '../sum.js';
import { type Column, rows } from './rows.js';

const DAY: Column = { symbol: 'd', name: 'day', unit: 'day', range: [0, 1000], bare: true };
const DOSE: Column = { symbol: 'u', name: 'dose', unit: 'mg/L', range: [0, 20], bare: true };
const AMMONIA: Column = { symbol: 'a', name: 'ammonia', unit: 'mg/L', range: [0, 50], bare: true };
const NITRITE: Column = { symbol: 'n', name: 'nitrite', unit: 'mg/L', range: [0, 200], bare: true };

const column = (single: Column, spec: { name: string; ask: string; example: string }): LookupInput =>
  rows({ ...spec, row: single.name, columns: [single], suggestions: [spec.example], needed: false });

/** A log as parallel lists: the numbers of one reading stand at the same place in each. */
export const logLists = {
  days: column(DAY, { name: 'days of the readings', ask: 'On which days did you test?', example: '0, 2, 5' }),
  dose_after_reading: column(DOSE, {
    name: 'doses just after each reading, 0 for none',
    ask: 'How much ammonia did you dose after each reading?',
    example: '2, 0, 0',
  }),
  total_ammonia_nitrogen: column(AMMONIA, {
    name: 'total ammonia readings',
    ask: 'What did the ammonia tests read?',
    example: '0, 2, 1.6',
  }),
  nitrite_nitrogen: column(NITRITE, {
    name: 'nitrite readings',
    ask: 'What did the nitrite tests read?',
    example: '0, 0, 0.2',
  }),
};

interface Reading {
  day: number;
  ammonia?: number;
  nitrite?: number;
  dose?: number;
  /** A dose was spoken of and no number followed. */
  unsaid?: boolean;
}

const TOKEN =
  /(?<ammonia>\b(?:total ammonia|ammonia|amm|tan|nh3(?:-n)?|nh4(?:-n)?)\b)|(?<nitrate>\b(?:nitrates?|no3(?:-n)?|ph|temp(?:erature)?|kh|alk(?:alinity)?|salinity)\b)|(?<nitrite>\b(?:nitrites?|no2(?:-n)?)\b)|(?<none>\b(?:no|not|nothing|without)(?: a| any)? dos(?:e|ed|ing)\b|\bdos(?:e|ed) (?:nothing|none)\b)|(?<dose>\b(?:dos(?:e|ed|es|ing)|added)\b)|(?<number>(?<![\w.])(?:\d+(?:\.\d+)?|\.\d+)(?!\s*(?:am|pm|h|hours?|days?)\b)(?![\d.]*\d))/g;

/** One day's words and numbers: a number belongs to the word before it, or else to the one behind. */
function readDay(day: number, text: string): Reading {
  const reading: Reading = { day };
  let word: string | undefined;
  let spoken = '';
  let number: number | undefined;
  const put = (name: string, value: number) => {
    if (name === 'ammonia' || name === 'nitrite' || name === 'dose') reading[name] ??= value;
    word = undefined;
    number = undefined;
  };
  for (const { groups = {} } of text.matchAll(TOKEN)) {
    const [kind, said] = Object.entries(groups).find(([, found]) => found !== undefined)!;
    if (kind === 'number') {
      if (word === undefined) number = Number(said);
      else put(word, Number(said));
    } else if (kind === 'none') put('dose', 0);
    else if (number !== undefined) put(kind, number);
    else {
      word = kind;
      spoken = said!;
    }
  }
  // “Should I dose again?” at the end of a message is no dose.
  return word === 'dose' && reading.dose === undefined && /ed$/.test(spoken) ? { ...reading, unsaid: true } : reading;
}

const EXAMPLE = 'day 0: ammonia 0, nitrite 0, dosed 2; day 2: ammonia 1.8, nitrite 0.1';

const readingText = ({ day, ammonia, nitrite, dose }: Reading): string =>
  [
    `day ${day}: ammonia ${ammonia}`,
    ...(nitrite === undefined ? [] : [`nitrite ${nitrite}`]),
    ...(dose ? [`dosed ${dose}`] : []),
  ].join(', ');

function readLog(text: string, withNitrite: boolean): Lookup | string {
  const [, ...parts] = text.toLowerCase().split(/\bday\s*#?\s*(\d+(?:\.\d+)?)/);
  const days = parts.flatMap((part, i) => (i % 2 === 0 ? [readDay(Number(part), parts[i + 1] ?? '')] : []));
  // "Day 0: dosed 2" is how logs begin: before the first dose there is nothing to read.
  const [first] = days;
  if (first?.dose !== undefined && first.ammonia === undefined && first.nitrite === undefined)
    Object.assign(first, { ammonia: 0, nitrite: 0 });
  const right = `Write each day like this: ${EXAMPLE}.`;
  if (days.length === 0) return `I find no days in that. ${right}`;
  if (days.length > MOST_TERMS) return `I take the last ${MOST_TERMS} readings, and that is ${days.length}.`;
  for (const reading of days) {
    const missing =
      reading.ammonia === undefined ? 'ammonia' : withNitrite && reading.nitrite === undefined ? 'nitrite' : undefined;
    if (missing) return `Day ${reading.day} has no ${missing} reading. ${right}`;
    if (reading.unsaid) return `Day ${reading.day} speaks of a dose but not how much. ${right}`;
    const outside = [
      [DAY, reading.day] as const,
      [AMMONIA, reading.ammonia!] as const,
      [NITRITE, reading.nitrite ?? 0] as const,
      [DOSE, reading.dose ?? 0] as const,
    ].find(([{ range }, value]) => value < range[0] || value > range[1]);
    if (outside)
      return `Day ${reading.day}: ${outside[0].name} ${outside[1]} is outside ${outside[0].range.join(' to ')} ${outside[0].unit}.`;
  }
  const symbols = (single: Column, value: (reading: Reading) => number) =>
    days.map((reading, i) => [
      `${single.symbol}_${i + 1}`,
      { si: toSI(value(reading), unitNamed(single.unit)), name: `${single.name} ${i + 1}`, said: true },
    ]);
  return {
    reading: days.map(readingText).join('; '),
    said: true,
    symbols: Object.fromEntries([
      ...symbols(DAY, ({ day }) => day),
      ...symbols(AMMONIA, ({ ammonia }) => ammonia!),
      ...symbols(DOSE, ({ dose = 0 }) => dose),
      ...(withNitrite ? symbols(NITRITE, ({ nitrite }) => nitrite!) : []),
    ]),
  };
}

/**
 * The log of a fishless cycle in a person's words. It sets the same symbols as the lists: `d_i` days, `u_i` doses, `a_i` total
 * ammonia and, where asked for, `n_i` nitrite.
 */
export const cycleLog = ({ withNitrite }: { withNitrite: boolean }): LookupInput =>
  lookup({
    name: withNitrite ? 'log of ammonia, nitrite and doses' : 'log of ammonia and doses',
    words: ['log', 'my log', 'readings'],
    ask: withNitrite
      ? 'What does your log say: each day with ammonia, nitrite and what you dosed after testing?'
      : 'What does your log say: each day with ammonia, and what you dosed after testing?',
    example: EXAMPLE,
    suggestions: [
      EXAMPLE,
      'day 30: ammonia 0, nitrite 0, dosed 2; day 31: ammonia 0.1, nitrite 0.05, dosed 2; day 32: ammonia 0, nitrite 0',
    ],
    symbols: {
      d_i: 's',
      u_i: 'kg/m^3',
      a_i: 'kg/m^3',
      ...(withNitrite ? { n_i: 'kg/m^3' } : {}),
    },
    pattern: /\bday\s*#?\s*\d.*(?:ammonia|\bamm\b|\btan\b|nh3|nh4|nitrite|no2).*/,
    many: true,
    read: (text) => readLog(text, withNitrite),
  });
