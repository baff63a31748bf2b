import { type Condition, lookup, quantity } from '../calculation.js';
import { findPipes, returnPipe } from './pipe.js';
import { rows } from './rows.js';
import { pipeFlowConstants } from './siphon.js';

const pointsGiven: Condition = { given: 'curve_points' };

const LITRES_AN_HOUR = { name: 'flow', unit: 'L/h', range: [0, 100_000] } as const;
const METRES = { name: 'head', unit: 'm', range: [0, 30] } as const;

const curve = {
  name: 'points of the pump curve',
  row: 'point',
  words: ['curve', 'pump curve', 'points', 'chart'],
  ask: 'Which flow does the pump’s chart give at which head?',
  example: '0 L/h at 4.2 m, 3000 L/h at 3 m, 6000 L/h at 0.8 m',
  suggestions: [
    '0 L/h at 4.2 m, 2000 L/h at 3.8 m, 4000 L/h at 2.9 m, 6000 L/h at 1.5 m',
    '1200 gph at 2 ft, 900 gph at 5 ft, 600 gph at 8 ft, 0 gph at 12 ft',
  ],
  needed: false,
  atLeast: 2,
} as const;

/** People write a point as they find it in the chart: "600 gph at 8 ft" or "8 ft: 600 gph". */
const flowFirst = rows({
  ...curve,
  columns: [
    { ...LITRES_AN_HOUR, symbol: 'Q' },
    { ...METRES, symbol: 'H' },
  ],
});
const headFirst = rows({
  ...curve,
  columns: [
    { ...METRES, symbol: 'H' },
    { ...LITRES_AN_HOUR, symbol: 'Q' },
  ],
});

const RISING = 'A pump gives less flow at more head: look at the points of its curve again, one of them rises.';

/** Stretches between the points of a pump curve; below the first point the curve is taken as level, which is cautious. */
export const curvePoints = lookup({
  ...flowFirst,
  pattern: new RegExp(`(?:${flowFirst.pattern!.source})|(?:${headFirst.pattern!.source})`),
  symbols: { Qa_i: 'm^3/s', Ha_i: 'm', Qb_i: 'm^3/s', Hb_i: 'm' },
  read(text, context) {
    const inOrder = flowFirst.read(text, context);
    const points = pointsOf(inOrder);
    const found = points.length < 2 ? pointsOf(headFirst.read(text, context)) : points;
    if (found.length < 2)
      return typeof inOrder === 'string' ? inOrder : `One point is no curve: ${curve.example} would be one.`;
    const sorted = [...found].sort((a, b) => a.Q - b.Q || b.H - a.H);
    if (sorted.some(({ Q, H }, i) => i > 0 && (H > sorted[i - 1]!.H || Q === sorted[i - 1]!.Q))) return RISING;
    const [first] = sorted;
    const whole = first!.Q > 0 ? [{ Q: 0, H: first!.H }, ...sorted] : sorted;
    return {
      reading: sorted.map(({ Q, H }) => `${rounded(Q * PER_CUBIC_METRE_A_SECOND)} L/h at ${rounded(H)} m`).join(', '),
      symbols: Object.fromEntries(
        whole.slice(1).flatMap((to, k) => {
          const from = whole[k]!;
          const i = k + 1;
          return [
            [`Qa_${i}`, { si: from.Q, name: `flow where stretch ${i} of the curve begins` }],
            [`Ha_${i}`, { si: from.H, name: `head where stretch ${i} of the curve begins` }],
            [`Qb_${i}`, { si: to.Q, name: `flow where stretch ${i} of the curve ends` }],
            [`Hb_${i}`, { si: to.H, name: `head where stretch ${i} of the curve ends` }],
          ];
        }),
      ),
    };
  },
});

const PER_CUBIC_METRE_A_SECOND = 3.6e6;
const rounded = (value: number): number => Number(value.toPrecision(4));

