import { brokenHours, zoneNames } from '../../data/time-zones.js';
import { knownZone } from '../core/zone.js';

/** One place of several that use the same name for their time. */
export interface ZoneChoice {
  readonly of: string;
  readonly zone: string;
}

/** The IANA zone that a name means, or the zones between which it leaves open. */
export type ZoneRead = { readonly zone: string } | { readonly between: readonly ZoneChoice[] };

const AROUND =
  /^(?:the|utc offset|offset)\s+|\s+(?:time ?-?)?zone$|\s+time$|\s+(?:standard|daylight|summer|winter|local)$/g;

/** A name of a folded text without what stands around it: `eastern` of "the eastern standard time zone". */
function bareName(text: string): string {
  const shorter = text.trim().replace(AROUND, '').trim();
  return shorter === text ? text : bareName(shorter);
}

/** A time zone by its IANA name, a city, what people call it, or its offset: `america/new_york`, `lisbon`, `pacific time`, `utc+2`. */
export function zoneNamed(folded: string): ZoneRead | undefined {
  const name = bareName(folded);
  const row = zoneNames.find(({ called, also }) => bareName(called.toLowerCase()) === name || also.includes(name));
  if (row) {
    const between = row.zones.map(([of, zone]) => ({ of, zone }));
    return between.length > 1 ? { between } : { zone: between[0]!.zone };
  }
  const zone = zoneAtOffset(name) ?? zoneOfPlace(name);
  return zone === undefined ? undefined : { zone };
}

const OFFSET = /^(?:utc|gmt)?\s*([+-])\s*(\d{1,2}):?(\d{2})?$/;

/** A zone that is so far from UTC all year. */
function zoneAtOffset(name: string): string | undefined {
  const [, sign, hours, minutes = '00'] = name.match(OFFSET) ?? [];
  if (hours === undefined) return undefined;
  if (minutes !== '00') return brokenHours[`${sign}${Number(hours)}:${minutes}`];
  if (Number(hours) === 0) return 'UTC';
  const id = `Etc/GMT${sign === '+' ? '-' : '+'}${Number(hours)}`;
  return knownZone(id) && id;
}

/** Shorter names of the database are abbreviations, such as MET. */
const SHORTEST_COUNTRY = 4;

/** The zone of a city, or of one of the countries that the time zone database names; its own name with a slash. */
export function zoneOfPlace(folded: string): string | undefined {
  const name = folded
    .trim()
    .replace(/[.']/g, '')
    .replace(/[\s_]+/g, '_');
  if (!/^[a-z][a-z0-9_+/-]*$/.test(name)) return undefined;
  const { zones, regions } = listed();
  const ids = name.includes('/')
    ? [name].filter((id) => regions.includes(regionOf(id)))
    : regions.map((region) => `${region}/${name}`);
  const own = zones.find((zone) => ids.includes(zone.toLowerCase()));
  if (own) return own;
  // A newer spelling, such as Kolkata or Kyiv, may be known and not listed.
  const spelled = ids.find(knownZone);
  if (spelled) return spelled.replace(/(?<![a-z])[a-z]/g, (letter) => letter.toUpperCase());
  return name.length >= SHORTEST_COUNTRY ? knownZone(name) : undefined;
}

const regionOf = (id: string): string => id.slice(0, id.lastIndexOf('/'));

interface Listed {
  readonly zones: readonly string[];
  /** What may stand before a city: `america/argentina`. */
  readonly regions: readonly string[];
}

let kept: Listed | undefined;
/** The machine's list is long and made when it is first wanted. */
function listed(): Listed {
  if (kept) return kept;
  const zones = Intl.supportedValuesOf('timeZone');
  kept = { zones, regions: [...new Set(zones.map((zone) => regionOf(zone.toLowerCase())))] };
  return kept;
}

/** What may be offered while a zone is typed: what people call zones, then every IANA name. */
export const zonesToOffer = (): readonly string[] => [...zoneNames.map(({ called }) => called), ...listed().zones];
