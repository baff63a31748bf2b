import { quantity, type Rule, step } from '../calculation.js';

const PER_DAY = { metric: 'L/h', us: 'gal_US/day' } as const;

/** What stands on the membrane's label, at 25 °C and the pressure that goes with it. */
export const ratedFlow = quantity('flow', {
  symbol: 'Q_r',
  name: 'rated flow of one membrane',
  words: [
    'rated',
    'rating',
    'membrane',
    'gpd',
    'unit',
    'ro unit',
    'rodi',
    'rated flow',
    'membranes',
    'gpd ro',
    'gpd unit',
    'l per day membrane',
    'l/day membrane',
    'membrane is',
    'osmosis',
    'l/day osmosis',
    'osmosis unit',
  ],
  range: [0, 2000, 'L/h'],
  aboveLow: true,
  usual: [4, 60, 'L/h'],
  units: PER_DAY,
  slips: [[2000, 1e9, 'Membranes are rated by the day: 75 gallons a day is 12 L/h.']],
  ask: 'What flow is the membrane rated for? It is on its label, such as 75 gallons a day.',
  example: '75 gal a day or 280 L a day',
  profile: 'ro.rated_flow',
});

const pressureRange = {
  range: [70, 1000, 'kPa'],
  usual: [200, 800, 'kPa'],
  slips: [
    [0.99, 10, 'That looks like bar: 4 bar is 400 kPa.'],
    [10, 70, 'That looks like psi: 60 psi is 414 kPa. Below 70 kPa a membrane makes next to nothing.'],
  ],
} as const;

export const ratedPressure = quantity('pressure', {
  ...pressureRange,
  symbol: 'p_r',
  name: 'pressure that the rating is for',
  words: [
    'rated',
    'rated at',
    'rating at',
    'label says',
    'rated pressure',
    'rated for',
    'at its rated',
    'label pressure',
    'bar rating',
    'psi rating',
    'at a rating of',
    'datasheet',
    'datasheet says',
    'spec',
    'spec pressure',
    'rated at a',
    'test pressure',
    'rated on',
    'nominal pressure',
    'tested at',
    'specified',
    'specified at',
    'specified for',
    'specified pressure',
  ],
  ask: 'At which pressure is the membrane rated? It is on the label, often 50, 60 or 65 psi.',
  example: '60 psi or 4.1 bar',
  profile: 'ro.rated_pressure',
});

/** Read while it runs: standing pressure is higher. */
export const feedPressure = quantity('pressure', {
  ...pressureRange,
  symbol: 'p',
  name: 'pressure at the membrane while it runs',
  words: [
    'pressure',
    'running at',
    'runs at',
    'running',
    'gauge',
    'line',
    'water pressure',
    'house',
    'line pressure',
    'house pressure',
    'tap pressure',
    'at the membrane',
    'my pressure',
    'psi line',
    'booster pump at',
    'booster at',
    'booster',
    'boosted to',
    'pump at',
    'inlet pressure',
    'feed pressure',
    'psi with',
    'bar with',
  ],
  ask: 'What pressure reaches the membrane while it runs?',
  example: '45 psi or 3.1 bar',
  profile: 'ro.pressure',
});

export const feedTemperature = quantity('temperature', {
  symbol: 'T',
  name: 'temperature of the tap water',
  words: [
    'tap',
    'feed',
    'feed water',
    'tap water',
    'cold water',
    'water',
    'incoming',
    'winter',
    'water temp',
    'temperature',
    'degree tap water',
    'tap is',
    'f water',
    'c water',
    'f tap',
    'c tap',
    'cold tap',
    'feed temp',
    'tap temp',
  ],
  range: [3, 35, 'degC'],
  usual: [4, 28, 'degC'],
  slips: [[35.001, 60, 'Membranes take no hot water: never feed one from the hot tap.']],
  ask: 'How warm is the tap water that feeds it?',
  example: '15 C or 59 F',
  profile: 'ro.feed_temperature',
});

export const membranes = quantity('count', {
  symbol: 'n',
  name: 'number of membranes fed side by side',
  words: [
    'membranes',
    'number of membranes',
    'in parallel',
    'side by side',
    'dual',
    'housings',
    'membrane',
    'two membranes',
    'twin',
  ],
  range: [1, 8, 'count'],
  whole: true,
  default: { value: 1, unit: 'count' },
  ask: 'How many membranes are fed side by side?',
  example: '2',
  profile: 'ro.membranes',
});

export const FREE_OUTLET = { value: 0, unit: 'kPa', why: 'product runs freely into an open container' } as const;

/** What a pressurised storage tank or a reservoir higher up takes off. */
export const backPressure = quantity('pressure', {
  symbol: 'p_b',
  name: 'pressure that pushes back on the product side',
  words: [
    'back pressure',
    'backpressure',
    'pushes back',
    'pressure tank',
    'storage tank at',
    'pressurised tank',
    'pressurized tank',
    'pressure tank pushes back',
    'pressurised',
    'pressurized',
    'tank pressure',
    'backpressure of',
    'storage',
  ],
  range: [0, 600, 'kPa'],
  default: FREE_OUTLET,
  ask: 'What pressure pushes back, from a pressurised tank or a container higher up?',
  example: '0, or 30 psi in a pressurised tank',
  profile: 'ro.back_pressure',
});

export const membraneInputs = {
  rated_flow: ratedFlow,
  rated_pressure: ratedPressure,
  pressure: feedPressure,
  temperature: feedTemperature,
  membranes,
  back_pressure: backPressure,
};

export const membraneRules: readonly Rule[] = [
  {
    refuse: 'p_b >= p',
    because:
      'What pushes back is as strong as the pressure at the membrane, so nothing flows: check the two pressures.',
    about: 'back_pressure',
  },
];

/** The flow `q` that the membranes make, good to a fifth either way. */
export const membraneFlowSteps = [
  step('F', 'ro_factor(T)', '1', 'flow at this temperature over that at 25 °C'),
  step('q', 'n*Q_r*(p - p_b)/p_r*F', 'flow', 'flow that the membranes make'),
];

/** Dissolved matter by a pocket meter. All readings by one meter: its scale cancels. */
export const feedTds = quantity('dissolved', {
  symbol: 'c_f',
  name: 'TDS of the tap water',
  words: [
    'tap',
    'tap water',
    'feed',
    'feed tds',
    'source',
    'source water',
    'well',
    'in',
    'tds in',
    'incoming',
    'tap tds',
    'from',
    'city water',
    'well water',
    'mains water',
    'out of the tap',
    'tds at the tap',
    'raw water',
  ],
  range: [0, 5000, 'mg/L'],
  aboveLow: true,
  usual: [30, 800, 'mg/L'],
  ask: 'What does the TDS meter read in the tap water?',
  example: '280 ppm',
  profile: 'ro.feed_tds',
});

export const REVERSE_OSMOSIS_FORM =
  'flow as net pressure times a temperature factor: the form of ASTM D4516; the fifth either way: common practice, no source';

/** Product over what came in: 97 % is held back, 3 % passes. */
export const rejection = quantity('fraction', {
  symbol: 'r',
  name: 'share that the membrane holds back',
  words: [
    'rejection',
    'rejects',
    'holds back',
    'rejection rate',
    'membrane rejects',
    'reject rate',
    'rejection of',
    'removes',
    'retention',
  ],
  range: [0, 1, 'fraction'],
  usual: [0.8, 0.995, 'fraction'],
  ask: 'What share of the dissolved matter does the membrane hold back?',
  example: '97 %',
});
