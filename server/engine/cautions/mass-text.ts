/** What something weighs, as it is said on site. */
import { fromGeometry } from '../../../shared/exact';
import { showNumber } from '../../../shared/show';
import { unitNamed } from '../../../shared/units';
import { unitNames } from '../brickwork/lengths';
import type { Env } from '../resolve/env';

/** To a whole kilogram or pound; under ten of them to a tenth. */
export function massText(env: Env, kg: number): string {
  const unit = unitNames(env).mass;
  const amount = fromGeometry(kg).div(unitNamed(unit)!.factor);
  return `${showNumber(amount, amount.lt(10) ? 1 : 0, env.style)} ${unit}`;
}
