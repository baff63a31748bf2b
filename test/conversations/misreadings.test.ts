import { describe, expect, test } from 'vitest';
import type { Reply } from '../../src/core/reply.js';
import { customId } from '../../src/faces/discord/custom-ids.js';
import { discordMessages } from '../../src/render/discord.js';
import { fromOf, inputsOf, startTalk } from '../conversation.js';

const INCH = 0.0254;
const GALLON = 231 * INCH ** 3;
const textOnDiscord = (reply: Reply): string => JSON.stringify(discordMessages(reply, customId, false));
const F = (t: number) => ((t - 32) * 5) / 9 + 273.15;
const C = (t: number) => t + 273.15;

/** Turns of one member, and what the last answer must have taken for what. */
interface Case {
  readonly says: readonly string[];
  readonly calculation: string | null;
  readonly kind?: string;
  readonly inputs?: Readonly<Record<string, number | string>>;
  readonly text?: RegExp;
}

const cases: readonly Case[] = [
  {
    says: ['how much does it weigh full: 473 L, tank 115 kg, 60 kg rock'],
    calculation: 'weight.system',
    inputs: { tank_mass: 115, rock_mass: 60 },
    text: /659 kg/,
  },
  {
    says: ['baking soda to raise from 4 to 5 dKH in 200 L'],
    calculation: 'dosing.mass',
    text: /5\.99 g of sodium bicarbonate/,
  },
  {
    says: ['how many watts does my tank lose to the room? 48x24x24 in, water 78, room 66'],
    calculation: 'heat.loss',
    inputs: { length: 48 * INCH, width: 24 * INCH },
  },
  {
    says: ['how much water evaporates from my 48x24 in, 78 water 70 room 45% humidity'],
    calculation: 'evaporation.rate',
    inputs: { length: 48 * INCH, width: 24 * INCH },
  },
  {
    says: ['how much water evaporates from a 48x24 in when the room is 70, 78 water, 45% humidity'],
    calculation: 'evaporation.rate',
    inputs: { length: 48 * INCH, width: 24 * INCH },
  },
  {
    says: ['my tank is 120x60x60 cm', 'cost of 40 W pump 24 h and 300 W heater 12 h a day at 0.30'],
    calculation: 'cost.running',
    text: /costs 41.64 a month[\s\S]*price of electricity 0.3 per kWh[\s\S]*40 W, 24 h; 300 W, 12 h/,
  },
  { says: ['my tank is 120x60x60 cm', 'alk 8 in ppm'], calculation: 'alkalinity.units', text: /143 ppm|143 mg/ },
  {
    says: ['400 L at 35 ppt, 25 C, 40 L evaporated and replaced with 40 L of salt water at 35'],
    calculation: 'topoff.drift',
    inputs: { evaporated: 0.04, added: 0.04, added_salinity: 0.035 },
    text: /38\.4 ppt/,
  },
  {
    says: ['lost 20 L by evaporation from 400 L at 35 ppt, salinity now?'],
    calculation: 'topoff.drift',
    inputs: { evaporated: 0.02 },
  },
  {
    says: ['ammonia 2.0 to 0 in 1 day, what rate'],
    calculation: 'cycle.oxidation_rate',
    inputs: { first_reading: 0.002, second_reading: 0, elapsed: 86_400 },
  },
  {
    says: ['dosed 2 ppm, 0 after 1 day; rate'],
    calculation: 'cycle.oxidation_rate',
    inputs: { first_reading: 0.002, second_reading: 0, elapsed: 86_400 },
  },
  {
    says: ['how much ammonia do I get from feeding 10 g a day with 45% protein in 400 L'],
    calculation: 'stocking.tan_from_feed',
  },
  {
    says: ['how many 10% water changes to get nitrate from 40 to 10, rises 2 in between'],
    calculation: 'water_change.to_target',
    inputs: { rise_between: 0.002 },
    text: /^Never/,
  },
  {
    says: ['how many 10% water changes to get nitrate from 40 to 10, nitrate rises 5 in between each'],
    calculation: 'water_change.to_target',
    inputs: { rise_between: 0.005 },
  },
  {
    says: ['how many 10% water changes every 2 weeks to get nitrate from 40 to 10, rises 2 a week'],
    calculation: 'water_change.to_target',
    text: /^Never.*settle at 36 mg\/L/,
  },
  {
    says: ['nitrate is 40, weekly 10% water changes, rises 2 a week'],
    calculation: 'water_change.series',
    text: /rise in a given time 2 mg\/L a week/,
  },
  {
    says: ['75 gpd membrane at 45 psi, rated 60 psi, 15 C: how long to make 100 L'],
    calculation: 'ro.time',
    text: /rating is for 60 psi; .* runs 45 psi/,
  },
  {
    says: ['75 gpd at 40 psi rated 50 psi'],
    calculation: 'topoff.ro_rate',
    kind: 'question',
    text: /rating is for 50 psi; .* runs 40 psi/,
  },
  {
    says: ['pump max head 12 ft and 2000 gph, 50 in static head'],
    calculation: 'pump.operating_point',
    kind: 'question',
    text: /maximum head of the pump 12 ft; .*display 50 in/,
  },
  {
    says: ['pump max head 12 ft, 8 in static head'],
    calculation: 'pump.operating_point',
    kind: 'question',
    text: /maximum head of the pump 12 ft; .*display 8 in/,
  },
  {
    says: ['how thick glass for a 6ft long 30 inch tall tank eurobraced'],
    calculation: 'glass.check',
    inputs: { length: 72 * INCH, height: 30 * INCH, top_edge: 'top_supported' },
  },
  {
    says: ['how thick should the bottom be for a 5x2 ft tank, 24 in deep, edges only'],
    calculation: 'glass.bottom',
    inputs: { length: 60 * INCH, width: 24 * INCH, water_height: 24 * INCH },
  },
  {
    says: ['20 kg rock on glass touching at 3 points of 2 cm2, water 50 cm'],
    calculation: 'rock.contact_pressure',
    inputs: { points: 3, point_area: 2e-4, water_height: 0.5 },
  },
  {
    says: ['how heavy is a full 4x2x2 ft tank on a 52x26 in stand footprint'],
    calculation: 'weight.system',
    inputs: { length: 48 * INCH, foot_length: 52 * INCH, foot_width: 26 * INCH },
  },
  {
    says: ['how many bags of sand for a 2 inch bed in 6x2 ft tank, 20 lb bags'],
    calculation: 'sand.mass',
    inputs: { depth: 2 * INCH, bag_mass: 20 * 0.45359237 },
  },
  {
    // 423.4 L less 22.2 L of rock, 410.5 kg, with 94.0 kg of glass and the rock; the plain volume would make it 587.
    says: [
      'my tank is 150x60x55 cm, 12 mm glass, 4 cm below the rim',
      'I have 60 kg of rock',
      'how much does it weigh full',
    ],
    calculation: 'weight.system',
    inputs: { rock_mass: 60, freeboard: 0.04 },
    text: /Filled it weighs 565 kg/,
  },
  {
    says: ['my tank is 150x60x55 cm, 12 mm glass', 'how heavy is it empty'],
    calculation: 'weight.tank',
    text: /94 kg/,
  },
  {
    says: ['two 3/4 outlets off one 1 inch return, 1800 gph 12ft max head pump, 5ft up, 6 ft of 1 inch pvc, 3 elbows'],
    calculation: 'pump.split',
    inputs: { outlets: 2, branch_diameter: 0.02042, pipe: '1 in schedule 40' },
  },
  {
    says: ['my nitrate test says 20, is that nitrogen or no3', 'no3'],
    calculation: 'nitrogen.units',
    inputs: { species: 'nitrate', form: 'ion', concentration: 0.02 },
  },
  {
    says: ['what is 10 ppm NO3 as nitrogen'],
    calculation: 'nitrogen.units',
    inputs: { species: 'nitrate', form: 'ion', concentration: 0.01 },
  },
  {
    says: ['convert 5 ppm NO3-N to NO3'],
    calculation: 'nitrogen.units',
    inputs: { species: 'nitrate', form: 'nitrogen', concentration: 0.005 },
  },
  {
    says: ['is .5 ammonia deadly at ph 8.2', 'as NH3', '78F'],
    calculation: 'ammonia.free_concentration',
    inputs: { ammonia: 0.0005, form: 'nh3', ph: 8.2, temperature: F(78) },
  },
  {
    says: ['ro waste for 100 L at 1:4', 'the second is waste'],
    calculation: 'ro.waste',
    inputs: { product_volume: 0.1, ratio_order: 'product_first' },
    text: /sends 400 L down the drain/,
  },
  {
    says: ['my ro makes 4 gallons of waste for 1 gallon of good water, how much wastewater for 50 gal'],
    calculation: 'ro.waste',
    inputs: { product_volume: 50 * GALLON, measured_waste: 4 * GALLON, measured_product: GALLON },
  },
  {
    says: ['150 gpd rodi, 50 psi line, how long for 20 gal', '60 psi', '60F'],
    calculation: 'ro.time',
    inputs: { temperature: F(60) },
  },
  {
    says: ['salinity is 33 how much salt to get to 35 in 100 gal'],
    calculation: 'salt.raise',
    inputs: { salinity: 0.033, target: 0.035, volume: 100 * GALLON },
  },
  {
    says: ['how much salt for a 5 gal bucket', '1.025'],
    calculation: 'salt.mix',
    inputs: { volume: 5 * GALLON, salinity: 0.03319 },
    text: /specific gravity/,
  },
  {
    says: ['tank 79F room 84F 180 gal lights 300w, how big a chiller'],
    calculation: 'cooling.need',
    inputs: { target: F(79), room_temperature: F(84), gains: 300 },
  },
  {
    says: ['are two 150 W heaters enough for 300 L at 25.5 C if the room goes down to 17 C'],
    calculation: 'heater.size',
    inputs: { target: C(25.5), room_temperature: C(17), heaters: 2, heater_power: 150 },
  },
  {
    says: ['how much evaporates from a 6 ft x 2 ft tank, water 78F, room 70F, humidity 40%', '80% covered'],
    calculation: 'evaporation.rate',
    inputs: { covered: 0.8, humidity: 0.4 },
  },
  {
    says: ['how far from the edge can i drill a 60mm hole in 15mm glass', 'its tempered'],
    calculation: 'drain.hole_layout',
    kind: 'refusal',
    text: /cannot be drilled/,
  },
  {
    says: ['how much water in a 72x24x24 in tank', '1.5 inch down'],
    calculation: 'volume.rectangular',
    inputs: { freeboard: 1.5 * INCH, glass_thickness: 0 },
  },
  {
    says: ['whats the volume of a 36x18x16 inch sump with 8 in of water'],
    calculation: 'volume.rectangular',
    inputs: { water_height: 8 * INCH, glass_thickness: 0 },
  },
  {
    says: ['120 x 60 x 60 cm tank 12mm, sump 80x40 at 20cm, how many litres system'],
    calculation: 'volume.system',
    inputs: { sump_length: 0.8, sump_water_height: 0.2, height: 0.6 },
  },
  {
    says: [
      'what heater for 90 gal at 78F in a 66F room',
      'what if power goes out',
      'what about at 82?',
      'room 68 instead',
    ],
    calculation: 'heater.outage',
    inputs: { start_temperature: F(82), room_temperature: F(68) },
  },
  {
    says: ['i have 180 gal tank, room gets down to 62 at night. what heater', 'would 2 300w be enough', '78'],
    calculation: 'heater.size',
    inputs: { room_temperature: F(62), heaters: 2, heater_power: 300, target: F(78) },
  },
  {
    says: ['filling the tank, water is 55F, 150 gal, two 300W heaters, how long to reach 78F, room 68F'],
    calculation: 'heater.warm_up',
    inputs: { start_temperature: F(55), target: F(78), room_temperature: F(68) },
  },
  {
    says: ['whats the biggest heater', '78', 'no 79'],
    calculation: 'heater.size',
    kind: 'question',
    inputs: { target: F(79) },
  },
  {
    says: ['power went out, 120 gallons 78 degrees house is 60'],
    calculation: 'heater.outage',
    inputs: { start_temperature: F(78), room_temperature: F(60) },
  },
  {
    says: ['how much evaporates from a 6 x 2 foot tank at 78 in 70 room 40% humidity'],
    calculation: 'evaporation.rate',
    inputs: { water_temperature: F(78), air_temperature: F(70) },
  },
  {
    says: [
      'how big should my drain be for 1200 gph',
      '1 inch',
      '30 inches drop',
      '4 ft of pipe',
      '3 elbows and a gate valve',
    ],
    calculation: 'drain.siphon',
    inputs: { pipe: '1 in schedule 40', drop: 30 * INCH, pipe_length: 48 * INCH },
  },
  {
    says: ['what heater for 90 gal at 78F in a 66F room, tank 48x24x24 in, 1/2 in glass, 22 in of water', '36 inches'],
    calculation: 'heater.size',
    kind: 'question',
    text: /What is 36 inches/,
  },
  {
    says: ['how much does a full siphon carry, pipe 32 mm, 1.5 m of pipe, 1.2 m drop, no elbows'],
    calculation: 'drain.siphon',
    inputs: {
      pipe: '32 mm SDR 13.6 (PN 16)',
      pipe_length: 1.5,
      drop: 1.2,
      fittings: '1 × entrance flush sharp (0.5), 1 × exit (1)',
    },
  },
  {
    says: ['how many gph go into a 1.5 inch open standpipe with water 3/4 in over the rim'],
    calculation: 'drain.open',
    inputs: { pipe: '1-1/2 in schedule 40', head: 0.75 * INCH },
  },
];

