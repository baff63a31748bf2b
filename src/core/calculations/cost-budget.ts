import { caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { budgetItems } from '../inputs/budget-items.js';

export const costBudget = calculation({
  id: 'cost.budget',
  slash: 'plan budget',
  title: 'Budget of the build',
  question: 'What does the whole build come to, with tax and something kept back for what was forgotten?',
  part: 'money',
  wording: /^(?:my |the )?budget\b|\bbuild costs?\b/,
  cues: [
    'whole build',
    'budget',
    'budget for',
    'add up',
    'total cost of the build',
    'what will it all cost',
    'build cost',
    'cost of the build',
    'contingency',
    'with tax',
  ],
  inputs: {
    items: budgetItems,
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
    'budget: tank 900, 2 heaters at 75, 20 kg rock at 4.50, 8% tax',
    'budget 1 at 650, 4 at 30, 15% contingency',
  ],
});
