import { type Condition, choice, type QuantityInput, quantity } from '../calculation.js';

/** Which sand, for how much of it a volume weighs. */
export const sandKind = choice({
  name: 'kind of sand',
  words: ['kind of sand'],
  ask: 'Which sand is it?',
  default: 'aragonite',
  options: {
    aragonite: {
      label: 'aragonite or crushed coral',
      words: [
        'aragonite',
        'coral sand',
        'crushed coral',
        'aragonit',
        'argonite',
        'coral gravel',
        'coral rubble',
        'reef sand',
        'live sand',
        'calcium carbonate',
        'oolite',
        'oolitic',
      ],
    },
    silica: {
      label: 'silica (quartz, pool filter sand)',
      words: [
        'silica',
        'quartz',
        'pool filter sand',
        'pool sand',
        'play sand',
        'river sand',
        'quarz',
        'silica sand',
        'quartz sand',
        'blasting sand',
      ],
    },
  },
  profile: 'sand.kind',
});

/** Mass of dry sand for each volume of bed, pores included. @param when where it is needed at all */
export const sandBulkDensity = (when?: Condition): QuantityInput =>
  quantity('density', {
    symbol: 'rho_b',
    name: 'bulk density of dry sand',
    words: ['bulk density', 'sand density'],
    range: [1200, 1900, 'kg/m3'],
    default: {
      value: 1550,
      unit: 'kg/m3',
      low: 1400,
      high: 1650,
      why: 'dry aragonite: grain density less the pores',
      ...(when === undefined ? {} : { when }),
    },
    ask: 'How much does a volume of the dry sand weigh?',
    example: '1550 kg/m3',
    profile: 'sand.bulk_density',
  });

export const SAND_SOURCE =
  'bulk density: grain density times the solid share, 1400 to 1650 kg/m³ for carbonate sand (porosity 0.40 to 0.50, Enos and Sawatsky 1981, from memory) and 1500 to 1700 for silica (from memory)';
