/** A price rounded to so much that the rounding makes it. */
import { type Exact, exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { ofPrice, step } from '../../price/settings';
import type { JobPrice } from '../../price/total';
import type { Env, LineFacts } from '../../resolve/env';
import { showTerm, showValue } from '../../views/show';
import { counted, type Term } from '../../working/term';
import { type Remark, type RemarkWay, rewrite, takenOut } from '../remark';
import { written } from './ways';

/** Rounding that moves a price by more than a part in so many is no rounding: common practice rounds to a hundredth or so. */
const PART = 10;

export function roundLarge(price: JobPrice, env: Env): Remark[] {
  const line = ofPrice(env, 'round');
  if (!line || price.agreed || price.gross.gaps.length) return [];
  const worked = workedOut(price, env);
  const moved = price.gross.value.minus(worked).abs();
  if (worked.lte(0) || moved.times(PART).lte(worked)) return [];
  const to = line.term('to', phrase`rounded to`);
  const money = (value: Exact) => showValue(value, env.money.code, env);
  const message = phrase`The price is worked out as ${money(worked)} and rounded to ${showTerm(price.gross, env)}, since it is rounded to a multiple of ${showTerm(to, env)}. That is ${money(moved)} off. Round to less.`;
  const origin = line.at('to');
  return [
    { code: 'round-large', severity: 'warning', origin, message, ways: ways(line, worked, env) },
  ];
}

/** Before it is rounded. */
function workedOut({ spent, figures }: JobPrice, env: Env): Exact {
  const profit = figures.find(({ key }) => key === 'profit')?.term.value ?? exact(0);
  const least = step(env, 'least', 'least', phrase`least price`).value;
  const worked = spent.value.plus(profit);
  return worked.gt(least) ? worked : least;
}

/** To one, ten or a hundred: the most that is a hundredth of the price or less. */
function ways(line: LineFacts, worked: Exact, env: Env): RemarkWay[] {
  const digits = Math.max(0, Math.floor(Math.log10(worked.toNumber())) - 2);
  const to: Term = counted(phrase`rounded to`, exact(`1e${Math.min(digits, 6)}`), env.money.code);
  const text = written(to, env);
  const fine = {
    title: phrase`Round to ${showTerm(to, env)}`,
    edits: [rewrite(line.at('to'), text)],
  };
  return [{ ...fine, preferred: true }, takenOut(line)];
}
