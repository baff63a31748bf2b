import { type Condition, caution, label, quantity, result, step } from '../calculation.js';
import { meterBlind } from '../cautions/reverse-osmosis.js';
import { calculation } from '../define.js';
import { feedTds } from '../inputs/reverse-osmosis.js';

/** Limits of common practice, with a guard for readings that lie on them. */
const MEMBRANE_GOOD = 'r >= 0.9499999';
const MEMBRANE_WATCH = 'r >= 0.8999999 and r < 0.9499999';
const MEMBRANE_TIRED = 'r < 0.8999999';
const RESIN_GOOD = 'c_r <= 0.0010000001';
const RESIN_WATCH = 'c_r > 0.0010000001 and c_r <= 0.0020000001';
const RESIN_TIRED = 'c_r > 0.0020000001';
const resinRead: Condition = { given: 'after_resin_tds' };
const resinKnown: Condition = { given: 'resin_volume' };

export const roRejection = calculation({
  id: 'ro.rejection',
  slash: 'topoff ro-stages',
  title: 'Which stage of the reverse osmosis is tired',
  question: 'Membrane or resin: which one should be changed, and when?',
  part: 'reverse osmosis',
  cues: [
    'rejection',
    'rejection rate',
    'change my membrane',
    'change the membrane',
    'replace my membrane',
    'replace the membrane',
    'new membrane',
    'membrane bad',
    'membrane good',
    'membrane tired',
    'membrane shot',
    'change my resin',
    'change the resin',
    'change my di',
    'change di',
    'replace di',
    'replace resin',
    'replace the resin',
    'di resin',
    'resin lasts',
    'resin last',
    'resin exhausted',
    'which stage',
    'after the membrane',
    'after membrane',
    'after the resin',
    'after resin',
    'after di',
    'before di',
    'before the di',
    'ro stages',
    'ro out',
    'out of the ro',
    'out of the membrane',
    'tap tds',
    'tds in',
    'tds out',
    'tds creep',
    '~tds',
    '~resin',
    '~membrane',
  ],
  inputs: {
    feed_tds: feedTds,
    product_tds: quantity('dissolved', {
      symbol: 'c_p',
      name: 'TDS after the membrane, before any resin',
      words: [
        'after the membrane',
        'after membrane',
        'after ro',
        'ro out',
        'ro',
        'after the ro',
        'out of the membrane',
        'membrane',
        'product',
        'before di',
        'before the di',
        'before the resin',
        'before resin',
        'out',
        'tds out',
        'permeate',
        'to',
      ],
      range: [0, 5000, 'mg/L'],
      usual: [0, 60, 'mg/L'],
      ask: 'What does the TDS meter read after the membrane, before any resin?',
      example: '9 ppm',
    }),
    after_resin_tds: quantity('dissolved', {
      symbol: 'c_r',
      name: 'TDS after the resin',
      words: [
        'after the resin',
        'after resin',
        'after di',
        'after the di',
        'di',
        'resin',
        'final',
        'di out',
        'out of the di',
        'at the end',
      ],
      range: [0, 5000, 'mg/L'],
      usual: [0, 10, 'mg/L'],
      needed: false,
      ask: 'What does the TDS meter read after the resin?',
      example: '0 ppm',
    }),
    resin_volume: quantity('volume', {
      symbol: 'V_r',
      name: 'volume of mixed-bed resin',
      words: ['of resin', 'di resin', 'resin', 'cartridge', 'resin volume', 'litres of resin', 'liters of resin'],
      range: [0, 50, 'L'],
      aboveLow: true,
      usual: [0.2, 5, 'L'],
      needed: false,
      ask: 'How much mixed-bed resin is in the cartridge?',
      example: '0.7 L; a ten inch cartridge holds about that',
      profile: 'ro.resin_volume',
    }),
    resin_capacity: quantity('concentration', {
      symbol: 'k',
      name: 'what a litre of fresh mixed-bed resin takes up',
      words: ['capacity', 'resin capacity'],
      range: [1, 60, 'g/L'],
      default: {
        value: 20,
        unit: 'g/L',
        low: 10,
        high: 27,
        why: 'makers name up to 0.55 equivalents, 27 g as calcium carbonate; carbon dioxide takes part of it (from memory)',
        when: resinKnown,
      },
      needed: false,
      ask: 'How much does a litre of the resin take up?',
      example: '20 g/L',
    }),
    product_per_day: quantity('water a day', {
      symbol: 'Q',
      name: 'product water made a day',
      words: ['make', 'a day', 'use', 'per day', 'daily'],
      range: [0, 10_000, 'L/day'],
      aboveLow: true,
      usual: [1, 200, 'L/day'],
      needed: false,
      ask: 'How much product water do you make a day?',
      example: '6 L a day',
    }),
  },
  constants: { s_2: { value: 0.02, unit: '1', name: 'share that a sound membrane passes (common practice)' } },
  rules: [
    {
      refuse: 'c_p > c_f',
      because:
        'The product reads higher than the tap: either the two readings are swapped, or the membrane leaks past its seal.',
      about: 'product_tds',
    },
    {
      refuse: 'c_r - c_p > 0.005',
      because:
        'The resin gives out more than goes in: the readings are swapped, or the resin is exhausted and gives back what it held. If they are right, change the resin.',
      about: 'after_resin_tds',
    },
  ],
  steps: [
    step('s', 'c_p/c_f', 'fraction', 'share that passes the membrane'),
    step('r', '1 - s', 'fraction', 'share that the membrane holds back'),
    step('r_r', '1 - c_r/c_p', 'fraction', 'share of the rest that the resin takes', 'c_p > 0'),
    step('V_k', 'V_r*k/c_p', 'volume', 'product that fresh resin brings to nothing', 'c_p > 0'),
    step('t_k', 'V_k/Q', 'time', 'time that it lasts'),
    step('g', 's_2/s', 'ratio', 'life of resin behind it over its life behind a membrane that passes 2 %', 's > 0'),
  ],
  results: {
    rejection: result('r', 'fraction', 'held back by the membrane', { figures: 3 }),
    passage: result('s', 'fraction', 'passes the membrane', { figures: 2 }),
    membrane: label('membrane', [
      ['good', 'good', MEMBRANE_GOOD],
      ['watch', 'watch it', MEMBRANE_WATCH],
      ['replace', 'replace it', MEMBRANE_TIRED],
    ]),
    resin_removal: result('r_r', 'fraction', 'taken by the resin', { figures: 3 }),
    resin: label(
      'resin',
      [
        ['good', 'good', RESIN_GOOD],
        ['watch', 'watch it', RESIN_WATCH],
        ['replace', 'replace it', RESIN_TIRED],
      ],
      resinRead,
    ),
    resin_life: result('V_k', 'volume', 'product that fresh resin brings to nothing', { figures: 2 }),
    resin_days: result('t_k', 'time', 'time that fresh resin lasts', { figures: 2 }),
    resin_life_ratio: result('g', 'ratio', 'life of resin behind it over its life behind a membrane that passes 2 %', {
      figures: 2,
    }),
  },
  headline: [
    {
      text: 'Change the membrane first, then the resin: the membrane holds back only {rejection}, and {after_resin_tds} comes out at the end.',
      when: { all: [MEMBRANE_TIRED, RESIN_TIRED] },
    },
    {
      text: 'Change the membrane: it holds back only {rejection}. The resin still works, but wears out fast behind it.',
      when: { all: [MEMBRANE_TIRED, resinRead] },
    },
    { text: 'Change the membrane: it holds back only {rejection}.', when: MEMBRANE_TIRED },
    {
      text: 'Change the resin: {after_resin_tds} comes out of it. The membrane is good and holds back {rejection}.',
      when: { all: [MEMBRANE_GOOD, RESIN_TIRED] },
    },
    {
      text: 'Change the resin: {after_resin_tds} comes out of it. The membrane holds back {rejection}: watch it, the resin will last less.',
      when: RESIN_TIRED,
    },
    {
      text: 'The resin is near its end: {after_resin_tds} comes out of it. The membrane holds back {rejection}.',
      when: RESIN_WATCH,
    },
    {
      text: 'Both are good: the membrane holds back {rejection}, and {after_resin_tds} comes out of the resin.',
      when: { all: [MEMBRANE_GOOD, RESIN_GOOD] },
    },
    { text: 'The membrane is good: it holds back {rejection}.', when: MEMBRANE_GOOD },
    { text: 'Watch the membrane: it holds back {rejection}, where 95 % or more is good.' },
  ],
  cautions: [
    caution(
      'caution',
      'Before you buy one: read again after ten minutes of running, and check the pressure, the seal of the membrane and the carbon, whose leaking chlorine ruins the next one too.',
      'r < 0.9499999',
    ),
    caution(
      'caution',
      'Good membrane and short-lived resin: carbon dioxide, common in well water, wears resin out and no TDS meter sees it.',
      { all: [MEMBRANE_GOOD, 'c_r > 0.0010000001'] },
    ),
    caution(
      'note',
      'Twice the TDS after the membrane is half the life of the resin: behind this one it lasts {resin_life_ratio} times what it would behind one that passes 2 %.',
      's > 0 and r < 0.9499999',
    ),
    caution(
      'note',
      'Read all points with one meter after 5 to 10 minutes of running: standing water creeps up. Compare with today’s tap, which changes with the season.',
    ),
    caution(
      'note',
      'Little product but clean? Then it is a clogged sediment filter or carbon block, cold water or low pressure. Carbon is changed by volume and by a chlorine test, not by TDS.',
    ),
    meterBlind,
  ],
  sources: [
    'rejection: definition',
    'limits of 95 and 90 %, and of 1 and 2 mg/L after the resin: common practice, no source',
  ],
  examples: [
    'tap 300 ppm, 9 ppm after the membrane, 0 after the resin: which stage do I change',
    'tds in 210, tds out 28, 3 ppm after di, do I need a new membrane',
    'what is my rejection rate, tap water 180 ppm and 14 ppm after the membrane',
  ],
});
