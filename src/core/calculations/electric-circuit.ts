import { caution, choice, flag, quantity, result, step } from '../calculation.js';
import { dripLoops, licensedWiring, noStripsInChain, residualCurrent } from '../cautions/mains.js';
import { calculation } from '../define.js';
import { draws, powerFactor, voltage } from '../inputs/mains.js';

const FITS = 'I <= I_max*1.000000001';

export const electricCircuit = calculation({
  id: 'electric.circuit',
  slash: 'power circuit',
  title: 'Load on a circuit',
  question: 'How many amps does everything draw, and does the circuit carry that for hours on end?',
  general: true,
  part: 'electricity',
  cues: [
    'circuit',
    'breaker',
    'amp circuit',
    'amp breaker',
    'a breaker',
    'on one circuit',
    'same circuit',
    'how many amps',
    'trip the breaker',
    'overload',
    'one outlet',
    'one socket',
    'fused plug',
    'fuse',
  ],
  inputs: {
    load: quantity('power', {
      symbol: 'P_c',
      name: 'everything on the circuit together',
      words: ['load', 'together', 'total', 'altogether', 'everything', 'equipment', 'watts', 'draws', 'in all'],
      range: [1, 50_000, 'W'],
      usual: [20, 4000, 'W'],
      needed: { not: { given: 'loads' } },
      ask: 'How many watts does everything on that circuit draw together, heaters at full power?',
      example: '1300 W',
      profile: 'power.load',
    }),
    loads: draws,
    voltage,
    breaker: quantity('current', {
      symbol: 'I_b',
      name: 'rating of the breaker or fuse',
      words: ['breaker', 'fuse', 'circuit', 'amp', 'amps', 'rated'],
      range: [5, 63, 'A'],
      ask: 'What is the breaker or fuse rated at, in amps?',
      example: '15 A',
      profile: 'power.breaker',
    }),
    place: choice({
      name: 'where it is',
      words: ['where'],
      needed: false,
      ask: 'In North America, or elsewhere?',
      options: {
        north_america: {
          label: 'North America',
          words: ['us', 'usa', 'america', 'american', 'canada', 'canadian', 'states', 'nec'],
        },
        elsewhere: {
          label: 'elsewhere',
          words: ['uk', 'england', 'scotland', 'ireland', 'europe', 'germany', 'france', 'australia', 'new zealand'],
        },
      },
    }),
    power_factor: powerFactor(1, 'watts taken as they stand; pumps and drivers may have 0.5 to 0.7'),
    continuous_fraction: quantity('fraction', {
      symbol: 'f_c',
      name: 'share of the rating that may run for hours',
      words: ['continuous', 'rule', 'share of the rating'],
      range: [0.3, 1, 'fraction'],
      default: [
        {
          value: 1,
          unit: 'fraction',
          why: 'no such rule where you are; local rules may differ',
          when: { is: ['place', 'elsewhere'] },
        },
        {
          value: 0.8,
          unit: 'fraction',
          why: 'NEC 210.19(A) and 210.20(A): loads of three hours and more',
          when: { any: [{ is: ['place', 'north_america'] }, 'U < 150'] },
        },
        {
          value: 0.8,
          unit: 'fraction',
          low: 0.8,
          high: 1,
          why: 'the rule of North America, since that voltage is found there too; elsewhere the whole rating: say where you are',
          when: { any: ['U < 215', 'U > 235'] },
        },
        { value: 1, unit: 'fraction', why: 'no such rule outside North America; local rules may differ' },
      ],
      ask: 'What share of the breaker’s rating may run for hours? 80 % in North America.',
      example: '80 %',
    }),
  },
  steps: [
    step('P', 'sum_i(P_i)', 'power', 'everything together', { not: { given: 'load' } }),
    step('P', 'P_c', 'power', 'everything together'),
    step('I', 'P/(pf*U)', 'current', 'current it draws'),
    step('I_max', 'f_c*I_b', 'current', 'what may run for hours'),
    step('P_max', 'I_max*U', 'power', 'the same in watts, at a power factor of 1'),
    step('I_free', 'I_max - I', 'current', 'what is left'),
  ],
  results: {
    ok: flag('within what may run for hours', FITS),
    load_current: result('I', 'current', 'current it draws'),
    continuous_limit: result('I_max', 'current', 'what may run for hours'),
    limit_watts: result('P_max', 'power', 'the same in watts'),
    headroom: result('I_free', 'current', 'what is left'),
  },
  headline: [
    {
      text: 'Over: {load_current} on a {breaker} circuit that may carry {continuous_limit} ({limit_watts}) for hours.',
      when: 'I > I_max*1.000000001',
    },
    {
      text: 'Within this check: {load_current} of the {continuous_limit} ({limit_watts}) that a {breaker} circuit may carry for hours, {headroom} left.',
    },
  ],
  cautions: [
    caution(
      'stop',
      'That is more than the breaker itself carries: it trips or, worn, gets hot. Split the load over circuits before you plug it in.',
      'I > I_b',
    ),
    caution('caution', 'Split the load over two circuits: then a trip also leaves half of it running.', {
      all: ['I > I_max*1.000000001', { not: 'I > I_b' }],
    }),
    residualCurrent,
    noStripsInChain,
    caution(
      'note',
      'Other rooms may hang on the same circuit: count what else is plugged in, heaters all at full power. Pumps and light drivers draw more amps than their watts say (power factor).',
    ),
    dripLoops,
    licensedWiring,
  ],
  sources: [
    'current is power over voltage and power factor',
    'continuous loads at 80 % of the rating: NFPA 70 (NEC) 210.19(A), 210.20(A)',
    'elsewhere the whole rating unless local rules say less (from memory)',
  ],
  examples: [
    'can I run 1300 W on a 15 amp 120 V breaker',
    'is a 16A circuit at 230V enough for 2200 W in all',
    '300 W, 300 W, 190 W and 60 W on one 15 A circuit, 120 V',
  ],
});