describe('each number is taken for what it is', () => {
  for (const { says, calculation, kind = 'answer', inputs = {}, text } of cases) {
    test(says.join(' / '), async () => {
      const talk = await startTalk();
      let reply = await talk.says(says[0]!);
      for (const say of says.slice(1)) reply = await talk.says(say);
      expect(reply.calculation, reply.text).toBe(calculation);
      expect(reply.kind, reply.text).toBe(kind);
      if (text) expect(reply.text).toMatch(text);
      for (const [id, wanted] of Object.entries(inputs)) {
        const used = reply.inputs.find((input) => input.id === id);
        if (typeof wanted === 'number') expect(used?.si, `${id}\n${reply.text}`).toBeCloseTo(wanted, 6);
        else expect(used?.value, `${id}\n${reply.text}`).toBe(wanted);
      }
      await talk.close();
    });
  }
});

describe('a list of fittings', () => {
  const line = 'full siphon flow of a drain, 1 in schedule 40, 30 in drop, 40 in of pipe, ';
  test.each([
    ['2 elbows, gate valve, 2 elbows', ['4 × elbow 90 standard', '1 × gate valve open']],
    ['two 90 elbows, 1 side outlet tee and a union', ['2 × elbow 90', '1 × tee branch', '1 × union']],
    ['a 180 return bend and a 90 elbow', ['1 × return bend 180', '1 × elbow 90']],
    ['1 bulkhead and 3 elbows', ['1 × bulkhead flush', '3 × elbow 90', '1 × exit']],
  ])('%s', async (said, parts) => {
    const talk = await startTalk();
    const reply = await talk.says(line + said);
    const fittings = reply.text.match(/fittings ([^;]*)/)?.[1] ?? '';
    for (const part of parts) expect(fittings).toContain(part);
    expect(fittings.match(/entrance|bulkhead/g)).toHaveLength(1);
    await talk.close();
  });

  test('a valve that stands half closed has no loss to look up: said, not left out', async () => {
    const talk = await startTalk();
    const reply = await talk.says(`${line}2 elbows and 1 half-closed gate valve`);
    expect(reply.text).toMatch(/part-closed valve has no fixed loss/);
    await talk.close();
  });
});

