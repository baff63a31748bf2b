import { caution, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { membraneFlowSteps, membraneInputs, membraneRules } from '../inputs/reverse-osmosis.js';

export const topoffRoRate = calculation({
  id: 'topoff.ro_rate',
  slash: 'topoff ro-rate',
  title: 'What a membrane really gives',
  question: 'How much water does this reverse-osmosis membrane give at your pressure and water temperature?',
  part: 'top-off',
  cues: [
    'ro rate',
    'rodi rate',
    'ro output',
    'rodi output',
    'membrane output',
    'membrane rate',
    'membrane give',
    'membrane make',
    'membrane flow',
    'gpd membrane',
    'gpd at',
    'membrane at',
    'how much rodi',
    'how much ro water',
    'slow ro',
    'ro slow',
    'rodi slow',
    'rodi is slow',
    'ro unit slow',
    'ro so slow',
    'slower than rated',
    'low pressure ro',
    'cold water ro',
  ],
  inputs: membraneInputs,
  rules: membraneRules,
  steps: [
    ...membraneFlowSteps,
    step('F_2', 'ro_factor_exp(T)', 'ratio', 'temperature factor by a second model'),
    step('q_2', 'q*F_2/F', 'flow', 'the same by the second model'),
    step('q_low', 'min(0.8*q, q_2)', 'flow', 'at least'),
    step('q_high', 'max(1.2*q, q_2)', 'flow', 'at most'),
    step('s', 'q/(n*Q_r)', 'fraction', 'share of the rating'),
  ],
  results: {
    flow: result('q', 'flow', 'water it gives an hour', { low: 'q_low', high: 'q_high', feeds: 'topoff.rate' }),
    flow_per_day: result('q', 'water a day', 'water it gives a day', { low: 'q_low', high: 'q_high' }),
    share_of_rating: result('s', 'fraction', 'share of the rating', { figures: 2 }),
    temperature_factor: result('F', 'ratio', 'temperature factor'),
    temperature_factor_second: result('F_2', 'ratio', 'temperature factor by a second model'),
  },
  headline: [{ text: 'It gives about {flow_per_day:range}: {share_of_rating} of its rating, or {flow}.' }],
  cautions: [
    caution(
      'caution',
      'Below about 40 psi (2.8 bar) a membrane also rejects less: a booster pump gives more and cleaner water (common practice).',
      'p < 280000',
    ),
    caution(
      'note',
      'Cold water is the usual reason for a slow membrane: 3 % less for every degree Celsius.',
      'F < 0.85',
    ),
    caution(
      'caution',
      'On a live line to the tank this never runs out: topoff stuck-open and clog-flood say when it floods. Fill a reservoir instead.',
    ),
    caution(
      'note',
      'Good to about 20 %: a pressurised tank pushes back, and prefilters or the membrane may be clogged. Time a litre to know.',
    ),
    caution('note', 'Never warm the feed from the hot tap; plumbing, drain line and backflow follow local code.'),
  ],
  sources: [
    'flow in proportion to pressure times a temperature factor: the form of ASTM D4516; 3 % a degree is common practice, good to about 20 %',
  ],
  examples: [
    'what does a 75 gpd membrane rated at 50 psi give at 43 psi and 59F water',
    'RO output of a 100 gpd membrane, rated at 60 psi, running at 45 psi, tap water 50 F',
    'how much RO water from a 280 L/day membrane rated at 3.4 bar, pressure 3 bar, water 10 °C',
  ],
});
