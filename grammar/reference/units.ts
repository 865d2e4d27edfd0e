/** The table of units with their exact factors, from the units themselves. */
import { type Exact, ONE } from '../../shared/exact';
import { type Dimension, UNITS, type Unit } from '../../shared/units';
import { table } from './table';

const TITLES: Readonly<Record<Dimension, string>> = {
  length: 'length',
  area: 'area',
  volume: 'volume',
  mass: 'weight',
  time: 'time',
  day: 'days',
  courses: 'courses',
  bricks: 'bricks',
  bags: 'bags',
  people: 'people',
  pieces: 'pieces',
  temperature: 'temperature',
  density: 'density',
  strength: 'strength',
  percent: 'share',
  number: 'number',
};

export function units(): string {
  const rows = UNITS.map((unit) => [
    TITLES[unit.dimension],
    `\`${unit.name}\``,
    unit.also.map((name) => `\`${name}\``).join(', '),
    worth(unit),
  ]);
  return table(['of', 'unit', 'also written', 'is exactly'], rows);
}

function worth(unit: Unit): string {
  if (unit.dimension === 'percent') return 'a hundredth';
  const base = UNITS.find((u) => u.dimension === unit.dimension && u.factor.eq(1))!;
  return base === unit ? '–' : `${factor(unit.factor)} ${base.name}`;
}

/** A factor that no decimal ends is said as a fraction, or to ten digits and marked as cut. */
function factor(value: Exact): string {
  if (value.decimalPlaces() <= 15) return value.toFixed();
  const below = ONE.div(value).toDecimalPlaces(20);
  return below.isInteger() ? `1/${below.toFixed()}` : `${value.toSignificantDigits(10).toFixed()}…`;
}
