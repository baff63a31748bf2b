import { caution, choice, quantity, result, step } from '../calculation.js';
import { letLampBreathe } from '../cautions/light.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { litHours } from '../inputs/light.js';
import { lightChannels } from '../inputs/light-channels.js';
import { energyPrice } from '../inputs/mains.js';

const perMonth = { metric: 'kWh/month', us: 'kWh/month' };

/** More than 2 for a kilowatt hour: cents, or money of small units. */
const DEAR = 'c*3600000 > 2';

export const lightEnergy = calculation({
  id: 'light.energy',
  slash: 'light energy',
  title: 'Cost and heat of the light',
  question: 'What does the light cost to run, and how much does it heat the tank?',
  part: 'light',
  cues: [
    'lighting cost',
    'light costing',
    'leds dump',
    'heat do my leds',
    'light cost me',
    'light cost',
    'lights cost',
    'cost to run my light',
    'cost of light',
    'lamp cost',
    'light use',
    'light heat',
    'lights heat',
    'heat from the light',
    'heat from my lights',
    'heat the tank',
    '~electricity',
    '~kwh',
    'power draw of my light',
    'light energy',
    'light pulls',
    'heat does the light',
    'of light',
    'from my light',
  ],
  inputs: {
    channels: lightChannels,
    power: quantity('power', {
      symbol: 'P',
      name: 'measured power of the light',
      words: ['light', 'lamp', 'watts', 'draws', 'led', 'fixture', 'pulls'],
      range: [0, 5000, 'W'],
      usual: [10, 1500, 'W'],
      ask: 'How many watts does the light draw, measured at the plug?',
      example: '150 W',
      profile: 'light.power',
    }),
    hours_per_day: quantity('time', { ...litHours, symbol: 'h' }),
    price_per_kwh: quantity('energy price', { ...energyPrice, needed: false }),
    price_in: choice({
      name: 'price in cents or whole units',
      words: ['price in'],
      needed: DEAR,
      ask: 'Is that price in cents (or pence), or in whole units of your money (such as yen or rupees)?',
      options: {
        cents: { label: 'cents or pence', words: ['cents', 'cent', 'pence', 'ct'], gives: { u: 0.01 } },
        whole: { label: 'whole units', words: ['whole', 'yen', 'rupees', 'dollars', 'euros'], gives: { u: 1 } },
      },
      symbols: { u: '1' },
    }),
    water_share_low: quantity('fraction', {
      symbol: 's_low',
      byName: true,
      name: 'share into the water, at least',
      range: [0, 1, 'fraction'],
      default: { value: 0.2, unit: 'fraction', why: 'our estimate: the light itself less what leaves the tank' },
      ask: 'What share of the heat reaches the water at least?',
      example: '20 %',
    }),
    water_share_high: quantity('fraction', {
      symbol: 's_high',
      byName: true,
      name: 'share into the water, at most',
      range: [0, 1, 'fraction'],
      default: { value: 0.5, unit: 'fraction', why: 'our estimate: a closed hood or a fan blowing down' },
      ask: 'What share of the heat reaches the water at most?',
      example: '50 %',
    }),
  },
  oneOf: [['power', 'hours_per_day'], ['channels']],
  constants: { day },
  rules: [
    {
      refuse: 's_low > s_high',
      because: 'The least share of heat into the water is larger than the most: are the two swapped?',
      about: 'water_share_low',
    },
  ],
  steps: [
    step('E', 'sum_i(P_i*h_i)/day', 'energy a day', 'mean power over the whole day'),
    step('E', 'P*h/day', 'energy a day', 'mean power over the whole day'),
    step('P_peak', 'sum_i(P_i)', 'power', 'power while all channels run'),
    step('P_peak', 'P', 'power', 'power while it runs'),
    step('c_kWh', 'c*u', 'energy price', 'price in whole units', DEAR),
    step('c_kWh', 'c', 'energy price', 'price in whole units'),
    step('cost', 'E*c_kWh', 'cost a month', 'cost'),
    step('Q_low', 's_low*P_peak', 'power', 'heat into the water, at least'),
    step('Q_high', 's_high*P_peak', 'power', 'heat into the water, at most'),
  ],
  results: {
    energy_per_day: result('E', 'energy a day', 'energy a day'),
    energy_per_month: result('E', 'energy a day', 'energy a month', { units: perMonth }),
    cost_per_month: result('cost', 'cost a month', 'cost a month'),
    power_peak: result('P_peak', 'power', 'power while everything runs'),
    heat_mean: result('E', 'power', 'heat to tank and room, mean over the day'),
    heat_to_water_low: result('Q_low', 'power', 'heat into the water while it runs, at least'),
    heat_to_water_high: result('Q_high', 'power', 'heat into the water while it runs, at most'),
  },
  headline: [
    {
      text: 'It costs {cost_per_month} to run and puts {heat_to_water_low} to {heat_to_water_high} of heat into the water while it is on.',
      when: 'cost >= 0',
    },
    {
      text: 'It uses {energy_per_day} and puts {heat_to_water_low} to {heat_to_water_high} of heat into the water while it is on.',
    },
  ],
  cautions: [
    caution('note', 'Tell me the price of a kilowatt hour and I work out the cost.', {
      not: { given: 'price_per_kwh' },
    }),
    caution(
      'note',
      'Use watts measured at the plug, not the label or a “watt equivalent”: dimmed channels draw less, fans and drivers count too.',
    ),
    caution(
      'note',
      'All of it ends as heat in water or room. In a cold room the heater saves part of it; in summer count it as a gain when you size cooling.',
    ),
    letLampBreathe,
  ],
  sources: [
    'energy is power times time; a month is 365.25/12 days',
    'share of the heat that reaches the water: our estimate, no source (LEDs turn 30 to 50 % of their watts into light, from memory)',
  ],
  examples: [
    'what does my light cost: 150 W, 10 h a day, 0.25 per kWh',
    'light energy for 60 W 11 h, 120 W 8 h at 0.28 per kWh',
    'how much heat from my lights, 180 W for 9 hours a day',
  ],
});
