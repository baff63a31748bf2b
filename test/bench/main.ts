import { cpus, loadavg } from 'node:os';
import { loadingShares, measureColdStart } from './cold-start.js';
import { measureReplies } from './replies.js';
import { measureSaving } from './saving.js';
import { markdown, rate, time } from './table.js';
import { measureUnderstanding } from './understanding.js';

const note = (text: string) => process.stderr.write(`${text}\n`);
const [before] = loadavg();

const cold = measureColdStart();
for (const [part, ms] of loadingShares()) note(`loading ${part}: ${Math.round(ms)} ms`);
const understanding = await measureUnderstanding();
const replies = await measureReplies();
const saving = await measureSaving();

const reading = { name: 'recognizers-text reading a sentence', of: understanding.recognizers };
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
    `understanding ${understanding.sentences} sentences`,
    understanding.ours.aSecond,
    {
      name: 'recognizers-text: number, dimension, temperature, currency, age, date',
      value: understanding.recognizers.aSecond,
    },
    { text: '20 ×', met: (_, ratio) => ratio >= 20 },
  ),
  rate(`understanding ${understanding.sentences} sentences`, understanding.ours.aSecond, {
    name: 'recognizers-text: number, dimension, temperature alone',
    value: understanding.measuresAlone.aSecond,
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