function pointsOf(read: ReturnType<typeof flowFirst.read>): { Q: number; H: number }[] {
  const symbols = typeof read === 'string' ? {} : (read.symbols ?? {});
  return Object.keys(symbols).flatMap((symbol) => {
    const [, i] = symbol.match(/^Q_(\d+)$/) ?? [];
    return i === undefined ? [] : [{ Q: symbols[symbol]!.si, H: symbols[`H_${i}`]!.si }];
  });
}

/** The pump by the two ends of its curve, as the label gives them. */
export const pumpEnds = {
  flow_max: quantity('flow', {
    symbol: 'Q_max',
    name: 'maximum flow of the pump (its label)',
    words: [
      'max flow',
      'maximum flow',
      'label',
      'rated',
      'return',
      'pump',
      'return pump',
      'pump is',
      'gph pump',
      'flow max',
      'pump rated',
      'label says',
      'on the label',
      'at zero head',
      'at 0 head',
      'lph pump',
      'l/h pump',
      'gph max',
      'lph max',
      'return says',
      'pump max',
      'l/h max',
      'litres per hour max',
      'liters per hour max',
      'rated for',
      'box says',
      'says on the box',
    ],
    range: [0, 100_000, 'L/h'],
    aboveLow: true,
    usual: [300, 25_000, 'L/h'],
    needed: { not: pointsGiven },
    ask: 'What maximum flow stands on the pump’s label?',
    profile: 'return.pump_flow_max',
  }),
  head_max: quantity('length', {
    symbol: 'H_max',
    name: 'maximum head of the pump',
    words: [
      'max head',
      'maximum head',
      'head max',
      'shutoff head',
      'shut off head',
      'shutoff',
      'max lift',
      'maximum lift',
      'max height',
      'pump',
      'rated',
      'max',
      'hmax',
      'h max',
      'tops out at',
      'tops out',
      'shutoff at',
      'shut off at',
      'ft max',
      'm max',
      'feet max',
      'foot max',
      'max head is',
      'dead head',
      'zero flow at',
      'no flow at',
      'ft max head',
      'm max head',
      'head of the pump',
    ],
    range: [0, 30, 'm'],
    aboveLow: true,
    usual: [1, 12, 'm'],
    units: { metric: 'm', us: 'ft' },
    needed: { not: pointsGiven },
    ask: 'What is the maximum head of the pump, the height at which its flow stops? The label flow alone says little; a few points of its curve are even better.',
    example: '3.5 m or 12 ft, or points: 600 gph at 8 ft, 900 gph at 5 ft',
    profile: 'return.pump_head_max',
    slips: [[30, 1e6, 'That is far above any aquarium pump: check the unit.']],
  }),
  curve_points: curvePoints,
};

/** The line from the pump to the outlet, its bore and fittings apart. */
export const returnLineInputs = {
  static_head: quantity('length', {
    symbol: 'H_s',
    name: 'height from the water in the return chamber to the water in the display',
    words: [
      'static head',
      'static',
      'head height',
      'vertical',
      'height',
      'up to the tank',
      'up',
      'higher',
      'rise',
      'lift',
      'above the sump',
      'above',
      'between the surfaces',
      'of head',
      'ft head',
      'feet head',
      'foot head',
      'm up',
      'ft up',
      'feet up',
      'cm up',
      'in up',
      'go up',
      'goes up',
      'pumps up',
      'pumps it up',
      'has to go up',
      'height difference',
      'difference in height',
      'head height is',
      'in head',
      'm head',
      'cm head',
      'inches of head',
      'm lift',
      'ft lift',
      'of lift',
      'lift of',
      'lifted',
      'vertical rise',
      'basement',
      'm higher',
      'feet of head',
      'm of head',
      'sump to tank',
      'sump to tank is',
      'from sump to tank',
      'from the sump to the tank',
    ],
    range: [0, 15, 'm'],
    usual: [0.4, 3.5, 'm'],
    units: { metric: 'm', us: 'in' },
    ask: 'How high must the water go, from the surface in the return chamber to the surface of the display (or to the nozzle, if it ends above the water)?',
    example: '50 in or 1.3 m',
    profile: 'return.static_head',
    slips: [[15, 1e6, 'That is higher than a house: check the unit.']],
  }),
  pipe_length: quantity('length', {
    symbol: 'L_p',
    name: 'length of the return pipe',
    words: [
      'of pipe',
      'pipe length',
      'pipe run',
      'run',
      'long',
      'through',
      'pipe',
      'pvc',
      'tubing',
      'hose',
      'ft pipe',
      'm pipe',
      'cm pipe',
      'feet of pipe',
      'ft of pipe',
      'm of pipe',
      'cm of pipe',
      'main pipe',
      'riser',
      'plumbing',
      'of tubing',
      'of hose',
      'pipe is',
      'feet pipe',
      'foot pipe',
      'inches of pipe',
      'feet of pvc',
      'ft of pvc',
      'feet of hose',
      'm hose',
      'ft hose',
      'm long',
      'ft long',
      'feet long',
      'pipe length is',
    ],
    range: [0, 60, 'm'],
    usual: [0.3, 10, 'm'],
    units: { metric: 'm', us: 'ft' },
    ask: 'How long is the return pipe altogether?',
    example: '7 ft or 2 m',
    profile: 'return.pipe_length',
  }),
};

