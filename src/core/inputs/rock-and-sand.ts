import { type Condition, quantity, step } from '../calculation.js';

const sandGiven: Condition = { given: 'sand_depth' };

/** Rock and sand as solids that stand where water would. Their pores fill with water, so only the mineral counts. */
export const solidInputs = {
  rock_mass: quantity('mass', {
    symbol: 'm',
    name: 'dry rock',
    words: ['rock', 'rocks', 'live rock', 'dry rock', 'rockwork'],
    range: [0, 5000, 'kg'],
    usual: [1, 300, 'kg'],
    needed: false,
    ask: 'How much rock is in the tank, weighed dry?',
    example: '60 kg or 130 lb',
    profile: 'rock.mass',
  }),
  rock_density: quantity('density', {
    symbol: 'rho_r',
    name: 'density of the rock itself, pores apart',
    words: ['rock density', 'density'],
    range: [1500, 3000, 'kg/m3'],
    default: {
      value: 2700,
      unit: 'kg/m3',
      low: 2400,
      high: 2900,
      why: 'calcite and aragonite; the bulk density of a porous piece, 1000 to 2000, is the wrong number here',
      when: { given: 'rock_mass' },
    },
    needed: false,
    ask: 'How dense is the rock itself?',
    example: '2700 kg/m3',
    profile: 'rock.density',
  }),
  sand_area: quantity('area', {
    symbol: 'A_s',
    name: 'area of the sand bed',
    words: ['sand area', 'bed area', 'floor area', 'footprint'],
    range: [0, 40, 'm2'],
    needed: sandGiven,
    default: { formula: '(L - 2*t)*(W - 2*t)', when: sandGiven },
    ask: 'How large is the area that the sand covers?',
    example: '0.8 m2 or 9 sq ft',
    profile: 'sand.area',
  }),
  sand_depth: quantity('length', {
    symbol: 'd_s',
    name: 'depth of the sand bed',
    words: ['sand', 'sand bed', 'of sand', 'substrate', 'bed', 'gravel'],
    range: [0, 0.3, 'm'],
    usual: [1, 15, 'cm'],
    needed: false,
    ask: 'How deep is the sand bed?',
    example: '1.5 in or 4 cm',
    profile: 'sand.depth',
  }),
  sand_porosity: quantity('fraction', {
    symbol: 'phi',
    name: 'share of the sand bed that is water',
    words: ['porosity', 'pores'],
    range: [0.2, 0.7, 'fraction'],
    default: { value: 0.44, unit: 'fraction', low: 0.4, high: 0.5, why: 'carbonate sand', when: sandGiven },
    slips: [[1, 1e3, 'A porosity is a fraction between 0 and 1: 0.44, or 44 %.']],
    needed: false,
    ask: 'Which share of the sand bed is water between the grains?',
    example: '44 %',
    profile: 'sand.porosity',
  }),
};

export const solidSteps = [
  step('V_rock', 'm/rho_r', 'volume', 'water that the rock displaces'),
  step('V_sand', 'A_s*d_s*(1 - phi)', 'volume', 'water that the sand displaces'),
  step('V_solid', 'V_rock + V_sand', 'volume', 'water that both displace'),
  step('V_solid', 'V_rock', 'volume', 'water that the rock displaces'),
  step('V_solid', 'V_sand', 'volume', 'water that the sand displaces'),
];

export const SOLID_SOURCES = [
  'mass over grain density, and bed volume times its solid share: definitions',
  'porosity of carbonate sand 0.40 to 0.50: Enos and Sawatsky 1981, J. Sedimentary Petrology 51: 961 (from memory)',
];
