import { quantity } from '../calculation.js';

/** What stands under the tank, and where it meets the floor. */
export const standInputs = {
  stand_mass: quantity('mass', {
    symbol: 'm_st',
    name: 'stand or cabinet',
    words: ['stand', 'cabinet', 'stand weighs'],
    range: [0, 5000, 'kg'],
    usual: [10, 300, 'kg'],
    default: { value: 0, unit: 'kg', why: 'not counted until you say' },
    ask: 'How heavy is the stand?',
    example: '70 kg or 150 lb',
    profile: 'stand.mass',
  }),
  foot_length: quantity('length', {
    symbol: 'L_f',
    name: 'length of the footprint on the floor',
    words: ['footprint', 'foot length', 'stand footprint'],
    range: [0.05, 8, 'm'],
    default: { same: 'length' },
    needed: false,
    ask: 'How long is the footprint of the stand on the floor?',
    example: '72 in or 150 cm',
    profile: 'stand.foot_length',
  }),
  foot_width: quantity('length', {
    symbol: 'W_f',
    name: 'width of the footprint on the floor',
    words: ['footprint width', 'foot width', 'stand width'],
    range: [0.05, 8, 'm'],
    default: { same: 'width' },
    needed: false,
    ask: 'How wide is the footprint of the stand on the floor, front to back?',
    example: '18 in or 60 cm',
    profile: 'stand.foot_width',
  }),
  feet: quantity('count', {
    symbol: 'n_f',
    name: 'number of feet or legs',
    words: ['feet', 'legs', 'levelling feet', 'castors'],
    range: [3, 30, 'count'],
    whole: true,
    needed: false,
    ask: 'On how many feet or legs does the stand stand?',
    example: '4',
    profile: 'stand.feet',
  }),
};
