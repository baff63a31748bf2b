import { model } from '../model.js';

const DAY_SECONDS = 86_400;
/** Altitude of the sun's centre at rise and set: 34' of refraction and 16' of radius below the horizon. */
const RISE_ALTITUDE = (-0.833 * Math.PI) / 180;

const SPENCER = 'Spencer 1971, Search 2(5): 172';
const HOUR_ANGLE =
  'sunrise equation of spherical astronomy, sun’s centre at −0.833° (34′ refraction and 16′ radius, from memory)';

/**
 * Declination of the sun [rad].
 * @param n day of the year, 1 to 366
 * @source Spencer 1971, Search 2(5): 172. Check: day 172 gives 23.45°.
 */
export function declination(n: number): number {
  const G = (2 * Math.PI * (n - 1)) / 365;
  return (
    0.006918 -
    0.399912 * Math.cos(G) +
    0.070257 * Math.sin(G) -
    0.006758 * Math.cos(2 * G) +
    0.000907 * Math.sin(2 * G) -
    0.002697 * Math.cos(3 * G) +
    0.00148 * Math.sin(3 * G)
  );
}

/**
 * Cosine of the hour angle at which the sun rises; -1 or less where it never sets, 1 or more where it never rises.
 * @param latitude north positive [rad]     @param sun declination of the sun [rad]
 */
const cosOfSunrise = (latitude: number, sun: number): number =>
  (Math.sin(RISE_ALTITUDE) - Math.sin(latitude) * Math.sin(sun)) / (Math.cos(latitude) * Math.cos(sun));

/** Time from sunrise to sunset [s], 0 in the polar night, a whole day when the sun never sets. */
export const dayLength = (latitude: number, sun: number): number =>
  DAY_SECONDS * (Math.acos(Math.max(-1, Math.min(1, cosOfSunrise(latitude, sun)))) / Math.PI);

export const daylightModels = [
  model({
    name: 'declination',
    args: { n: '1' },
    unit: 'rad',
    meaning:
      'declination of the sun on day n of the year, radians: 0.006918 − 0.399912*cos(G) + 0.070257*sin(G) − 0.006758*cos(2*G) + 0.000907*sin(2*G) − 0.002697*cos(3*G) + 0.00148*sin(3*G), G = 2*pi*(n − 1)/365',
    source: SPENCER,
    apply: (n = 1) => declination(n),
  }),
  model({
    name: 'sunrise_cosine',
    args: { latitude: 'rad', sun: 'rad' },
    unit: '1',
    meaning:
      'cosine of the hour angle of sunrise: (sin(−0.833°) − sin(latitude)*sin(sun))/(cos(latitude)*cos(sun)); −1 or less: the sun never sets, 1 or more: it never rises',
    source: HOUR_ANGLE,
    apply: (latitude = 0, sun = 0) => cosOfSunrise(latitude, sun),
  }),
  model({
    name: 'day_length',
    args: { latitude: 'rad', sun: 'rad' },
    unit: 's',
    meaning: 'sunrise to sunset: 86400*acos(sunrise_cosine kept within −1 and 1)/pi',
    source: HOUR_ANGLE,
    apply: (latitude = 0, sun = 0) => dayLength(latitude, sun),
  }),
];
