import type { Lookup } from '../calculation.js';

const DEGREE = Math.PI / 180;

/** Rough latitudes of the middle of well-known reef regions, from memory; north positive. */
export const REEF_LATITUDES = [
  { name: 'Florida Keys', latitude: 25 },
  { name: 'Bahamas', latitude: 24 },
  { name: 'southern Caribbean', latitude: 12 },
  { name: 'Gulf of Aqaba', latitude: 29 },
  { name: 'Dahlak Islands', latitude: 16 },
  { name: 'Maldives', latitude: 4 },
  { name: 'Okinawa', latitude: 26 },
  { name: 'Coral Triangle', latitude: 0 },
  { name: 'Great Barrier Reef', latitude: -18 },
  { name: 'Fiji', latitude: -18 },
  { name: 'Hawaii', latitude: 21 },
  { name: 'Zanzibar', latitude: -6 },
  { name: 'Red Sea', latitude: 22 },
  { name: 'Caribbean', latitude: 18 },
  { name: 'Bali', latitude: -8 },
  { name: 'Philippines', latitude: 12 },
  { name: 'Indonesia', latitude: -5 },
  { name: 'Solomon Islands', latitude: -9 },
  { name: 'Marshall Islands', latitude: 9 },
  { name: 'Tonga', latitude: -20 },
] as const;

const NUMBERED = '(\\d+(?:\\.\\d+)?)\\s*(?:°|deg(?:rees?)?)?\\s*(north|south|n|s)(?![a-z])';

/** A latitude in free text, lower case: a number with its hemisphere, or a reef region by name. */
export const LATITUDE_IN_TEXT = new RegExp(
  [NUMBERED, ...REEF_LATITUDES.map(({ name }) => name.toLowerCase())].join('|'),
);

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, '');

/** Reads `18.3 S`, `24° north`, or a reef region by name. */
export function readLatitude(text: string): Lookup | string {
  const match = text.toLowerCase().match(new RegExp(NUMBERED));
  if (match) {
    const south = match[2]!.startsWith('s');
    return {
      reading: `${match[1]}° ${south ? 'south' : 'north'}`,
      inputs: { latitude: (south ? -1 : 1) * Number(match[1]) * DEGREE },
      said: true,
    };
  }
  const reef = REEF_LATITUDES.find(({ name }) => plain(text) !== '' && plain(name) === plain(text));
  if (!reef) return `“${text}” is no latitude I can read: 18 S, 24 N or Great Barrier Reef would do.`;
  return {
    reading: reef.name,
    inputs: { latitude: reef.latitude * DEGREE },
    source: `latitude of ${reef.name}, about the middle of the region, from memory`,
  };
}