describe('what a tank keeps', () => {
  const page = async (...says: string[]) => {
    const talk = await startTalk();
    for (const say of says) await talk.says(say);
    const { body } = await talk.says('/tank show');
    await talk.close();
    return body ?? '';
  };

  test('a bare 0.3 is no salinity unless a word says so', async () => {
    expect(await page('my tank is 120x60x60 cm', 'it runs at 0.3')).not.toContain('salinity 0.3');
    expect(await page('my tank is 120x60x60 cm', 'my salinity is 15')).toContain('salinity 15');
  });

  test.each([
    ['my return chamber is 25x40 cm', 'return chamber 25 cm'],
    ['sump is 80x40x40, return chamber is 20x40 cm with 20 cm of water', 'running level of the return chamber 20 cm'],
    ['tank 120x60x60, return chamber 20x30', 'inside width of the return chamber, front to back 30 cm'],
    ['the stand under the tank is 130x70 cm', 'length of the footprint on the floor 130 cm'],
    ['the room my tank is in is 300x400 cm', ''],
    ['tank 120x60x60 cm, refugium 40x30x30 cm', ''],
  ])('sizes of another thing are not the tank’s: %s', async (said, kept) => {
    const shown = await page('my tank is 120x60x60 cm', said);
    expect(shown).toContain('tank length 120 cm; tank width, front to back 60 cm; tank height 60 cm');
    expect(shown).toContain(kept);
    expect(shown).not.toMatch(/water height in the tank \d|sump length (?!80)\d/);
  });

  test('sizes that a page has no place for are said to be not kept', async () => {
    const talk = await startTalk();
    await talk.says('my tank is 120x60x60 cm');
    const reply = await talk.says('the room my tank is in is 300x400 cm');
    expect(reply.text).toMatch(/Not kept: 300x400 cm/);
    await talk.close();
  });

  test('the water of a refugium is the refugium’s', async () => {
    const kept = await page('my tank is 72x24x24 in', 'my refugium is 40 L');
    expect(kept).toContain('water in the refugium 40 L');
    expect(kept).not.toContain('empties');
  });

  test('a bare pair is no size, and overwrites none', async () => {
    expect(await page('my tank is 72x24x24 in', 'i got 2x300')).toContain(
      'tank length 72 in; tank width, front to back 24 in',
    );
  });
  test('the water of the sump is the sump’s', async () => {
    const sump = await page('the sump is 48x20x16 in, water 9 inches deep');
    expect(sump).toContain('water height in the sump 9 in');
    expect(sump).not.toContain('Display');
  });
  test('another tank is another page', async () => {
    expect(
      await page('my display is 36x18x24 in', 'i also have a nano thats 20x20x20 inch', '/tank use name:main tank'),
    ).toContain('tank length 36 in');
  });
  test('what is not named is not kept', async () => {
    expect(await page('tank runs at 78 and the room is 70')).not.toMatch(/mm|chamber|beam/);
  });
  test('taken back, what stood there before stands again', async () => {
    expect(await page('my tank is 72x24x24 in, 1/2 in glass', 'the glass is 3/4 in', 'forget that')).toContain(
      'pane thickness 0.5 in',
    );
  });
});

