import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { rows } from '../inputs/rows.js';

export const costBudget = calculation({
  id: 'cost.budget',
  slash: 'plan budget',
  title: 'Budget of the build',
  question: 'What does the whole build come to, with tax and something kept back for what was forgotten?',
  part: 'money',
  cues: [
    'budget',
    'total cost of the build',
    'what will it all cost',
    'build cost',
    'cost of the build',
    'contingency',
    'with tax',
  ],
  inputs: {
    items: rows({
      name: 'what is bought, how many and the price of each',
      row: 'item',
      words: ['items'],
      ask: 'What do you buy: how many of each, and at what price each?',
      example: '1 at 900, 2 at 75, 20 at 4.50',
      suggestions: ['1 at 900, 2 at 75, 20 at 4.50', '1 x 900; 3 x 45; 1 x 380'],
      columns: [
        { symbol: 'n', name: 'quantity', unit: 'count', range: [0, 10_000], bare: true },
        { symbol: 'c', name: 'price', unit: 'currency', range: [0, 1_000_000], bare: true },
      ],
      between: '(?:@|at|for|x|×|\\*|items?|pieces?)',
    }),
    tax: quantity('fraction', {
      symbol: 'f_t',
      name: 'tax on top of the prices',
      words: ['tax', 'vat', 'sales tax', 'gst'],
      range: [0, 0.5, 'fraction'],
      default: { value: 0, unit: 'fraction', why: 'prices that include it' },
      ask: 'Which tax comes on top of the prices?',
      example: '8 %',
    }),
    contingency: quantity('fraction', {
      symbol: 'f_r',
      name: 'kept back for what was forgotten',
      words: ['contingency', 'reserve', 'spare', 'kept back', 'buffer', 'margin'],
      range: [0, 1, 'fraction'],
      default: { value: 0.1, unit: 'fraction', low: 0.1, high: 0.15, why: '10 to 15 % (common practice, no source)' },
      ask: 'What share do you keep back?',
      example: '10 %',
    }),
  },
  steps: [
    step('B', 'sum_i(n_i*c_i)', 'money', 'everything together'),
    step('B_t', 'B*f_t', 'money', 'tax'),
    step('B_r', 'B*f_r', 'money', 'kept back'),
    step('B_all', 'B + B_t + B_r', 'money', 'the whole budget'),
  ],
  results: {
    total: result('B_all', 'money', 'the whole budget'),
    subtotal: result('B', 'money', 'everything together'),
    tax: result('B_t', 'money', 'tax'),
    contingency: result('B_r', 'money', 'kept back for what was forgotten'),
  },
  headline: [{ text: 'The build comes to {total:range}, {contingency} of it kept back for what was forgotten.' }],
  cautions: [
    caution('note', 'In your own money, whatever it is; nothing is rounded before the end.'),
    caution(
      'note',
      'Forgotten most often: test kits, salt for the first fill, plumbing odds and ends, a second heater, residual-current protection, the first months of electricity.',
    ),
  ],
  sources: ['sums; 10 to 15 % kept back: common practice, no source'],
  examples: [
    'budget for 1 at 900, 2 at 75, 3 at 45, 20 at 4.50 and 1 at 380, tax 8 %',
    'build cost: 1 x 1200, 2 x 60, 1 x 350',
    'budget 1 at 650, 4 at 30, 15% contingency',
  ],
});
