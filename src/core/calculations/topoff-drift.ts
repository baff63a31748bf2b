import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { salinity } from '../inputs/salinity.js';
import { systemVolume, waterTemperature } from '../inputs/system-water.js';

const amount = (symbol: string) => ({
  symbol,
  range: [0, 100_000, 'L'] as const,
  usual: [0.1, 200, 'L'] as const,
  example: '5 L or 1.5 gal',
});

export const topoffDrift = calculation({
  id: 'topoff.drift',
  slash: 'topoff drift',
  title: 'Salinity after evaporation or overfilling',
  question: 'What does the salinity become when water evaporates, or when too much goes in?',
  part: 'top-off',
  cues: [
    'coming home to',
    'evaporation ate',
    'ppt after',
    'evaporated',
    'evaporate and',
    'evaporates and',
    'without top off',
    'no top off',
    'overfilled',
    'overfill',
    'too much fresh',
    'fresh water too much',
    'top off added',
    'topped off with salt',
    'topping off with salt',
    'replaced with salt water',
    'lost by evaporation',
    'salinity now',
    'salinity after',
    'salinity drift',
    'float stuck',
    'extra fresh water',
  ],
  inputs: {
    volume: systemVolume,
    salinity: quantity('salinity', {
      ...salinity,
      words: ['salinity', 'ppt', 'psu', 'at', 'was', 'from'],
      ask: 'What was the salinity before?',
      profile: 'water.salinity',
    }),
    evaporated: quantity('volume', {
      ...amount('V_e'),
      name: 'water that evaporated',
      words: ['evaporated', 'evaporate', 'evaporates', 'evaporation', 'lost', 'gone', 'down'],
      default: { value: 0, unit: 'L', why: 'you named none', when: { given: 'added' } },
      ask: 'How much water evaporated?',
    }),
    added: quantity('volume', {
      ...amount('V_a'),
      name: 'water that was added',
      words: [
        'added',
        'add',
        'too much',
        'overfilled',
        'overfill',
        'extra',
        'poured',
        'went in',
        'topped off',
        'replaced',
      ],
      default: { value: 0, unit: 'L', why: 'you named none', when: { given: 'evaporated' } },
      ask: 'How much water went in?',
    }),
    added_salinity: quantity('salinity', {
      ...salinity,
      symbol: 'S_a',
      name: 'salinity of the water that was added',
      words: [
        'salt water of',
        'saltwater of',
        'added water',
        'with salt water',
        'with saltwater',
        'water of',
        'salt water at',
        'saltwater at',
        'water at',
      ],
      default: { value: 0, unit: 'g/kg', why: 'fresh water' },
      ask: 'How salty was the water that went in?',
      example: '0 ppt',
    }),
    temperature: waterTemperature,
  },
  oneOf: [['evaporated'], ['added']],
  rules: [
    {
      refuse: 'V_e >= V',
      because: 'More water evaporated than the system holds: are the two swapped?',
      about: 'evaporated',
    },
  ],
  steps: [
    step('M', 'V*rho_sw(S, T)', 'mass', 'water and salt before'),
    step('m_e', 'V_e*rho_w(T)', 'mass', 'water that evaporated; its salt stays'),
    step('m_a', 'V_a*rho_sw(S_a, T)', 'mass', 'water that was added'),
    step('S_2', '(M*S + m_a*S_a)/(M - m_e + m_a)', 'salinity', 'salinity after'),
    step('d', 'S_2 - S', 'salinity', 'change'),
    step('rho_2', 'rho_sw(S_2, T)', 'density', 'density after'),
    step(
      'SG_2',
      'rho_sw(S_2, celsius(25))/rho_w(celsius(25))',
      'specific gravity',
      'specific gravity after, 25 °C over 25 °C',
    ),
  ],
  results: {
    salinity_after: result('S_2', 'salinity', 'salinity after', {
      range: [0, 42, 'g/kg'],
      because: 'The salinity comes out above 42 ppt, where this method ends: see to the animals first, numbers later.',
    }),
    change: result('d', 'salinity', 'change'),
    specific_gravity_after: result('SG_2', 'specific gravity', 'specific gravity after, 25/25 °C'),
    density_after: result('rho_2', 'density', 'density after'),
  },
  headline: [
    { text: 'The salinity rises from {salinity} to {salinity_after}.', when: 'd > 0.00005' },
    { text: 'The salinity falls from {salinity} to {salinity_after}.', when: 'd < -0.00005' },
    { text: 'The salinity stays at {salinity_after}.' },
  ],
  cautions: [
    caution(
      'caution',
      'A jump of more than 2 ppt harms corals and invertebrates (common practice). After days at the new salinity bring it back by 1 ppt a day; an accident some hours old may be undone in hours. Ask a person who keeps such animals.',
      'abs(d) > 0.002',
    ),
    caution(
      'caution',
      'Evaporation must be replaced with fresh water: the salt stays behind, and salt water adds its own on top.',
      'V_e > 0 and S_a > 0.005',
    ),
    caution(
      'note',
      'Size the top-off’s reservoir so that all of it at once costs less than 2 ppt: about 6 % of the system (common practice).',
      'V_a > 0 and S_a < 0.005',
    ),
    caution(
      'note',
      'Let the top-off bring a high salinity down rather than pouring fresh water in by hand.',
      'd > 0.0003',
    ),
    caution(
      'note',
      'Small systems swing fastest. Find the cause before you correct the number: measure with a second instrument.',
    ),
    caution(
      'note',
      'Salt creep, skimmate and rock taken out wet carry salt away, so a system also drifts down slowly (common practice).',
    ),
  ],
  sources: ['mass balance of salt and water; density EOS-80 (UNESCO Technical Papers in Marine Science 44)'],
  examples: [
    '20 L evaporated from my 400 L system at 35 ppt, what is the salinity',
    'float stuck and added 5 gal of fresh water too much, 75 gal system at 35 ppt',
    '40 L evaporated from 400 L at 35 and I replaced 40 L with salt water of 35 ppt',
  ],
});
