import type { Reply, ReplyInput, ReplyStep } from '../core/reply.js';

type Unworded = Omit<Reply, 'text'>;

/** The order in which cautions are said. */
export const LEVELS = ['stop', 'caution', 'note'] as const;
const MARK = { stop: 'STOP: ', caution: 'Caution: ', note: 'Note: ' } as const;
const ORIGIN: Record<ReplyInput['from'], string> = {
  message: 'you said',
  earlier: 'you said before',
  profile: 'from your tank',
  default: 'assumed',
  table: 'from tables',
};
/** Values from tables stand with the working. */
const ORIGIN_ORDER: readonly ReplyInput['from'][] = ['message', 'earlier', 'profile', 'default'];

/** The whole reply in plain text: the bottom line, results, what was used and where it came from, the working, cautions, sources. */
export function replyText(reply: Unworded): string {
  const blocks = [
    reply.headline,
    reply.body,
    resultLines(reply).join('\n'),
    usedLines(reply.inputs).join('\n'),
    workingText(reply.steps, reply.inputs),
    cautionLines(reply).join('\n'),
    reply.sources.length > 0 ? `Sources: ${reply.sources.join('; ')}.` : undefined,
  ];
  return blocks.filter((block) => block !== undefined && block !== '').join('\n\n');
}

/** Results to list; the ends of a range that stands behind its result already are left out. */
export const listedResults = ({ results }: Pick<Reply, 'results'>): Reply['results'] =>
  results.filter(({ id }) => {
    const main = results.find((other) => other.id === id.replace(/_(?:low|high)$/, ''));
    return !main || main.id === id || main.low === undefined;
  });

export const resultLines = (reply: Unworded): string[] =>
  listedResults(reply).map(({ name, shown }) => `${capital(name)}: ${shown}`);

export const cautionsOf = ({ cautions }: Pick<Reply, 'cautions'>, level: (typeof LEVELS)[number]): string[] =>
  cautions.filter((entry) => entry.level === level).map(({ text }) => text);

export const cautionLines = (reply: Unworded): string[] =>
  LEVELS.flatMap((level) => cautionsOf(reply, level).map((text) => `${MARK[level]}${text}`));

/** One line for each origin: `You said: tank length 150 cm; tank width 60 cm`. */
export const usedLines = (inputs: readonly ReplyInput[]): string[] => linesFrom(inputs, ORIGIN_ORDER);

function linesFrom(inputs: readonly ReplyInput[], origins: readonly ReplyInput['from'][]): string[] {
  return origins.flatMap((from) => {
    const used = inputs.filter((input) => input.from === from && input.shown !== '');
    return used.length === 0
      ? []
      : [`${capital(ORIGIN[from])}: ${used.map(({ name, shown }) => `${name} ${shown}`).join('; ')}.`];
  });
}

/** Every step, then the values that came from tables. */
export function workingText(steps: readonly ReplyStep[], inputs: readonly ReplyInput[]): string {
  if (steps.length === 0) return '';
  return ['Working', ...steps.map(stepText), ...linesFrom(inputs, ['table'])].join('\n');
}

/** The formula in symbols, then with its numbers. */
export const stepText = ({ name, symbol, formula, shown }: ReplyStep, i: number): string =>
  `${i + 1}. ${capital(name)}\n   ${symbol} = ${formula.replace(/\*/g, '·')}\n   ${shown}`;

/** "a, b or c" */
export const anyOf = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An answer without its working and sources, for where the member can ask for them; every other reply whole. */
export function briefText(reply: Reply): string {
  if (reply.kind !== 'answer') return withFiles(reply);
  const blocks = [
    reply.headline,
    resultLines(reply).join('\n'),
    usedLines(reply.inputs).join('\n'),
    cautionLines(reply).join('\n'),
    `Say “why” for the working, ${reply.steps.length} ${reply.steps.length === 1 ? 'step' : 'steps'}, and its sources.`,
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

/** The text for a face of plain text, and where the files lie. */
export const withFiles = ({ text, files }: Reply): string => [text, ...files.map((path) => `File: ${path}`)].join('\n');
