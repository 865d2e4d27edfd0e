/** The rule of thumb beside the count: so many bricks to an area of half-brick wall. */

import { exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import { unitNamed } from '../../../shared/units';
import { defaultLine, LineFacts } from '../resolve/env';
import type { UnitSize } from '../setting-out';
import { fact, product, type Term } from '../working/term';
import { brickOf } from './goods';
import { inUnit } from './lengths';
import type { Masonry } from './masonry';

/**
 * Nothing when no library gives one, or when it was made for a brick of another size. It is for
 * comparison only: no cost hangs on it.
 */
export function ruleOfThumb(area: Term, halves: number, masonry: Masonry): Term | undefined {
  const line = defaultLine(masonry.env, 'rule');
  const unit = line && unitNamed(line.word('unit'));
  if (!line || unit?.dimension !== 'area' || !suits(line, masonry)) return undefined;
  const per = line.term('count', phrase`bricks to the ${unit.name} of half-brick wall`, '');
  const thick = masonry.facts.orDefault('thick');
  const origin = thick?.at('thick');
  const leaves = fact(phrase`half bricks thick`, exact(halves), '', origin);
  return product(
    phrase`By rule of thumb`,
    'bricks',
    [inUnit(area, unit.name), per, leaves],
    phrase`for comparison; the count is what is priced`,
  );
}

/** A rule is about the brick that the same defaults name: it holds for one of about that face. */
function suits(rule: LineFacts, { env, brick }: Masonry): boolean {
  const line = env.book.all('defaults', 'brick').find((s) => s.block === rule.block);
  if (!line) return true;
  const meant = brickOf(new LineFacts(line.block, line.line, env), env, rule.origin).size;
  const within = defaultLine(env, 'rule-within')?.number('share') ?? 0;
  return !meant || !brick.size || alike(brick.size, meant, within);
}

/** A face this much larger or smaller still has the same rule, which is itself rounded. */
function alike(a: UnitSize, b: UnitSize, within: number): boolean {
  const near = (x: number, y: number) => Math.abs(x - y) <= y * within;
  return near(a.length, b.length) && near(a.height, b.height);
}
