import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { insideDiameter, returnPipe } from '../inputs/pipe.js';
import { returnFlow } from '../inputs/return-flow.js';
import { QUIET } from '../inputs/return-line.js';
import { boreAreaStep, pipeFlowConstants } from '../inputs/siphon.js';

const { e: _, g: __, ...constants } = pipeFlowConstants;
const bore = { metric: 'mm', us: 'in' };

export const pumpVelocity = calculation({
  id: 'pump.velocity',
  slash: 'return velocity',
  title: 'Speed in the pipe',
  question: 'How fast does the water run in this pipe, and is the pipe wide enough?',
  part: 'return',
  cues: [
    'velocity',
    'water speed',
    'speed in the pipe',
    'how fast',
    'gph too fast for',
    'lph too fast for',
    'too fast for a',
    'flow too fast',
    'gph too much for a',
    'pipe noise',
    'noisy pipe',
    'pipe big enough',
    'pipe large enough',
    'pipe too small',
    'pipe size for',
    'what size pipe',
    'what pipe size',
    'which pipe for',
    'pvc for',
    'speed',
    'the speed',
    'speed in m/s',
    'in m/s',
    'meters per second',
    'metres per second',
    'feet per second',
    'ft/s',
    'fps',
    'whistles',
    'whistling',
    'hissing',
    'hisses',
    'wide enough',
    'pvc wide enough',
    'pipe wide enough',
    'pipe too narrow',
    'too narrow',
    'undersized',
    'plumbing too small',
    'plumbing big enough',
    'pipe small for',
    'what diameter',
    'diameter of pipe',
    'what diameter of pipe',
    'what size plumbing',
    'what size pvc',
    'what size line',
    'pipe for #',
    'return line size',
    'so its quiet',
  ],
  inputs: {
    flow: returnFlow,
    pipe: returnPipe,
    inside_diameter: quantity('length', { ...insideDiameter, needed: false }),
  },
  constants: {
    ...constants,
    V_quiet: { value: 1.5, unit: 'm/s', name: 'speed that is still quiet' },
    V_top: { value: 2.4, unit: 'm/s', name: 'highest speed to plan for' },
  },
  steps: [
    boreAreaStep,
    step('V', 'Q_r/A', 'speed', 'speed in the pipe'),
    step('Re', 'V*D/nu', 'ratio', 'Reynolds number'),
    step('D_q', 'sqrt(4*Q_r/(V_quiet*pi))', 'length', 'smallest bore that is quiet'),
    step('Q_q', 'V_quiet*A', 'flow', 'most that this bore carries quietly'),
    step('Q_t', 'V_top*A', 'flow', 'most to plan for in this bore'),
  ],
  results: {
    velocity: result('V', 'speed', 'speed in the pipe'),
    reynolds: result('Re', 'ratio', 'Reynolds number'),
    smallest_diameter_for_1_5: result('D_q', 'length', 'smallest bore for 1.5 m/s', { units: bore }),
    flow_at_1_5: result('Q_q', 'flow', 'flow at 1.5 m/s in this bore'),
    flow_at_2_4: result('Q_t', 'flow', 'flow at 2.4 m/s in this bore'),
  },
  headline: [
    {
      text: 'Take a bore of {smallest_diameter_for_1_5:both} or more: there {flow} runs at the 1.5 m/s (5 ft/s) that is still quiet.',
      when: { not: { given: 'inside_diameter' } },
    },
    {
      text: 'Quiet: the water runs at {velocity:both}; this pipe is quiet up to {flow_at_1_5:both}.',
      when: 'V <= V_quiet',
    },
    {
      text: 'It may be heard: the water runs at {velocity:both}; a bore of {smallest_diameter_for_1_5:both} or more is quiet at this flow.',
      when: 'V <= V_top',
    },
    {
      text: 'Too small a pipe: the water runs at {velocity:both}; take a bore of {smallest_diameter_for_1_5:both} or more.',
    },
  ],
  cautions: [
    caution(
      'caution',
      'At this speed pipe and fittings eat much of the pump’s head: return pump shows how much flow a wider pipe gives.',
      'V > V_top',
    ),
    caution('note', 'Name a pipe (1 in schedule 40, 32 mm) and I say how fast the water runs in it.', {
      not: { given: 'inside_diameter' },
    }),
    caution(
      'note',
      'It goes by the bore: a nominal size is only a name. Compare it with the bores of the pipes you can buy.',
    ),
    caution(
      'note',
      'These speeds are for the pressure side, full of water. A drain is another matter: drain siphon and drain open work those out.',
    ),
    caution('note', 'Below 0.3 m/s dirt and growth settle in the line.', 'V < 0.3'),
  ],
  sources: ['continuity: flow over area', QUIET],
  examples: [
    'how fast is the water at 900 gph in 1 in schedule 40 pipe',
    'what size pipe for 1000 gph of return flow',
    'is a 32 mm pipe big enough for 3484 L/h of return flow',
    'water velocity for 3484 L/h in 27.2 mm bore',
  ],
});
