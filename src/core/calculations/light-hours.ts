import { caution, flag, quantity, result, step } from '../calculation.js';
import { changeLightSlowly, meterUnderBlue, readingIsForOnePlace } from '../cautions/light.js';
import { day } from '../constants.js';
import { calculation } from '../define.js';
import { corals, litHours, ppfd, rampHoursEach } from '../inputs/light.js';

const noIntegralWanted = { not: { given: 'daily_light_integral_wanted' } };

/** Usually what is asked for here, so the tank's page does not fill it in. */
const litHoursGiven = quantity('time', { ...litHours, range: [0.5, 24, 'h'], profile: undefined });

export const lightHours = calculation({
  id: 'light.hours',
  slash: 'light hours',
  title: 'Hours of light for a wanted daily dose',
  question: 'How long must the light run, or how strong must it be, for a wanted amount of light a day?',
  part: 'light',
  cues: [
    'photoperiod needed',
    'photoperiod for',
    'hours for a dli',
    'needed for a dli',
    'dli of #',
    'mols',
    'how many hours',
    'how long must',
    'how long should',
    'how long do i run',
    'run my light',
    'run my lights',
    'hours to reach',
    'hours of light',
    'to get a dli',
    'to reach a dli',
    'what par do i need',
    'how much par',
    'par do i need',
    'ppfd needed',
    'long to run',
  ],
  inputs: {
    daily_light_integral_wanted: quantity('light integral', {
      symbol: 'I_w',
      name: 'light wanted a day (DLI)',
      words: ['dli', 'mol', 'daily light', 'want', 'target', 'integral'],
      range: [0.1, 60, 'mol/m2/day'],
      usual: [1, 30, 'mol/m2/day'],
      slips: [[60, 1e9, 'Open sea gets about 50 at most, so this looks like a PPFD.']],
      ask: 'How much light a day do you want, in mol, or for which corals?',
      example: '8 mol, or mixed corals',
    }),
    corals,
    ppfd,
    hours: litHoursGiven,
    ramp_hours_each: rampHoursEach,
  },
  oneOf: [
    ['daily_light_integral_wanted', 'ppfd'],
    ['daily_light_integral_wanted', 'hours'],
    ['corals', 'ppfd'],
    ['corals', 'hours'],
  ],
  constants: { day, h_10: { value: 36_000, unit: 's', name: 'a ten-hour day' } },
  rules: [
    {
      refuse: { any: ['h_out > 86400', 'h_low > 86400'] },
      because:
        'That would take more than the 24 hours of a day: raise the PPFD instead. For a ten-hour day it takes 28 µmol/m²/s for each mol wanted.',
      about: 'ppfd',
    },
    {
      refuse: { any: ['2*r > h', '2*r > h_out', '2*r > h_low'] },
      because: 'Two ramps of that length do not fit into the hours: shorten the ramps.',
      about: 'ramp_hours_each',
    },
  ],
  steps: [
    step('h_out', 'I_w*day/P + r', 'time', 'lit hours, ramps included'),
    step('h_low', 'D_low*day/P + r', 'time', 'hours for the low end', noIntegralWanted),
    step('h_high', 'D_high*day/P + r', 'time', 'hours for the high end', noIntegralWanted),
    step('P_10', 'I_w*day/h_10', 'photon flux', 'PPFD that gives it in 10 h at full power'),
    step('P_need', 'I_w*day/(h - r)', 'photon flux', 'PPFD needed in those hours'),
    step('P_least', 'D_low*day/(h - r)', 'photon flux', 'PPFD for the low end', noIntegralWanted),
    step('P_most', 'D_high*day/(h - r)', 'photon flux', 'PPFD for the high end', noIntegralWanted),
    step('P_need', '(P_least + P_most)/2', 'photon flux', 'PPFD for the middle', noIntegralWanted),
    step('h_lit', 'h_out', 'time', 'lit hours'),
    step('h_lit', 'h', 'time', 'lit hours'),
  ],
  results: {
    hours: result('h_out', 'time', 'lit hours a day'),
    hours_low: result('h_low', 'time', 'hours for the low end'),
    hours_high: result('h_high', 'time', 'hours for the high end', { when: 'h_high <= 86400' }),
    ppfd_needed: result('P_need', 'photon flux', 'PPFD needed in those hours', { low: 'P_least', high: 'P_most' }),
    ppfd_for_10_h: result('P_10', 'photon flux', 'PPFD that gives it in 10 h at full power'),
    long_day: flag('a day longer than 14 h', 'h_lit > 50400', 'h_lit > 0'),
    short_day: flag('a day shorter than 6 h', 'h_lit < 21600', 'h_lit > 0'),
  },
  headline: [
    { text: 'At {ppfd} it must run {hours} a day.', when: 'h_out > 0' },
    { text: 'At {ppfd}, {corals} want {hours_low} to {hours_high} a day.', when: 'h_high <= 86400' },
    { text: 'At {ppfd}, {corals} want at least {hours_low} a day.', when: 'h_low > 0' },
    { text: 'In {hours} a day, {corals} want {ppfd_needed:range}.', when: 'P_most > 0' },
    { text: 'In {h} a day it takes {ppfd_needed}.' },
  ],
  cautions: [
    caution(
      'caution',
      'More than 14 hours leaves less than 10 of dark, feeds algae and stresses animals: raise the PPFD instead, slowly.',
      { any: ['h_lit > 50400', 'h_high > 50400'] },
    ),
    caution(
      'caution',
      'Less than 6 hours means the light is strong for these corals: hang the lamp higher or dim it rather than shorten the day.',
      { any: ['h_lit < 21600', 'h_low < 21600'] },
    ),
    changeLightSlowly,
    readingIsForOnePlace,
    meterUnderBlue,
    caution(
      'note',
      'With two channels use the reading with both on for the hours both run; the light integral adds channels of different hours.',
    ),
  ],
  sources: ['definition of the daily light integral solved for hours; limits of the day: common practice, no source'],
  examples: [
    'how long must my light run for 8 mol at 250 PAR',
    'how many hours of light do mixed corals need at 180 PAR',
    'what PAR do I need for 12 mol in 10 hours with 1 h ramps',
  ],
});
