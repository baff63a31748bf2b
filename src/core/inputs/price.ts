import { type QuantityInput, quantity } from '../calculation.js';

/** Price by weight, in whatever money it is said. @param thing what is bought: "rock" */
export const priceOfMass = (thing: string): QuantityInput =>
  quantity('price of mass', {
    symbol: 'c_m',
    name: `price of the ${thing}`,
    words: ['price', 'costs', 'cost', 'each', 'per pound', 'per lb', 'a pound', 'per kg', 'a kilo', 'at'],
    range: [0, 10_000, 'currency/kg'],
    usual: [0.2, 60, 'currency/kg'],
    needed: false,
    ask: `What does the ${thing} cost by weight?`,
    example: '9.50 per kg or 4.50 per lb',
  });
