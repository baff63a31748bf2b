import { lookup } from '../calculation.js';
import { MOST_TERMS } from '../sum.js';

const HOUR = 3_600;
const MOST_WATTS = 5_000;
const DAY_HOURS = 24;

const RIGHT = 'write each channel as watts and hours: 60 W 11 h, 120 W 8 h';

type Channel = readonly [watts: number, hours: number];

/** `60 W 11 h, 120 W 8 h`, or the same as a list of pairs `[[60, 11], [120, 8]]`. */
function channelsOf(text: string): readonly Channel[] {
  const pairs = /^\s*\[/.test(text)
    ? text.matchAll(/\[\s*(-?\d+(?:\.\d+)?)\s*,\s*(-?\d+(?:\.\d+)?)\s*\]/g)
    : text
        .toLowerCase()
        .matchAll(/(\d+(?:\.\d+)?)\s*w(?:atts?)?(?![a-z])[^\d,;+]*?(\d+(?:\.\d+)?)\s*h(?:(?:ou)?rs?)?(?![a-z])/g);
  return [...pairs].map(([, watts, hours]) => [Number(watts), Number(hours)]);
}

const ONE = '\\d+(?:\\.\\d+)?\\s*w(?:atts?)?(?![a-z])[^\\d,;+]{0,12}?\\d+(?:\\.\\d+)?\\s*h(?:(?:ou)?rs?)?(?![a-z])';

/** The channels of a light that run for different hours. */
export const lightChannels = lookup({
  name: 'channels, watts and hours each',
  words: ['channels', 'channel'],
  ask: 'How many watts does each channel draw, and for how many hours a day?',
  example: '60 W 11 h, 120 W 8 h',
  suggestions: ['60 W 11 h, 120 W 8 h', '40 W 12 h, 90 W 9 h, 30 W 4 h'],
  symbols: { P_i: 'W', h_i: 's' },
  pattern: new RegExp(`${ONE}(?:[^\\d]{1,24}${ONE})+`),
  read(text) {
    const channels = channelsOf(text);
    if (channels.length === 0) return `“${text}” holds no channel I can read: ${RIGHT}.`;
    if (channels.length > MOST_TERMS) return `That is more than ${MOST_TERMS} channels: sum those with the same hours.`;
    if (channels.some(([watts]) => watts < 0 || watts > MOST_WATTS))
      return `A channel draws 0 to ${MOST_WATTS} W: ${RIGHT}.`;
    if (channels.some(([, hours]) => hours < 0 || hours > DAY_HOURS)) return `A day has ${DAY_HOURS} hours: ${RIGHT}.`;
    return {
      reading: channels.map(([watts, hours]) => `${watts} W for ${hours} h`).join(', '),
      symbols: Object.fromEntries(
        channels.flatMap(([watts, hours], i) => [
          [`P_${i + 1}`, { si: watts, name: `power of channel ${i + 1}`, said: true }],
          [`h_${i + 1}`, { si: hours * HOUR, name: `hours of channel ${i + 1}`, said: true }],
        ]),
      ),
    };
  },
});
