import type { QuantityName } from './quantities.js';

export type UnitSystem = 'metric' | 'us' | 'imperial';

/**
 * One row a unit. `si = value * factor + offset`. `words` are the spellings that people type, lower case; a word may stand
 * in several rows (g is a gram or a gallon), and the question's quantity decides. A blank in a word stands for blanks, points
 * and hyphens. Factors are exact by definition unless a source is given (BIPM SI Brochure 9; NIST SP 811 appendix B for US
 * and imperial units).
 */
export interface UnitRow {
  readonly id: string;
  readonly quantities: readonly QuantityName[];
  readonly factor: number;
  readonly offset?: number;
  /** Of a unit that tells which system its speaker counts in. */
  readonly system?: UnitSystem;
  /** How it is written for a person. Empty where a number stands alone. */
  readonly shown: string;
  readonly words: readonly string[];
  /** People write it of several things on several scales: beside another quantity they are asked what is meant. */
  readonly loose?: true;
  readonly source?: string;
}

const INCH = 0.0254;
const FOOT = 12 * INCH;
const US_GALLON = 231 * INCH ** 3;
const IMPERIAL_GALLON = 4.54609e-3;
const POUND = 0.45359237;
const DAY = 86_400;
const HOUR = 3_600;
/** Mean Gregorian year over twelve. */
const MONTH = (365.25 / 12) * DAY;
const KWH = 3.6e6;
const STANDARD_GRAVITY = 9.80665;
/** International table. */
const BTU = 1055.05585262;
/** g/mol, IUPAC 2021 abridged atomic masses. */
const CALCIUM_OXIDE = 56.077;
const CALCIUM_CARBONATE = 100.086;
/** Equivalents in a cubic metre: 10 mg/L of CaO, two equivalents each. */
const DKH = 20 / CALCIUM_OXIDE;

/** `c`, `°c`, `deg c`, `degrees celsius`. */
const inDegrees = (...scales: readonly string[]): string[] =>
  scales
    .flatMap((scale) => [scale, ...['°', '° ', 'deg ', 'degs ', 'degree ', 'degrees '].map((word) => word + scale)])
    .concat(scales.map((scale) => `deg${scale}`));

/** Of a rate only its two units are declared: its factor and most of its spellings follow from theirs. */
type Declared = UnitRow | (Omit<UnitRow, 'factor' | 'offset'> & { readonly rate: readonly [of: string, per: string] });

