import { caution, choice, quantity, result, step } from '../calculation.js';
import { calculation } from '../define.js';
import { againstReef } from '../inputs/salinity.js';

export const salinityRefractometer = calculation({
  id: 'salinity.refractometer',
  slash: 'salinity refractometer',
  title: 'What a refractometer reading means',
  question: 'What is the salinity when a refractometer of this scale, set this way, shows that?',
  part: 'water',
  cues: ['refractometer', 'refractometer reads', 'refractometer shows', 'brine scale', 'seawater scale'],
  inputs: {
    reading: quantity('salinity', {
      symbol: 'r',
      name: 'refractometer reading',
      words: ['reads', 'shows', 'reading', 'says', 'refractometer'],
      range: [0, 60, 'g/kg'],
      usual: [20, 42, 'g/kg'],
      ask: 'What does it show on the scale in ppt?',
      example: '36 ppt',
    }),
    scale: choice({
      name: 'kind of scale',
      ask: 'Is its scale made for seawater, or for brine (sodium chloride) as most cheap ones are? The manual says.',
      options: {
        seawater: {
          label: 'seawater',
          words: ['seawater scale', 'sea water', 'natural seawater', 'made for seawater', 'seawater refractometer'],
          gives: { k: 1 },
        },
        brine: {
          label: 'brine (sodium chloride)',
          words: [
            'brine',
            'brine scale',
            'sodium chloride scale',
            'salt refractometer',
            'nacl scale',
            'made for brine',
          ],
          gives: { k: 0.96 },
        },
      },
      symbols: { k: '1' },
      source:
        'rise of the refractive index at 20 °C: sea salt 1.829e-4 per g/kg (Quan and Fry 1995), sodium chloride 1.756e-4 (CRC Handbook); both read in transcriptions',
    }),
    calibrated_with: choice({
      name: 'what it was set with',
      ask: 'What was it set with?',
      default: 'pure_water',
      options: {
        pure_water: {
          label: 'pure water, to zero',
          words: ['zeroed', 'pure water', 'ro water', 'rodi', 'distilled water', 'set to zero', 'set to 0'],
          gives: { r_0: 0, S_0: 0 },
        },
        seawater_standard: {
          label: 'a seawater standard',
          words: ['seawater standard', 'calibration fluid', 'calibration solution', 'reference fluid', 'standard'],
        },
        sodium_chloride_standard: {
          label: 'a sodium chloride solution',
          words: [
            'table salt',
            'sodium chloride standard',
            'nacl standard',
            'salt solution',
            'sodium chloride solution',
          ],
        },
      },
      symbols: { r_0: '1', S_0: '1' },
    }),
    standard: quantity('salinity', {
      symbol: 's',
      name: 'strength of the standard',
      words: ['standard', 'calibrated to', 'set to', 'calibration fluid', 'calibration solution'],
      range: [10, 45, 'g/kg'],
      needed: { not: { is: ['calibrated_with', 'pure_water'] } },
      ask: 'How strong is the standard it was set with?',
      example: '35 ppt',
    }),
  },
  constants: {
    q: { value: 0.96, unit: '1', name: 'sea salt that bends light like 1 of sodium chloride' },
    u: { value: 0.0015, unit: 'kg/kg', name: 'doubt of a hand instrument (common practice, no source)' },
  },
  steps: [
    step('r_0', 's', 'salinity', 'what it was set to show'),
    step('S_0', 's', 'salinity', 'salinity of the standard', { is: ['calibrated_with', 'seawater_standard'] }),
    step('S_0', 'q*s', 'salinity', 'seawater that bends light like the standard'),
    step('S', 'S_0 + k*(r - r_0)', 'salinity', 'salinity'),
    step('S_low', 'max(S - u, 0)', 'salinity', 'salinity, low end'),
    step('S_high', 'S + u', 'salinity', 'salinity, high end'),
  ],
  results: {
    salinity: result('S', 'salinity', 'salinity', {
      low: 'S_low',
      high: 'S_high',
      range: [0, 60, 'g/kg'],
      because: 'The salinity comes out below nothing: the reading and what the instrument was set with do not fit.',
    }),
    salinity_low: result('S_low', 'salinity', 'salinity, low end'),
    salinity_high: result('S_high', 'salinity', 'salinity, high end'),
    factor: result('k', 'ratio', 'salinity per ppt of its scale'),
  },
  headline: againstReef('{reading} on this refractometer is {salinity}, give or take 1.5'),
  cautions: [
    caution(
      'caution',
      'Set only with pure water, a wrong slope shows nowhere but up at 35: check it with a 35 ppt seawater standard.',
      { is: ['calibrated_with', 'pure_water'] },
    ),
    caution(
      'caution',
      'A 35 ppt solution of table salt bends light like seawater of 33.6; 36.5 g/kg of it stands for 35.',
      { is: ['calibrated_with', 'sodium_chloride_standard'] },
    ),
    caution(
      'note',
      'A degree between sample and prism is 0.6 ppt: let the drop settle for a minute, even with automatic compensation, which ends below 10 and above 30 °C (common practice). Keep the prism clean.',
    ),
    caution(
      'note',
      'Read the ppt scale: the specific gravity printed beside it may belong to brine, or to other temperatures. A sugar (Brix) instrument is of no use here.',
    ),
    caution(
      'note',
      'The index of seawater was measured to 35 ppt; this far above it the line is carried on.',
      'S > 0.042',
    ),
  ],
  sources: ['straight line through the point it was set at', 'Quan and Fry 1995, Applied Optics 34: 3477'],
  examples: [
    'my refractometer shows 36 ppt, brine scale, zeroed in ro water',
    'refractometer with a seawater scale reads 35 ppt, set with pure water',
  ],
});
