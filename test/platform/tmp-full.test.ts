import { expect, test } from 'vitest';
import { commandList, compose } from '../../src/compose.js';
import { calculationList } from '../../src/conversation/catalogue.js';
import { commandsJson, commandSize } from '../../src/render/command-json.js';
import { startBot } from './scripted.js';
import { textOf, buttonsOf } from './api.js';
import { mkdtempSync } from 'node:fs';

test('full', async () => {
  for (const c of commandsJson(commandList, calculationList)) console.log(c.name, commandSize(c), (c as any).options?.length);
  const { brinewright, store } = await compose(':memory:', mkdtempSync('/tmp/bw-'));
  const { discord } = await startBot({ settings: { brinewright, commands: commandList, calculations: calculationList } });
  const show = (what: string, m: any) => console.log(`--- ${what} [flags ${m?.flags}]\n${m ? textOf(m) : '(none)'}\n[${m ? buttonsOf(m).map((b) => `${b.label}=${b.custom_id}`).join(' | ') : ''}] files: ${m?.files.map((f: any) => f.name + ':' + f.bytes.length)}`);
  const a = await discord.slash({ member: 'ada', command: 'heater', subcommand: 'size', options: { room_temperature: '64F', heaters: 2 } });
  show('heater size', a.original);
  const b = await discord.mention({ member: 'ada', text: "tank is 150x60x55 cm, 12 mm glass, room at 64F, water 78F, how big a heater" });
  show('mention', b);
  const buttons = buttonsOf(b);
  if (buttons.some(({label}) => label === 'Show the working')) {
    const w = await discord.button({ member: 'bo', message: b, label: 'Show the working' });
    await discord.quiet(); show('working', w.original); for (const f of w.followUps) show('  more', f);
    const u = await discord.button({ member: 'ada', message: b, label: buttons[1]!.label });
    show('units', u.original);
    const s = await discord.button({ member: 'ada', message: b, label: 'Save to my tank' });
    console.log(JSON.stringify(s.modal));
    const done = await discord.modal({ member: 'ada', opened: s, fields: { tank: 'Den' } });
    show('saved', done.original);
    const s2 = await discord.button({ member: 'ada', message: b, label: 'Save to my tank' });
    console.log(JSON.stringify(s2.modal?.components[0]?.component));
  }
  show('tank', (await discord.slash({ member: 'ada', command: 'tank', subcommand: 'show' })).original);
  show('help', (await discord.slash({ member: 'ada', command: 'help' })).original);
  const my = commandList.find((c) => c.name === 'mydata')!;
  show('mydata', (await discord.slash({ member: 'ada', command: 'mydata', subcommand: my.actions![0]!.name })).original);
  const target = discord.post({ member: 'bo', text: 'mine is 6ft x 2ft x 2ft and 35 ppt at 78F' });
  show('measure', (await discord.contextMenu({ member: 'ada', command: 'Work out these measurements', target })).original);
  show('empty', await discord.mention({ member: 'cy', text: '' }));
  show('pipe', await discord.slash({ member: 'cy', command: 'drain', subcommand: 'siphon', options: { pipe: '1 in schedule 40', drop: '30 in', pipe_length: '40 in', fittings: '2 elbows, gate valve', required_flow: '800 gph' } }).then((x) => x.original));
  const problems: string[] = [];
  for (const calc of calculationList) for (const [id, input] of Object.entries(calc.inputs)) if (input.kind === 'choice')
    for (const key of Object.keys(input.options)) {
      const [command, subcommand] = calc.slash.split(' ');
      const r = await discord.slash({ member: 'dee', command: command!, subcommand: subcommand!, options: { [id]: key } });
      const text = textOf(r.original!);
      if (/can’t read|is not|not one of|no option/i.test(text)) problems.push(`${calc.slash} ${id}:${key} -> ${text.slice(0, 120)}`);
    }
  console.log(problems);
  expect(discord.requests.filter(({ status }) => status >= 400)).toEqual([]);
  await store.close();
}, 60_000);
