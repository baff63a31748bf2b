/**
 * The steps between the empty room and the first animals, in an order that is safe: nothing is filled before it was tested, nothing
 * is plugged in before it is protected, nothing alive comes before the log shows it can.
 *
 * Orders and days are common practice, no source, save those of the cycle: Nijhof & Bovendeur 1990 (Aquaculture 84) found
 * nitrifying films in salt water slower to start than in fresh; the ranges of days are common practice. A maker's label (glue,
 * cement, sealant) outranks every number here.
 */
export interface BuildStep {
  readonly id: string;
  readonly name: string;
  /** How it stands in another step's line: "after the leak test". */
  readonly short: string;
  /** What else people call it. */
  readonly words: readonly string[];
  /** Usual and longest days; where `seeded` is given it holds for live or seeded rock. */
  readonly days: readonly [usual: number, longest: number];
  readonly seeded?: readonly [usual: number, longest: number];
  /** Steps that must be over first, and why. */
  readonly after: readonly (readonly [step: string, why: string])[];
  /** Time that passes by itself: nobody works on it. */
  readonly waits?: true;
  /** What is in this step that can hurt somebody or undo the rest. */
  readonly caution?: string;
}

export const buildSteps: readonly BuildStep[] = [
  {
    id: 'way_in',
    name: 'measure the way in, the floor and the place',
    short: 'way in measured',
    words: ['measure', 'way in', 'floor', 'doorway'],
    days: [1, 2],
    after: [],
    caution: 'A big tank on a suspended floor is a question for a structural engineer, before it is bought.',
  },
  {
    id: 'stand',
    name: 'build and level the stand',
    short: 'stand',
    words: ['stand', 'level the stand', 'cabinet'],
    days: [2, 5],
    after: [['way_in', 'the stand goes where the floor carries it']],
  },
  {
    id: 'drill',
    name: 'drill the tank and fit the bulkheads',
    short: 'drilling',
    words: ['drill', 'drilled', 'drilling', 'holes', 'bulkheads', 'bulkhead'],
    days: [1, 2],
    after: [['way_in', 'holes are placed for where the tank will stand']],
    caution:
      'Tempered glass shatters when drilled: ask the maker which panes are. Goggles, gloves, water on the bit, plugged in through a residual-current device.',
  },
  {
    id: 'carry',
    name: 'carry the tank in and set it on the stand',
    short: 'tank in place',
    words: ['carry', 'carried', 'tank in', 'tank on the stand', 'move the tank', 'moved the tank'],
    days: [1, 1],
    after: [
      ['stand', 'a tank is set down once'],
      ['drill', 'every side can still be reached'],
    ],
    caution: 'Enough people, gloves and shoes; never with water in it, never by the brace.',
  },
  {
    id: 'dry_fit',
    name: 'dry-fit the rock',
    short: 'dry fit',
    words: ['dry fit', 'dry-fit', 'aquascape', 'rock layout', 'stack the rock', 'stacked the rock'],
    days: [2, 7],
    after: [['way_in', 'the rock is laid out on the tank’s footprint']],
  },
  {
    id: 'glue',
    name: 'glue the rock',
    short: 'gluing',
    words: ['glue the rock', 'glued the rock', 'glue rock', 'glue', 'glued', 'mortar', 'cement the rock'],
    days: [1, 3],
    after: [['dry_fit', 'what is glued stays as it is']],
    caution: 'Air and gloves with glue and mortar; a column that topples when pushed dry topples in the water too.',
  },
  {
    id: 'glue_cure',
    name: 'rock glue cures',
    short: 'glue cured',
    words: ['glue cure', 'glue cured', 'rock cures', 'curing'],
    days: [1, 3],
    waits: true,
    after: [['glue', 'the label’s time to full strength, in a warm dry room']],
  },
  {
    id: 'plumb',
    name: 'dry-fit the pipes, then cement them',
    short: 'plumbing',
    words: ['plumb', 'plumbing', 'plumbed', 'pipes', 'pipe', 'return line', 'drains'],
    days: [2, 5],
    after: [['carry', 'pipes are cut to where the tank stands']],
    caution: 'Solvent cement needs open windows, gloves and no flame.',
  },
  {
    id: 'cement_cure',
    name: 'pipe cement and seals cure',
    short: 'pipe cement cured',
    words: ['cement cure', 'pipe cure', 'silicone cure', 'cement cured', 'pipes cured'],
    days: [1, 3],
    waits: true,
    after: [['plumb', 'the label’s time at this temperature and pipe size']],
  },
  {
    id: 'electrics',
    name: 'sockets, residual-current protection and drip loops',
    short: 'electrics',
    words: ['electrics', 'electrical', 'sockets', 'outlets', 'gfci', 'rcd', 'drip loops', 'wiring'],
    days: [1, 3],
    after: [['carry', 'sockets sit beside and above the water, never under it']],
    caution: 'New circuits belong to a licensed electrician; press the test button before anything wet is plugged in.',
  },
  {
    id: 'make_water',
    name: 'make the reverse-osmosis water',
    short: 'water made',
    words: ['make water', 'ro water', 'made the water', 'rodi', 'reverse osmosis'],
    days: [3, 7],
    after: [['way_in', 'it needs a place where a flood would be noticed']],
  },
  {
    id: 'leak_test',
    name: 'leak test with plain water, pulling the plug',
    short: 'leak test',
    words: ['leak test', 'leak-test', 'wet test', 'water test', 'test fill'],
    days: [3, 7],
    after: [
      ['cement_cure', 'uncured joints give way under pressure'],
      ['electrics', 'the pump is plugged in for it'],
    ],
    caution:
      'Stand by for the first hour: pull the plug to see the drain-back, shut one drain to see the other take it.',
  },
  {
    id: 'rinse',
    name: 'drain the test water, rinse rock and sand',
    short: 'rinsing',
    words: ['rinse', 'rinsed', 'drain the test water'],
    days: [1, 2],
    after: [
      ['leak_test', 'a leak is mended in an empty tank'],
      ['glue_cure', 'rinsing pulls at soft glue'],
    ],
  },
  {
    id: 'rock_in',
    name: 'rock on the bottom, then sand around it',
    short: 'rock and sand in',
    words: ['rock in', 'place the rock', 'placed the rock', 'sand in', 'added the sand', 'add the sand', 'aquascaped'],
    days: [1, 2],
    after: [['rinse', 'rock stands on the bottom, not on sand that burrowers move']],
  },
  {
    id: 'mix',
    name: 'fill, mix the salt, run until clear',
    short: 'salt mixed',
    words: ['fill', 'filled', 'mix', 'mixed', 'mix the salt', 'salt', 'saltwater'],
    days: [2, 3],
    after: [
      ['rock_in', 'there is nothing alive in it yet, so it may be mixed in the tank'],
      ['make_water', 'half a fill cannot be mixed to a salinity'],
    ],
  },
  {
    id: 'heat',
    name: 'heat to target, set the top-off, check salinity twice',
    short: 'heated',
    words: ['heat', 'heated', 'heaters on', 'up to temperature', 'top-off', 'ato'],
    days: [1, 2],
    after: [['mix', 'a heater in air cracks']],
  },
  {
    id: 'cycle',
    name: 'cycle, lights off',
    short: 'cycle',
    words: ['cycle', 'cycled', 'cycling'],
    days: [45, 60],
    seeded: [20, 30],
    waits: true,
    after: [['heat', 'the bacteria are slow in the cold and shocked by a change of salinity']],
  },
  {
    id: 'proof',
    name: 'proof dose gone within a day, twice',
    short: 'proof dose',
    words: ['proof dose', 'proof', 'proved', 'ready test'],
    days: [2, 4],
    after: [['cycle', 'ready is what the log shows, not the calendar']],
  },
  {
    id: 'lid',
    name: 'fit the lid or net',
    short: 'lid',
    words: ['lid', 'net', 'cover', 'hood'],
    days: [1, 3],
    after: [['carry', 'it is made to the tank as it stands']],
  },
  {
    id: 'lights',
    name: 'lights on, low and short at first',
    short: 'lights',
    words: ['lights on', 'lights', 'light'],
    days: [1, 1],
    after: [['proof', 'light before animals grows algae']],
  },
  {
    id: 'water_change',
    name: 'large water change with matched water',
    short: 'water change',
    words: ['water change', 'changed the water', 'big water change'],
    days: [1, 2],
    after: [['proof', 'it takes the nitrate of the cycle out']],
  },
  {
    id: 'first_animals',
    name: 'first hardy animals, after quarantine',
    short: 'first animals',
    words: ['first animals', 'first fish', 'add fish', 'animals', 'fish', 'stock', 'clownfish', 'clean up crew'],
    days: [14, 21],
    after: [
      ['water_change', 'they start in clean water'],
      ['lid', 'new fish jump'],
    ],
    caution: 'Few at first, fed a quarter of what the proven rate carries; test ammonia and nitrite every other day.',
  },
  {
    id: 'more_animals',
    name: 'next animals, a few every two weeks',
    short: 'next animals',
    words: ['more fish', 'next fish', 'next animals', 'corals', 'coral', 'more animals'],
    days: [14, 28],
    after: [['first_animals', 'two weeks with ammonia and nitrite at zero']],
  },
];
