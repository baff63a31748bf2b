import { caution, flag, lookup, quantity, result, step } from '../calculation.js';
import { licensedWiring, noStripsInChain, residualCurrent } from '../cautions/mains.js';
import { tiny } from '../constants.js';
import { calculation } from '../define.js';
import { powerFactor, voltage } from '../inputs/mains.js';

/** Amperes of a flexible cord with two loaded conductors, by wire size. */
const CORDS: Readonly<Record<string, number>> = { 18: 10, 16: 13, 14: 18, 12: 25 };

const cordSize = lookup({
  name: 'wire size of the cord',
  words: ['awg', 'gauge', 'wire size'],
  needed: false,
  ask: 'Which wire size does the cord have?',
  example: '16 AWG',
  suggestions: Object.keys(CORDS).map((size) => `${size} AWG`),
  pattern: /\b(?:12|14|16|18)[ -]?(?:awg|gauge|ga)\b/,
  read(text) {
    const size = text.match(/\d+/)?.[0] ?? '';
    const rating = CORDS[size];
    return rating === undefined
      ? `“${text}” is not one of the wire sizes I have: ${Object.keys(CORDS).join(', ')} AWG. Give the cord’s rating in amps instead.`
      : {
          reading: `${size} AWG`,
          inputs: { cord_rating: rating },
          source: 'flexible cords with two loaded conductors: NFPA 70 (NEC) table 400.5(A)(1), from memory',
        };
  },
});

const FITS = 'I <= I_max*1.000000001';

export const electricCord = calculation({
  id: 'electric.cord',
  slash: 'power cord',
  title: 'Lights in a chain on one cord',
  question: 'How many lights may hang in a chain on the first one’s cord or on one timer?',
  part: 'electricity',
  cues: [
    'daisy chain',
    'daisychain',
    'chain lights',
    'chained',
    'in a chain',
    'chain of',
    'on one cord',
    'extension cord',
    'awg',
    'link lights',
    'linked lights',
    'timer rated',
    'on one timer',
  ],
  inputs: {
    watts_each: quantity('power', {
      symbol: 'P_e',
      name: 'power of each light',
      words: ['each', 'light', 'lights', 'fixture', 'fixtures', 'lamp', 'panel'],
      range: [1, 5000, 'W'],
      usual: [10, 1000, 'W'],
      ask: 'How many watts does each light draw?',
      example: '190 W',
    }),
    count: quantity('count', {
      symbol: 'n',
      name: 'lights in the chain',
      words: ['lights', 'fixtures', 'lamps', 'panels', 'in the chain'],
      range: [1, 100, 'count'],
      whole: true,
      ask: 'How many lights are in the chain?',
      example: '4',
    }),
    voltage,
    cord_rating: quantity('current', {
      symbol: 'I_c',
      name: 'rating of the first cord',
      words: ['cord', 'cord rating', 'rated', 'awg', 'lead', 'timer', 'plug'],
      range: [1, 40, 'A'],
      needed: { not: { given: 'cord' } },
      ask: 'What is the first cord rated at, in amps? It stands on the cord or the plug.',
      example: '10 A, or 18 AWG',
    }),
    cord: cordSize,
    maker_limit: quantity('current', {
      symbol: 'I_m',
      name: 'the maker’s limit for a chain',
      words: ['maker', 'maker allows', 'limit', 'allows', 'maximum', 'max', 'label says', 'pass through'],
      range: [0.5, 40, 'A'],
      needed: false,
      ask: 'Which current does the maker allow through a chain?',
      example: '8 A',
    }),
    power_factor: powerFactor(0.95, 'a driver with correction (common practice); the label says'),
  },
  constants: { tiny },
  rules: [
    {
      refuse: 'P_e/(pf*U) > 40',
      because: 'One such light alone is beyond any cord this covers, 1 to 40 A: check the watts.',
      about: 'watts_each',
    },
  ],
  steps: [
    step('I', 'n*P_e/(pf*U)', 'current', 'current through the first cord'),
    step('I_max', 'min(I_c, I_m)', 'current', 'the smaller of cord and maker’s limit'),
    step('I_max', 'I_c', 'current', 'what the cord carries'),
    step('N', 'floor(I_max*pf*U/P_e + tiny)', 'count', 'most lights of that power'),
  ],
  results: {
    ok: flag('within what the first cord may carry', FITS),
    chain_current: result('I', 'current', 'current through the first cord'),
    limit: result('I_max', 'current', 'what it may carry'),
    most_fixtures: result('N', 'count', 'most lights of that power'),
  },
  headline: [
    {
      text: 'Over: {count} lights draw {chain_current} through the first cord, which may carry {limit}; {most_fixtures} are the most.',
      when: 'I > I_max*1.000000001',
    },
    {
      text: 'Within this check: {count} lights draw {chain_current} of the {limit} that the first cord may carry; {most_fixtures} are the most.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'Ask the maker of the lights how many may be chained: their inner wiring and sockets carry it too, and often less than the cord.',
      { not: { given: 'maker_limit' } },
    ),
    noStripsInChain,
    caution(
      'caution',
      'A timer’s rating for heaters does not hold for light drivers and motors: when switched on they draw tens of amps for a moment and weld its contacts. Use its motor or ballast rating, or let it switch a contactor.',
    ),
    residualCurrent,
    licensedWiring,
  ],
  sources: [
    'the first cord of a chain carries the current of all',
    'cord ratings: NFPA 70 (NEC) table 400.5(A)(1), from memory; the cord’s own label outranks them',
  ],
  examples: [
    'can I daisy chain four 190 W lights at 120 V on an 18 AWG cord, maker allows 8 A',
    'daisy chain of 6 fixtures, 100 W each, cord rated 10 A, 230 V',
    'how many 150 W lights on one cord: 5 lights in a chain, 120V, 16 awg',
  ],
});
