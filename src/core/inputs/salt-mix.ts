import { type Condition, choice, quantity, type Rule, step } from '../calculation.js';

/** How people quote what is printed on the salt. */
const LABEL_SAYS = [
  'label',
  'label says',
  'bucket says',
  'bag says',
  'box says',
  'tub says',
  'packet says',
  'instructions say',
  'directions say',
];

const labelUsed: Condition = { all: [{ given: 'label_rate' }, { not: { given: 'dry_fraction' } }] };
const drynessAssumed: Condition = { assumed: 'dry_fraction' };

/** What a kilogram of salt mix brings: its dry share, or the label from which that follows. */
export const saltMixInputs = {
  dry_fraction: quantity('fraction', {
    symbol: 'f',
    name: 'dissolved salts in a kilogram of the mix',
    words: ['dry fraction', 'dry', 'dryness', 'per cent dry', '% dry'],
    range: [0.6, 1, 'fraction'],
    default: {
      value: 0.9,
      unit: 'fraction',
      low: 0.85,
      high: 1,
      why: 'between bone dry and a mix with all its crystal water (Millero et al. 2008, amounts from memory)',
      when: { not: { given: 'label_rate' } },
    },
    needed: { not: { given: 'label_rate' } },
    ask: 'How dry is the mix?',
    example: '90 %',
    profile: 'salt.dry_fraction',
  }),
  label_rate: quantity('concentration', {
    symbol: 'c_l',
    name: 'salt per volume that the label gives',
    words: [...LABEL_SAYS, 'per litre', 'per liter', 'per gallon', 'per l', 'per gal'],
    range: [0, 200, 'g/L'],
    aboveLow: true,
    usual: [25, 50, 'g/L'],
    needed: false,
    ask: 'How much salt a litre does the label give?',
    example: '38 g/L or 0.32 lb/gal',
    profile: 'salt.label_rate',
  }),
  label_salinity: quantity('salinity', {
    symbol: 'S_l',
    name: 'salinity that the label promises with it',
    words: [...LABEL_SAYS, 'label salinity', 'which makes', 'for a salinity of', 'to reach'],
    range: [5, 42, 'g/kg'],
    needed: { given: 'label_rate' },
    ask: 'Which salinity does the label promise with that much salt?',
    example: '35 ppt',
    profile: 'salt.label_salinity',
  }),
  basis: choice({
    name: 'litre of what, on the label',
    words: ['basis', ...LABEL_SAYS, 'per litre', 'per liter', 'per gallon', 'per l', 'per gal', 'g l', 'lb gal'],
    byName: true,
    needed: { given: 'label_rate' },
    ask: 'Is the label’s litre (or gallon) one of finished salt water, or of the fresh water that the salt goes into?',
    options: {
      final: {
        label: 'finished salt water',
        words: [
          'finished water',
          'finished saltwater',
          'of mixed water',
          'of finished',
          'of mixed saltwater',
          'per litre of saltwater',
          'per litre of salt water',
          'per liter of saltwater',
          'per liter of salt water',
          'per gallon of saltwater',
          'per gallon of salt water',
          'g l of saltwater',
          'g l of salt water',
          'lb gal of saltwater',
          'lb gal of salt water',
          'of seawater',
          'mixed water',
        ],
      },
      fresh: {
        label: 'fresh water',
        words: [
          'per litre of fresh',
          'per liter of fresh',
          'per gallon of fresh',
          'g/l of fresh',
          'lb/gal of fresh',
          'per litre of ro',
          'per liter of ro',
          'per gallon of ro',
          'g l of ro',
          'per litre of pure water',
          'per liter of pure water',
          'of fresh water the salt goes into',
        ],
      },
    },
    profile: 'salt.label_basis',
  }),
};

export const saltMixConstants = {
  f_dry: { value: 1, unit: '1', name: 'dry share of a bone-dry mix' },
  f_damp: { value: 0.85, unit: '1', name: 'dry share of a mix with all its crystal water' },
};

/** The dry share `f` from a label, and its ends `f_high` and `f_low` where no label stands behind it. Needs `T`. */
export const saltMixSteps = [
  step('f', 'S_l*rho_sw(S_l, T)/c_l', 'fraction', 'dry share that the label comes to', { is: ['basis', 'final'] }),
  step('f', 'S_l*(rho_w(T) + c_l)/c_l', 'fraction', 'dry share that the label comes to', { is: ['basis', 'fresh'] }),
  step('f_high', 'f_dry', 'fraction', 'the driest it may be', drynessAssumed),
  step('f_low', 'f_damp', 'fraction', 'the dampest it may be', drynessAssumed),
  step('f_high', 'min(f + 0.02, 1)', 'fraction', 'the driest it may be', { given: 'dry_fraction' }),
  step('f_low', 'f - 0.02', 'fraction', 'the dampest it may be', { given: 'dry_fraction' }),
];

/** The ends of the mass `m` by a label, whose salt may be damp or settled. */
export const labelSpreadSteps = [
  step('m_low', 'm/1.05', 'mass', 'low end, label 5 % off (common practice, no source)', labelUsed),
  step('m_high', 'm*1.05', 'mass', 'high end, label 5 % off (common practice, no source)', labelUsed),
];

export const labelRules: readonly Rule[] = [
  {
    refuse: { all: [labelUsed, 'f > 1.05'] },
    because:
      'The label’s rate and its salinity don’t fit: so little salt in a litre cannot give that salinity even if it were bone dry. Check the rate, the unit and the kind of litre.',
    about: 'label_rate',
  },
  {
    refuse: { all: [labelUsed, 'f < 0.7'] },
    because:
      'The label’s rate and its salinity don’t fit: less than 70 % of the salt would dissolve into that salinity. Check the rate, the unit and the kind of litre.',
    about: 'label_rate',
  },
];

export const SALT_MIX_SOURCES = [
  'mass balance of salt and water; salinity counted in grams a kilogram, 0.5 % below the true mass of salt',
  'dry share of salt mixes: hydrate water of reference seawater weighed out as salts (Millero et al. 2008, amounts from memory)',
];
