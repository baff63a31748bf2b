import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { floorHidden, pressureProvesNothing } from '../cautions/floor.js';
import { gravity } from '../constants.js';
import { calculation } from '../define.js';
import {
  bottomThickness,
  commonFreeboard,
  commonPane,
  freeboard,
  glassThickness,
  height,
  length,
  width,
} from '../inputs/display.js';
import { PANES, paneDensityInputs } from '../inputs/pane-weight.js';
import { solidInputs } from '../inputs/rock-and-sand.js';
import { salinityKept } from '../inputs/salinity.js';
import { SAND_SOURCE, sandBulkDensity } from '../inputs/sand.js';
import { standInputs } from '../inputs/stand.js';
import { noSumpInside, sumpInputs } from '../inputs/sump.js';
import { systemVolume, waterTemperature } from '../inputs/system-water.js';
import { noInside, noWater } from '../inputs/tank-shape.js';

const bySize: Condition = { all: [{ given: 'length' }, { given: 'height' }] };
const noVolume: Condition = { not: { given: 'water_volume' } };
const paneSize: Condition = { all: [bySize, { not: { given: 'tank_mass' } }] };

/** Nothing but the water is known. */
const WATER_ALONE = 'M <= m_w';
/** Where a suspended floor is nobody's guess any more (common practice, no source). */
const HEAVY = 'M > 500';

