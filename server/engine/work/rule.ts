/** The rule of thumb beside the count: so many bricks to an area of half-brick wall. */
import { exact } from '../../../shared/exact';
import { unitNamed } from '../../../shared/units';
import { defaultLine, type Env } from '../resolve/env';
import { fact, product, type Term } from '../working/term';
import { inUnit } from './lengths';

/** Nothing when no library gives one. It is for comparison only: no cost hangs on it. */
export function ruleOfThumb(area: Term, halves: number, env: Env): Term | undefined {
  const line = defaultLine(env, 'rule');
  const unit = line && unitNamed(line.word('unit'));
  if (!line || unit?.dimension !== 'area') return undefined;
  const per = line.term('count', `bricks to the ${unit.name} of half-brick wall`, '');
  const leaves = fact('half bricks thick', exact(halves), '');
  return product(
    'By rule of thumb',
    'bricks',
    [inUnit(area, unit.name), per, leaves],
    'for comparison; the count is what is priced',
  );
}
