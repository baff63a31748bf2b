import { type Condition, caution, choice, quantity, result, step } from '../calculation.js';
import { waterAndMains } from '../cautions/return.js';
import { gravity } from '../constants.js';
import { calculation } from '../define.js';
import { heatStoreConstants } from '../inputs/heat-store.js';
import { returnFlow } from '../inputs/return-flow.js';

const measured: Condition = { given: 'measured_power' };

export const pumpPower = calculation({
  id: 'pump.power',
  slash: 'return power',
  title: 'Power and heat of the return pump',
  question: 'How many watts does this flow take, and how much of it warms the water?',
  part: 'return',
  cues: [
    'pump power',
    'pump put into the water',
    'heat does my return pump',
    'much heat does my return pump',
    'much heat does the return pump',
    'how many watts',
    'many watts for a return pump',
    'watts will the pump',
    'how efficient',
    'how efficient is my pump',
    'heat from my return pump',
    'heat does the return pump',
    'heat does my pump',
    'heat does the pump',
    'cost to run my return pump',
    'pump add as heat',
    'pump heat the water',
    'watts does my return pump',
    'pump watts',
    'watts does the pump',
    'watts does my pump',
    'pump use',
    'pump draws',
    'pump efficiency',
    'efficient is my pump',
    'efficient is the pump',
    'pump heat',
    'pump heats',
    'heat from the pump',
    'heat from my pump',
    'heat from the return pump',
    'does the pump add',
    'return pump power',
    'return pump watts',
    'watts for a return pump',
    'electricity for the return pump',
  ],
  inputs: {
    flow: returnFlow,
    head: quantity('length', {
      symbol: 'H',
      name: 'head the pump works against',
      words: ['head', 'of head', 'total head', 'at', 'against', 'height', 'lift'],
      range: [0, 30, 'm'],
      aboveLow: true,
      usual: [0.5, 8, 'm'],
      units: { metric: 'm', us: 'ft' },
      ask: 'Which head does the pump work against, pipe and fittings included? Return pump works it out.',
      example: '2.3 m or 7.5 ft',
      profile: 'return.operating_head',
    }),
    measured_power: quantity('power', {
      symbol: 'P_in',
      name: 'power measured at the plug',
      words: ['measured', 'draws', 'pulls', 'uses', 'watts', 'at the plug', 'plug', 'consumes', 'pump'],
      range: [0, 3000, 'W'],
      aboveLow: true,
      usual: [5, 400, 'W'],
      needed: false,
      ask: 'How many watts does the pump draw, measured at the plug?',
      example: '65 W',
      profile: 'return.power',
    }),
    efficiency: quantity('fraction', {
      symbol: 'eta',
      name: 'share of the electricity that becomes flow and head',
      words: ['efficiency', 'efficient', 'eta'],
      range: [0.05, 0.8, 'fraction'],
      usual: [0.1, 0.6, 'fraction'],
      default: {
        value: 0.25,
        unit: 'fraction',
        low: 0.15,
        high: 0.45,
        why: 'small pumps (common practice, no source)',
        when: { not: measured },
      },
      needed: false,
      ask: 'How efficient is the pump?',
      example: '25 %',
    }),
    placement: choice({
      name: 'where the pump stands',
      words: ['placement'],
      ask: 'Does the pump stand in the water or outside?',
      default: 'submerged',
      options: {
        submerged: {
          label: 'in the water',
          words: ['submersible', 'submersed', 'in the sump', 'in sump', 'in the water'],
        },
        external: { label: 'outside the water', words: ['inline', 'in line', 'outside the sump', 'external pump'] },
      },
      profile: 'return.pump_placement',
    }),
  },
  constants: { g: gravity, rho: heatStoreConstants.rho },
  rules: [
    {
      refuse: 'P_in < P_w',
      because:
        'The water alone would take more than the pump draws: check the flow (what arrives, not the label), the head and the watts.',
      about: 'measured_power',
    },
  ],
  steps: [
    step('P_w', 'rho*g*Q_r*H', 'power', 'power that the moving water takes'),
    step('P_el', 'P_in', 'power', 'power at the plug'),
    step('P_el', 'P_w/eta', 'power', 'power at the plug'),
    step('eta_m', 'P_w/P_in', 'fraction', 'share of the electricity that becomes flow and head'),
    step('P_heat', 'P_el', 'power', 'heat into the water: all of it ends there', { is: ['placement', 'submerged'] }),
    step('P_heat', 'P_w', 'power', 'heat into the water: what the water is given; the motor warms the air'),
  ],
  results: {
    hydraulic_power: result('P_w', 'power', 'power that the moving water takes'),
    electric_power: result('P_el', 'power', 'power at the plug'),
    efficiency_measured: result('eta_m', 'fraction', 'efficiency', { figures: 2 }),
    heat_to_water: result('P_heat', 'power', 'heat into the water'),
    energy_per_month: result('P_el', 'energy a day', 'energy a month', {
      units: { metric: 'kWh/month', us: 'kWh/month' },
    }),
  },
  headline: [
    {
      text: 'Moving the water takes {hydraulic_power} of the {measured_power}, so the pump is {efficiency_measured} efficient; {heat_to_water} warms the water.',
      when: measured,
    },
    {
      text: 'Moving the water takes {hydraulic_power}; at the plug that is about {electric_power:range}, and about {heat_to_water:range} of it warms the water.',
    },
  ],
  cautions: [
    caution('note', 'The efficiency is a guess: a plug meter settles it, and tells what the pump costs.', {
      assumed: 'efficiency',
    }),
    caution(
      'note',
      'That heat helps the heater in winter and hurts in summer: give it as steady heat to heater size and cooling need.',
    ),
    caution(
      'note',
      'An old pump whose share falls over the months is dirty or worn: clean it before you replace it.',
      'eta_m < 0.15',
    ),
    waterAndMains,
  ],
  sources: ['power is density × gravity × flow × head', 'small pumps 15 to 45 % efficient: common practice, no source'],
  examples: [
    'how many watts for a return pump at 3500 L/h and 2.3 m of head',
    'how efficient is my pump: 900 gph at 8 ft of head, draws 65 W',
    'heat from my return pump, 3500 L/h at 2.3 m head, 40 % efficient, external pump',
  ],
});
