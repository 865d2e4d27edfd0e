/** From cost to the price before discounts: contingency, overhead, profit or a margin, the least price, rounding. */
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import { defaultLine, type Env, type LineFacts } from '../resolve/env';
import {
  cents,
  counted,
  difference,
  most,
  nearest,
  share,
  sum,
  type Term,
  wholeOf,
} from '../working/term';
import { ofPrice, step } from './settings';

export interface Marked {
  /** Cost, contingency and overhead: what has to be paid before anything is left. */
  readonly spent: Term;
  /** Nothing where no line puts any on. */
  readonly contingency?: Term;
  readonly overhead: Term;
  readonly profit: Term;
  /** Before tax and before what is taken off. */
  readonly gross: Term;
  readonly figures: readonly Figure[];
}

export function markedUp(cost: Term, env: Env): Marked {
  const { code, digits } = env.money;
  const contingency = contingencyOn(cost, env);
  const sure = contingency ? sum(phrase`Cost and contingency`, code, [cost, contingency]) : cost;
  const rate = step(env, 'overhead', 'share', phrase`overhead`);
  const overhead = cents(phrase`Overhead`, share(phrase`overhead`, code, rate, sure), digits);
  const name = contingency ? phrase`Cost, contingency and overhead` : phrase`Cost and overhead`;
  const spent = sum(name, code, [sure, overhead]);
  const profit = profitOn(spent, env);
  const worked = sum(phrase`Worked out`, code, [spent, profit]);
  const figures = [
    ...(contingency ? [{ key: 'contingency', term: contingency }] : []),
    { key: 'overhead', term: overhead },
    { key: 'profit', term: profit },
  ];
  return { spent, contingency, overhead, profit, gross: rounded(worked, env), figures };
}

function contingencyOn(cost: Term, env: Env): Term | undefined {
  const line = ofPrice(env, 'contingency');
  const rate = line?.term('share', phrase`contingency`);
  if (!rate) return undefined;
  const { code, digits } = env.money;
  const told = line?.word('title');
  return cents(
    phrase`Contingency`,
    share(phrase`contingency`, code, rate, cost, told || undefined),
    digits,
  );
}

/** A mark-up is of what is spent, a margin of the price that it makes. */
function profitOn(spent: Term, env: Env): Term {
  const { code, digits } = env.money;
  const line = profitLine(env);
  if (line?.line.kind.key !== 'margin') {
    const rate =
      line?.term('share', phrase`profit`) ?? step(env, 'profit', 'share', phrase`profit`);
    return cents(
      phrase`Profit`,
      share(phrase`profit`, code, rate, spent, phrase`mark-up: on cost`),
      digits,
    );
  }
  const price = atMargin(spent, line, env);
  const note = phrase`margin: of the price before tax, discounts and rounding`;
  return cents(phrase`Profit`, difference(phrase`profit`, code, price, spent, note), digits);
}

function atMargin(spent: Term, line: LineFacts, env: Env): Term {
  const margin = line.term('share', phrase`margin`);
  const all = counted(phrase`the price`, 100, '%');
  const left = difference(phrase`left for cost and overhead`, '%', all, margin);
  const price = wholeOf(phrase`price at that margin`, env.money.code, spent, left);
  if (left.value.gt(0)) return price;
  const what = phrase`a margin of 100% or more leaves nothing to pay the cost with`;
  return { ...price, gaps: [...spent.gaps, { what, origin: line.at('share'), told: true }] };
}

/** The nearest line that says how profit is made; of two in one block the first holds, and a finding tells of the other. */
export function profitLine(env: Env): LineFacts | undefined {
  const lines = [ofPrice(env, 'profit'), ofPrice(env, 'margin')].filter((l) => l !== undefined);
  const [a, b] = lines;
  if (!a || !b) return a ?? b ?? defaultLine(env, 'profit');
  const blocks = env.book.blocksOf('price');
  const place = (line: LineFacts) => blocks.indexOf(line.block);
  const at = (line: LineFacts) => line.line.syntax.span.line;
  return (place(a) - place(b) || at(a) - at(b)) <= 0 ? a : b;
}

function rounded(worked: Term, env: Env): Term {
  const { code, digits } = env.money;
  const floor = step(env, 'least', 'least', phrase`least price`);
  const least = most(phrase`Not below the least price`, code, worked, floor);
  const to = step(env, 'round', 'to', phrase`rounded to`);
  const label = phrase`Price before tax`;
  return cents(label, nearest(label, code, least, to, phrase`half away from zero`), digits);
}
