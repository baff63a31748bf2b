import { caution, quantity, result, step } from '../calculation.js';
import { waterSearchEnds } from '../cautions/heater.js';
import { calculation } from '../define.js';
import { LOSS_SOURCES, lossCautions, lossConstants, lossSteps } from '../inputs/loss-steps.js';
import { roomTemperature } from '../inputs/room.js';
import { freshWater } from '../inputs/surface.js';
import { equipmentHeat, geometryRules, tankHeatInputs, tankTemperature } from '../inputs/tank-heat.js';

export const coolingNeed = calculation({
  id: 'cooling.need',
  slash: 'heater cooling',
  title: 'Cooling for a hot room',
  question: 'How much heat must a chiller or fans take out to hold the target on a hot day?',
  part: 'heat',
  cues: [
    'chiller',
    'cooling',
    'cool the tank',
    'cool my tank',
    'too hot',
    'too warm',
    'summer',
    'heat wave',
    'fan cooling',
    'fans',
    'keep it cool',
    'need cooling',
    'hot room',
    'hot day',
  ],
  inputs: {
    target: quantity('temperature', { ...tankTemperature, name: 'target water temperature' }),
    room_temperature: quantity('temperature', { ...roomTemperature, ask: 'How warm does the room get?' }),
    gains: quantity('power', {
      ...equipmentHeat,
      name: 'heat from lights, pumps and equipment',
      words: [...(equipmentHeat.words ?? []), 'lights', 'lighting', 'pumps', 'equipment', 'lights and pumps'],
      ask: 'How many watts of heat do lights, pumps and other equipment put into the water?',
      example: '250 W',
    }),
    ...tankHeatInputs,
  },
  constants: {
    ...lossConstants,
    P_0: { value: 0, unit: 'W', name: 'no cooling' },
    ...freshWater,
  },
  rules: geometryRules,
  steps: [
    ...lossSteps,
    step('T_end', 'water_at_loss(G, UA, A, e, RH, S, T_r)', 'temperature', 'where the water ends up by itself'),
    step('P_cool', 'max(G - P_loss, P_0)', 'power', 'heat to take out at the target'),
    step(
      'E_more',
      'P_cool/(latent(T_w)*rho_f)',
      'water a day',
      'water to evaporate for that, beyond what evaporates anyway',
      'p_w > p_a',
    ),
  ],
  results: {
    passive_temperature: result('T_end', 'temperature', 'where the water ends up by itself'),
    cooling_needed: result('P_cool', 'power', 'heat to take out to hold the target'),
    extra_evaporation: result('E_more', 'water a day', 'or water to evaporate beyond the usual'),
    total_loss: result('P_loss', 'power', 'heat lost to the room at the target'),
  },
  headline: [
    {
      text: 'Left alone it settles at {passive_temperature:range}; holding {target} means taking out {cooling_needed:range}; fans cannot do it in air this damp.',
      when: 'P_cool > 0 and p_w <= p_a',
    },
    {
      text: 'Left alone it settles at {passive_temperature:range}; holding {target} means taking out {cooling_needed:range}, or evaporating {extra_evaporation:both} more.',
      when: 'P_cool > 0',
    },
    {
      text: 'No cooling is needed to hold {target} with the room at {room_temperature}: left alone it settles at {passive_temperature:range}.',
    },
  ],
  cautions: [
    waterSearchEnds('T_end'),
    caution(
      'note',
      'A chiller must move that many watts of heat, which is not its electric rating, and it blows all of it, and its own power, into the room or the cabinet.',
      'P_cool > 0',
    ),
    caution(
      'note',
      'What fans evaporate the top-off must replace and the room must get rid of: damp air stops the cooling and grows mould.',
      'P_cool > 0 and p_w > p_a',
    ),
    caution(
      'note',
      'Watts of light over the tank do not all end in the water; counting them all is on the cautious side.',
    ),
    caution(
      'caution',
      'The room is warmer than the target, so at times the glass warms the water: cooling the room helps first.',
      'T_r > T_w',
    ),
    caution(
      'caution',
      'Fans and chillers near salt water are mains equipment: GFCI or RCD, drip loops, and nothing that can fall in.',
    ),
    ...lossCautions,
  ],
  sources: LOSS_SOURCES,
  examples: [
    'how big a chiller for a 150x60 cm tank, 50 cm of water, 12 mm glass, 26 °C in a 30 °C room with 250 W of lights and pumps',
    'do I need cooling: 120 gal at 79F, room 86F, 200 W from pumps and lights',
  ],
});
