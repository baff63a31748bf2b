import { rowModel } from '../model.js';
import { type Dimension, dimensionOf, divide } from '../quantity/dimension.js';

const HOUR = 3600;
/** A dose is judged a day later, give or take a quarter: nobody tests on the minute. */
const WINDOW = { from: 18 * HOUR, to: 30 * HOUR };

const SECOND = dimensionOf('s');
const perSecond = (column: Dimension): Dimension => divide(column, SECOND);
const itself = (column: Dimension): Dimension => column;

type Rows = readonly (readonly number[])[];

/**
 * Slope of the least-squares line through points [unit of y a second].
 * @returns not a number through fewer than two points, or through points of one time
 */
export function leastSquaresSlope(points: Rows): number {
  const n = points.length;
  const meanTime = points.reduce((sum, [t = 0]) => sum + t, 0) / n;
  const meanY = points.reduce((sum, [, y = 0]) => sum + y, 0) / n;
  const over = points.reduce((sum, [t = 0, y = 0]) => sum + (t - meanTime) * (y - meanY), 0);
  return over / points.reduce((sum, [t = 0]) => sum + (t - meanTime) ** 2, 0);
}

/** Rows behind the last one with a dose in the given column: that row was read before its dose. All where nothing was dosed. */
const sinceDose = (rows: Rows, column: number): Rows =>
  rows.slice(rows.reduce((last, row, i) => (row[column]! > 0 ? i : last), -1) + 1);

/** Row at which the day after the dose of row `dosed` ends: the last read 18 to 30 hours later with no dose in between. */
function windowEnd(rows: Rows, dosed: number): number | undefined {
  const next = rows.findIndex((row, i) => i > dosed && row[1]! > 0);
  const last = next === -1 ? rows.length - 1 : next;
  for (let i = last; i > dosed; i -= 1) {
    const later = rows[i]![0]! - rows[dosed]![0]!;
    if (later >= WINDOW.from && later <= WINDOW.to) return i;
  }
  return undefined;
}

/** The first row read more than 30 hours after the dose of row `dosed`, with no dose in between. */
function firstLate(rows: Rows, dosed: number): number | undefined {
  const next = rows.findIndex((row, i) => i > dosed && row[1]! > 0);
  const late = rows.findIndex((row, i) => i > dosed && row[0]! - rows[dosed]![0]! > WINDOW.to);
  return late === -1 || (next !== -1 && late > next) ? undefined : late;
}

/**
 * How many doses in a row, up to the latest that can be judged, were gone a day later.
 * @param rows time [s], dose just after the reading, total ammonia and nitrite, all as nitrogen [kg/m³], in order of time
 * @param least dose that counts     @param ammonia, nitrite what counts as gone
 */
function clearedInARow(rows: Rows, least = 0, ammonia = 0, nitrite = 0): number {
  const clear = (i: number) => rows[i]![2]! <= ammonia && rows[i]![3]! <= nitrite;
  let count = 0;
  rows.forEach((row, dosed) => {
    if (row[1]! < least) return;
    const end = windowEnd(rows, dosed);
    const late = firstLate(rows, dosed);
    if (end !== undefined) count = clear(end) ? count + 1 : 0;
    // What is still there later was there after a day; what is gone later tells nothing about that day.
    else if (late !== undefined && !clear(late)) count = 0;
  });
  return count;
}

const COMMON_PRACTICE = 'definition; 18 to 30 h, common practice, no published source found';

