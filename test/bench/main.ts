import { cpus, loadavg } from 'node:os';
import { loadingShares, measureColdStart } from './cold-start.js';
import { sentences } from './messages.js';
import { measured } from './parts.js';
import { markdown, rate, time } from './table.js';

const note = (text: string) => process.stderr.write(`${text}\n`);
const [before] = loadavg();

const cold = measureColdStart();
for (const [part, ms] of loadingShares()) note(`loading ${part}: ${Math.round(ms)} ms`);
const replies = measured('replies');
const understanding = measured('understanding');
const recognizers = measured('recognizers');
const saving = measured('saving');

const reading = { name: 'recognizers-text reading a sentence', of: recognizers.all };
const rows = [
  rate(`whole replies, ${replies.messages} messages`, replies.pace.aSecond, {
    name: reading.name,
    value: reading.of.aSecond,
  }),
  time('a whole reply, p50', replies.pace.p50, 'ms', { name: reading.name, value: reading.of.p50 }),
  time(
    'a whole reply, p99',
    replies.pace.p99,
    'ms',
    { name: reading.name, value: reading.of.p99 },
    { text: '< 5 ms', met: (value) => value < 5 },
  ),
  rate(
    `understanding ${sentences.length} sentences`,
    understanding.aSecond,
    {
      name: 'recognizers-text: number, dimension, temperature, currency, age, date',
      value: recognizers.all.aSecond,
    },
    { text: '20 ×', met: (_, ratio) => ratio >= 20 },
  ),
  rate(`understanding ${sentences.length} sentences`, understanding.aSecond, {
    name: 'recognizers-text: number, dimension, temperature alone',
    value: recognizers.measures.aSecond,
  }),
  time(
    'cold start of ask, answer printed',
    cold.ask,
    's',
    { name: 'a process that imports discord.js', value: cold.discord },
    { text: '< 0.5 s', met: (value) => value < 0.5 },
  ),
  rate('saving a value of a tank', saving.store, { name: 'better-sqlite3, the same statements', value: saving.bare }),
];

const [after] = loadavg();
const machine = {
  node: process.version,
  cpu: cpus()[0]?.model.trim() ?? 'unknown',
  cores: cpus().length,
  load_before: before!,
  load_after: after!,
};
if (process.argv.includes('--json')) console.log(JSON.stringify({ machine, rows }));
else {
  console.log(markdown(rows));
  console.log(
    `\nNode.js ${machine.node}, ${machine.cores} × ${machine.cpu}, load average ${before!.toFixed(1)} before and ${after!.toFixed(1)} after.`,
  );
}