test.each([
  ['how long is the day at 25 N today', '2031-08-09'],
  ['how long is the day at 25 N tomorrow', '2031-08-10'],
  ['how long is the day at 25 N on 21 june', '2031-06-21'],
  ['/light day-length latitude:25 N date:today', '2031-08-09'],
])('%s: a day is told from the clock', async (say, date) => {
  const talk = await startTalk();
  const clock = { now: () => new Date('2031-08-09T10:00:00Z') };
  const [reply] = await talk.brinewright.reply({ id: 'ada' }, { say }, clock);
  expect(reply!.text).toContain(`date ${date}`);
  await talk.close();
});

describe('a range that was said is shown as it was said', () => {
  const shown = (reply: Reply, id: string) => reply.inputs.find((input) => input.id === id)?.shown;

  test.each([
    ['the room is 60-66 F', 'room_temperature', '60 to 66 °F'],
    ['the room is 16 to 19 C', 'room_temperature', '16 to 19 °C'],
    ['room 66 F, humidity 40-50%', 'humidity', '40 to 50%'],
  ])('%s', async (say, id, wanted) => {
    const talk = await startTalk();
    const reply = await talk.says(`what heater for 90 gal at 78F, ${say}`);
    expect(shown(reply, id)).toBe(wanted);
    expect(reply.text).toContain(wanted);
    expect(textOnDiscord(reply)).toContain(wanted);
    const later = await talk.says('at 80F');
    expect(shown(later, id)).toBe(wanted);
    await talk.close();
  });

  test('a verdict is said of the value that it was worked out for', async () => {
    const talk = await startTalk();
    const reply = await talk.says('is a 300 W heater enough for 90 gal at 78F, room 60-66 F');
    expect(reply.headline).toContain('300 W holds 78 °F with the room at 63 °F');
    expect(reply.text).toContain('room temperature 60 to 66 °F');
    await talk.close();
  });

  test('a guess of ours is listed by its middle', async () => {
    const talk = await startTalk();
    const reply = await talk.says('what heater for 90 gal at 78F, the room is 66 F');
    expect(shown(reply, 'humidity')).toBe('50%');
    await talk.close();
  });
});

