import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { meterUnderBlue, readingIsForOnePlace } from '../cautions/light.js';
import { calculation } from '../define.js';
import { ppfd } from '../inputs/light.js';

const band: Condition = { given: 'depth' };

export const lightAttenuation = calculation({
  id: 'light.attenuation',
  slash: 'light attenuation',
  title: 'Light lost in the water',
  question: 'How much light does the water take on its way down?',
  part: 'light',
  cues: [
    'attenuation',
    'water absorb',
    'water absorbs',
    'absorbed by the water',
    'lost in the water',
    'light lost',
    'par at the bottom',
    'light at depth',
    'par at depth',
    'reach the bottom',
    'reaches the bottom',
    'reach the sand',
    'deep in the tank',
    'at the surface',
    'extinction',
  ],
  inputs: {
    depth: quantity('length', {
      symbol: 'z',
      name: 'depth below the surface',
      words: ['deep', 'depth', 'down', 'below the surface', 'under water', 'water'],
      range: [0, 3, 'm'],
      usual: [5, 100, 'cm'],
      ask: 'How deep below the surface is the spot?',
      example: '18 in or 45 cm',
    }),
    ppfd_surface: quantity('photon flux', {
      ...ppfd,
      symbol: 'p_0',
      name: 'PPFD just under the surface',
      words: ['surface', 'at the top', 'top'],
      needed: false,
      ask: 'What PPFD do you read just under the surface?',
    }),
    attenuation_low: quantity('attenuation', {
      symbol: 'k_low',
      name: 'attenuation of clear water',
      words: ['clear', 'attenuation low'],
      range: [0.02, 5, '1/m'],
      default: { value: 0.1, unit: '1/m', why: 'clear aquarium water, common practice, no source', when: band },
      needed: false,
      ask: 'How strongly does the water take light at least, per metre?',
    }),
    attenuation_high: quantity('attenuation', {
      symbol: 'k_high',
      name: 'attenuation of cloudy or yellow water',
      words: ['cloudy', 'yellow', 'attenuation high'],
      range: [0.02, 5, '1/m'],
      default: { value: 0.5, unit: '1/m', why: 'yellow or cloudy water, common practice, no source', when: band },
      needed: false,
      ask: 'How strongly does the water take light at most, per metre?',
    }),
    ppfd_1: quantity('photon flux', {
      ...ppfd,
      symbol: 'p_1',
      name: 'PPFD at the upper spot',
      words: ['upper', 'first', 'above'],
      ask: 'What PPFD do you read at the upper spot?',
    }),
    depth_1: quantity('length', {
      symbol: 'z_1',
      name: 'depth of the upper spot',
      words: ['upper', 'first'],
      range: [0, 3, 'm'],
      usual: [1, 100, 'cm'],
      ask: 'How deep is the upper spot?',
      example: '2 in or 5 cm',
    }),
    ppfd_2: quantity('photon flux', {
      ...ppfd,
      symbol: 'p_2',
      name: 'PPFD at the lower spot',
      words: ['lower', 'second', 'below'],
      ask: 'What PPFD do you read at the lower spot?',
    }),
    depth_2: quantity('length', {
      symbol: 'z_2',
      name: 'depth of the lower spot',
      words: ['lower', 'second'],
      range: [0, 3, 'm'],
      usual: [5, 100, 'cm'],
      ask: 'How deep is the lower spot?',
      example: '16 in or 40 cm',
    }),
  },
  oneOf: [['depth'], ['ppfd_1', 'depth_1', 'ppfd_2', 'depth_2']],
  rules: [
    {
      refuse: 'p_2 >= p_1',
      because:
        'There is as much light below as above, or more: another lamp, a shadow over the upper spot, or swapped numbers.',
      about: 'ppfd_2',
    },
    {
      refuse: 'z_2 <= z_1',
      because: 'The second depth is not below the first: are the two swapped?',
      about: 'depth_2',
    },
    {
      refuse: 'k_low > k_high',
      because: 'Clear water takes less light than cloudy water: are the two attenuations swapped?',
      about: 'attenuation_low',
    },
  ],
  steps: [
    step('f_low', 'exp(-k_high*z)', 'fraction', 'share left, at least'),
    step('f_high', 'exp(-k_low*z)', 'fraction', 'share left, at most'),
    step('p_low', 'p_0*f_low', 'photon flux', 'PPFD at that depth, at least'),
    step('p_high', 'p_0*f_high', 'photon flux', 'PPFD at that depth, at most'),
    step('k', 'ln(p_1/p_2)/(z_2 - z_1)', 'attenuation', 'apparent attenuation between the spots'),
  ],
  results: {
    fraction_low: result('f_low', 'fraction', 'share left, at least'),
    fraction_high: result('f_high', 'fraction', 'share left, at most'),
    ppfd_low: result('p_low', 'photon flux', 'PPFD at that depth, at least'),
    ppfd_high: result('p_high', 'photon flux', 'PPFD at that depth, at most'),
    attenuation_coefficient: result('k', 'attenuation', 'apparent attenuation between the spots'),
  },
  headline: [
    {
      text: 'Of {ppfd_surface} under the surface, {ppfd_low} to {ppfd_high} is left at {depth}.',
      when: 'p_low > 0',
    },
    { text: 'At {depth}, {fraction_low} to {fraction_high} of the light is left.', when: 'f_low > 0' },
    { text: 'Between those spots the light fades at {attenuation_coefficient}, the spreading of the lamp included.' },
  ],
  cautions: [
    caution(
      'caution',
      'Two readings include the spreading of the lamp, so this is often 1 to 2 per metre: use it only between depths of this tank, and never together with the law of distance, which would count the spreading twice.',
      'k > 0',
    ),
    caution(
      'note',
      'This is the water alone. The lamp’s light also spreads with distance, and that usually costs more.',
      band,
    ),
    caution(
      'note',
      'Red goes first; blue hardly fades in a tank: pure water takes 0.01 per metre at 450 nm and 0.62 at 700 nm (Pope and Fry 1997, from memory).',
      band,
    ),
    caution('note', 'Salt creep and a dirty lens or glass cost more than the water: wipe first, lamp off.'),
    meterUnderBlue,
    readingIsForOnePlace,
  ],
  sources: ['Beer-Lambert law; band for aquarium water: common practice, no source'],
  examples: [
    'how much light is lost in the water at 45 cm deep, 300 PAR at the surface',
    'what share of the light reaches the bottom 24 inches down',
    'attenuation: upper 310 PAR at 5 cm, lower 190 PAR at 40 cm',
  ],
});