export const cycleLogModels = [
  rowModel({
    name: 'count',
    columns: { x: 'any' },
    unit: '1',
    meaning: 'number of values in a list',
    source: 'definition',
    apply: (rows) => rows.length,
  }),
  rowModel({
    name: 'last',
    columns: { x: 'any' },
    unit: itself,
    meaning: 'last value of a list',
    source: 'definition',
    apply: (rows) => rows.at(-1)![0]!,
  }),
  rowModel({
    name: 'shortest_step',
    columns: { t: 's' },
    unit: 's',
    meaning: 'shortest time from one reading to the next, negative where the times run backwards',
    source: 'definition',
    apply: (rows) =>
      rows.slice(1).reduce((least, [t], i) => Math.min(least, t! - rows[i]![0]!), Number.POSITIVE_INFINITY),
  }),
  rowModel({
    name: 'last_dose',
    columns: { dose: 'kg/m^3' },
    unit: 'kg/m^3',
    meaning: 'last dose above nothing in a list, 0 where there is none',
    source: 'definition',
    apply: (rows) => rows.reduce((last, [dose]) => (dose! > 0 ? dose! : last), 0),
  }),
  rowModel({
    name: 'readings_since_dose',
    columns: { dose: 'kg/m^3' },
    unit: '1',
    meaning: 'number of readings after the last dose, all of them where there was none',
    source: 'definition',
    apply: (rows) => sinceDose(rows, 0).length,
  }),
  rowModel({
    name: 'span_since_dose',
    columns: { t: 's', dose: 'kg/m^3' },
    unit: 's',
    meaning: 'time from the first to the last of the readings after the last dose',
    source: 'definition',
    apply: (rows) => {
      const since = sinceDose(rows, 1);
      return since.length === 0 ? 0 : since.at(-1)![0]! - since[0]![0]!;
    },
  }),
  rowModel({
    name: 'slope',
    columns: { t: 's', y: 'any' },
    unit: (y) => perSecond(y),
    meaning: 'slope of the least-squares line: Σ(t − mean t)(y − mean y)/Σ(t − mean t)²',
    source: 'least squares: Legendre 1805',
    apply: leastSquaresSlope,
  }),
  rowModel({
    name: 'slope_since_dose',
    columns: { t: 's', dose: 'kg/m^3', y: 'kg/m^3' },
    unit: 'kg/(m^3 s)',
    meaning: 'slope of the least-squares line through the readings after the last dose',
    source: 'least squares: Legendre 1805',
    apply: (rows) => leastSquaresSlope(sinceDose(rows, 1).map(([t = 0, , y = 0]) => [t, y])),
  }),
  rowModel({
    name: 'time_at_least',
    own: { level: 'kg/m^3' },
    columns: { t: 's', y: 'kg/m^3' },
    unit: 's',
    meaning: 'time over which the readings up to the last one stood at a level or above without a break',
    source: 'definition',
    apply: (rows, level = 0) => {
      const below = rows.reduce((last, [, y], i) => (y! < level ? i : last), -1);
      return below === rows.length - 1 ? 0 : rows.at(-1)![0]! - rows[below + 1]![0]!;
    },
  }),
  rowModel({
    name: 'cleared_in_a_row',
    own: { least_dose: 'kg/m^3', ammonia: 'kg/m^3', nitrite: 'kg/m^3' },
    columns: { t: 's', dose: 'kg/m^3', total_ammonia: 'kg/m^3', nitrite_reading: 'kg/m^3' },
    unit: '1',
    meaning:
      'how many doses of at least least_dose in a row, up to the latest that can be judged, had left no more than ammonia and nitrite in the last reading 18 to 30 h later before any other dose; one that a later reading still finds counts as failed, one first read later and found gone is passed over',
    source: COMMON_PRACTICE,
    apply: clearedInARow,
  }),
  rowModel({
    name: 'ends_a_day',
    own: { least_dose: 'kg/m^3' },
    columns: { t: 's', dose: 'kg/m^3' },
    unit: '1',
    meaning:
      '1 where the last reading is 18 to 30 h after a dose of at least least_dose, with no other in between; else 0',
    source: COMMON_PRACTICE,
    apply: (rows, least = 0) =>
      rows.some((row, dosed) => row[1]! >= least && windowEnd(rows, dosed) === rows.length - 1) ? 1 : 0,
  }),
];
