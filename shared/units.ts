/** Units as people write them. Units are a table, not keywords: a word after a number is looked up here. */
import { Decimal, type Exact } from './exact';

export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'time'
  | 'day'
  | 'courses'
  | 'bricks'
  | 'bags'
  | 'people'
  | 'pieces'
  | 'temperature'
  | 'density'
  | 'strength'
  | 'percent'
  | 'number';

export interface Unit {
  /** As printed. */
  readonly name: string;
  readonly dimension: Dimension;
  /** How many of the dimension's base unit: mm, m2, l, kg, h, and one for counts. Exact by definition of the unit. */
  readonly factor: Exact;
  readonly system?: 'metric' | 'imperial';
  /** Other ways to write it; the first is the plural if there is one. */
  readonly also: readonly string[];
}

const FOOT = new Decimal('304.8');
const INCH = new Decimal('25.4');
const POUND = new Decimal('0.45359237');
const FOOT3 = FOOT.pow(3).div(1e6);

function unit(
  name: string,
  dimension: Dimension,
  factor: string | number | Exact,
  system: Unit['system'],
  ...also: string[]
): Unit {
  return { name, dimension, factor: new Decimal(factor), system, also };
}

/** International yard and pound agreement of 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, exactly. */
export const UNITS: readonly Unit[] = [
  unit('mm', 'length', 1, 'metric', 'millimetre', 'millimetres'),
  unit('cm', 'length', 10, 'metric', 'centimetre', 'centimetres'),
  unit('m', 'length', 1000, 'metric', 'metre', 'metres', 'meter', 'meters'),
  unit('km', 'length', 1e6, 'metric', 'kilometre', 'kilometres'),
  unit('in', 'length', '25.4', 'imperial', 'inch', 'inches'),
  unit('ft', 'length', FOOT, 'imperial', 'foot', 'feet'),
  unit('yd', 'length', '914.4', 'imperial', 'yard', 'yards'),
  unit('mile', 'length', '1609344', 'imperial', 'miles', 'mi'),
  unit('m2', 'area', 1, 'metric', 'm²', 'sqm'),
  unit('ft2', 'area', FOOT.pow(2).div(1e6), 'imperial', 'ft²', 'sqft'),
  unit('m3', 'volume', 1000, 'metric', 'm³', 'cum'),
  unit('l', 'volume', 1, 'metric', 'litre', 'litres', 'liter', 'liters', 'L'),
  unit('ml', 'volume', '0.001', 'metric', 'millilitre', 'millilitres', 'milliliter', 'milliliters'),
  unit('ft3', 'volume', FOOT3, 'imperial', 'ft³', 'cuft'),
  unit('yd3', 'volume', FOOT3.mul(27), 'imperial', 'yd³', 'cuyd'),
  unit('g', 'mass', '0.001', 'metric', 'gram', 'grams'),
  unit('kg', 'mass', 1, 'metric', 'kilo', 'kilos', 'kilogram', 'kilograms'),
  unit('t', 'mass', 1000, 'metric', 'tonne', 'tonnes'),
  unit('lb', 'mass', POUND, 'imperial', 'lbs', 'pound', 'pounds'),
  unit('ton', 'mass', POUND.mul(2000), 'imperial', 'tons'),
  unit('min', 'time', new Decimal(1).div(60), undefined, 'minute', 'minutes', 'mins'),
  unit('h', 'time', 1, undefined, 'hour', 'hours', 'hr', 'hrs'),
  unit('day', 'day', 1, undefined, 'days'),
  unit('course', 'courses', 1, undefined, 'courses'),
  unit('brick', 'bricks', 1, undefined, 'bricks'),
  unit('bag', 'bags', 1, undefined, 'bags'),
  unit('person', 'people', 1, undefined, 'people', 'persons'),
  unit('piece', 'pieces', 1, undefined, 'pieces', 'each', 'pack', 'packs', 'off'),
  unit('kg/m3', 'density', 1, 'metric', 'kg/m³'),
  unit('lb/ft3', 'density', POUND.div(FOOT3.div(1000)), 'imperial', 'lb/ft³'),
  unit('N/mm2', 'strength', 1, 'metric', 'N/mm²', 'MPa'),
  unit('psi', 'strength', POUND.mul('9.80665').div(INCH.pow(2)), 'imperial'),
  unit('C', 'temperature', 1, 'metric', '°C'),
  unit('%', 'percent', new Decimal('0.01'), undefined),
];

const BY_NAME = new Map<string, Unit>();
for (const u of UNITS) for (const name of [u.name, ...u.also]) BY_NAME.set(name, u);

export function unitNamed(name: string): Unit | undefined {
  return BY_NAME.get(name) ?? BY_NAME.get(name.toLowerCase());
}

export function unitsOf(dimension: Dimension): readonly Unit[] {
  return UNITS.filter((u) => u.dimension === dimension);
}

/** A value in `unit` said in the base unit of its dimension. */
export function toBase(value: Exact, u: Unit): Exact {
  return value.mul(u.factor);
}

/** A value of the base unit said in `unit`. */
export function fromBase(value: Exact, u: Unit): Exact {
  return value.div(u.factor);
}