const declared: readonly Declared[] = [
  {
    id: 'm',
    quantities: ['length'],
    system: 'metric',
    factor: 1,
    shown: 'm',
    words: ['m', 'meter', 'meters', 'metre', 'metres'],
  },
  {
    id: 'cm',
    quantities: ['length'],
    system: 'metric',
    factor: 0.01,
    shown: 'cm',
    words: ['cm', 'cms', 'centimeter', 'centimeters', 'centimetre', 'centimetres'],
  },
  {
    id: 'mm',
    quantities: ['length'],
    system: 'metric',
    factor: 0.001,
    shown: 'mm',
    words: ['mm', 'mms', 'millimeter', 'millimeters', 'millimetre', 'millimetres', 'mil', 'mils'],
  },
  {
    id: 'dm',
    quantities: ['length'],
    system: 'metric',
    factor: 0.1,
    shown: 'dm',
    words: ['dm', 'decimeter', 'decimeters', 'decimetre', 'decimetres'],
  },
  {
    id: 'dam',
    quantities: ['length'],
    factor: 10,
    shown: 'dam',
    words: ['decameter', 'decameters', 'decametre', 'decametres'],
  },
  {
    id: 'hm',
    quantities: ['length'],
    factor: 100,
    shown: 'hm',
    words: ['hectometer', 'hectometers', 'hectometre', 'hectometres'],
  },
  {
    id: 'km',
    quantities: ['length'],
    system: 'metric',
    factor: 1000,
    shown: 'km',
    words: ['km', 'kms', 'kilometer', 'kilometers', 'kilometre', 'kilometres'],
  },
  {
    id: 'nm',
    quantities: ['length'],
    factor: 1e-9,
    shown: 'nm',
    words: ['nm', 'nanometer', 'nanometers', 'nanometre', 'nanometres'],
  },
  {
    id: 'um',
    quantities: ['length'],
    factor: 1e-6,
    shown: 'µm',
    words: ['µm', 'micron', 'microns', 'micrometer', 'micrometers', 'micrometre', 'micrometres'],
  },
  {
    id: 'in',
    quantities: ['length'],
    system: 'us',
    factor: INCH,
    shown: 'in',
    words: ['in', 'inch', 'inches', 'ins', '"', "''"],
  },
  {
    id: 'ft',
    quantities: ['length'],
    system: 'us',
    factor: FOOT,
    shown: 'ft',
    words: ['ft', 'foot', 'feet', "'", 'fts'],
  },
  {
    id: 'yd',
    quantities: ['length'],
    system: 'us',
    factor: 3 * FOOT,
    shown: 'yd',
    words: ['yd', 'yds', 'yard', 'yards'],
  },
  { id: 'mi', quantities: ['length'], system: 'us', factor: 5280 * FOOT, shown: 'mi', words: ['mi', 'mile', 'miles'] },

  {
    id: 'm2',
    quantities: ['area'],
    system: 'metric',
    factor: 1,
    shown: 'm²',
    words: ['m2', 'm^2', 'sqm', 'square m', 'square meter', 'square meters', 'square metre', 'square metres'],
  },
  {
    id: 'cm2',
    quantities: ['area'],
    system: 'metric',
    factor: 1e-4,
    shown: 'cm²',
    words: [
      'cm2',
      'cm^2',
      'sqcm',
      'square cm',
      'square centimeter',
      'square centimeters',
      'square centimetre',
      'square centimetres',
    ],
  },
  {
    id: 'dm2',
    quantities: ['area'],
    factor: 0.01,
    shown: 'dm²',
    words: [
      'dm2',
      'dm^2',
      'square dm',
      'square decimeter',
      'square decimeters',
      'square decimetre',
      'square decimetres',
    ],
  },
  {
    id: 'mm2',
    quantities: ['area'],
    factor: 1e-6,
    shown: 'mm²',
    words: [
      'mm2',
      'mm^2',
      'square mm',
      'square millimeter',
      'square millimeters',
      'square millimetre',
      'square millimetres',
    ],
  },
  {
    id: 'km2',
    quantities: ['area'],
    factor: 1e6,
    shown: 'km²',
    words: [
      'km2',
      'km^2',
      'square km',
      'square kilometer',
      'square kilometers',
      'square kilometre',
      'square kilometres',
    ],
  },
  { id: 'ha', quantities: ['area'], factor: 1e4, shown: 'ha', words: ['ha', 'hectare', 'hectares'] },
  {
    id: 'ft2',
    quantities: ['area'],
    system: 'us',
    factor: FOOT ** 2,
    shown: 'ft²',
    words: ['ft2', 'ft^2', 'sqft', 'sf', 'feet2', 'feet^2', 'square ft', 'square foot', 'square feet'],
  },
  {
    id: 'in2',
    quantities: ['area'],
    system: 'us',
    factor: INCH ** 2,
    shown: 'in²',
    words: ['in2', 'in^2', 'sqin', 'square in', 'square inch', 'square inches'],
  },
  {
    id: 'yd2',
    quantities: ['area'],
    system: 'us',
    factor: (3 * FOOT) ** 2,
    shown: 'yd²',
    words: ['yd2', 'yd^2', 'square yd', 'square yds', 'square yard', 'square yards'],
  },
  {
    id: 'mi2',
    quantities: ['area'],
    system: 'us',
    factor: (5280 * FOOT) ** 2,
    shown: 'mi²',
    words: ['mi2', 'mi^2', 'square mi', 'square mile', 'square miles', 'sqmiles'],
  },
  {
    id: 'acre',
    quantities: ['area'],
    system: 'us',
    factor: 43_560 * FOOT ** 2,
    shown: 'acres',
    words: ['acre', 'acres'],
  },

  {
    id: 'm3',
    quantities: ['volume'],
    system: 'metric',
    factor: 1,
    shown: 'm³',
    words: ['m3', 'm^3', 'cbm', 'cubic m', 'cubic meter', 'cubic meters', 'cubic metre', 'cubic metres'],
  },
  {
    id: 'L',
    quantities: ['volume'],
    system: 'metric',
    factor: 1e-3,
    shown: 'L',
    words: ['l', 'liter', 'liters', 'litre', 'litres', 'ltr', 'ltrs', 'lt', 'lts', 'lit', 'lits'],
  },
  {
    id: 'mL',
    quantities: ['volume'],
    system: 'metric',
    factor: 1e-6,
    shown: 'mL',
    words: [
      'ml',
      'milliliter',
      'milliliters',
      'millilitre',
      'millilitres',
      'cc',
      'mls',
      'cm3',
      'cm^3',
      'cubic cm',
      'cubic centimeter',
      'cubic centimeters',
      'cubic centimetre',
      'cubic centimetres',
    ],
  },
  {
    id: 'mm3',
    quantities: ['volume'],
    factor: 1e-9,
    shown: 'mm³',
    words: [
      'mm3',
      'mm^3',
      'cubic mm',
      'cubic millimeter',
      'cubic millimeters',
      'cubic millimetre',
      'cubic millimetres',
    ],
  },
  {
    id: 'cL',
    quantities: ['volume'],
    system: 'metric',
    factor: 1e-5,
    shown: 'cL',
    words: ['cl', 'centiliter', 'centiliters', 'centilitre', 'centilitres'],
  },
  {
    id: 'dL',
    quantities: ['volume'],
    system: 'metric',
    factor: 1e-4,
    shown: 'dL',
    words: ['dl', 'deciliter', 'deciliters', 'decilitre', 'decilitres'],
  },
  {
    id: 'daL',
    quantities: ['volume'],
    factor: 0.01,
    shown: 'daL',
    words: ['decaliter', 'decaliters', 'decalitre', 'decalitres', 'dekaliter', 'dekaliters', 'dekalitre', 'dekalitres'],
  },
  {
    id: 'hL',
    quantities: ['volume'],
    factor: 0.1,
    shown: 'hL',
    words: ['hl', 'hectoliter', 'hectoliters', 'hectolitre', 'hectolitres'],
  },
  {
    id: 'gal_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON,
    shown: 'US gal',
    words: [
      'gal',
      'gals',
      'gallon',
      'gallons',
      'us gal',
      'us gallon',
      'us gallons',
      'g',
      'gal_us',
      'american gallon',
      'american gallons',
      'u s gallon',
      'u s gallons',
    ],
  },
  {
    id: 'gal_imp',
    quantities: ['volume'],
    system: 'imperial',
    factor: IMPERIAL_GALLON,
    shown: 'imp gal',
    words: [
      'imp gal',
      'imperial gallon',
      'imperial gallons',
      'uk gal',
      'uk gallon',
      'uk gallons',
      'gal_imp',
      'imperial gal',
      'imp gallon',
      'imp gallons',
      'british gallon',
      'british gallons',
    ],
  },
  {
    id: 'qt_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON / 4,
    shown: 'US qt',
    words: ['qt', 'qts', 'quart', 'quarts', 'fl qt'],
  },
  {
    id: 'pt_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON / 8,
    shown: 'US pt',
    words: ['pt', 'pts', 'pint', 'pints', 'fl pt', 'fluid pint', 'fluid pints'],
  },
  {
    id: 'floz_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON / 128,
    shown: 'US fl oz',
    words: ['fl oz', 'fluid ounce', 'fluid ounces', 'oz', 'floz', 'fl ounce', 'fl ounces'],
  },
  {
    id: 'cup_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON / 16,
    shown: 'US cups',
    words: ['cup', 'cups'],
  },
  {
    id: 'tbsp_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON / 256,
    shown: 'US tbsp',
    words: [
      'tbsp',
      'tbsps',
      'tbs',
      'tablespoon',
      'tablespoons',
      'tbl',
      'tbls',
      'tablespoonful',
      'tablespoonfuls',
      'table spoon',
      'table spoons',
    ],
  },
  {
    id: 'tsp_US',
    quantities: ['volume'],
    system: 'us',
    factor: US_GALLON / 768,
    shown: 'US tsp',
    words: ['tsp', 'tsps', 'teaspoon', 'teaspoons', 'tspn', 'teaspoonful', 'teaspoonfuls', 'tea spoon', 'tea spoons'],
  },
  {
    id: 'in3',
    quantities: ['volume'],
    system: 'us',
    factor: INCH ** 3,
    shown: 'in³',
    words: ['in3', 'in^3', 'cubic in', 'cubic inch', 'cubic inches'],
  },
  {
    id: 'ft3',
    quantities: ['volume'],
    system: 'us',
    factor: FOOT ** 3,
    shown: 'ft³',
    words: ['ft3', 'ft^3', 'cuft', 'cubic ft', 'cubic foot', 'cubic feet'],
  },
  {
    id: 'yd3',
    quantities: ['volume'],
    system: 'us',
    factor: (3 * FOOT) ** 3,
    shown: 'yd³',
    words: ['yd3', 'yd^3', 'cubic yd', 'cubic yard', 'cubic yards'],
  },

  {
    id: 'kg',
    quantities: ['mass'],
    system: 'metric',
    factor: 1,
    shown: 'kg',
    words: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  },
  {
    id: 'g',
    quantities: ['mass'],
    system: 'metric',
    factor: 1e-3,
    shown: 'g',
    words: ['g', 'gram', 'grams', 'gm', 'gms', 'gr', 'gramme', 'grammes'],
  },
  {
    id: 'mg',
    quantities: ['mass'],
    factor: 1e-6,
    shown: 'mg',
    words: ['mg', 'milligram', 'milligrams', 'mgs', 'milligramme', 'milligrammes'],
  },
  {
    id: 'ug',
    quantities: ['mass'],
    factor: 1e-9,
    shown: 'µg',
    words: ['µg', 'mcg', 'microgram', 'micrograms', 'microgramme', 'microgrammes'],
  },
  {
    id: 'lb',
    quantities: ['mass'],
    system: 'us',
    factor: POUND,
    shown: 'lb',
    words: ['lb', 'lbs', 'pound', 'pounds', '#'],
  },
  { id: 'oz', quantities: ['mass'], system: 'us', factor: POUND / 16, shown: 'oz', words: ['oz', 'ounce', 'ounces'] },
  { id: 'grain', quantities: ['mass'], factor: POUND / 7000, shown: 'grains', words: ['grain', 'grains'] },
  { id: 'stone', quantities: ['mass'], factor: 14 * POUND, shown: 'stone', words: ['stone'] },
  {
    id: 't',
    quantities: ['mass'],
    factor: 1000,
    shown: 't',
    words: ['t', 'tonne', 'tonnes', 'metric ton', 'metric tons', 'metric tonne', 'metric tonnes', 'ton', 'tons'],
  },
  {
    id: 'ton_US',
    quantities: ['mass'],
    system: 'us',
    factor: 2000 * POUND,
    shown: 'US tons',
    words: ['ton', 'tons', 'us ton', 'us tons', 'short ton', 'short tons', 'us short ton', 'us short tons'],
  },
  {
    id: 'ton_imp',
    quantities: ['mass'],
    system: 'imperial',
    factor: 2240 * POUND,
    shown: 'imperial tons',
    words: [
      'ton',
      'tons',
      'imperial ton',
      'imperial tons',
      'long ton',
      'long tons',
      'british long ton',
      'british long tons',
    ],
  },

  { id: 's', quantities: ['time'], factor: 1, shown: 's', words: ['s', 'sec', 'secs', 'second', 'seconds'] },
  { id: 'min', quantities: ['time'], factor: 60, shown: 'min', words: ['min', 'mins', 'minute', 'minutes', 'm'] },
  {
    id: 'h',
    quantities: ['time'],
    factor: HOUR,
    shown: 'h',
    words: [
      'h',
      'hr',
      'hrs',
      'hour',
      'hours',
      'h/day',
      'hours a day',
      'hours per day',
      'hrs a day',
      'h a day',
      'hours/day',
    ],
  },
  { id: 'day', quantities: ['time'], factor: DAY, shown: 'days', words: ['d', 'day', 'days'] },
  { id: 'week', quantities: ['time'], factor: 7 * DAY, shown: 'weeks', words: ['wk', 'wks', 'week', 'weeks'] },
  { id: 'month', quantities: ['time'], factor: MONTH, shown: 'months', words: ['month', 'months', 'mo', 'mos'] },
  { id: 'fortnight', quantities: ['time'], factor: 14 * DAY, shown: 'fortnights', words: ['fortnight', 'fortnights'] },
  { id: 'year', quantities: ['time'], factor: 12 * MONTH, shown: 'years', words: ['year', 'years', 'yr', 'yrs', 'y'] },

  {
    id: 'K',
    quantities: ['temperature', 'temperature difference'],
    factor: 1,
    shown: 'K',
    words: inDegrees('kelvin', 'kelvins'),
  },
  {
    id: 'degC',
    quantities: ['temperature'],
    system: 'metric',
    factor: 1,
    offset: 273.15,
    shown: '°C',
    words: inDegrees('c', 'celsius', 'celcius', 'centigrade', 'centigrate'),
  },
  {
    id: 'degF',
    quantities: ['temperature'],
    system: 'us',
    factor: 5 / 9,
    offset: (459.67 * 5) / 9,
    shown: '°F',
    words: inDegrees('f', 'fahrenheit', 'farenheit', 'fahrenheight'),
  },
  {
    id: 'degC_difference',
    quantities: ['temperature difference'],
    system: 'metric',
    factor: 1,
    shown: '°C',
    words: inDegrees('c', 'celsius'),
  },
  {
    id: 'degF_difference',
    quantities: ['temperature difference'],
    system: 'us',
    factor: 5 / 9,
    shown: '°F',
    words: inDegrees('f', 'fahrenheit'),
  },

  { id: 'W', quantities: ['power'], factor: 1, shown: 'W', words: ['w', 'watt', 'watts'] },
  { id: 'kW', quantities: ['power'], factor: 1000, shown: 'kW', words: ['kw', 'kilowatt', 'kilowatts', 'kws'] },
  {
    id: 'hp',
    quantities: ['power'],
    factor: 550 * POUND * STANDARD_GRAVITY * FOOT,
    shown: 'hp',
    words: ['hp', 'horsepower'],
  },
  {
    id: 'BTU/h',
    quantities: ['power'],
    factor: BTU / HOUR,
    shown: 'BTU/h',
    words: ['btu/h', 'btu/hr', 'btuh', 'btu per hour', 'btu an hour', 'btu', 'btus'],
  },
  { id: 'J', quantities: ['energy'], factor: 1, shown: 'J', words: ['j', 'joule', 'joules'] },
  {
    id: 'Wh',
    quantities: ['energy'],
    factor: HOUR,
    shown: 'Wh',
    words: ['wh', 'watt hour', 'watt hours'],
  },
  {
    id: 'kWh',
    quantities: ['energy'],
    factor: KWH,
    shown: 'kWh',
    words: ['kwh', 'kilowatt hour', 'kilowatt hours', 'kw h', 'kwhs'],
  },
  { id: 'BTU', quantities: ['energy'], factor: BTU, shown: 'BTU', words: ['btu', 'btus'] },
  { id: 'kWh/day', quantities: ['energy a day'], rate: ['kWh', 'day'], shown: 'kWh a day', words: [] },
  { id: 'kWh/month', quantities: ['energy a day'], rate: ['kWh', 'month'], shown: 'kWh a month', words: [] },

  { id: 'Pa', quantities: ['pressure'], factor: 1, shown: 'Pa', words: ['pa', 'pascal', 'pascals'] },
  { id: 'kPa', quantities: ['pressure'], system: 'metric', factor: 1000, shown: 'kPa', words: ['kpa'] },
  { id: 'MPa', quantities: ['pressure'], factor: 1e6, shown: 'MPa', words: ['mpa'] },
  { id: 'bar', quantities: ['pressure'], system: 'metric', factor: 1e5, shown: 'bar', words: ['bar', 'bars'] },
  { id: 'dbar', quantities: ['pressure'], factor: 1e4, shown: 'dbar', words: ['dbar'] },
  {
    id: 'psi',
    quantities: ['pressure'],
    system: 'us',
    factor: (POUND * STANDARD_GRAVITY) / INCH ** 2,
    shown: 'psi',
    words: ['psi', 'lb/in2'],
  },
  {
    id: 'psf',
    quantities: ['pressure'],
    system: 'us',
    factor: (POUND * STANDARD_GRAVITY) / FOOT ** 2,
    shown: 'psf',
    words: ['psf', 'lb/ft2', 'pounds per square foot'],
  },
  { id: 'kN/m2', quantities: ['pressure'], factor: 1000, shown: 'kN/m²', words: ['kn/m2'] },
  { id: 'N/m', quantities: ['line load'], factor: 1, shown: 'N/m', words: ['n/m'] },
  {
    id: 'lbf/ft',
    quantities: ['line load'],
    factor: (POUND * STANDARD_GRAVITY) / FOOT,
    shown: 'lbf/ft',
    words: ['lbf/ft', 'lb/ft', 'pounds per foot'],
  },
  { id: 'Nm', quantities: ['moment'], factor: 1, shown: 'N·m', words: ['nm', 'n m', 'n·m'] },
  {
    id: 'lbf ft',
    quantities: ['moment'],
    factor: POUND * STANDARD_GRAVITY * FOOT,
    shown: 'lbf·ft',
    words: ['lbf ft', 'lb ft', 'ft lb'],
  },
  { id: 'N', quantities: ['force'], factor: 1, shown: 'N', words: ['n', 'newton', 'newtons'] },
  {
    id: 'lbf',
    quantities: ['force'],
    system: 'us',
    factor: POUND * STANDARD_GRAVITY,
    shown: 'lbf',
    words: ['lbf', 'pounds force'],
  },

  { id: 'rad', quantities: ['angle'], factor: 1, shown: 'rad', words: ['rad', 'radians'] },
  {
    id: 'deg',
    quantities: ['angle'],
    factor: Math.PI / 180,
    shown: '°',
    words: ['°', 'deg', 'degs', 'degree', 'degrees'],
  },

  { id: 'kg/m3', quantities: ['density'], rate: ['kg', 'm3'], shown: 'kg/m³', words: [] },
  { id: 'g/mL', quantities: ['density'], rate: ['g', 'mL'], shown: 'g/mL', words: ['kg/l'] },
  { id: 'g/L', quantities: ['concentration', 'density'], rate: ['g', 'L'], shown: 'g/L', words: [] },
  { id: 'mg/L', quantities: ['concentration', 'dissolved'], rate: ['mg', 'L'], shown: 'mg/L', words: [] },
  {
    id: 'ppm',
    quantities: ['dissolved'],
    factor: 1e-3,
    shown: 'ppm',
    words: ['ppm', 'parts per million'],
    loose: true,
  },
  { id: 'ug/L', quantities: ['dissolved'], rate: ['ug', 'L'], shown: 'µg/L', words: ['ppb', 'parts per billion'] },
  {
    id: 'mg/L/day',
    quantities: ['dissolved rate'],
    rate: ['mg/L', 'day'],
    shown: 'mg/L a day',
    words: ['ppm a day', 'ppm per day', 'ppm/day'],
  },
  {
    id: 'mg/L/week',
    quantities: ['dissolved rate'],
    rate: ['mg/L', 'week'],
    shown: 'mg/L a week',
    words: ['ppm a week', 'ppm per week', 'ppm/week'],
  },
  {
    id: 'umol/L',
    quantities: ['amount in water'],
    factor: 1e-3,
    shown: 'µmol/L',
    words: ['µmol/l'],
  },
  {
    id: 'meq/L',
    quantities: ['alkalinity'],
    factor: 1,
    shown: 'meq/L',
    words: ['meq/l', 'meq', 'milliequivalents', 'meq per litre', 'meq per liter'],
  },
  {
    id: 'dKH',
    quantities: ['alkalinity'],
    factor: DKH,
    shown: 'dKH',
    words: ['dkh', '°dkh', 'kh', 'degrees kh', 'german degrees'],
    source: '1 German degree = 10 mg/L CaO; IUPAC 2021 abridged atomic masses',
  },
  {
    id: 'mg/L CaCO3',
    quantities: ['alkalinity'],
    factor: 2 / CALCIUM_CARBONATE,
    shown: 'mg/L CaCO₃',
    words: ['mg/l caco3', 'ppm caco3', 'mg/l as caco3', 'ppm as caco3', 'mg/l of caco3', 'ppm alkalinity', 'ppm alk'],
    source: 'CaCO3 100.086 g/mol, two equivalents; IUPAC 2021 abridged atomic masses',
  },
  { id: 'dKH/day', quantities: ['alkalinity rate'], rate: ['dKH', 'day'], shown: 'dKH a day', words: [] },
  { id: 'pH', quantities: ['pH'], factor: 1, shown: '', words: ['ph'] },
  {
    id: 'lb/gal_US',
    quantities: ['concentration', 'density'],
    system: 'us',
    rate: ['lb', 'gal_US'],
    shown: 'lb/US gal',
    words: [],
  },

  {
    id: 'g/kg',
    quantities: ['salinity'],
    factor: 1e-3,
    shown: 'ppt',
    words: ['ppt', 'psu', '‰', 'g/kg', 'parts per thousand', 'pss', 'promille'],
  },
  { id: 'g/kg/day', quantities: ['salinity rate'], rate: ['g/kg', 'day'], shown: 'ppt a day', words: [] },

  {
    id: 'mS/cm',
    quantities: ['conductivity'],
    factor: 0.1,
    shown: 'mS/cm',
    words: ['ms/cm', 'ms', 'millisiemens', 'ms cm', 'millisiemens/cm', 'millisiemens per cm'],
  },
  {
    id: 'uS/cm',
    quantities: ['conductivity'],
    factor: 1e-4,
    shown: 'µS/cm',
    words: ['µs/cm', 'µs', 'microsiemens', 'microsiemens/cm'],
  },
  { id: 'S/m', quantities: ['conductivity'], factor: 1, shown: 'S/m', words: ['s/m'] },
  // Behind conductivity: `53 ms` are millisiemens before they are milliseconds.
  {
    id: 'ms',
    quantities: ['time'],
    factor: 1e-3,
    shown: 'ms',
    words: ['ms', 'msec', 'msecs', 'millisecond', 'milliseconds'],
  },

  { id: 'm3/s', quantities: ['flow'], rate: ['m3', 's'], shown: 'm³/s', words: [] },
  { id: 'm3/h', quantities: ['flow'], system: 'metric', rate: ['m3', 'h'], shown: 'm³/h', words: [] },
  {
    id: 'L/h',
    quantities: ['flow', 'water a day'],
    system: 'metric',
    rate: ['L', 'h'],
    shown: 'L/h',
    words: ['lph', 'lp/h'],
  },
  { id: 'L/min', quantities: ['flow'], system: 'metric', rate: ['L', 'min'], shown: 'L/min', words: ['lpm'] },
  { id: 'L/s', quantities: ['flow'], rate: ['L', 's'], shown: 'L/s', words: ['lps'] },
  { id: 'mL/min', quantities: ['flow'], rate: ['mL', 'min'], shown: 'mL/min', words: [] },
  { id: 'mL/s', quantities: ['flow'], rate: ['mL', 's'], shown: 'mL/s', words: [] },
  { id: 'ft3/min', quantities: ['flow'], rate: ['ft3', 'min'], shown: 'cubic ft/min', words: ['cfm'] },
  {
    id: 'L/day',
    quantities: ['water a day', 'flow'],
    system: 'metric',
    rate: ['L', 'day'],
    shown: 'L a day',
    words: ['lpd'],
  },
  { id: 'mL/day', quantities: ['water a day', 'flow'], rate: ['mL', 'day'], shown: 'mL a day', words: [] },
  {
    id: 'gal_US/h',
    quantities: ['flow', 'water a day'],
    system: 'us',
    rate: ['gal_US', 'h'],
    shown: 'US gal/h',
    words: ['gph'],
  },
  { id: 'gal_imp/h', quantities: ['flow'], system: 'imperial', rate: ['gal_imp', 'h'], shown: 'imp gal/h', words: [] },
  {
    id: 'gal_US/min',
    quantities: ['flow'],
    system: 'us',
    rate: ['gal_US', 'min'],
    shown: 'US gal/min',
    words: ['gpm'],
  },
  {
    id: 'gal_US/day',
    quantities: ['water a day', 'flow'],
    system: 'us',
    rate: ['gal_US', 'day'],
    shown: 'US gal a day',
    words: ['gpd'],
  },
  {
    id: 'gal_imp/day',
    quantities: ['water a day', 'flow'],
    system: 'imperial',
    rate: ['gal_imp', 'day'],
    shown: 'imp gal a day',
    words: [],
  },

  { id: 'm/s', quantities: ['speed'], rate: ['m', 's'], shown: 'm/s', words: [] },
  { id: 'cm/s', quantities: ['speed'], rate: ['cm', 's'], shown: 'cm/s', words: [] },
  {
    id: '1/h',
    quantities: ['turnover'],
    factor: 1 / HOUR,
    shown: 'times an hour',
    words: ['1/h', 'x/h', 'x per hour', 'x an hour', 'times an hour', 'times per hour', 'turns an hour', 'turnovers'],
  },
  { id: '1/day', quantities: ['rate constant'], factor: 1 / DAY, shown: 'a day', words: ['1/day', '1/d'] },
  { id: 'g/day', quantities: ['mass a day'], rate: ['g', 'day'], shown: 'g a day', words: [] },
  { id: 'A', quantities: ['current'], factor: 1, shown: 'A', words: ['a', 'amp', 'amps', 'ampere', 'amperes'] },
  { id: 'V', quantities: ['voltage'], factor: 1, shown: 'V', words: ['v', 'volt', 'volts', 'vac', 'vdc'] },
  {
    id: 'Ah',
    quantities: ['electric charge'],
    factor: HOUR,
    shown: 'Ah',
    words: ['ah', 'amp hour', 'amp hours'],
  },
  { id: 'ft/s', quantities: ['speed'], system: 'us', rate: ['ft', 's'], shown: 'ft/s', words: ['fps'] },
  { id: 'km/h', quantities: ['speed'], rate: ['km', 'h'], shown: 'km/h', words: ['kph', 'kmh'] },
  { id: 'mph', quantities: ['speed'], system: 'us', rate: ['mi', 'h'], shown: 'mph', words: ['mph'] },

  {
    id: 'umol/m2/s',
    quantities: ['photon flux'],
    factor: 1e-6,
    shown: 'µmol/m²/s',
    words: ['µmol/m2/s', 'µmol/m2 s', 'µmol', 'par', 'ppfd', 'micromol', 'micromoles'],
  },
  {
    id: 'mol/m2/day',
    quantities: ['light integral'],
    factor: 1 / DAY,
    shown: 'mol/m² a day',
    words: [
      'mol',
      'mols',
      'moles',
      'mol/m2/day',
      'mol/m2/d',
      'mol/day',
      'mol a day',
      'mol/m2 a day',
      'mol per day',
      'dli',
    ],
  },
  { id: 'lx', quantities: ['illuminance'], factor: 1, shown: 'lx', words: ['lx', 'lux'] },
  {
    id: '1/m',
    quantities: ['attenuation'],
    factor: 1,
    shown: 'per m',
    words: ['1/m', '/m', 'per m', 'per metre', 'per meter'],
  },

  { id: 'W/K', quantities: ['conductance'], factor: 1, shown: 'W/K', words: ['w/k'] },
  { id: 'W/m2K', quantities: ['heat transfer'], factor: 1, shown: 'W/(m²·K)', words: ['w/m2k'] },
  { id: 'kJ/K', quantities: ['heat capacity'], factor: 1000, shown: 'kJ/K', words: ['kj/k'] },
  {
    id: '1/K',
    quantities: ['thermal expansion', 'temperature coefficient'],
    factor: 1,
    shown: 'per K',
    words: ['1/k', 'per k', 'per degree'],
  },
  {
    id: '%/K',
    quantities: ['temperature coefficient'],
    factor: 0.01,
    shown: '% per K',
    words: ['%/k', '% per degree', '%/c', '%/°c', '% per °c', '% per c', '%/degree', 'percent per degree'],
  },

  {
    id: 'currency',
    quantities: ['money'],
    factor: 1,
    shown: '',
    words: [
      '$',
      '€',
      '£',
      'dollars',
      'dollar',
      'euro',
      'euros',
      'pounds sterling',
      'bucks',
      'buck',
      'quid',
      'usd',
      'eur',
      'gbp',
    ],
  },
  { id: 'cent', quantities: ['money'], factor: 0.01, shown: 'cents', words: ['cents', 'cent', 'c', 'p', 'pence', '¢'] },
  { id: 'currency/kWh', quantities: ['energy price'], rate: ['currency', 'kWh'], shown: 'per kWh', words: ['a kwh'] },
  {
    id: 'cents/kWh',
    quantities: ['energy price'],
    rate: ['cent', 'kWh'],
    shown: 'cents per kWh',
    words: ['ct/kwh', 'cents', 'cent', 'c', 'p', 'pence', '¢'],
  },
  {
    id: 'currency/kg',
    quantities: ['price of mass'],
    rate: ['currency', 'kg'],
    shown: 'per kg',
    words: ['a kg', 'a kilo'],
  },
  {
    id: 'currency/lb',
    quantities: ['price of mass'],
    rate: ['currency', 'lb'],
    shown: 'per lb',
    words: ['a lb', 'a pound'],
  },
  {
    id: 'currency/m3',
    quantities: ['price of water'],
    rate: ['currency', 'm3'],
    shown: 'per m³',
    words: ['a m3', 'a cubic metre', 'a cubic meter'],
  },
  {
    id: 'currency/kgal_US',
    quantities: ['price of water'],
    system: 'us',
    factor: 1 / (1000 * US_GALLON),
    shown: 'per 1000 US gal',
    words: ['per 1000 gal', 'per 1000 gallons', 'per thousand gallons', 'per kgal'],
  },
  {
    id: 'currency/gal_US',
    quantities: ['price of water'],
    system: 'us',
    rate: ['currency', 'gal_US'],
    shown: 'per US gal',
    words: ['a gallon of water'],
  },
  {
    id: 'currency/month',
    quantities: ['cost a month'],
    factor: 1 / MONTH,
    shown: 'a month',
    words: ['currency/month'],
  },

  { id: 'fraction', quantities: ['fraction'], factor: 1, shown: '', words: ['fraction'] },
  { id: '%', quantities: ['fraction'], factor: 0.01, shown: '%', words: ['%', 'percent', 'per cent', 'pct'] },
  {
    id: '1',
    quantities: ['specific gravity', 'ratio', 'fraction', 'count', 'pH'],
    factor: 1,
    shown: '',
    words: ['sg', 's.g.', 'specific gravity'],
  },
  { id: 'count', quantities: ['count'], factor: 1, shown: '', words: ['count', 'x', 'times', 'pcs', 'pieces'] },
];