export const returnLineConstants = {
  ...pipeFlowConstants,
  /** How far a guess of the fittings may be off. */
  k_low: { value: 0.6, unit: '1', name: 'loss of the fittings, at least, over the guess (our judgement)' },
  k_high: { value: 1.4, unit: '1', name: 'loss of the fittings, at most, over the guess (our judgement)' },
};

export const RETURN_LINE_SOURCES = [
  'height between the two water surfaces plus pipe friction (Darcy-Weisbach, Swamee and Jain 1976) and minor losses',
];

/** Above this water in a pipe is heard; below, it is quiet. Common practice, no source. */
export const QUIET = 'quiet up to 1.5 m/s (5 ft/s), no more than 2.4 m/s (8 ft/s): common practice, no source';

const listed: Condition = { given: 'outlet_sizes' };
const SIZE = '(?:(?:\\d+[ -])?\\d+/\\d+|\\d+(?:\\.\\d+)?)(?:[ -]?(?:inch(?:es)?|in|"|mm))?';
/** A whole number without a unit counts the outlets. */
const SURE_SIZE =
  '(?:(?:half|three[ -]quarters?)[ -]inch|(?:\\d+[ -])?\\d+/\\d+(?:[ -]?(?:inch(?:es)?|in|"))?|\\d+(?:\\.\\d+)?[ -]?(?:inch(?:es)?|in|"|mm))';
const OUTLET_WORD = '(?:outlets?|nozzles?|branch(?:es)?|returns)(?![a-z])';

/** One size: no bore, and no list of several. */
const ALONE = '(?![ -]?(?:inch(?:es)?|in|"|mm)?(?: bore|(?:,|,? and| \\+) \\d))';

