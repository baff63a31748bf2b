import { type Condition, caution, flag, quantity, result, step } from '../calculation.js';
import { measureTheWay, padTheFace } from '../cautions/carrying.js';
import { pi } from '../constants.js';
import { calculation } from '../define.js';
import { height, length, width } from '../inputs/display.js';
import { ceiling, corridor1, corridor2 } from '../inputs/way-in.js';

const STANDS = 'd <= h_c';
const turning: Condition = { all: [{ given: 'corridor_1' }, { given: 'width' }] };
const TURNS = 'c >= 0 and s <= a and s <= b';

export const moveTilt = calculation({
  id: 'move.tilt',
  slash: 'structure tilt',
  title: 'Stood on end under the ceiling',
  question: 'Can the tank be stood on end, or how far can it be tilted under the ceiling, and how long is it then?',
  part: 'getting it in',
  cues: [
    'stand it on end',
    'stand on end',
    'on its end',
    'on end',
    'stood on end',
    'upended',
    'up end',
    'stand it up',
    'tilt',
    'tilt it',
    'tilted',
    'tip it up',
    'tip it',
    'tipping',
    'under the ceiling',
    'low ceiling',
    'headroom',
    'in the elevator',
    'in the lift car',
    'elevator',
    'stairwell',
    '~ceiling',
    'tip up',
    'tip up the tank',
    'go upright',
    'stand upright',
    'upright',
    'put it vertical',
    'vertical',
    'vertically',
    'stand tank on its end',
    'stand it vertical',
    'ceiling high enough',
    'ceiling too low',
    'under a # ceiling',
    'with # ceilings',
    'tilting',
    'tilt the tank',
    'can it be tilted',
    'ft ceiling',
    'foot ceiling',
  ],
  inputs: {
    length: quantity('length', {
      ...length,
      words: [...(length.words ?? []), 'in tank'],
      ask: 'How long is it, with packing?',
    }),
    height: quantity('length', { ...height, usual: [15, 120, 'cm'], ask: 'How high is it?' }),
    ceiling,
    width: quantity('length', { ...width, needed: { given: 'corridor_1' } }),
    corridor_1: quantity('length', { ...corridor1, needed: false }),
    corridor_2: quantity('length', {
      ...corridor2,
      needed: false,
      default: { same: 'corridor_1', when: { given: 'corridor_1' } },
    }),
  },
  constants: { pi },
  rules: [
    {
      refuse: 'H > h_c',
      because:
        'It is higher than the ceiling before it is tilted at all: check the two heights, or lay it on its side.',
      about: 'ceiling',
    },
  ],
  steps: [
    step('d', 'sqrt(L^2 + H^2)', 'length', 'diagonal, from corner to corner'),
    step('x', 'pi/2', 'angle', 'largest tilt', STANDS),
    step('x', 'asin(h_c/d) - atan(H/L)', 'angle', 'largest tilt, its upper corner at the ceiling'),
    step('p', 'H', 'length', 'length in plan on end', STANDS),
    step('p', 'L*cos(x) + H*sin(x)', 'length', 'length in plan at that tilt'),
    step('k', 'h_c - d', 'length', 'room under the ceiling while it stands up'),
    step('p_least', 'min(p, L)', 'length', 'shortest in plan, level or tilted'),
    step('l', 'max(p_least, W)', 'length', 'longer side in plan then'),
    step('s', 'min(p_least, W)', 'length', 'shorter side in plan then'),
    step('c', 'room_round_corner(a, b, l) - s', 'length', 'room left over in the corner'),
  ],
  results: {
    can_stand_on_end: flag('can be stood on end', STANDS),
    diagonal: result('d', 'length', 'diagonal, from corner to corner', { units: { metric: 'm', us: 'in' } }),
    largest_tilt: result('x', 'angle', 'largest tilt', { decimals: 0 }),
    plan_length_at_tilt: result('p', 'length', 'length in plan at that tilt'),
    turns_corner: flag('turns the corner like that', TURNS, turning),
    corner_clearance: result('c', 'length', 'room left over in the corner'),
  },
  headline: [
    {
      text: 'Yes, it can be stood on end: its diagonal of {diagonal:both} leaves {k} under the ceiling, and on end it is {plan_length_at_tilt:both} long in plan.',
      when: STANDS,
    },
    {
      text: 'No, it cannot be stood on end: its diagonal is {diagonal:both}; it tilts to {largest_tilt}, but is no shorter in plan for that.',
      when: 'p >= L',
    },
    {
      text: 'No, it cannot be stood on end: its diagonal is {diagonal:both}; tilted as far as it goes, {largest_tilt}, it is {plan_length_at_tilt:both} long in plan.',
    },
  ],
  cautions: [
    caution('note', 'Give me its width and the two corridors and I say whether it turns the corner like that.', {
      not: turning,
    }),
    caution('note', 'Like that it turns the corner, with {corner_clearance} to spare.', { all: [turning, TURNS] }),
    caution('caution', 'Even like that it does not turn the corner.', { all: [turning, { not: TURNS }] }),
    caution(
      'caution',
      'Less than 5 cm (2 in) is left while the corner swings past the ceiling: measure at lamps, beams and door frames.',
      'k >= 0 and k < 0.05',
    ),
    caution(
      'stop',
      'On end all of its weight stands on one small pane and it topples easily: enough people hold it the whole time, nobody below it, never on stairs without movers.',
      STANDS,
    ),
    padTheFace,
    measureTheWay,
  ],
  sources: ['exact geometry: the upper corner of a rectangle that turns about its lower one'],
  examples: [
    'can I stand a 72 in long 21 in high tank on end under an 8 ft ceiling',
    'how far can I tilt a tank 240 cm long, 80 cm high under a 240 cm ceiling',
    'stand it on end: tank is 6 ft long and 2 ft tall, ceiling 7 ft',
  ],
});
