import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { rockOnTheBase } from '../cautions/rock.js';
import { calculation } from '../define.js';
import { glassThickness, height, length, width } from '../inputs/display.js';
import { priceOfMass } from '../inputs/price.js';
import { solidInputs } from '../inputs/rock-and-sand.js';
import { systemVolume } from '../inputs/system-water.js';
import { noInside } from '../inputs/tank-shape.js';

const noVolume: Condition = { not: { given: 'volume' } };

export const rockMass = calculation({
  id: 'rock.mass',
  slash: 'structure rock',
  title: 'Rock for a tank',
  question: 'How much dry rock is usual for a tank of that size, and what does it cost?',
  part: 'rock and sand',
  cues: [
    'is that enough rock',
    'rock enough for',
    'how much rock',
    'how much live rock',
    'how much dry rock',
    'how many pounds of rock',
    'how many lbs of rock',
    'how many kilos of rock',
    'how many kg of rock',
    'pounds of rock',
    'kilos of rock',
    'rock do I need',
    'rock for',
    'live rock for',
    'dry rock for',
    'enough rock',
    'rock enough',
    'too much rock',
    'of rock too much',
    'of rock too little',
    'of rock enough',
    'rock too much',
    'rock should I',
    'rock cost',
    'cost of rock',
    'rock to buy',
    'amount of rock',
  ],
  inputs: {
    volume: quantity('volume', {
      ...systemVolume,
      name: 'water in the tank',
      needed: { not: { given: 'length' } },
      ask: 'How much water does the tank hold, or how long, wide and high is it?',
      example: '400 L, 100 gal, or 120x60x55 cm',
    }),
    length: quantity('length', { ...length, needed: false }),
    width: quantity('length', { ...width, needed: { all: [{ given: 'length' }, noVolume] } }),
    height: quantity('length', { ...height, needed: { all: [{ given: 'length' }, noVolume] } }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      needed: false,
      default: { value: 0, unit: 'mm', when: { all: [{ given: 'length' }, noVolume] } },
    }),
    rate_low: quantity('concentration', {
      symbol: 'c_low',
      name: 'rock for each litre, at least',
      words: ['at least', 'low rate'],
      range: [1, 1000, 'g/L'],
      units: { metric: 'g/L', us: 'lb/gal_US' },
      default: { value: 90, unit: 'g/L', why: '0.75 lb a US gallon: porous dry rock (common practice, no source)' },
      ask: 'How much rock for each litre, at least?',
      example: '90 g/L or 0.75 lb/gal',
    }),
    rate_high: quantity('concentration', {
      symbol: 'c_high',
      name: 'rock for each litre, at most',
      words: ['at most', 'high rate'],
      range: [1, 1000, 'g/L'],
      units: { metric: 'g/L', us: 'lb/gal_US' },
      default: { value: 180, unit: 'g/L', why: '1.5 lb a US gallon: dense rock (common practice, no source)' },
      ask: 'How much rock for each litre, at most?',
      example: '180 g/L or 1.5 lb/gal',
    }),
    rock_mass: quantity('mass', {
      ...solidInputs.rock_mass,
      name: 'rock you have, dry',
      words: [...(solidInputs.rock_mass.words ?? []), 'have', 'got'],
      ask: 'How much rock do you have, weighed dry?',
    }),
    price: priceOfMass('rock'),
  },
  rules: [
    noInside('W', 'width'),
    noInside('L', 'length'),
    {
      refuse: 'c_low > c_high',
      because: 'The least rock for each litre is more than the most: are the two swapped?',
      about: 'rate_low',
    },
  ],
  steps: [
    step('V', '(L - 2*t)*(W - 2*t)*(H - t)', 'volume', 'inside, to the rim'),
    step('m_low', 'c_low*V', 'mass', 'rock, at least'),
    step('m_high', 'c_high*V', 'mass', 'rock, at most'),
    step('k_low', 'm_low*c_m', 'money', 'cost, at least'),
    step('k_high', 'm_high*c_m', 'money', 'cost, at most'),
    step('c', 'm/V', 'concentration', 'rock for each litre, as you have it'),
  ],
  results: {
    rock_mass_low: result('m_low', 'mass', 'rock, at least', { figures: 2 }),
    rock_mass_high: result('m_high', 'mass', 'rock, at most', { figures: 2 }),
    cost_low: result('k_low', 'money', 'cost, at least'),
    cost_high: result('k_high', 'money', 'cost, at most'),
    rock_rate: result('c', 'concentration', 'rock for each litre, as you have it', {
      units: { metric: 'g/L', us: 'lb/gal_US' },
      when: 'm > 0',
    }),
  },
  headline: [
    {
      text: 'Your {rock_mass} is less than usual: {rock_mass_low} to {rock_mass_high} is common practice for this tank.',
      when: 'm > 0 and m < m_low',
    },
    {
      text: 'Your {rock_mass} is more than usual: {rock_mass_low} to {rock_mass_high} is common practice for this tank.',
      when: 'm > m_high',
    },
    {
      text: 'Your {rock_mass} is inside what is usual for this tank, {rock_mass_low} to {rock_mass_high}.',
      when: 'm > 0',
    },
    {
      text: 'Common practice is {rock_mass_low} to {rock_mass_high} of dry rock, for {cost_low} to {cost_high}.',
      when: 'k_high > 0',
    },
    { text: 'Common practice is {rock_mass_low} to {rock_mass_high} of dry rock.' },
  ],
  cautions: [
    rockOnTheBase,
    caution(
      'note',
      'A rule of thumb: what decides is how the pile looks and how water gets through it. Porous rock at the low end, dense rock at the high end.',
    ),
    caution('note', 'Wet rock weighs more than dry: compare prices and weights dry.'),
    caution('note', 'It takes its place from the water too: volume displacement works that out.'),
  ],
  sources: ['0.75 to 1.5 lb a US gallon, 90 to 180 g/L: common practice, no source'],
  examples: [
    'how much rock for a 100 gal tank at 4.50 per lb',
    'how much live rock do I need for 400 L',
    'is 60 kg enough rock for a 150x60x55 cm tank',
  ],
});
