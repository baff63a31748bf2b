import { quantity, step } from '../calculation.js';

/** What decides how a water surface gives off vapour and heat, and the steps that follow from it. */
export const activity = quantity('ratio', {
  symbol: 'F_a',
  name: 'activity of the water surface',
  words: ['activity', 'activity factor', 'surface activity', 'surface agitation', 'agitation'],
  range: [0.4, 1.5, '1'],
  default: {
    value: 0.75,
    unit: '1',
    low: 0.5,
    high: 1,
    why: '0.74 was measured on undisturbed indoor pools (Smith, Löf and Jones 1998); handbook factors run from 0.5 to 1',
  },
  ask: 'How disturbed is the surface, from 0.5 (still) to 1 (rough)?',
  example: '0.75',
});

/** "80 % covered" is 20 % open. */
export const covered = quantity('fraction', {
  symbol: 'c_lid',
  name: 'share of the surface under a lid',
  words: [
    'covered',
    'cover',
    'lid',
    'under a lid',
    'closed',
    'glass top',
    'covers',
    'covered by',
    'lid covers',
    'glass lid',
    'glass lids',
    'lids',
    'under glass',
    'under a glass',
    'closed off',
    'tight lid',
    'hood covers',
    'of the surface covered',
    'of the top covered',
    'of it covered',
  ],
  range: [0, 0.98, 'fraction'],
  usual: [0.1, 0.98, 'fraction'],
  needed: false,
  ask: 'How much of the surface is under a lid?',
  example: '80 %',
});

export const cover = quantity('fraction', {
  symbol: 'c',
  name: 'open share of the surface (a tight lid: 10 to 30 %)',
  words: [
    'open',
    'open share',
    'uncovered',
    'open top share',
    'is open',
    'left open',
    'of the top open',
    'of the surface open',
  ],
  range: [0.02, 1, 'fraction'],
  usual: [0.1, 1, 'fraction'],
  default: [
    { formula: '1 - c_lid' },
    { value: 1, unit: 'fraction', why: 'an open surface; a tight lid leaves 0.1 to 0.3 (common practice, no source)' },
  ],
  ask: 'How much of the surface is open? An open top is 100 %, a tight lid leaves 10 to 30 %.',
  example: '100 %',
  profile: 'display.cover',
});

export const airSpeed = quantity('speed', {
  symbol: 'v',
  name: 'air speed over the water',
  words: [
    'air speed',
    'fan',
    'draught',
    'draft',
    'breeze',
    'fan blows',
    'fan blowing',
    'blows',
    'air moving at',
    'airflow',
    'air flow',
    'air velocity',
    'wind',
  ],
  range: [0, 3, 'm/s'],
  default: { value: 0.1, unit: 'm/s', why: 'still room air' },
  ask: 'How fast does air move over the water?',
  example: '0.1 m/s still, 1 m/s under a fan',
});

export const surfaceConstants = {
  e_0: { value: 0.089, unit: 'W/(m^2 Pa)', name: 'evaporation coefficient in still air (Carrier form)' },
  e_v: { value: 0.0782, unit: 'W s/(m^3 Pa)', name: 'evaporation coefficient for each m/s of air speed' },
  b_S: { value: 0.537, unit: '1', name: 'how far salt lowers the vapour pressure, for each kg/kg' },
};

export const freshWater = { rho_f: { value: 1000, unit: 'kg/m^3', name: 'density of fresh water, rounded' } };

export const evaporationCoefficient = step(
  'e',
  '(e_0 + e_v*v)*F_a',
  'W/(m^2 Pa)',
  'evaporation heat for each pascal of vapour pressure',
);
export const waterVapour = step('p_w', 'psat(T_w)*(1 - b_S*S)', 'pressure', 'vapour pressure over the salt water');

/** @param air symbol of the air's temperature */
export const airVapour = (air: string) => step('p_a', `RH*psat(${air})`, 'pressure', 'vapour pressure in the room air');

export const SURFACE_SOURCES = [
  'evaporation: Carrier form with the ASHRAE activity factor (HVAC Applications, natatoriums); Smith, Löf and Jones 1998, ASHRAE Transactions 104, for 0.74 on undisturbed pools; coefficients from memory',
  'vapour pressure over salt water: matches the TEOS-10 water activity to 0.03 %',
];
