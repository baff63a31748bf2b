import { type Condition, type Lookup, lookup, quantity } from '../calculation.js';
import { toSI, unitNamed } from '../quantity/units.js';
import { sampleTemperature } from './salinity.js';

const SCALE =
  /^\D*?(\d{1,2}(?:\.\d+)?)\s*°?\s*(?:deg(?:rees?)?\s*)?([cf])?\s*(?:\/|over)\s*(\d{1,2}(?:\.\d+)?)\s*°?\s*(?:deg(?:rees?)?\s*)?([cf])?/i;

/** Above this a scale printed without a unit is in Fahrenheit: no instrument is made for 60 °C. */
const HOTTEST_CELSIUS = 40;

/** The two temperatures of a scale as printed: `60/60 °F`, `20/4`. @returns undefined when the text holds none */
function scaleTemperatures(text: string): { sample: number; water: number; reading: string } | undefined {
  const match = text.match(SCALE);
  if (!match) return undefined;
  const [sample, water] = [Number(match[1]), Number(match[3])];
  const letter = (match[2] ?? match[4])?.toLowerCase() ?? (Math.max(sample, water) > HOTTEST_CELSIUS ? 'f' : 'c');
  const unit = unitNamed(letter === 'f' ? 'degF' : 'degC');
  return {
    sample: toSI(sample, unit),
    water: toSI(water, unit),
    reading: `${sample} ${unit.shown} over pure water of ${water} ${unit.shown}`,
  };
}

/**
 * The convention of a specific gravity, by the pair of temperatures printed on the instrument.
 * @param sample, water ids of the inputs that take the two temperatures
 */
export const gravityScale = (sample: string, water: string) =>
  lookup({
    name: 'scale of the specific gravity, such as 60/60 °F',
    words: ['scale', 'convention', 'calibrated', 'printed'],
    ask: 'Which pair of temperatures is printed on it?',
    example: '60/60 F, 25/25 C or 20/4',
    needed: false,
    suggestions: ['25/25 °C', '60/60 °F', '20/20 °C', '20/4 °C', '77/77 °F'],
    pattern:
      /(?:1[5-9]|2\d|[678]\d)\s*°?\s*[cf]?\s*\/\s*(?:4(?![\d.])|1[5-9]|2\d|39(?:\.\d)?|[678]\d)(?!\d)\s*°?\s*[cf]?(?![a-z])/,
    read(text): Lookup | string {
      const scale = scaleTemperatures(text);
      if (!scale) return `“${text}” is not a pair of temperatures: try 60/60 F, 25/25 C or 20/4.`;
      return { reading: scale.reading, inputs: { [sample]: scale.sample, [water]: scale.water } };
    },
  });

export const referenceTemperature = quantity('temperature', {
  symbol: 'T_ref',
  name: 'temperature of the pure water compared with',
  words: ['over water', 'over pure water', 'reference', 'reference temperature', 'over'],
  range: [0, 40, 'degC'],
  default: { same: 'temperature' },
  ask: 'What is the temperature of the pure water that the scale compares with?',
  example: '60 F, 4 C',
});

export const scaleAssumed: Condition = { assumed: 'reference_temperature' };

/** The sample's temperature, by the usual convention where nobody says. */
export const gravityTemperature = quantity('temperature', {
  ...sampleTemperature,
  default: { value: 25, unit: 'degC', why: 'the convention 25 °C over 25 °C' },
});

export const gravity = quantity('specific gravity', {
  symbol: 'SG',
  name: 'specific gravity',
  words: [
    'sg',
    'specific gravity',
    'gravity',
    's.g.',
    'at',
    'is at',
    'is',
    'tank',
    'tank is at',
    'tank at',
    'water',
    'water is at',
    'reads',
    'reading',
    'reading of',
    'measures',
    'measured',
    'salinity',
    'salinity of',
    'hydrometer',
    'refractometer',
  ],
  range: [0.99, 1.04, '1'],
  usual: [1.015, 1.032, '1'],
  slips: [
    [1.05, 1.5, 'A zero is probably missing after the point: 1.26 is written for 1.026, 1.25 for 1.025.'],
    [990, 1045, 'That is a density in kg/m³, or a specific gravity without its point: 1025 for 1.025.'],
    [20, 45, 'That looks like a salinity in ppt already.'],
  ],
  ask: 'Which specific gravity?',
  example: '1.026',
});
