import fittingLosses from '../../../data/fitting-losses.json' with { type: 'json' };
import pipeSizes from '../../../data/pipe-sizes.json' with { type: 'json' };
import { type LookupInput, lookup, quantity } from '../calculation.js';
import { EXIT, type FittingRow, FLUSH_ENTRANCE, findFitting, type PipeSize, partClosed } from './fitting-words.js';

const MILLI = 1e-3;

interface PipeRow {
  readonly name: string;
  readonly nominal: string;
  readonly bore: number;
  readonly source: string;
}

const pipes: readonly PipeRow[] = [
  ...pipeSizes.us.map((row) => ({
    name: `${row.nominal} schedule ${row.schedule}`,
    nominal: row.nominal,
    bore: row.bore_average_mm * MILLI,
    source: pipeSizes.source_us,
  })),
  ...pipeSizes.metric.map((row) => ({
    name: `${row.outside_diameter_mm} mm ${row.series}`,
    nominal: `${row.outside_diameter_mm} mm`,
    bore: row.bore_mm * MILLI,
    source: pipeSizes.source_metric,
  })),
];

const simplified = (text: string): string =>
  text
    .toLowerCase()
    .replace(/½/g, ' 1/2')
    .replace(/¾/g, ' 3/4')
    .replace(/¼/g, ' 1/4')
    .replace(/(\d)\.5\s*(?=in|"|inch|sch|$)/g, '$1-1/2 ')
    .replace(/(\d)\.25\s*(?=in|"|inch|sch|$)/g, '$1-1/4 ')
    .replace(/\b0?\.75/g, '3/4')
    .replace(/\b0?\.5\b/g, '1/2')
    .replace(/\b(?:(?:an?|one|1) )?inch and an? (half|quarter)\b/g, '1 and a $1 inch')
    .replace(/three[- ]quarters?/g, '3/4')
    .replace(/\bquarter\b/g, '1/4')
    .replace(/\bhalf\b/g, '1/2')
    .replace(/(?:\b|(?<=\d))(inches|inch)\b|"|″/g, ' in')
    .replace(/\b(one)\b/g, '1')
    .replace(/\b(two)\b/g, '2')
    .replace(/(\d) (\d\/\d)/g, '$1-$2')
    .replace(/(\d)\s*and (?:a )?(\d\/\d)/g, '$1-$2')
    .replace(/\bsch(edule)?\.?\s*/g, 'schedule ')
    .replace(
      /\b(pipes?|pvc|lines?|drains?|tube|a|an|is|of|size|dia|diameter|bore|stand ?pipes?|drainpipes?|down ?pipes?|siphon|plumbing|emergency|bulkhead|returns?|riser|stack|tubing|hose|full|open|ended|top|vertical|main|dry|rigid|overflow)\b/g,
      ' ',
    )
    .replace(/(\d)\s*mm/g, '$1 mm')
    .replace(/\s+/g, ' ')
    .trim();

/** Finds a pipe by its trade name: "1 1/2 in", "1-1/2 schedule 80", "40 mm", "40 mm PN 16". @returns rows that fit, likeliest first */
export function findPipes(text: string): readonly PipeRow[] {
  const wanted = simplified(text);
  const size =
    wanted.match(/^(\d+-\d\/\d|\d\/\d|\d+)(?=\s*in\b|\s+schedule|$)/)?.[1] ??
    wanted.match(/(\d+-\d\/\d|\d\/\d|\d+)\s*in\b/)?.[1];
  const schedule = wanted.match(/schedule (\d+)/)?.[1];
  if (size && !/\bmm\b/.test(wanted)) {
    const rows = pipes.filter((row) => row.nominal === `${size} in`);
    return schedule ? rows.filter((row) => row.name.endsWith(`schedule ${schedule}`)) : rows;
  }
  const millimetres = wanted.match(/(\d+(?:\.\d+)?) mm/)?.[1];
  if (!millimetres) return [];
  const rows = pipes.filter((row) => row.nominal === `${Number(millimetres)} mm`);
  const series = wanted.match(/pn\s*(\d+)/)?.[1];
  if (series) return rows.filter((row) => row.name.includes(`PN ${series}`));
  return [...rows].sort((a, b) => Number(b.name.includes('PN 16')) - Number(a.name.includes('PN 16')));
}

/**
 * A size with its schedule or pressure class, or with what it is a size of, before or behind it: `1 1/2" pvc`, `40 mm full
 * siphon drain`, `pipe 32 mm`. A bare whole number is no pipe: "2 drains".
 */
const PIPE_IN_TEXT = (() => {
  const fraction = '(?:(?:\\d+[ -])?\\d+/\\d+|(?:one|two|1|2) and an? (?:half|quarter)|half|three[ -]quarters?)';
  const spoken = '(?:(?:an?|one|1) )?inch and an? (?:half|quarter)(?![a-z])';
  const unit = '[ -]?(?:inch(?:es)?|in|"|mm)';
  const rating = '(?:sch(?:edule)?\\.?\\s*(?:40|80)|pn\\s*\\d+)';
  const kind =
    '(?:(?:full|open|ended|top|vertical|main|emergency|siphon|dry|rigid|return|overflow|pvc|fall|suction) )*';
  const thing =
    '(?:too (?:thin|small|narrow)|intake|inlet|pvc|(?:down ?|drain)?pipes?|drains?|stand ?pipes?|siphon|line|plumbing|emergency|bulkhead|riser|stack|tubing|hose|return (?:line|pipe))(?![a-z])';
  const whole = '(?:\\d+(?:\\.\\d+)?|(?<![a-z])(?:one|two))';
  const before = '(?:(?:drain|stand ?)?pipe|pvc|drain|siphon|plumbing|riser|tubing|hose|return line|bulkhead|intake)';
  // "6 ft of 1 inch": what a length of pipe is of.
  const lengthOf = '(?:ft|feet|foot|in|inch|inches|cm|m|metres?|meters?) of ';
  // "The drain 2 in below the rim", "the pipe 40 in long": a place, a length.
  const measures =
    '(?!\\s*(?:long|drop|down|below|under|above|over|from|of|to|up|off|high|tall|deep|water|x|by)(?![a-z]))';
  return new RegExp(
    `(?:${spoken}|${fraction}(?:${unit})?|${whole}${unit})\\s*(?:${rating}|${kind}${thing})|${whole}\\s*${rating}|(?:use|with an?|to an?|same with) (?:${fraction}|${whole})${unit}(?=\\s*(?:$|[.?!,]|instead))|(?<=\\b(?:${before}:? (?:(?:is|of|size|dia|diameter):? )*(?:an? )?|${lengthOf}))(?:${fraction}|${whole})${unit}(?![a-z])${measures}|(?<=\\b${before}: )${whole}${unit}(?![a-z]| (?:long|drop|x)(?![a-z:]))`,
  );
})();

/** A pipe by its trade name. Without a schedule or a pressure class the common one is taken: schedule 40, PN 16. */
export const pipe = lookup({
  name: 'pipe size',
  words: ['pipe', 'pvc', 'plumbing', 'schedule', 'drain', 'drains', 'standpipe'],
  ask: 'Which pipe is it?',
  example: '1 in schedule 40, or 40 mm PN 16',
  needed: false,
  profile: 'drain.pipe',
  suggestions: pipes.map(({ name }) => name),
  pattern: PIPE_IN_TEXT,
  read(text) {
    const [row] = findPipes(text);
    if (!row)
      return `“${text}” is not a pipe in the table: try 1 in schedule 40, 1-1/2 in, or 40 mm PN 16, or give the measured bore.`;
    return { reading: row.name, inputs: { inside_diameter: row.bore }, source: row.source };
  },
});

export const insideDiameter = quantity('length', {
  symbol: 'D',
  name: 'pipe bore',
  words: [
    'bore',
    'inside diameter',
    'id',
    'inner diameter',
    'inside',
    'inner',
    'mm inside',
    'in inside',
    'inside dia',
    'inner dia',
    'internal diameter',
    'bore is',
    'mm bore',
    'in bore',
    'inch bore',
    'mm id',
    'mm inner',
  ],
  range: [8, 110, 'mm'],
  usual: [8, 110, 'mm'],
  units: { metric: 'mm', us: 'in' },
  ask: 'Which pipe is it?',
  example: '1 in schedule 40, 40 mm PN 16, or the bore itself: 34 mm bore',
});

const sizes = Object.keys(fittingLosses.fully_turbulent_factor);
/** The loss of a fitting goes down slowly with size; a metric pipe takes the nearest inch size. */
function nearestSize(pipeText: string | undefined): PipeSize {
  const [row] = pipeText === undefined ? [] : findPipes(pipeText);
  const bore = row?.bore ?? 0.026;
  const inches = pipes.filter(({ name }) => name.endsWith('schedule 40'));
  const nearest = inches.reduce((a, b) => (Math.abs(b.bore - bore) < Math.abs(a.bore - bore) ? b : a));
  return (sizes.includes(nearest.nominal) ? nearest.nominal : '1 in') as PipeSize;
}

const lossOf = (row: FittingRow, size: PipeSize): number => (typeof row.K === 'number' ? row.K : row.K[size]);

const COUNT = '(?:\\d+|no|zero|a|an|one|two|three|four|five|six)\\s*x?\\s+';
const PART_WAY = '(?:(?:half|part(?:ly)?|partially|mostly|nearly)[- ](?:closed|open|shut) )?';
/** Names that mean a fitting even without a count before them. */
const PLAIN_NAME =
  '(?:90|45|180)(?:°|[- ]degrees?)? (?:elbows?|(?:return |u-?)?bends?)|return bends?|u-?bends?|(?:gate|ball|check|globe|union ball) valves?';
const COUNTED_NAME =
  '90s?|45s?|elbows?|ells?|bends?|sweeps?|valves?|unions?|couplings?|(?:side outlet )?tees?|strainers?|bulkheads?';
/** As a list of parts has it: "elbows: 3". */
const LISTED = '(?<![a-z])(?:elbows|bends|valves|unions|tees): ?\\d+(?![\\d./"])';
const FITTING_IN_TEXT = new RegExp(
  `(?:(?<![\\d./])${COUNT}${PART_WAY}(?:${PLAIN_NAME}|${COUNTED_NAME})|(?<![a-z\\d./])${PART_WAY}(?:${PLAIN_NAME})|${LISTED})(?![a-z])`,
);

/** Ends that a list of fittings counts even when nobody names them. */
type Ends = readonly FittingRow[];

/** An empty list, as people answer with it. */
const NONE = /^\s*(?:none|nothing|no|no fittings|zero|0)(?: at all)?[.!\s]*$/;

/** Reads a list of fittings to numbered symbols for a sum. @param always the ends of that kind of line */
const readFittings =
  (always: Ends): LookupInput['read'] =>
  (text, context) => {
    const size = nearestSize(context.pipe);
    const rows = new Map<FittingRow, number>();
    for (const { count, text: word } of NONE.test(text) ? [] : splitList(text)) {
      if (partClosed(word)) return PART_CLOSED;
      const row = findFitting(word);
      if (!row) return `“${word}” is not a fitting in the table: try 2 elbows, 1 gate valve, 1 union, 1 tee.`;
      if (count === 0) continue;
      rows.set(row, isEntrance(row) || isExit(row) ? 1 : (rows.get(row) ?? 0) + count);
    }
    const listed = [...rows.keys()];
    const counted = [
      ...(always.includes(FLUSH_ENTRANCE) && !listed.some(isEntrance) ? [[FLUSH_ENTRANCE, 1] as const] : []),
      ...rows,
      ...(listed.some(isExit) ? [] : [[EXIT, 1] as const]),
    ];
    const symbols: Record<string, { si: number; name: string; said?: boolean }> = {};
    const reading: string[] = [];
    counted.forEach(([row, count], index) => {
      const i = index + 1;
      const name = row.fitting === EXIT.fitting ? 'exit' : row.fitting.replace(/_/g, ' ');
      symbols[`n_${i}`] = { si: count, name: `number of: ${name}`, said: rows.has(row) };
      symbols[`K_${i}`] = { si: lossOf(row, size), name: `loss coefficient: ${name}` };
      reading.push(`${count} × ${name} (${lossOf(row, size)})`);
    });
    return {
      reading: reading.join(', '),
      symbols,
      source: `loss coefficients at the ${size} size: Crane TP-410 and, where it has none, common practice (see data/fitting-losses.json)`,
    };
  };

/** A list of fittings, summed to a loss coefficient. A drain counts its entrance and exit even when nobody lists them. */
export const fittings = lookup({
  name: 'fittings',
  words: ['fittings', 'elbow', 'elbows', 'valve', 'bends', 'drain', 'drains'],
  ask: 'Which fittings are on the line?',
  profile: 'drain.fittings',
  example: '2 elbows, gate valve, union',
  needed: false,
  suggestions: [
    '2 elbows, gate valve',
    '3 elbows, ball valve, union',
    '2 45s, gate valve',
    '1 elbow',
    '4 elbows, gate valve, strainer',
  ],
  symbols: { n_i: '1', K_i: '1' },
  many: true,
  pattern: FITTING_IN_TEXT,
  read: readFittings([FLUSH_ENTRANCE, EXIT]),
});

/** The same on a return line. What the pump loses at its own mouth is in its curve, so only the outlet is counted. */
export const returnFittings = lookup({
  ...fittings,
  name: 'fittings on the return line',
  words: ['fittings', 'elbow', 'elbows', 'valve', 'bends', 'return', 'return line'],
  ask: 'Which fittings are on the return line?',
  profile: 'return.fittings',
  example: '3 elbows, ball valve, union',
  read: readFittings([EXIT]),
});

/** The return pipe by its trade name. */
export const returnPipe = lookup({
  ...pipe,
  name: 'return pipe size',
  words: ['return pipe', 'return line', 'return', 'riser', 'pipe', 'pvc', 'plumbing', 'schedule'],
  ask: 'Which pipe is the return line?',
  example: '1 in schedule 40, or 32 mm PN 16',
  profile: 'return.pipe',
});

const PART_CLOSED =
  'A part-closed valve has no fixed loss: leave it out of the list, or give the loss coefficient of the whole line.';

const isEntrance = (row: FittingRow): boolean => row.fitting.startsWith('entrance') || row.fitting === 'bulkhead_flush';
const isExit = (row: FittingRow): boolean => row === EXIT;

const COUNT_WORDS: Record<string, number> = {
  no: 0,
  zero: 0,
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};

/** “90 elbow” is one elbow of 90 degrees, not ninety of them. */
const ANGLE_FIRST = /^(?:45|90|180)\s*(?:°|-?\s*deg|(?:return|elbow|ell|bend|u-?bend|sweep|long|standard)\b)/;

function splitList(text: string): { count: number; text: string }[] {
  return text
    .toLowerCase()
    .split(/,|;|\+|\band\b|&/)
    .map((part) => part.trim())
    .filter(Boolean)
    .map((part) => {
      if (ANGLE_FIRST.test(part)) return { count: 1, text: part };
      const listed = part.match(/^([a-z ]+): ?(\d+)$/);
      if (listed) return { count: Number(listed[2]), text: listed[1]! };
      const match = part.match(/^(\d+|no|zero|a|an|one|two|three|four|five|six)\s*[x×]?\s+(.*)$/);
      return match ? { count: COUNT_WORDS[match[1]!] ?? Number(match[1]), text: match[2]! } : { count: 1, text: part };
    });
}

/** The loss coefficient itself: from the fittings when they are listed, else asked for. */
export const lossCoefficient = quantity('ratio', {
  symbol: 'K',
  name: 'loss coefficient of the fittings',
  words: ['loss coefficient', 'sum k', 'k factor', 'k'],
  range: [0.5, 30, '1'],
  ask: 'Which fittings are on the line (entrance and exit are counted for you)?',
  example: '2 elbows and a gate valve',
  default: { formula: 'sum_i(n_i*K_i)' },
});

/** The same of the return line, which has no entrance. */
export const returnLoss = quantity('ratio', {
  ...lossCoefficient,
  ask: 'Which fittings are on the return line (its outlet is counted for you)?',
  example: '3 elbows, ball valve, union',
});
