import { quantity, type Step, step } from '../calculation.js';
import { gravity, pi } from '../constants.js';

/** Length and drop of a drain that runs full, and the steps to its flow; shared by the siphon, the clog and the emergency drain. */
export const siphonInputs = {
  pipe_length: quantity('length', {
    symbol: 'L_p',
    name: 'pipe length',
    words: [
      'of pipe',
      'pipe length',
      'pipe run',
      'long',
      'pipe',
      'ft pipe',
      'foot pipe',
      'feet pipe',
      'cm pipe',
      'm pipe',
      'meter pipe',
      'metre pipe',
      'ft of pipe',
      'feet of pipe',
      'm of pipe',
      'cm of pipe',
      'run',
      'pipe is',
      'of pvc',
      'of tube',
      'of tubing',
      'of hose',
      'length',
      'ft long',
      'm long',
      'cm long',
      'in long',
      'feet long',
      'inches of pipe',
      'inch of pipe',
      'in of pipe',
      'foot of pipe',
      'mm of pipe',
      'feet of pvc',
      'ft of pvc',
      'total length',
      'length of the pipe',
      'pipe altogether',
    ],
    range: [0, 30, 'm'],
    usual: [0.2, 6, 'm'],
    ask: 'How long is the drain pipe altogether?',
    example: '40 in or 1.2 m',
    profile: 'drain.pipe_length',
  }),
  drop: quantity('length', {
    symbol: 'H',
    name: 'drop, water surface to water surface',
    words: [
      'drop',
      'fall',
      'down to the sump',
      'between the surfaces',
      'height difference',
      'head',
      'ft drop',
      'foot drop',
      'feet drop',
      'in drop',
      'inch drop',
      'cm drop',
      'm drop',
      'mm drop',
      'drop of',
      'fall of',
      'ft fall',
      'm fall',
      'cm fall',
      'down to the sump water',
      'to sump water',
      'display water to sump water',
      'vertical',
      'vertical drop',
      'difference in height',
      'difference in levels',
      'from display to sump',
      'straight down',
      'between both water levels',
      'between the water levels',
      'between water levels',
      'both water levels',
      'height between',
      'from surface to surface',
      'surface to surface',
      'feet of drop',
      'ft of drop',
      'foot of drop',
      'inches of drop',
      'in of drop',
      'm of drop',
      'cm of drop',
      'inches drop',
      'meter drop',
      'metre drop',
      'meters drop',
      'metres drop',
      'falls',
      'drain drop',
      'to the sump water',
      'overflow water to the sump water',
      'overflow to sump',
      'from overflow to sump',
      'water to water',
    ],
    range: [0.05, 5, 'm'],
    usual: [0.3, 2.5, 'm'],
    slips: [
      [
        -1e6,
        0,
        'A siphon needs the lower water surface below the upper one: the drop is the height between the two surfaces.',
      ],
    ],
    ask: 'How far is it from the water surface in the overflow down to the water surface in the sump?',
    example: '30 in or 80 cm',
    profile: 'drain.drop',
  }),
};

export const pipeFlowConstants = {
  g: gravity,
  nu: { value: 9.4e-7, unit: 'm^2/s', name: 'kinematic viscosity of seawater at 25 °C' },
  e: { value: 1.5e-6, unit: 'm', name: 'roughness of plastic pipe (Moody 1944, from memory)' },
  pi,
};

export const boreAreaStep = step('A', 'pi*D^2/4', 'area', 'bore area');

/**
 * Flow of a pipe that runs full.
 * @param loss symbol of the loss coefficient of everything on the line
 * @param mark behind the symbols f, V and Q, where one answer works out several flows
 * @param what names the flow in the steps
 */
export const fullPipeSteps = (loss: string, mark: string, what: string): readonly Step[] => [
  step(`f${mark}`, `siphon_friction(D, L_p, ${loss}, H, nu, e)`, '1', 'friction factor at the speed below'),
  step(`V${mark}`, `sqrt(2*g*H/(f${mark}*L_p/D + ${loss}))`, 'speed', `speed in the pipe, ${what}`),
  step(`Q${mark}`, `A*V${mark}`, 'flow', `flow, ${what}`),
];

export const siphonSteps = [
  boreAreaStep,
  ...fullPipeSteps('K', '', 'full siphon'),
  step('Re', 'V*D/nu', 'ratio', 'Reynolds number'),
];

export const FULL_PIPE_SOURCES = [
  'energy balance between the two water surfaces (Darcy-Weisbach with minor losses)',
  'Swamee and Jain 1976',
];
