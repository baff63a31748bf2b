import { type Condition, quantity, step } from '../calculation.js';
import { solidInputs } from './rock-and-sand.js';

/** One piece of rockwork: its mass, and what it weighs under water. */
export const pieceMass = quantity('mass', {
  symbol: 'm',
  name: 'dry mass of the piece',
  words: [
    'rock',
    'column',
    'piece',
    'arch',
    'pillar',
    'weighs',
    'structure',
    'tower',
    'stack',
    'kg rock',
    'lb rock',
    'boulder',
    'stone',
    'big rock',
    'kg piece',
    'lb piece',
    'rockwork',
    'aquascape',
    'weighs about',
    'heavy',
    'biggest',
    'biggest is',
    'biggest rock',
    'biggest rock is',
    'reef',
    'stone is',
    'piece is',
    'rock is',
    'pillar is',
    'arch is',
    'tower is',
  ],
  range: [0, 2000, 'kg'],
  aboveLow: true,
  usual: [1, 150, 'kg'],
  ask: 'How heavy is the piece of rockwork, dry?',
  example: '25 kg or 55 lb',
});

/** @param when the density is needed at all */
export const pieceDensity = (when?: Condition) =>
  quantity('density', {
    ...solidInputs.rock_density,
    default: {
      value: 2700,
      unit: 'kg/m3',
      low: 2400,
      high: 2900,
      why: 'calcite and aragonite; open pores fill with water and lift nothing',
      ...(when === undefined ? {} : { when }),
    },
  });

export const submergedWeight = step('F', 'm*g*(1 - rho_h/rho_r)', 'force', 'weight under water');
