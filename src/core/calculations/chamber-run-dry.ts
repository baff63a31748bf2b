import { caution, flag, result, step } from '../calculation.js';
import { waterAndMains } from '../cautions/return.js';
import { calculation } from '../define.js';
import { chamberConstants, chamberRules, chamberSteps, displayRoom, returnChamber } from '../inputs/return-chamber.js';
import { returnFlow } from '../inputs/return-flow.js';

export const chamberRunDry = calculation({
  id: 'chamber.run_dry',
  slash: 'topoff run-dry',
  title: 'How fast the return chamber runs dry',
  question: 'When the drains clog, how long until the return pump sucks air, and does the display hold that water?',
  general: true,
  part: 'top-off',
  cues: [
    'run dry',
    'run the return chamber',
    'how high can I run the return chamber',
    'how high may the return chamber',
    'display holds it',
    'runs dry',
    'running dry',
    'pump dry',
    'pump runs dry',
    'return pump runs dry',
    'until the return pump runs dry',
    'until the pump runs dry',
    'before the pump runs dry',
    'pump sucks air',
    'pump sucks air after',
    'goes dry',
    '~sucks air',
    '~sucking air',
    'return chamber empty',
    'return chamber empties',
    'empty the return chamber',
    'empties the return chamber',
    'pump out the return chamber',
    'return chamber fit in the display',
    'display hold the return chamber',
    'hold the return chamber',
    'holds the return chamber',
    'display take the return chamber',
  ],
  inputs: {
    ...returnChamber(),
    flow: returnFlow,
    ...displayRoom(),
  },
  constants: chamberConstants,
  rules: chamberRules,
  steps: [
    ...chamberSteps,
    step('t_d', 'V_u/Q_r', 'time', 'time until the pump sucks air'),
    step('rise', 'V_u/(A_d + A_b)', 'length', 'rise of the display', 'V_u <= V_f'),
    step('t_f', 'V_f/Q_r', 'time', 'time until the display runs over', 'V_u > V_f'),
    step('V_o', 'V_u - V_f', 'volume', 'water over the rim', 'V_u > V_f'),
    step('z_h', '(V_f - V_h)/A_r + z_d', 'length', 'highest running level that the display still holds'),
  ],
  results: {
    display_holds_it: flag('the display holds it', 'V_u <= V_f'),
    time_to_dry: result('t_d', 'time', 'time until the pump sucks air', { figures: 2 }),
    usable_volume: result('V_u', 'volume', 'water the pump can send up'),
    display_free_volume: result('V_f', 'volume', 'room in the display up to its rim'),
    display_rise: result('rise', 'length', 'rise of the display', { units: { metric: 'mm', us: 'in' } }),
    time_to_flood: result('t_f', 'time', 'time until the display runs over'),
    highest_level_held: result('z_h', 'length', 'highest running level that the display still holds', {
      when: 'z_h > z_d',
    }),
  },
  headline: [
    {
      text: 'The display holds it: the pump sucks air after {time_to_dry}, with {usable_volume} sent up into {display_free_volume} of room; the display rises {display_rise}.',
      when: 'V_u <= V_f',
    },
    {
      text: 'The display runs over after {time_to_flood}: the return chamber can send up {usable_volume:both}, and there is room for {display_free_volume}.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'One clogged drain puts {V_o} of salt water on the floor, near mains. Run the return chamber at {z_h} at most, or give the display more room below its rim.',
      'V_u > V_f and z_h > z_d',
    ),
    caution(
      'stop',
      'One clogged drain puts {V_o} of salt water on the floor, near mains, and no running level helps: the display needs more room below its rim.',
      'V_u > V_f and z_h <= z_d',
    ),
    caution(
      'caution',
      'It is close: waves, a wrong guess of the levels or a little growth on the overflow eat that margin.',
      'V_u <= V_f and V_u > 0.8*V_f',
    ),
    caution(
      'caution',
      'It holds only while nothing adds water: the float in the emptied chamber calls for top-off, which may never end. Ask topoff clog-flood next.',
      'V_u <= V_f',
    ),
    caution(
      'note',
      'It is seconds, not minutes: nobody gets there. Stop the pump, and any heater in that chamber, by a low-level switch.',
    ),
    caution('note', 'The level at which the pump sucks air is a guess: look at its inlet.', { assumed: 'dry_level' }),
    waterAndMains,
  ],
  sources: ['volume balance', 'a pump sucks air about 2 cm above its inlet: common practice, no source'],
  examples: [
    'drains clog: how long until the return pump runs dry? return chamber 10x16 in with 7 in of water, 900 gph, 60x24 in tank, water 1.25 in below the rim',
    'does the display hold the return chamber: return chamber 0.1032 m2, running level 17 cm, sucks air at 7 cm, 3484 L/h, display 0.81 m2, 3.1 cm below the rim',
    'return chamber runs dry how fast, chamber 30 x 40 cm, running at 20 cm, pump inlet 5 cm, 4000 L/h, tank 150x60 cm, 4 cm below the rim',
  ],
});
