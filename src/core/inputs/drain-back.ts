import { type Condition, quantity, type Step, step } from '../calculation.js';
import { freeboard } from './display.js';
import { sumpInputs } from './sump.js';

const sumpAreaMissing: Condition = { not: { given: 'sump_area' } };

/** The sump as a vessel that drained water must fit into. Its area may come from its sizes. */
export const sumpVessel = {
  sump_area: quantity('area', {
    symbol: 'A_s',
    name: 'inside plan area of the sump',
    words: ['sump area', 'area of the sump', 'sump', 'sump footprint', 'sump inside area', 'sump floor'],
    range: [0.01, 10, 'm2'],
    needed: false,
    ask: 'What is the inside plan area of the sump?',
    profile: 'sump.area',
  }),
  sump_length: quantity('length', { ...sumpInputs.sump_length, needed: sumpAreaMissing }),
  sump_width: quantity('length', { ...sumpInputs.sump_width, needed: sumpAreaMissing }),
  sump_glass_thickness: quantity('length', {
    ...sumpInputs.sump_glass_thickness,
    needed: false,
    default: { value: 6, unit: 'mm', low: 4, high: 12, why: 'a common pane, no source', when: sumpAreaMissing },
  }),
  sump_rim: quantity('length', {
    symbol: 'H_s',
    name: 'height of the sump’s rim above its inside floor',
    words: [
      'rim',
      'sump height',
      'sump is',
      'sump high',
      'sump tall',
      'high',
      'tall',
      'height',
      'rim height',
      'sump rim',
      'rim at',
      'rim is',
      'cm high',
      'in high',
      'in tall',
      'cm tall',
      'sump walls are',
    ],
    range: [0.05, 2, 'm'],
    usual: [20, 70, 'cm'],
    ask: 'How high is the rim of the sump above its inside floor?',
    example: '17 in or 43 cm',
    profile: 'sump.height',
  }),
  freeboard: quantity('length', {
    ...freeboard,
    name: 'reserve below the sump’s rim',
    words: [...(freeboard.words ?? []), 'reserve', 'margin', 'spare', 'keep free', 'stay free', 'left free'],
    default: { value: 3, unit: 'cm', why: 'a reserve for waves and wrong guesses (common practice, no source)' },
    ask: 'How much must stay free below the rim of the sump?',
    example: '3 cm or 1.25 in',
    profile: 'sump.freeboard',
  }),
};

export const sumpAreaStep: Step = step('A_s', '(L_s - 2*t_s)*(W_s - 2*t_s)', 'area', 'inside plan area of the sump');
