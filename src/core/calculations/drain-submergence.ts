import { caution, result, step } from '../calculation.js';
import { testDrainsBeforeTrust } from '../cautions/plumbing.js';
import { gravity, pi } from '../constants.js';
import { calculation } from '../define.js';
import { insideDiameter, pipe } from '../inputs/pipe.js';
import { returnFlow } from '../inputs/return-flow.js';

export const drainSubmergence = calculation({
  id: 'drain.submergence',
  slash: 'drain submergence',
  title: 'How deep an intake must lie',
  question: 'How far under water must an intake lie so that it draws no air?',
  part: 'drains',
  cues: [
    'how deep under water',
    'submergence',
    'submerged',
    'vortex',
    'whirlpool',
    'sucks air',
    'sucking air',
    'draws air',
    'slurping',
    'intake depth',
    'how deep the intake',
  ],
  inputs: { pipe, inside_diameter: insideDiameter, flow: returnFlow },
  constants: { g: gravity, pi },
  steps: [
    step('V', 'Q_r/(pi*D^2/4)', 'speed', 'speed in the intake'),
    step('Fr', 'V/sqrt(g*D)', 'ratio', 'Froude number'),
    step('S', 'D*(1 + 2.3*Fr)', 'length', 'water needed over the intake'),
  ],
  results: {
    submergence: result('S', 'length', 'water needed over the intake', { figures: 2 }),
    velocity: result('V', 'speed', 'speed in the intake'),
    froude: result('Fr', 'ratio', 'Froude number'),
  },
  headline: [{ text: 'For {flow} the intake must lie about {submergence:both} under water to draw no air.' }],
  cautions: [
    caution(
      'note',
      'Less will do with an elbow turned down or a strainer of larger open area: either slows the water where it enters. Without them it gulps and gurgles.',
    ),
    caution('note', 'The rule is written for pump sumps without a swirl; walls close by and a turning flow need more.'),
    testDrainsBeforeTrust,
  ],
  sources: ['ANSI/HI 9.8, minimum submergence of intakes (from memory)'],
  examples: [
    'how deep must a 1-1/4 in drain inlet be submerged to not suck air at 800 gph',
    'submergence for 3200 L/h into a 34 mm bore',
  ],
});
