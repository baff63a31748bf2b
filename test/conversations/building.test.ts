import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { fromOf, inputsOf, resultOf, startTalk, type Talk } from '../conversation.js';

const INCH = 0.0254;
const GALLON = 231 * INCH ** 3;
const celsius = (t: number) => t + 273.15;
const fahrenheit = (t: number) => celsius(((t - 32) * 5) / 9);

let talk: Talk;
beforeEach(async () => {
  talk = await startTalk();
});
afterEach(() => talk.close());

describe('whole conversations', () => {
  test('a metric tank, told once, asked about again', async () => {
    const told = await talk.says("it's 150x60x55 cm, 12 mm glass, water sits 4 cm below the rim");
    expect(
      told.headline.startsWith('Started your tank “main tank”: tank length 150 cm; tank width, front to back 60 cm;'),
    ).toBe(true);
    for (const part of [
      'tank height 55 cm',
      'pane thickness 12 mm',
      'freeboard, rim to water 4 cm',
      'pane material glass',
    ]) {
      expect(told.headline).toContain(part);
    }
    expect(told.private).toBe(true);
    const asked = await talk.says('how much water does it hold?');
    // (150 - 2.4)(60 - 2.4)(55 - 1.2 - 4) cm³
    expect(resultOf(asked, 'water_volume')).toBeCloseTo((147.6 * 57.6 * 49.8) / 1e6, 9);
    expect(fromOf(asked, 'length')).toBe('profile');
    expect(asked.headline).toBe('It holds 423.4 L (111.8 US gal) of water.');
    expect((await talk.says('in gallons')).headline).toBe('It holds 111.8 US gal (423.4 L, 93.13 imp gal) of water.');
    const corrected = await talk.all('no, the glass is 10 mm');
    expect(resultOf(corrected[0]!, 'water_volume')).toBeCloseTo((148 * 58 * (55 - 1 - 4)) / 1e6, 9);
    expect(corrected[1]!.headline).toContain('pane thickness 10 mm (was 12 mm)');
    expect(inputsOf(await talk.says('how many litres is it')).glass_thickness).toBe(0.01);
    expect((await talk.says('show my tank')).body).toContain('pane thickness 10 mm');
  });

  test('a heater question in US units, asked for what is missing, one thing at a time', async () => {
    const first = await talk.says('is a 300w heater enough for a 48x24x24 inch tank with 1/2 inch glass?');
    expect(first.kind).toBe('question');
    expect(first.asks[0]).toBe('target');
    expect(first.headline).toMatch(/For example: /);
    const second = await talk.says('78');
    expect(second.kind).toBe('question');
    expect(second.asks[0]).toBe('room_temperature');
    const third = await talk.says('66F');
    expect(third.asks[0] ?? 'answered').toMatch(/water_height|answered/);
    const answer = third.kind === 'answer' ? third : await talk.says('22 inches');
    expect(answer.calculation).toBe('heater.size');
    expect(answer.kind).toBe('answer');
    expect(inputsOf(answer)).toMatchObject({ heater_power: 300, length: 48 * INCH });
    expect(inputsOf(answer).target).toBeCloseTo(fahrenheit(78), 9);
    expect(inputsOf(answer).room_temperature).toBeCloseTo(fahrenheit(66), 9);
    const warmer = await talk.says('what about at 82?');
    expect(inputsOf(warmer).target).toBeCloseTo(fahrenheit(82), 9);
    expect(resultOf(warmer, 'total_loss')).toBeGreaterThan(resultOf(answer, 'total_loss'));
    const colder = await talk.says('what if the room is 58');
    expect(inputsOf(colder).room_temperature).toBeCloseTo(fahrenheit(58), 9);
    expect(inputsOf(colder).target).toBeCloseTo(fahrenheit(82), 9);
    expect(fromOf(colder, 'target')).toBe('earlier');
    const why = await talk.says('why');
    expect(why.text).toContain('Working');
    expect(why.steps.map(({ symbol }) => symbol)).toContain('P_evap');
    expect(why.text).toContain('emissivity of water');
  });

  test('the contract’s own question', async () => {
    const reply = await talk.says('is 300 W enough for 90 gal at 78F in a 66F room');
    expect(reply.calculation).toBe('heater.size');
    expect(inputsOf(reply)).toMatchObject({ heater_power: 300 });
    expect(inputsOf(reply).volume).toBeCloseTo(90 * GALLON, 12);
    const [coldest] = reply.results.filter(({ id }) => id === 'coldest_room_held');
    expect(coldest!.low).toBeLessThan(coldest!.value as number);
    expect(coldest!.high).toBeGreaterThan(coldest!.value as number);
    expect(reply.cautions.some(({ text }) => /GFCI|RCD/.test(text))).toBe(true);
    const slash = await talk.says('/heater size room_temperature:64F heaters:2', { id: 'bea' });
    expect(inputsOf(slash).room_temperature).toBeCloseTo(fahrenheit(64), 9);
    expect(inputsOf(slash).heaters).toBe(2);
    expect(slash.kind).toBe('question');
  });

  test('a drain, its fittings, another pipe, and a clog', async () => {
    const asked = await talk.says('how much flow can a 1 inch drain handle with a 30 in drop and 40 in of pipe');
    expect(asked.asks).toEqual(['loss_coefficient']);
    const answer = await talk.says('2 elbows and a gate valve');
    expect(answer.kind).toBe('answer');
    // Crane at 1 in: entrance 0.5, elbows 2 × 0.668, gate valve 0.178, exit 1
    expect(answer.steps[0]).toMatchObject({ symbol: 'K' });
    expect(answer.steps[0]!.si).toBeCloseTo(0.5 + 2 * 0.668 + 0.178 + 1, 12);
    const bigger = await talk.says('same but with a 1 1/2 pipe');
    expect(inputsOf(bigger).pipe).toBe('1-1/2 in schedule 40');
    expect(resultOf(bigger, 'flow')).toBeGreaterThan(2 * resultOf(answer, 'flow'));
    const withPump = await talk.says('what about at 1500 gph?');
    expect(withPump.headline).toMatch(/times the 1500 US gal\/h it must pass/);
    const clogged = await talk.says('half clogged');
    expect(clogged.calculation).toBe('drain.clog');
    expect(inputsOf(clogged).blocked).toBe(0.5);
    expect((await talk.says('in metric')).headline).toContain('L/h');
  });

  test('salt: mix, raise, and the units a hobbyist mixes up', async () => {
    const mix = await talk.says('how much salt for 100 L at 35');
    expect(mix.calculation).toBe('salt.mix');
    expect(mix.results.find(({ id }) => id === 'salt_mass')).toMatchObject({ unit: 'kg' });
    const bigger = await talk.says('what about 55 gallons');
    expect(inputsOf(bigger).volume).toBeCloseTo(55 * GALLON, 12);
    expect(inputsOf(bigger).salinity).toBe(0.035);
    const raise = await talk.says('how much salt to raise 400 L from 32 to 35 ppt');
    expect(raise.calculation).toBe('salt.raise');
    expect(inputsOf(raise)).toMatchObject({ salinity: 0.032, target: 0.035, volume: 0.4 });
    const grams = await talk.says('is 35 g/L the same as 35 ppt?');
    expect(grams.calculation).toBe('salinity.units');
    expect((await talk.says('how much salt for 100 g at 35 ppt')).kind).not.toBe('error');
  });

  test('a conductivity meter: what it shows must be asked', async () => {
    const asked = await talk.says('my meter says 53 mS/cm at 25 C, what salinity is that');
    expect(asked.asks).toEqual(['reading']);
    const answer = await talk.says('corrected to 25');
    expect(answer.kind).toBe('answer');
    // UNESCO 44 turned round: 35 at 25 °C is 53.07 mS/cm
    expect(resultOf(answer, 'salinity') * 1000).toBeCloseTo(34.95, 1);
    const other = await talk.says('what about 50');
    expect(resultOf(other, 'salinity') * 1000).toBeCloseTo(32.73, 1);
    const chained = await talk.says('what sg is that');
    expect(chained.calculation).toBe('salinity.to_sg');
    expect(inputsOf(chained).salinity).toBeCloseTo(resultOf(other, 'salinity'), 12);
    expect(fromOf(chained, 'salinity')).toBe('earlier');
    expect((await talk.says('what sg is 35 ppt')).headline).toContain('1.0264');
    expect((await talk.says('and 33 ppt?')).headline).toContain('1.0249');
  });

  test('lights in clock words', async () => {
    const plan = await talk.says('lights on 10 to 8');
    expect(plan.calculation).toBe('light.schedule');
    expect(plan.results.find(({ id }) => id === 'blue_off')!.value).toBe('20:00');
    const later = await talk.says('what about 2pm to 1');
    expect(later.results.find(({ id }) => id === 'blue_on')!.value).toBe('14:00');
    expect(later.results.find(({ id }) => id === 'blue_off')!.value).toBe('01:00');
    const refugium = await talk.says('when should the refugium light run if the display is on at 10am for 10 hours');
    expect(refugium.results.find(({ id }) => id === 'refugium_on')!.value).toBe('19:00');
    const integral = await talk.says('220 PAR for 9.5 hours, stony corals: enough?');
    expect(resultOf(integral, 'daily_light_integral') * 86_400).toBeCloseTo(7.524, 9);
    const softer = await talk.says('and for soft corals?');
    expect(softer.results.find(({ id }) => id === 'against_target')!.value).toBe('above');
  });

  test('several tanks by name; a second one never overwrites the first', async () => {
    await talk.says('my tank is 150x60x55 cm with 12 mm glass');
    const frag = await talk.says('my frag tank is 60x45x40 cm');
    expect(frag.headline).toContain('Started your tank “frag tank”');
    const list = await talk.says('my tanks');
    expect(list.body!.split('\n').sort()).toEqual(['frag tank: 3 numbers, the current one', 'main tank: 5 numbers']);
    await talk.says('the glass is 6 mm');
    expect((await talk.says('forget that')).headline).toContain('pane thickness');
    expect((await talk.says('/tank show')).body!.split('\n')[0]).not.toContain('pane');
    await talk.says('/tank use name:main tank');
    expect(resultOf(await talk.says('how much water does it hold'), 'volume_outside')).toBeCloseTo(0.495, 9);
    const named = await talk.says('how much water does my frag tank hold');
    expect(resultOf(named, 'volume_outside')).toBeCloseTo(0.6 * 0.45 * 0.4, 9);
  });

  test('sizes without a unit are asked about where two units make a tank', async () => {
    const asked = await talk.says('how much water is in a 60x60x60 tank');
    expect(asked.kind).toBe('question');
    expect(asked.headline).toMatch(/60 in or 60 cm|60 cm or 60 in/);
    const answer = await talk.says('cm');
    expect(resultOf(answer, 'volume_outside')).toBeCloseTo(0.216, 9);
    const inches = await talk.says('how much water is in a 48x24x24 tank', { id: 'bea' });
    expect(resultOf(inches, 'volume_outside')).toBeCloseTo(48 * 24 * 24 * INCH ** 3, 9);
    const feet = await talk.says('how much water is in a 4x2x2 tank', { id: 'cem' });
    expect(resultOf(feet, 'volume_outside')).toBeCloseTo(16 * (12 * INCH) ** 3, 9);
    expect((await talk.says('never mind')).headline).toContain('kept');
  });

  test('a topic is left and gone back to', async () => {
    await talk.says('is 200 W enough for 60 gal at 78F in a 68F room');
    const salt = await talk.says('how much salt for 50 gal at 35 ppt');
    expect(salt.calculation).toBe('salt.mix');
    const back = await talk.says('back to the heater: what if the room is 60F');
    expect(back.calculation).toBe('heater.size');
    expect(inputsOf(back).room_temperature).toBeCloseTo(fahrenheit(60), 9);
    expect(inputsOf(back).heater_power).toBe(200);
    expect((await talk.says('thanks')).kind).toBe('notice');
    expect((await talk.says('tell me a joke')).headline).toContain('beyond me');
  });

  test('no more is kept of a conversation than it goes on with', async () => {
    await talk.says('how long is the day at 18 south on 21 June');
    // One can come back to the last five questions.
    await talk.says('how much salt for 50 gal at 35 ppt');
    await talk.says('what heater for 90 gal at 78F in a 66F room');
    await talk.says('how many litres is a 120 x 50 x 50 cm tank');
    await talk.says('how many times an hour does 600 gph turn over 90 gallons');
    await talk.says('what dli is 200 par for 10 hours');
    const kept = await talk.store.dialogue('ada', 'direct/');
    expect(kept).toContain('light.day_length');
    await talk.says('how fast does the water move at 2000 l/h in a 25 mm pipe');
    const state = await talk.store.dialogue('ada', 'direct/');
    expect(state).toContain('salt.mix');
    expect(state).not.toContain('light.day_length');
  });

  test('two members do not see or change each other', async () => {
    await talk.says('my tank is 150x60x55 cm', { id: 'ada' });
    expect((await talk.says('show my tank', { id: 'bea' })).headline).toContain('No tank is kept');
    const bea = await talk.says('how much water does it hold', { id: 'bea' });
    expect(bea.kind).toBe('question');
    const ada = await talk.says('how much water does it hold', { id: 'ada' });
    const stolen = await talk.sends({ press: 'save', answer: ada.answerId! }, { id: 'bea' });
    expect(stolen[0]!.headline).toContain('another member');
    const gone = await talk.says('/mydata delete confirm:delete', { id: 'ada' });
    expect(gone.headline).toMatch(/^Deleted: \d+ entries/);
    expect((await talk.says('show my tank', { id: 'ada' })).headline).toContain('No tank is kept');
  });
});

