/**
 * Candidates in order, by what a library ranks them by: one that keeps the gauge before one that does not, then the one
 * that is nearer in size, then the cheaper; and of each why it stands before the next.
 */
import { later, phrase, spoken } from '../../../../shared/phrase';
import { wordOf } from '../../resolve/book';
import { defaultLine, type Env } from '../../resolve/env';
import { showTerm } from '../../views/show';
import { difference } from '../../working/term';
import { lengthText } from '../lengths';
import type { Compared, Criterion, Stood } from './types';

const ALL: readonly Criterion[] = ['gauge', 'size', 'price'];

const SAID: Readonly<Record<Criterion, string>> = {
  gauge: later`gauge`,
  size: later`size`,
  price: later`price`,
};

/** What they are called in a sentence. */
export function criteriaSaid(order: readonly Criterion[]): readonly string[] {
  return order.map((each) => spoken(SAID[each]));
}

/** As the defaults say; what they leave out does not count. */
export function orderIn(env: Env): readonly Criterion[] {
  const value = defaultLine(env, 'match-order')?.values.by;
  if (value?.kind !== 'list') return ALL;
  return [...new Set(value.of.map((each) => wordOf(each.by) as Criterion))];
}

/** Alike ones stay in the order of the line. */
export function ranked(
  all: readonly Compared[],
  stood: Stood,
  order: readonly Criterion[],
): Compared[] {
  return [...all].sort((a, b) => {
    const by = decidedBy(a, b, stood, order);
    return by ? compare(scoreOf(a, stood, by), scoreOf(b, stood, by)) : 0;
  });
}

/** The first thing that tells two apart. */
function decidedBy(
  a: Compared,
  b: Compared,
  stood: Stood,
  order: readonly Criterion[],
): Criterion | undefined {
  return order.find((by) => scoreOf(a, stood, by) !== scoreOf(b, stood, by));
}

function compare(a: number, b: number): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The less the better. What is not known comes last. */
function scoreOf(one: Compared, stood: Stood, by: Criterion): number {
  if (by === 'gauge') return gaugeScore(one, stood);
  if (by === 'size') return sizeScore(one);
  return one.buy.cost.gaps.length ? Number.POSITIVE_INFINITY : one.buy.cost.value.toNumber();
}

/** Mm that the bed joint it needs is from one that anyone would accept: nought where it is one. */
export function gaugeScore({ bed }: Compared, { beds }: Stood): number {
  if (!bed) return Number.POSITIVE_INFINITY;
  const joint = bed.joint.value.toNumber();
  return bed.accepted ? 0 : hundredths(joint < beds.least ? beds.least - joint : joint - beds.most);
}

/** The place of its class; outside them all, more than any of them by what it is out. */
function sizeScore({ near, larger }: Compared): number {
  if (!larger) return Number.POSITIVE_INFINITY;
  if (near)
    return near.place + (near.out ? hundredths(Math.abs(near.out.term.value.toNumber())) : 0);
  const offs = [larger.length, larger.width, larger.height];
  return hundredths(Math.max(...offs.map((off) => Math.abs(off.value.toNumber()))));
}

/** What is less than that apart is alike. */
function hundredths(mm: number): number {
  return Math.round(mm * 100) / 100;
}

/** Why one stands before another. */
export function whyBefore(
  a: Compared,
  b: Compared,
  stood: Stood,
  order: readonly Criterion[],
  env: Env,
): string {
  const by = decidedBy(a, b, stood, order);
  const alike = order.slice(0, by ? order.indexOf(by) : order.length);
  const before = phrase`Before ${b.brick.title}: `;
  if (!by) return phrase`${before}alike in ${criteriaSaid(alike).join(', ')}, it is named first.`;
  const reason = REASONS[by](a, b, stood, env);
  return `${before}${alike.length ? phrase`alike in ${criteriaSaid(alike).join(phrase` and `)}; ` : ''}${reason}.`;
}

type Reason = (a: Compared, b: Compared, stood: Stood, env: Env) => string;

const REASONS: Readonly<Record<Criterion, Reason>> = {
  gauge(a, b, stood, env) {
    if (!b.bed) return phrase`whether the other keeps the gauge is not known`;
    const joint = (one: Compared) => lengthText(env, one.bed!.joint.value.toNumber());
    if (gaugeScore(a, stood) > 0)
      return phrase`neither keeps the gauge at a joint anyone would accept, and it is nearer to one`;
    return b.bed.joint.value.lte(0)
      ? phrase`it keeps the gauge with bed joints of ${joint(a)}, and the other is too high`
      : phrase`it keeps the gauge with bed joints of ${joint(a)}, and the other needs ${joint(b)}`;
  },
  size(a, b) {
    if (!b.larger) return phrase`the size of the other is not known`;
    if (!a.near || !b.near || a.near.out) return phrase`its size is nearer to what stands`;
    const other = b.near.out
      ? phrase`the other’s within none`
      : phrase`the other’s within ${b.near.title}`;
    return phrase`its size is within ${a.near.title} of what stands, ${other}`;
  },
  price(a, b, _, env) {
    if (b.buy.cost.gaps.length) return phrase`what the other costs is not known`;
    const less = difference(phrase`less`, env.money.code, b.buy.cost, a.buy.cost);
    return phrase`it costs ${showTerm(less, env)} less for what is short`;
  },
};