const byId = new Map(declared.map((row) => [row.id, row]));
const factorOf = (row: Declared): number =>
  'factor' in row ? row.factor : row.rate.map((id) => factorOf(byId.get(id)!)).reduce((of, per) => of / per);

/** "litres an hour": "hour" beside "hours". */
const singular = (words: readonly string[]): string[] =>
  words.filter((word) => !word.endsWith('s') || !words.includes(word.slice(0, -1)));

/** `l/h`, `litres per hour`, `gallons a day`; of a price the money may be missing. */
function wordsOfRate([of, per]: readonly [string, string]): string[] {
  const each = singular(byId.get(per)!.words);
  const joined = each.flatMap((word) => [`/${word}`, ` per ${word}`]);
  const spoken = each
    .filter((word) => word.length > 1)
    .map((word) => `${/^h(?:r|our)/.test(word) ? ' an' : ' a'} ${word}`);
  const tails = [...joined, ...spoken];
  return [
    ...[of.toLowerCase(), ...byId.get(of)!.words].flatMap((word) => tails.map((tail) => word + tail)),
    ...(of === 'currency' ? joined : []),
  ];
}

export const unitTable: readonly UnitRow[] = declared.map((row) => {
  if (!('rate' in row)) return row;
  const { rate, ...rest } = row;
  return { ...rest, factor: factorOf(row), words: [...row.words, ...wordsOfRate(rate).map((word) => word.trim())] };
});
