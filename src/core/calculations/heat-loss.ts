import { caution, result, step } from '../calculation.js';
import { lossIsRough } from '../cautions/heater.js';
import { calculation } from '../define.js';
import { LOSS_SOURCES, lossCautions, lossConstants, lossSteps } from '../inputs/loss-steps.js';
import { roomTemperature } from '../inputs/room.js';
import { geometryRules, tankHeatInputs, tankTemperature } from '../inputs/tank-heat.js';

export const heatLoss = calculation({
  id: 'heat.loss',
  slash: 'heater loss',
  title: 'Heat a tank loses to its room',
  question: 'How many watts does the water lose through the glass and from its surface?',
  part: 'heat',
  cues: [
    'tank lose to the room',
    'lose to the room',
    'bleeding away',
    'watts does my tank lose',
    'losing to the room',
    'heat loss',
    'lose heat',
    'loses heat',
    'losing heat',
    'heat does',
    'heat goes',
    'watts does it lose',
    'watts lost',
    'lost through the glass',
    'heat lost',
    'heat is lost',
    'losing how many watts',
    'lose how many watts',
    'how many watts does the tank lose',
    'watts does the tank',
    'tank give off',
    'give off to the room',
    'gives off to the room',
    'how much heat does my',
    'how much heat does the',
    'loses heat like',
    'lose heat like',
    'heat escape',
    'heat escapes',
    'leaking heat',
    'through the glass and surface',
    'heat balance',
    'watts going out',
    'watts go out',
    'heat going out',
    'going out of',
    'watts out of',
    'heat goes out',
    'watts leave',
    'heat leaves',
  ],
  wording:
    /\b(?:watts?|heat)\b.*\b(?:los(?:e|es|ing|t|s)|going out|goes out|escap\w+|leak\w*|leav\w+|gives? off|bleed\w*)\b/,
  inputs: { water_temperature: tankTemperature, room_temperature: roomTemperature, ...tankHeatInputs },
  constants: lossConstants,
  rules: geometryRules,
  steps: [
    ...lossSteps,
    step('x_evap', 'P_evap/P_loss', 'fraction', 'share of evaporation', 'P_loss > 0'),
    step('P_gain', '-P_loss', 'power', 'heat the room gives the water', 'P_loss <= 0'),
  ],
  results: {
    glass_loss: result('P_wall', 'power', 'through walls and bottom'),
    evaporation_loss: result('P_evap', 'power', 'by evaporation'),
    convection_loss: result('P_conv', 'power', 'to the air over the surface'),
    radiation_loss: result('P_rad', 'power', 'radiated from the surface'),
    total_loss: result('P_loss', 'power', 'heat lost to the room'),
    evaporation_share: result('x_evap', 'fraction', 'share of evaporation', { figures: 2 }),
  },
  headline: [
    {
      text: 'At {water_temperature} with the room at {room_temperature} it loses {total_loss:range}, {evaporation_share} of it by evaporation.',
      when: 'P_loss > 0',
    },
    { text: 'With the room at {room_temperature} it loses nothing: the room warms the water with {P_gain}.' },
  ],
  cautions: [
    caution(
      'note',
      'A lid saves more than thicker glass, and holds light back and warmth in: watch the summer.',
      'P_evap > 0.3*P_loss and c > 0.5',
    ),
    caution('note', 'The air in a cabinet is taken as room air, which is on the cautious side.', {
      given: 'sump_length',
    }),
    ...lossCautions,
    lossIsRough,
  ],
  sources: LOSS_SOURCES,
  examples: [
    'how much heat does a 72x18 in tank lose at 79F in a 72F room, 20 in of water, 1/2 in glass',
    'heat loss of a 150x60 cm tank, 50 cm of water, 12 mm glass, 25.5 °C in a 22 °C room',
  ],
});
