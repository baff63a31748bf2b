import { caution, label, quantity, result, step } from '../calculation.js';
import { holesClog, othersEmptyToo, pullThePlug } from '../cautions/drain-back.js';
import { calculation } from '../define.js';
import { sumpAreaStep, sumpVessel } from '../inputs/drain-back.js';
import { returnArea } from '../inputs/return-chamber.js';
import { noSumpInside } from '../inputs/sump.js';

export const drainbackSafeLevel = calculation({
  id: 'drainback.safe_level',
  slash: 'drain safe-level',
  title: 'Highest running level of the sump',
  question: 'How high may the return chamber run so that a power cut does not flood the sump?',
  part: 'drains',
  cues: [
    'safe running level',
    'highest return chamber',
    'how high can return chamber',
    'how high may i run',
    'power cut doesnt flood',
    'survives an outage',
    'safe level',
    'max level',
    'maximum level',
    'highest level',
    'highest running level',
    'highest level for',
    'level for my sump',
    'max water line',
    'water line in the sump',
    'fill line',
    'how high can the sump',
    'how high may the sump',
    'how full can the sump',
    'how full can I run',
    'mark on the sump',
  ],
  inputs: {
    ...sumpVessel,
    drain_back: quantity('volume', {
      symbol: 'V_b',
      name: 'water that drains back',
      words: ['drains back', 'drain back', 'drainback', 'comes back', 'back'],
      range: [0, 2000, 'L'],
      ask: 'How much water drains back when the pump stops? The drain-back calculation works it out.',
      example: '9 gal or 35 L',
      profile: 'return.drain_back',
    }),
    other_chambers_volume: quantity('volume', {
      symbol: 'V_c',
      name: 'water in the other chambers while it runs',
      words: ['other chambers', 'other chamber', 'skimmer chamber', 'in the others', 'rest of the sump'],
      range: [0, 5000, 'L'],
      ask: 'How much water stands in the other chambers of the sump while it runs?',
      example: '17 gal or 67 L',
      profile: 'sump.other_chambers_volume',
    }),
    return_area: returnArea,
    upstream_lip: quantity('length', {
      symbol: 'h_l',
      name: 'height of the last baffle before the return chamber',
      words: ['lip', 'baffle', 'last baffle', 'upstream lip', 'bubble trap'],
      range: [0.01, 2, 'm'],
      usual: [10, 50, 'cm'],
      ask: 'How high is the lip of the last baffle before the return chamber?',
      example: '9 in or 22 cm',
      profile: 'sump.last_baffle',
    }),
  },
  rules: [
    {
      refuse: 'fb >= H_s',
      because: 'The reserve below the rim is as high as the sump: check the two heights.',
      about: 'freeboard',
    },
    noSumpInside,
    {
      refuse: 'h_l >= H_s',
      because: 'The last baffle is as high as the rim of the sump: check the two heights.',
      about: 'upstream_lip',
    },
    {
      refuse: 'A_r > A_s',
      because: 'The return chamber cannot be larger than the whole sump: check the two areas.',
      about: 'return_area',
    },
    {
      refuse: 'h_v <= 0',
      because:
        'No running level works: even with the return chamber empty the water that drains back does not fit. Let less drain back (a siphon break nearer the surface), run the other chambers lower, or use a larger sump.',
      about: 'drain_back',
    },
  ],
  steps: [
    sumpAreaStep,
    step('h_v', '(A_s*(H_s - fb) - V_b - V_c)/A_r', 'length', 'level that leaves just enough room'),
    step('h_max', 'min(h_l, h_v, H_s - fb)', 'length', 'highest running level of the return chamber'),
  ],
  results: {
    highest_running_level: result('h_max', 'length', 'highest running level of the return chamber'),
    level_by_volume: result('h_v', 'length', 'level that leaves just enough room'),
    limited_by: label('what limits it', [
      ['reserve', 'the reserve below the rim', 'H_s - fb <= h_l and H_s - fb <= h_v'],
      ['upstream_lip', 'the last baffle', 'h_l <= h_v'],
      ['drain_back', 'the water that drains back'],
    ]),
  },
  headline: [
    {
      text: 'Run the return chamber at {highest_running_level:both} at most: above that it stands in the reserve below the rim.',
      when: 'H_s - fb <= h_l and H_s - fb <= h_v',
    },
    {
      text: 'Run the return chamber at {highest_running_level:both} at most: there the last baffle drowns; the water that drains back would leave room up to {level_by_volume}.',
      when: 'h_l <= h_v',
    },
    {
      text: 'Run the return chamber at {highest_running_level:both} at most: above that the water that drains back does not fit.',
    },
  ],
  cautions: [
    caution(
      'note',
      'Mark the line on the glass, set the top-off below it, and never fill a stopped sump to it: a stopped sump stands higher than a running one.',
    ),
    pullThePlug,
    holesClog,
    othersEmptyToo,
  ],
  sources: ['geometry'],
  examples: [
    'highest level for my sump: sump area 0.3698 m2, rim 43 cm, 35 L drains back, other chambers 66.9 L, return chamber 0.1032 m2, last baffle 22 cm',
    'how full can the sump run: 36x16 in sump, sump rim 16 in, 9 gal drain back, 12 gal in the other chambers, return chamber 1.1 sq ft, baffle 9 in',
  ],
});
