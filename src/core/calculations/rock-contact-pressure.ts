import { caution, quantity, result, step } from '../calculation.js';
import { rockOnTheBase } from '../cautions/rock.js';
import { gravity, heavySeawater } from '../constants.js';
import { calculation } from '../define.js';
import { waterHeight } from '../inputs/display.js';
import { pieceDensity, pieceMass, submergedWeight } from '../inputs/rock-column.js';

const areaUnits = { metric: 'cm2', us: 'in2' };

export const rockContactPressure = calculation({
  id: 'rock.contact_pressure',
  slash: 'structure rock-points',
  title: 'Rock standing on points',
  question: 'How hard does rock press on the bottom where it touches, against the water on it?',
  part: 'rock and sand',
  cues: [
    'rock on glass',
    'rock on the glass',
    'rock on bare glass',
    'rock directly on the glass',
    'rock straight on the glass',
    'rock on the bottom',
    'rocks on the bottom',
    'contact pressure',
    'contact area',
    'contact points',
    'touches the glass',
    'touch the glass',
    'touching the glass',
    'touches the bottom',
    'press on the glass',
    'presses on the glass',
    'rock crack',
    'rock break',
    'crack the bottom',
    'crack the glass',
    'break the bottom',
    'standing on points',
    'stands on points',
    'stands on three points',
    'pad under the rock',
    'points',
  ],
  inputs: {
    mass: pieceMass,
    rock_density: pieceDensity(),
    points: quantity('count', {
      symbol: 'n',
      name: 'points it stands on',
      words: ['points', 'feet', 'contact points', 'spots'],
      range: [1, 500, 'count'],
      whole: true,
      needed: false,
      ask: 'On how many points does it stand?',
      example: '3',
    }),
    point_area: quantity('area', {
      symbol: 'A_1',
      name: 'area of one point',
      words: ['each', 'a point', 'per point', 'points of', 'each point'],
      range: [0.01, 10_000, 'cm2'],
      units: areaUnits,
      needed: { given: 'points' },
      ask: 'How large is one of the points?',
      example: '4 cm2 or 0.6 sq in',
    }),
    contact_area: quantity('area', {
      symbol: 'A_c',
      name: 'area that touches, all together',
      words: ['contact', 'contact area', 'touches', 'touching', 'area', 'pad', 'all together', 'in total'],
      range: [0, 100_000, 'cm2'],
      aboveLow: true,
      units: areaUnits,
      default: { formula: 'n*A_1' },
      needed: { not: { given: 'points' } },
      ask: 'How large is the area where it touches, all together?',
      example: '12 cm2 or 2 sq in',
    }),
    water_height: waterHeight,
  },
  constants: { g: gravity, rho_h: heavySeawater },
  steps: [
    submergedWeight,
    step('p_c', 'F/A_c', 'pressure', 'mean pressure where it touches'),
    step('p', 'rho_h*g*h', 'pressure', 'water pressure on the bottom'),
    step('r', 'p_c/p', 'ratio', 'times the water pressure'),
    step('A_w', 'F/p', 'area', 'area over which it would press no harder than the water'),
  ],
  results: {
    contact_pressure: result('p_c', 'pressure', 'mean pressure where it touches'),
    water_pressure: result('p', 'pressure', 'water pressure on the bottom'),
    ratio: result('r', 'ratio', 'times the water pressure', { figures: 2 }),
    submerged_weight: result('F', 'force', 'weight under water'),
    area_as_water: result('A_w', 'area', 'area over which it presses no harder than the water', { units: areaUnits }),
  },
  headline: [
    {
      text: 'Where it touches, the rock presses {ratio} times as hard as the water: spread it on a pad.',
      when: 'r >= 2',
    },
    { text: 'Spread over that area the rock presses {ratio} times as hard as the water, which is little.' },
  ],
  cautions: [
    caution(
      'caution',
      'Glass fails at a point by a scratch or a knock, not by a steady mean pressure: set rock down gently, on a pad that yields, never on a sharp edge.',
    ),
    rockOnTheBase,
    caution('note', 'No published limit for rock on a bottom pane was found, so there is no verdict here.'),
    caution('note', 'Points never share alike: one may carry nearly all of it, {submerged_weight}.', {
      given: 'points',
    }),
  ],
  sources: ['statics: weight under water over the area that touches; no published limit was found'],
  examples: [
    'rock on bare glass: 25 kg column on 3 points of 4 cm2 each, 50 cm of water',
    'does my rock crack the bottom, 60 lb on 2 sq in of contact area under 20 in of water',
    'contact pressure of a 12 kg rock touching 40 cm2 in 45 cm of water',
  ],
});
