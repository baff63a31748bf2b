import { readFileSync, writeFileSync } from 'node:fs';
import { commandList, compose } from '../compose.js';
import { calculationList, calculationNamed } from '../conversation/catalogue.js';
import type { Reply } from '../core/reply.js';
import { keepIn } from '../keep-file.js';
import { listedResults } from '../render/text.js';

const README = 'README.md';

/** The text between `<!-- name -->` and `<!-- /name -->` is written anew. @throws Error when the marks are missing */
function replaced(text: string, name: string, content: string): string {
  const [open, close] = [`<!-- ${name} -->`, `<!-- /${name} -->`];
  const [start, end] = [text.indexOf(open), text.indexOf(close)];
  if (start < 0 || end < start) throw new Error(`${README} has no ${open} … ${close}`);
  return `${text.slice(0, start + open.length)}\n${content}\n${text.slice(end)}`;
}

const between = (text: string, name: string): string =>
  text.slice(text.indexOf(`<!-- ${name} -->`), text.indexOf(`<!-- /${name} -->`));

/** A day in the life of an invented tank; times do not matter to it. */
const CLOCK = { now: () => new Date('2027-03-01T19:00:00-05:00') };

/** What stands before the working: the bottom line, what comes with it, and the results. */
const short = ({ headline, body, results }: Reply): string =>
  [headline, body, ...listedResults({ results }).map(({ name, shown }) => `  ${name}: ${shown}`)]
    .filter(Boolean)
    .join('\n');

/** Says the lines that begin with `> ` again and writes what comes back: the short form, or the whole text. */
async function replayed(block: string, whole: boolean): Promise<string> {
  const lines = block.split('\n').filter((line) => line.startsWith('> '));
  const { brinewright, store } = await compose(':memory:', keepIn('.'));
  const out: string[] = [];
  for (const line of lines) {
    const replies = await brinewright.reply({ id: 'me' }, { say: line.slice(2) }, CLOCK);
    out.push([line, ...replies.map((reply) => (whole ? reply.text : short(reply)))].join('\n'));
  }
  await store.close();
  return ['```text', out.join('\n\n'), '```'].join('\n');
}

const cell = (text: string): string => text.replace(/\|/g, '\\|');

/** Every calculation: its command, the question it answers, and a way to ask it. */
function calculationTable(): string {
  const rows = commandList.flatMap(({ calculations = [] }) =>
    calculations
      .flatMap((id) => calculationNamed(id) ?? [])
      .map(({ slash, question, examples }) => `| \`/${slash}\` | ${cell(question)} | ${cell(examples[0]!)} |`),
  );
  if (rows.length !== calculationList.length) throw new Error('a calculation stands in no command');
  return ['| command | question | for example |', '| --- | --- | --- |', ...rows].join('\n');
}

/** Writes the parts of README that follow from the program. */
export async function writeReadme(): Promise<void> {
  let text = readFileSync(README, 'utf8');
  text = replaced(text, 'session', await replayed(between(text, 'session'), false));
  text = replaced(text, 'answer', await replayed(between(text, 'answer'), true));
  text = replaced(text, 'calculations', calculationTable());
  writeFileSync(README, text);
}
