import { quantity, step } from '../calculation.js';

/** Length and drop of a drain that runs full, and the steps to its flow; shared by the siphon, the clog and the emergency drain. */
export const siphonInputs = {
  pipe_length: quantity('length', {
    symbol: 'L_p',
    name: 'pipe length',
    words: ['of pipe', 'pipe length', 'pipe run', 'run', 'long'],
    range: [0, 30, 'm'],
    usual: [0.2, 6, 'm'],
    ask: 'How long is the drain pipe altogether?',
    example: '40 in or 1.2 m',
    profile: 'drain.pipe_length',
  }),
  drop: quantity('length', {
    symbol: 'H',
    name: 'drop, water surface to water surface',
    words: ['drop', 'fall', 'down to the sump', 'below', 'between the surfaces', 'height difference', 'head'],
    range: [0.05, 5, 'm'],
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
  g: { value: 9.80665, unit: 'm/s^2', name: 'standard gravity' },
  nu: { value: 9.4e-7, unit: 'm^2/s', name: 'kinematic viscosity of seawater at 25 °C' },
  e: { value: 1.5e-6, unit: 'm', name: 'roughness of plastic pipe (Moody 1944, from memory)' },
  pi: { value: Math.PI, unit: '1', name: 'pi' },
};

export const siphonSteps = [
  step('A', 'pi*D^2/4', 'area', 'bore area'),
  step('f', 'siphon_friction(D, L_p, K, H, nu, e)', '1', 'friction factor at the speed below'),
  step('V', 'sqrt(2*g*H/(f*L_p/D + K))', 'speed', 'speed in the pipe'),
  step('Q', 'A*V', 'flow', 'flow at full siphon'),
  step('Re', 'V*D/nu', 'ratio', 'Reynolds number'),
];