describe('what was said of one tank is not said of the next', () => {
  const BIG = 'how much water in a 72x24x24 in tank, 1/2 in glass, water 2 in below the rim';
  const CUBE = { length: 20 * INCH, width: 20 * INCH, height: 20 * INCH };
  const last = async (...says: string[]): Promise<Reply> => {
    const talk = await startTalk();
    for (const say of says.slice(0, -1)) await talk.says(say);
    const reply = await talk.says(says.at(-1)!);
    await talk.close();
    return reply;
  };

  test.each([
    ['a first tank with a name', [BIG, 'my frag tank is 20x20x20 in']],
    [
      'a number that no page keeps',
      ['how much water in a 72x24x24 in tank, 15 in of water', 'my frag tank is 20x20x20 in'],
    ],
    ['/tank new', ['my tank is 30x30x30 in', BIG, '/tank new name:frag tank', 'it is 20x20x20 in']],
    ['/tank use', ['my frag tank is 20x20x20 in', 'my nano tank is 10x10x10 in', BIG, '/tank use name:frag tank']],
    [
      '/tank remove',
      ['my frag tank is 20x20x20 in', 'my nano tank is 10x10x10 in', BIG, '/tank remove name:nano tank confirm:remove'],
    ],
  ])('%s', async (_, says) => {
    const reply = await last(...says, 'how much water does it hold');
    expect(inputsOf(reply)).toMatchObject({ ...CUBE, freeboard: 0, glass_thickness: 0 });
    expect(fromOf(reply, 'length')).toBe('profile');
    expect(reply.text).not.toContain('You said before');
  });

  test('a question that names the other tank is about its numbers and those it says itself', async () => {
    const reply = await last(
      'my frag tank is 20x20x20 in',
      'my nano tank is 10x10x10 in',
      BIG,
      'how much water does my frag tank hold with 1/4 in glass',
    );
    expect(inputsOf(reply)).toMatchObject({ ...CUBE, freeboard: 0, glass_thickness: 0.25 * INCH });
  });

  test('“it” is the tank that is spoken of, and no result about the one before', async () => {
    const reply = await last(BIG, 'my frag tank is 20x20x20 in', 'how much salt does it need for 35 ppt');
    expect(inputsOf(reply).volume).toBeCloseTo((20 * INCH) ** 3, 9);
  });

  test('what was told about a tank that is no more cannot be taken back', async () => {
    const reply = await last('my tank is 72x24x24 in', '/tank remove name:main tank confirm:remove', 'forget that');
    expect(reply.headline).toBe('There is nothing to take back.');
  });

  test('numbers of a tank that is no more are not used', async () => {
    const reply = await last(
      BIG,
      'its glass is 1/2 in',
      '/tank remove name:main tank confirm:remove',
      'how much water does it hold',
    );
    expect(reply.kind).toBe('question');
  });

  test('a first tank without a name is the one that was spoken of', async () => {
    const reply = await last(BIG, 'my tank is 60x24x24 in', 'how much water does it hold');
    expect(inputsOf(reply)).toMatchObject({ length: 60 * INCH, freeboard: 2 * INCH, glass_thickness: 0.5 * INCH });
  });

  test('what the page keeps is newer than what was said for a question', async () => {
    const reply = await last(BIG, 'the glass is 3/4 in', 'how much water does it hold');
    expect(inputsOf(reply)).toMatchObject({ length: 72 * INCH, glass_thickness: 0.75 * INCH });
  });

  test.each([
    ['taken back', 'forget that', 0.5],
    ['cleared', '/tank clear field:glass thickness', 0],
  ])('what is %s on the page is not used for the open question either', async (_, says, glass) => {
    const reply = await last(
      'my tank is 72x24x24 in with 1/2 in glass',
      'how much water does it hold with 5/8 in glass',
      'the glass is 3/4 in',
      says,
      'how much water does it hold',
    );
    expect(inputsOf(reply)).toMatchObject({ length: 72 * INCH, glass_thickness: glass * INCH });
  });

  test('what was said for a question about no tank stays', async () => {
    const reply = await last('how long is the day on 21 June', '/tank new name:frag tank', '18 south');
    expect(reply.text).toContain('You said before: date 2027-06-21.');
  });
});
