/** What people call a time zone beside the cities in it. */
export interface ZoneName {
  /** As it is offered while a zone is typed. */
  readonly called: string;
  /** Other names, lower case, without "time", "standard" and "daylight". */
  readonly also: readonly string[];
  /** The usual IANA zone; where the name is used in several parts of the world, each with whose it is. */
  readonly zones: readonly (readonly [of: string, zone: string])[];
}

const one = (called: string, zone: string, ...also: string[]): ZoneName => ({
  called,
  also,
  zones: [[called, zone]],
});

/** Source: the abbreviations in the IANA time zone database 2025c; of several zones that share one, the one that is mostly meant. */
export const zoneNames: readonly ZoneName[] = [
  one('Eastern time', 'America/New_York', 'et', 'est', 'edt'),
  one('Central time', 'America/Chicago', 'ct', 'cdt'),
  one('Mountain time', 'America/Denver', 'mt', 'mst', 'mdt'),
  one('Pacific time', 'America/Los_Angeles', 'pt', 'pst', 'pdt'),
  one('Alaska time', 'America/Anchorage', 'akst', 'akdt'),
  one('Hawaii time', 'Pacific/Honolulu', 'hst', 'hawaiian'),
  one('Arizona time', 'America/Phoenix'),
  one('Atlantic time', 'America/Halifax', 'adt'),
  one('Newfoundland time', 'America/St_Johns', 'nst', 'ndt', 'nt'),
  one('Brasilia time', 'America/Sao_Paulo', 'brt'),
  one('UTC', 'UTC', 'z', 'zulu', 'gmt', 'greenwich', 'greenwich mean', 'universal', 'coordinated universal'),
  one('UK time', 'Europe/London', 'british', 'britain', 'england', 'scotland', 'wales'),
  one('WET', 'Europe/Lisbon', 'west', 'western european'),
  one('CET', 'Europe/Berlin', 'cest', 'central european', 'mez', 'mesz'),
  one('EET', 'Europe/Athens', 'eest', 'eastern european'),
  one('MSK', 'Europe/Moscow'),
  one('TRT', 'Europe/Istanbul'),
  one('SAST', 'Africa/Johannesburg', 'south african', 'south africa'),
  one('WAT', 'Africa/Lagos', 'west african', 'west africa'),
  one('CAT', 'Africa/Maputo', 'central african', 'central africa'),
  one('EAT', 'Africa/Nairobi', 'east african', 'east africa'),
  one('GST', 'Asia/Dubai', 'gulf'),
  one('PKT', 'Asia/Karachi', 'pakistan'),
  one('India time', 'Asia/Kolkata', 'indian'),
  one('NPT', 'Asia/Kathmandu', 'nepal'),
  one('ICT', 'Asia/Bangkok', 'indochina'),
  one('WIB', 'Asia/Jakarta', 'western indonesian'),
  one('SGT', 'Asia/Singapore'),
  one('HKT', 'Asia/Hong_Kong'),
  one('China time', 'Asia/Shanghai', 'beijing'),
  one('PHT', 'Asia/Manila', 'phst', 'philippine', 'philippines'),
  one('JST', 'Asia/Tokyo'),
  one('KST', 'Asia/Seoul', 'korea', 'korean'),
  one('AWST', 'Australia/Perth', 'australian western'),
  one('ACST', 'Australia/Adelaide', 'acdt', 'australian central'),
  one('AEST', 'Australia/Sydney', 'aedt', 'aet', 'australian eastern'),
  one('NZST', 'Pacific/Auckland', 'nzdt', 'nzt', 'new zealand'),
  {
    called: 'CST',
    also: [],
    zones: [
      ['the central US', 'America/Chicago'],
      ['China', 'Asia/Shanghai'],
      ['Cuba', 'America/Havana'],
    ],
  },
  {
    called: 'IST',
    also: [],
    zones: [
      ['India', 'Asia/Kolkata'],
      ['Israel', 'Asia/Jerusalem'],
      ['Ireland', 'Europe/Dublin'],
    ],
  },
  {
    called: 'BST',
    also: [],
    zones: [
      ['Britain', 'Europe/London'],
      ['Bangladesh', 'Asia/Dhaka'],
    ],
  },
  {
    called: 'AST',
    also: [],
    zones: [
      ['Atlantic Canada', 'America/Halifax'],
      ['Arabia', 'Asia/Riyadh'],
    ],
  },
  {
    called: 'AMT',
    also: [],
    zones: [
      ['the Amazon', 'America/Manaus'],
      ['Armenia', 'Asia/Yerevan'],
    ],
  },
];

/** Zones on a broken hour that never change their clocks, by their offset from UTC. Source: the same database. */
export const brokenHours: Readonly<Record<string, string>> = {
  '-9:30': 'Pacific/Marquesas',
  '+3:30': 'Asia/Tehran',
  '+4:30': 'Asia/Kabul',
  '+5:30': 'Asia/Kolkata',
  '+5:45': 'Asia/Kathmandu',
  '+6:30': 'Asia/Yangon',
  '+8:45': 'Australia/Eucla',
  '+9:30': 'Australia/Darwin',
};
