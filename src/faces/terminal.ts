import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import wrapAnsi from 'wrap-ansi';
import type { Brinewright, Clock } from '../conversation/ports.js';
import type { Reply } from '../core/reply.js';
import { briefText } from '../render/text.js';

export interface TerminalWorld {
  readonly brinewright: Brinewright;
  readonly input: Readable;
  readonly output: Writable & { readonly isTTY?: boolean; readonly columns?: number };
  readonly clock: Clock;
  readonly member: string;
  readonly colour: boolean;
  /** Earlier lines, newest first, and where new ones go. */
  readonly history: readonly string[];
  readonly keepHistory: (lines: readonly string[]) => void;
  readonly completions: readonly string[];
}

const GREETING = [
  'Brinewright works out a reef tank build from your own numbers and shows every step.',
  'Tell me about your tank, or ask. /help lists everything, ctrl-C leaves.',
];
const TRIES = [
  'it’s 150x60x55 cm, 12 mm glass, water sits 4 cm below the rim',
  'is 300 W enough for 90 gal at 78F in a 66F room',
  'how much salt for 100 L at 35 ppt',
];

const PAINT: Record<string, string> = {
  bold: '\u001b[1m',
  red: '\u001b[31m',
  yellow: '\u001b[33m',
  dim: '\u001b[2m',
  cyan: '\u001b[36m',
  off: '\u001b[0m',
};

function painter(colour: boolean): (style: string, text: string) => string {
  return (style, text) => (colour ? `${PAINT[style]}${text}${PAINT.off}` : text);
}

/** Headline bold, dangers red, cautions yellow, sources dim; the words are the same without colour. */
export function paintReply(reply: Reply, colour: boolean): string {
  const paint = painter(colour);
  return briefText(reply)
    .split('\n')
    .map((line) => {
      if (line === reply.headline) return paint(reply.kind === 'question' ? 'cyan' : 'bold', line);
      if (line.startsWith('STOP: ')) return paint('red', line);
      if (line.startsWith('Caution: ')) return paint('yellow', line);
      if (line.startsWith('Note: ') || line.startsWith('Sources: ')) return paint('dim', line);
      return line === 'Working' ? paint('bold', line) : line;
    })
    .join('\n');
}

/** Lines broken between words; what is set in stays set in. */
function wrapped(text: string, columns: number): string {
  const lines = text.split('\n').flatMap((line) => {
    const indent = line.match(/^ */)![0];
    const width = Math.max(20, columns - indent.length);
    return wrapAnsi(line.slice(indent.length), width)
      .split('\n')
      .map((part) => indent + part);
  });
  return lines.join('\n');
}

/** The chat in the terminal. Resolves when the member leaves (ctrl-C, ctrl-D, or "exit"). */
export async function terminalChat(world: TerminalWorld): Promise<void> {
  const { brinewright, input, output, clock, member, colour } = world;
  const paint = painter(colour);
  const print = (text: string) =>
    output.write(`${output.columns === undefined ? text : wrapped(text, output.columns)}\n`);
  for (const line of GREETING) print(line);
  print(`Try: ${TRIES.map((line) => paint('cyan', `“${line}”`)).join('\n     ')}`);
  const complete = (line: string): [string[], string] => {
    const fitting = world.completions.filter((entry) => entry.startsWith(line));
    return [line.startsWith('/') ? fitting : [], line];
  };
  const lines = createInterface({
    input,
    output,
    prompt: '\n> ',
    terminal: output.isTTY === true,
    completer: complete,
    history: [...world.history],
    historySize: 500,
    removeHistoryDuplicates: true,
  });
  let entered = [...world.history];
  lines.on('history', (history) => {
    entered = history;
  });
  lines.on('SIGINT', () => {
    print('');
    lines.close();
  });
  lines.prompt();
  for await (const line of lines) {
    const say = line.trim();
    if (/^\/?(?:exit|quit|bye)$/i.test(say)) break;
    if (say !== '')
      for (const reply of await brinewright.reply({ id: member }, { say }, clock))
        print(`\n${paintReply(reply, colour)}`);
    lines.prompt();
  }
  lines.close();
  world.keepHistory(entered);
  print('Goodbye. What you told me is kept for next time.');
}