export const weightSystem = calculation({
  id: 'weight.system',
  slash: 'structure full-weight',
  title: 'Weight of the filled tank',
  question: 'How much does everything weigh filled, and what does it put on the floor?',
  part: 'getting it in',
  cues: [
    '~weigh',
    '~weighs',
    '~weight',
    '~heavy',
    'weigh full',
    'weigh filled',
    'weighs full',
    'weighs filled',
    'tank weigh',
    'tank weigh with',
    'does my tank weigh',
    'will my tank weigh',
    'would my tank weigh',
    'full weight',
    'filled weight',
    'total weight',
    'weight full',
    'weight filled',
    'how heavy',
    'how much does it weigh',
    'how much will it weigh',
    'how much would it weigh',
    'weight of my',
    'weight of a',
    'weight of the whole',
    'tank filled',
    'tank full',
    'full of water',
    'once filled',
    'when filled',
    'when full',
    'weight on the floor',
    'weight on my floor',
    'load on the floor',
    'load on my floor',
    'floor load',
    'floor loading',
    'floor pressure',
    'pounds per square foot',
    'psf',
    'weight with water',
    'weigh with water',
  ],
  inputs: {
    water_volume: quantity('volume', {
      ...systemVolume,
      name: 'water in the tank and the sump',
      needed: { not: { given: 'length' } },
      ask: 'How much water is in it, or how long, wide and high is the tank?',
      example: '473 L, 125 gal, or 150x60x55 cm',
    }),
    salinity: quantity('salinity', {
      ...salinityKept,
      default: { value: 35, unit: 'g/kg', why: 'a reef tank; it moves the weight of the water by 0.1 % a ppt' },
    }),
    temperature: quantity('temperature', waterTemperature),
    length: quantity('length', { ...length, needed: false }),
    width: quantity('length', { ...width, needed: { given: 'length' } }),
    height: quantity('length', { ...height, needed: { all: [{ given: 'length' }, noVolume] } }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      needed: false,
      default: commonPane({ any: [paneSize, { all: [bySize, noVolume] }] }),
    }),
    bottom_thickness: quantity('length', {
      ...bottomThickness,
      needed: false,
      default: { same: 'glass_thickness', when: bySize },
    }),
    freeboard: quantity('length', {
      ...freeboard,
      needed: false,
      default: commonFreeboard({ all: [bySize, noVolume] }),
    }),
    material: paneDensityInputs.material,
    tank_mass: quantity('mass', {
      symbol: 'm_t',
      name: 'empty tank',
      words: ['empty tank', 'tank weighs', 'glass weighs', 'tank itself', 'tank', 'aquarium'],
      range: [0, 10_000, 'kg'],
      usual: [10, 1000, 'kg'],
      default: [
        { formula: `rho_m*(${PANES})` },
        { value: 0, unit: 'kg', why: 'not counted until you give its sizes and glass, or its weight' },
      ],
      ask: 'How heavy is the empty tank?',
      example: '115 kg or 250 lb',
      profile: 'display.mass',
    }),
    ...standInputs,
    ...sumpInputs,
    sump_glass_thickness: quantity('length', { ...sumpInputs.sump_glass_thickness, needed: false }),
    rock_mass: quantity('mass', {
      ...solidInputs.rock_mass,
      default: { value: 0, unit: 'kg', why: 'not counted until you say' },
    }),
    rock_density: quantity('density', {
      ...solidInputs.rock_density,
      default: {
        value: 2700,
        unit: 'kg/m3',
        low: 2400,
        high: 2900,
        why: 'calcite and aragonite, pores apart',
        when: { all: [{ any: ['m > 0', 'm_sd > 0'] }, noVolume, bySize] },
      },
    }),
    sand_depth: solidInputs.sand_depth,
    bulk_density: quantity('density', { ...sandBulkDensity({ given: 'sand_depth' }), needed: false }),
    sand_mass: quantity('mass', {
      symbol: 'm_sd',
      name: 'dry sand',
      words: ['sand', 'gravel', 'substrate', 'aragonite'],
      range: [0, 5000, 'kg'],
      usual: [2, 200, 'kg'],
      default: [
        { formula: '(L - 2*t)*(W - 2*t)*d_s*rho_b' },
        { value: 0, unit: 'kg', why: 'not counted until you say how much or how deep' },
      ],
      ask: 'How much sand is in it, weighed dry?',
      example: '38 kg or 80 lb',
      profile: 'sand.mass',
    }),
    equipment_mass: quantity('mass', {
      symbol: 'm_e',
      name: 'equipment, lights, lid and the empty sump',
      words: ['equipment', 'gear', 'kit', 'lights', 'hood', 'lid', 'pumps'],
      range: [0, 5000, 'kg'],
      usual: [2, 200, 'kg'],
      default: { value: 0, unit: 'kg', why: 'not counted until you say' },
      ask: 'How heavy are the equipment, the lights and the empty sump?',
      example: '30 kg or 65 lb',
      profile: 'stand.equipment_mass',
    }),
  },
  constants: { g: gravity },
  rules: [
    noInside('W', 'width'),
    noInside('L', 'length'),
    noWater,
    noSumpInside,
    {
      refuse: 'V <= 0',
      because: 'Rock and sand would take more room than there is water: check the units of both.',
      about: 'rock_mass',
    },
  ],
  steps: [
    step('V_d', '(L - 2*t)*(W - 2*t)*(H - t_b - fb)', 'volume', 'inside the glass, to the water line', noVolume),
    step('V_s', '(L_s - 2*t_s)*(W_s - 2*t_s)*h_s', 'volume', 'water in the sump', noVolume),
    // Sand is of the same minerals as the rock: what both displace follows from their dry mass, however it became known.
    step('V_solid', '(m + m_sd)/rho_r', 'volume', 'water that rock and sand displace', {
      all: [noVolume, { any: ['m > 0', 'm_sd > 0'] }],
    }),
    step('V', 'V_d + V_s - V_solid', 'volume', 'water in tank and sump, rock and sand taken off'),
    step('V', 'V_d - V_solid', 'volume', 'water, rock and sand taken off'),
    step('V', 'V_d + V_s', 'volume', 'water in tank and sump'),
    step('V', 'V_d', 'volume', 'water'),
    step('rho', 'rho_sw(S, T)', 'density', 'density of the water'),
    step('m_w', 'V*rho', 'mass', 'water'),
    step('M', 'm_w + m_t + m + m_sd + m_st + m_e', 'mass', 'all together'),
    step('p', 'M*g/(L_f*W_f)', 'pressure', 'mean pressure over the footprint'),
    step('q', 'M*g/(2*L_f)', 'line load', 'on each of two rails along the length'),
    step('M_f', 'M/n_f', 'mass', 'on each foot, if they all carry alike'),
  ],
  results: {
    total_mass: result('M', 'mass', 'everything, filled', { feeds: 'stand.full_mass' }),
    water_mass: result('m_w', 'mass', 'water'),
    empty_tank: result('m_t', 'mass', 'empty tank', { when: 'm_t > 0' }),
    sand: result('m_sd', 'mass', 'dry sand', { when: 'm_sd > 0' }),
    water_density: result('rho', 'density', 'density of the water'),
    floor_pressure: result('p', 'pressure', 'mean pressure over the footprint', {
      units: { metric: 'kN/m2', us: 'psf' },
    }),
    line_load: result('q', 'line load', 'on each of two rails along the length'),
    mass_per_foot: result('M_f', 'mass', 'on each foot, if they all carry alike'),
  },
  headline: [
    {
      text: 'The water alone weighs {water_mass:both}; tank, rock, sand and stand come on top.',
      when: WATER_ALONE,
    },
    {
      text: 'Filled it weighs {total_mass:range}: {floor_pressure} over its footprint.',
      when: 'p > 0',
    },
    { text: 'Filled it weighs {total_mass:range}.' },
  ],
  cautions: [
    caution(
      'caution',
      'This is heavy enough to ask a structural engineer before it stands on a suspended floor. A slab on the ground usually carries it, and is not checked here either.',
      HEAVY,
    ),
    { ...floorHidden, when: { not: HEAVY } },
    { ...pressureProvesNothing, when: 'p > 0' },
    caution(
      'caution',
      'Feet never share alike: on a floor that is not flat two of them carry nearly everything, {total_mass} here. Put a plate or a sill under them.',
      { given: 'feet' },
    ),
    caution('note', 'Left out because you have not said: the empty tank. Its sizes and glass are enough.', 'm_t <= 0'),
    caution('note', 'The stand counts as nothing until you tell me its weight, equipment and lid too.', {
      all: ['m_st <= 0', { not: WATER_ALONE }],
    }),
    caution('note', 'Count rock dry: wet rock has brought its water along, and that would count twice.', 'm > 0'),
  ],
  sources: [
    'sum of the parts; weight over the footprint',
    'design loads of floors: 40 psf, 30 in sleeping rooms (IRC Table R301.5, ASCE 7 Table 4.3-1); 1.5 to 2.0 kN/m² and a point load of 2 to 3 kN (EN 1991-1-1 category A, from memory)',
    'rock and sand displace their mass over their grain density: definition',
    SAND_SOURCE,
  ],
  examples: [
    'how much does my tank weigh full: 150x60x55 cm, 12 mm glass, 60 kg of rock, stand 70 kg',
    'weight of a 125 gal tank filled, empty tank 220 lb, 120 lb of rock, 80 lb sand, stand 150 lb, footprint 72x18 in',
    'how heavy is a 4 ft x 18 in x 2 ft tank with 10 mm glass when it is full of water',
  ],
});
