/** Two values beside each other, each in a unit of its own. */
import type { Exact } from '../../../shared/exact';
import { unitNamed } from '../../../shared/units';
import type { Term } from './term';

type Valued = Pick<Term, 'value' | 'unit'>;

/** What `b` has more than `a`, in the unit of `b`; one that is not there is none. Nothing where the units are not of one kind. */
export function differenceOf(a: Valued | undefined, b: Valued | undefined): Exact | undefined {
  if (!a || !b) return a ? a.value.neg() : b?.value;
  if (a.unit === b.unit) return b.value.sub(a.value);
  const [from, to] = [unitNamed(a.unit), unitNamed(b.unit)];
  if (!from || !to || from.dimension !== to.dimension) return undefined;
  return b.value.sub(a.value.mul(from.factor).div(to.factor)).toDecimalPlaces(20);
}
