import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { chamberInputs, chamberRules } from '../inputs/sump-chambers.js';

export const volumeSump = calculation({
  id: 'volume.sump',
  slash: 'volume sump',
  title: 'Water in the sump',
  question: 'How much water runs in the sump, and how much more can it take?',
  part: 'tank',
  cues: [
    'how much water',
    '~sump',
    'sump volume',
    'sump hold',
    'sump holds',
    '~chambers',
    '~chamber',
    'in the sump',
    'sump take',
    'room in the sump',
    'running volume',
    'free volume',
  ],
  inputs: {
    ...chamberInputs,
    height: quantity('length', {
      symbol: 'H',
      name: 'inside height of the sump',
      words: ['height', 'high', 'tall', 'rim', 'sump height'],
      range: [0.05, 1.5, 'm'],
      usual: [15, 90, 'cm'],
      ask: 'How high is the sump inside, bottom to rim?',
      example: '16 in or 40 cm',
      profile: 'sump.height',
    }),
    freeboard: quantity('length', {
      symbol: 'fb',
      name: 'margin left below the rim',
      words: ['freeboard', 'below the rim', 'margin', 'under the rim'],
      range: [0, 0.3, 'm'],
      usual: [0.5, 12, 'cm'],
      default: { value: 3, unit: 'cm', why: 'common practice, no source' },
      ask: 'How far below the rim should the water stay at worst?',
      example: '3 cm or 1 in',
      profile: 'sump.freeboard',
    }),
  },
  rules: [
    ...chamberRules,
    {
      refuse: 'fb >= H',
      because: 'The margin is as much as the whole height: check the two.',
      about: 'freeboard',
    },
  ],
  steps: [
    step('V_run', 'sum_i(A_i*z_i)', 'volume', 'water while it runs'),
    step('A', 'sum_i(A_i)', 'area', 'area of all chambers'),
    step('V_cap', 'A*(H - fb)', 'volume', 'water up to the safe line'),
    step('V_free', 'V_cap - V_run', 'volume', 'room left below the safe line'),
  ],
  results: {
    running_volume: result('V_run', 'volume', 'water while it runs'),
    capacity_to_safe_line: result('V_cap', 'volume', 'water up to the line below the rim'),
    free_volume: result('V_free', 'volume', 'room left below that line'),
  },
  headline: [
    {
      text: 'It runs with {running_volume:both}, which already stands above the line: no room is left for what drains back.',
      when: 'V_free <= 0',
    },
    { text: 'It runs with {running_volume:both} and can take {free_volume:both} more when the pump stops.' },
  ],
  cautions: [
    caution(
      'stop',
      'The sump is already fuller than the line you set: in a power cut it overflows. Lower the running level.',
      'V_free <= 0',
    ),
    caution(
      'caution',
      'Check the room left against what drains back from the display, box and pipes when the power fails, and test it by pulling the plug, standing there.',
    ),
    caution(
      'note',
      'A chamber runs at the height of the baffle it spills over plus the head on it; chambers joined under a baffle share a level. The return chamber’s level is free: it is what top-off holds.',
    ),
    caution('note', 'Count this running volume as system water, not what the sump could hold.'),
    caution('note', 'Equipment, media and rock in the sump take their share.'),
  ],
  sources: ['geometry: sum of prisms; above the tallest baffle the sump is one pool'],
  examples: [
    'how much room is left in the sump, first chamber 30 cm long, level 27 cm, sump 43 cm wide inside, 45 cm high',
    'how much water runs in my sump: area of the first chamber 500 sq in, level 10 in, sump 16 in high',
  ],
});