/** Outlets that differ: each by its pipe size, or by its bore where no such pipe exists. */
const outletSizes = lookup({
  name: 'sizes of outlets that differ',
  words: ['outlets', 'nozzles', 'branches'],
  ask: 'Which sizes are the outlets?',
  example: 'outlets 3/4 in and 1/2 in',
  needed: false,
  suggestions: ['outlets 3/4 in and 1/2 in', 'outlets 25 mm, 25 mm and 20 mm'],
  symbols: { D_i: 'm' },
  pattern: new RegExp(`${OUTLET_WORD}(?: of|:| are)? ${SIZE}(?:(?:, and|,| and| \\+) ${SIZE})+`),
  read(text) {
    const sizes = [...text.matchAll(new RegExp(SIZE, 'g'))].map(([size]) => size.trim());
    // "3/4 and 1/2 in": the unit behind the last belongs to all.
    const unit = sizes.at(-1)?.match(/[a-z"]+$/)?.[0] ?? 'in';
    const outlets = sizes.map((size) => findPipes(/[a-z"]$/.test(size) ? size : `${size} ${unit}`)[0]);
    if (outlets.length < 2 || outlets.length > 8 || outlets.some((row) => row === undefined))
      return `I can read two to eight outlets by their pipe size: outlets 3/4 in and 1/2 in, or outlets 25 mm and 20 mm.`;
    return {
      reading: outlets.map((row) => row!.name).join(', '),
      symbols: Object.fromEntries(
        outlets.map((row, k) => [`D_${k + 1}`, { si: row!.bore, name: `bore of outlet ${k + 1}` }]),
      ),
      source: outlets[0]!.source,
    };
  },
});

/** The pipe of outlets that are all alike, by its trade name: "two 3/4 in outlets". */
const branchPipe = lookup({
  ...returnPipe,
  name: 'pipe size of each outlet',
  words: ['outlets', 'outlet', 'nozzles', 'nozzle', 'branches', 'branch', 'each', 'pipe', 'pvc'],
  ask: 'Which pipe size is each outlet?',
  example: '3/4 in, or 25 mm',
  profile: 'return.branch_pipe',
  pattern: new RegExp(
    `${SURE_SIZE} (?:pipe |pvc )?${OUTLET_WORD}|(?<=${OUTLET_WORD}(?:,? (?:of|are|is|in|with|each|at))*:? )${SURE_SIZE}(?: (?:pipes?|pvc)(?![a-z]))?${ALONE}|(?<=\\beach (?:has|with|of) .{0,16})${SURE_SIZE} (?:pipe|pvc)(?![a-z])`,
  ),
  read(text, context) {
    const found = returnPipe.read(
      text.replace(new RegExp(`${OUTLET_WORD}(?:,? (?:of|are|is|in|with|each|at))*:?`), 'pipe'),
      context,
    );
    return typeof found === 'string'
      ? found
      : { ...found, inputs: { branch_diameter: found.inputs!.inside_diameter! } };
  },
});

/** What one riser feeds. */
export const outletInputs = {
  outlets: quantity('count', {
    symbol: 'n_o',
    name: 'outlets that are alike',
    words: ['outlets', 'nozzles', 'branches', 'ways', 'outlet', 'returns', 'return outlets', 'return nozzles'],
    range: [1, 8, 'count'],
    usual: [2, 6, 'count'],
    whole: true,
    needed: { not: listed },
    ask: 'Into how many outlets does the return line split?',
    example: '2',
    profile: 'return.outlets',
  }),
  outlet_sizes: outletSizes,
  branch_pipe: branchPipe,
  branch_diameter: quantity('length', {
    symbol: 'D_b',
    name: 'bore of each outlet',
    words: [
      'bore',
      'outlet bore',
      'branch bore',
      'outlets of',
      'mm outlets',
      'mm bore',
      'bore each',
      'of bore each',
      'each bore',
      'inside each',
    ],
    range: [4, 110, 'mm'],
    usual: [8, 60, 'mm'],
    units: { metric: 'mm', us: 'in' },
    needed: { not: listed },
    ask: 'How wide is each outlet inside?',
    example: '3/4 in outlets, or the bore itself: 21 mm bore',
  }),
  branch_length: quantity('length', {
    symbol: 'L_b',
    name: 'pipe from the split to each outlet',
    words: [
      'branch length',
      'each branch',
      'to each outlet',
      'branches of',
      'from the split',
      'after the split',
      'each has',
      'each with',
      'branch is',
      'branches are',
      'per branch',
      'behind the tee',
      'after the tee',
      'from the tee',
    ],
    range: [0, 10, 'm'],
    usual: [0.1, 3, 'm'],
    default: { value: 0.5, unit: 'm', low: 0.1, high: 1.5, why: 'our guess' },
    ask: 'How long is the pipe from the split to each outlet?',
    example: '2 ft or 60 cm',
    profile: 'return.branch_length',
  }),
  branch_loss: quantity('ratio', {
    symbol: 'K_b',
    name: 'loss coefficient of each outlet with its fittings',
    words: ['branch loss', 'outlet loss', 'loss of each outlet', 'branch k'],
    range: [1, 30, '1'],
    default: { value: 3, unit: '1', low: 2, high: 5, why: 'the way through a tee, two elbows and the exit' },
    ask: 'What loss coefficient have the split, the elbows and the outlet of each branch?',
    example: '3',
  }),
};