describe('a tank’s page says what it is enough for', () => {
  test('ready answers, and the numbers that are the last one missing, without other shapes of tank', async () => {
    await talk.says("it's 150x60x55 cm, 12 mm glass, water 4 cm below the rim");
    await talk.says('room 19 C, tank 25.5 C, two 150 W heaters');
    const { body } = await talk.says('show my tank');
    expect(body).toMatch(/Enough for: .*heater power for a room/);
    expect(body).toMatch(/One number away:\n- salinity, for: .*salt for a batch/);
    expect(body).not.toMatch(/round tank|hexagonal/);
  });

  test('another value of a number says which verdict and which results it changes', async () => {
    await talk.says("it's 150x60x55 cm, 12 mm glass, water 4 cm below the rim");
    await talk.says('room 19 C, tank 25.5 C, two 200 W heaters');
    const { body } = await talk.says('the room gets down to 12 C');
    expect(body).toMatch(/That changes:\n- 2 × 200 W do not hold 25\.5 °C with the room at 12 °C/);
    expect(body).toMatch(/- Water that evaporates: water that evaporates [\d.]+ L a day → [\d.]+ L a day\./);
    const again = await talk.says('the room gets down to 12 C');
    expect(again.body).not.toContain('That changes');
  });
});

describe('one answer feeds the next question', () => {
  test('a named result goes in with its range, and says where it comes from', async () => {
    const stack = await talk.says('how much can a 1 inch schedule 40 standpipe drain without gurgling');
    const weir = await talk.says('use that flow for the weir, 16 in long');
    expect(weir.calculation).toBe('overflow.weir');
    expect(inputsOf(weir).flow).toBe(resultOf(stack, 'flow'));
    expect(fromOf(weir, 'flow')).toBe('earlier');
    expect(weir.inputs.find(({ id }) => id === 'flow')!.shown).toMatch(/worked out: quiet flow down a vertical pipe/);
    const head = weir.results.find(({ id }) => id === 'head')!;
    expect(head.low).toBeLessThan(head.value as number);
    expect(head.high).toBeGreaterThan(head.value as number);
  });

  test('what is pointed at is not taken for the topic', async () => {
    const volume = await talk.says('how much water in a 150x60x55 cm tank with 12 mm glass, 4 cm below the rim');
    const salt = await talk.says('use that volume for salt at 35 ppt');
    expect(salt.calculation).toBe('salt.mix');
    expect(inputsOf(salt).volume).toBe(resultOf(volume, 'water_volume'));
  });
});

test('“what if” within a question that can take it stays with that question', async () => {
  await talk.says('both drains clog and the top off keeps running from the RO line: does the display flood');
  await talk.says('return chamber 25x40 cm, water 20 cm deep, pump 3500 L/h, membrane gives 12 L/h');
  const told = await talk.says('display 150x60 cm with 4 cm from water to rim');
  expect(told.calculation).toBe('topoff.clog_flood');
  const changed = await talk.says('what if the top off is from a 20 L reservoir');
  expect(changed.calculation).toBe('topoff.clog_flood');
});
