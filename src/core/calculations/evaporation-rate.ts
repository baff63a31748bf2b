import { type Condition, caution, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { commonPane, glassThickness, length, width } from '../inputs/display.js';
import { humidity, roomTemperature } from '../inputs/room.js';
import { salinityKept } from '../inputs/salinity.js';
import { noSumpInside, sumpInputs } from '../inputs/sump.js';
import {
  activity,
  airSpeed,
  airVapour,
  cover,
  covered,
  evaporationCoefficient,
  freshWater,
  SURFACE_SOURCES,
  surfaceConstants,
  waterVapour,
} from '../inputs/surface.js';
import { tankTemperature } from '../inputs/tank-heat.js';
import { noInside } from '../inputs/tank-shape.js';

const sizesInstead: Condition = { not: { given: 'area' } };

export const evaporationRate = calculation({
  id: 'evaporation.rate',
  slash: 'heater evaporation',
  title: 'Water that evaporates',
  question: 'How much water evaporates a day, and how much heat goes with it?',
  part: 'heat',
  cues: [
    'topping off because of evaporation',
    'topping off',
    'gallons a day will i',
    'litres a day will i',
    'evaporation',
    'evaporate',
    'water evaporates',
    'how much water evaporates',
    'evaporating',
    'evap',
    'top off a day',
    'top off per day',
    'top off daily',
    'lost to the air',
    'how much top off',
  ],
  inputs: {
    water_temperature: quantity('temperature', { ...tankTemperature, range: [5, 40, 'degC'] }),
    air_temperature: quantity('temperature', { ...roomTemperature, name: 'air temperature', range: [0, 45, 'degC'] }),
    humidity,
    area: quantity('area', {
      symbol: 'A_o',
      name: 'open water surface, display and sump together',
      words: ['surface', 'surface area', 'water surface', 'area', 'open water'],
      range: [0.001, 50, 'm2'],
      needed: false,
      ask: 'How large is the open water surface, display and sump together?',
    }),
    length: quantity('length', { ...length, needed: sizesInstead }),
    width: quantity('length', { ...width, needed: sizesInstead }),
    glass_thickness: quantity('length', {
      ...glassThickness,
      needed: false,
      default: commonPane(sizesInstead),
    }),
    sump_length: sumpInputs.sump_length,
    sump_width: sumpInputs.sump_width,
    sump_glass_thickness: sumpInputs.sump_glass_thickness,
    air_speed: airSpeed,
    activity: quantity('ratio', { ...activity, default: { value: 0.75, unit: '1', why: 'undisturbed indoor pools' } }),
    salinity: quantity('salinity', { ...salinityKept, default: { value: 35, unit: 'g/kg' } }),
    covered,
    cover,
  },
  constants: { ...surfaceConstants, ...freshWater },
  rules: [
    noInside('W', 'width'),
    noInside('L', 'length'),
    noSumpInside,
    {
      refuse: 'p_w <= p_a',
      because:
        'The air holds so much moisture that it would condense on this water, not evaporate from it: check the humidity and the two temperatures.',
      about: 'humidity',
    },
  ],
  steps: [
    step('A_o', '(L - 2*t)*(W - 2*t) + (L_s - 2*t_s)*(W_s - 2*t_s)', 'area', 'open surface of display and sump'),
    step('A_o', '(L - 2*t)*(W - 2*t)', 'area', 'open surface of the display'),
    evaporationCoefficient,
    waterVapour,
    airVapour('T_r'),
    step('P_evap', 'A_o*c*e*(p_w - p_a)', 'power', 'heat it carries off'),
    step('E', 'P_evap/(latent(T_w)*rho_f)', 'water a day', 'water that evaporates'),
    step(
      'E_low',
      'min(E, A_o*c*shah_evaporation(T_w, T_r, RH, S)/rho_f)',
      'water a day',
      'low: a second published method, for still air',
      'v <= 0.15',
    ),
    step('E_low', 'E*min(0.5, F_a)/F_a', 'water a day', 'low: activity factor 0.5', 'v > 0.15'),
    step('E_high', 'E*max(1, F_a)/F_a', 'water a day', 'high: activity factor 1'),
  ],
  results: {
    evaporation: result('E', 'water a day', 'water that evaporates', {
      low: 'E_low',
      high: 'E_high',
      feeds: 'water.evaporation',
    }),
    evaporation_low: result('E_low', 'water a day', 'by the lower method'),
    evaporation_high: result('E_high', 'water a day', 'with a lively surface'),
    latent_heat: result('P_evap', 'power', 'heat it carries off', { figures: 2 }),
  },
  headline: [{ text: 'It evaporates about {evaporation:range}, which carries off {latent_heat} of heat.' }],
  cautions: [
    caution(
      'note',
      'No measurement on reef tanks was found, and two published methods differ this much: measure your own top-off over a week and trust that.',
    ),
    caution('note', 'Only fresh water leaves, the salt stays: top off with fresh water, or the salinity climbs.'),
    caution('note', 'No sump was counted; its open surface evaporates too.', {
      all: [{ not: { given: 'area' } }, { not: { given: 'sump_length' } }],
    }),
    caution(
      'note',
      'Splash, bubbles and skimmers add to this; a tight lid leaves 10 to 30 % of it (common practice, no source).',
      'c > 0.5',
    ),
    caution(
      'caution',
      'All of it ends up in the room air: in a tight room it feeds mould, so vent it (heater ventilation works out how much air).',
    ),
  ],
  sources: SURFACE_SOURCES,
  examples: [
    'how much water evaporates from a 48x24 in tank at 78F in a 70F room at 45% humidity',
    'evaporation of 1.2 m2 of surface, water 25.5 °C, air 22 °C, 50 % humidity',
  ],
});
