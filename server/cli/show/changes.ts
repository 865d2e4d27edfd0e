/** Differences in words and columns: a line of the notation, a figure, an amount of money. */

import type { Exact } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import {
  type FigureChange,
  type LineChange,
  type MoneyPart,
  saidChange,
} from '../../engine/compare';
import type { Env } from '../../engine/resolve/env';
import { showTerm, showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import { wrapped } from './width';

const SIGNS: Readonly<Record<LineChange['change'], string>> = {
  new: '+',
  gone: '−',
  changed: '·',
  moved: '·',
};

export function signOf(change: LineChange['change']): string {
  return SIGNS[change];
}

const WIDTH = 76;

/** `· length 7.3 m → 7.4 m`, `+ coping brick-on-edge`; in openings and the like their name before it. */
export function changeLines(change: LineChange, indent: number): string[] {
  const under = change.under.map((head) => `${head}: `).join('');
  return hanging(signOf(change.change), under + changeText(change), indent);
}

function changeText(change: LineChange): string {
  const { what, before, after } = saidChange(change);
  if (change.change === 'moved') return phrase`${what}: its lines stand in another order`;
  if (change.change !== 'changed') return [what, before ?? after].filter(Boolean).join(' ');
  return [what, before || phrase`(nothing)`, '→', after || phrase`(nothing)`]
    .filter(Boolean)
    .join(' ');
}

/** A sign, and words behind it that go on under themselves. */
export function hanging(sign: string, text: string, indent: number): string[] {
  const space = ' '.repeat(indent);
  return wrapped(text, WIDTH - indent).map((line, i) => `${space}${i ? ' ' : sign} ${line}`);
}

/** What it was, what it is, and by how much it has moved. */
export function figureRow(change: FigureChange, label: string, before: Env, after: Env): string[] {
  const { difference, money } = change;
  const unit = (change.after ?? change.before)!.unit;
  const env = change.after ? after : before;
  const by = difference ? signed(difference, unit, env) : '';
  return [label, shown(change.before, before, money), shown(change.after, after, money), by];
}

/** What is not known at all is a question mark, never a nought. */
function shown(term: Term | undefined, env: Env, money: boolean): string {
  if (!term) return money ? '' : '–';
  const text = term.gaps.length && term.value.isZero() ? '?' : showTerm(term, env);
  return term.gaps.length && !term.value.isZero() ? `${text} …` : text;
}

/** `+£12.40`, `−3 bricks`, all digits that it has. */
export function signed(value: Exact, unit: string, env: Env): string {
  const text = showValue(value.abs(), unit, env);
  if (value.isZero()) return text;
  return `${value.isNegative() ? '−' : '+'}${text}`;
}

export function moneyRow(part: MoneyPart, before: Env, after: Env): string[] {
  const show = (value: Exact | undefined, env: Env) =>
    value ? showValue(value, env.money.code, env) : '';
  return [
    part.label,
    show(part.before, before),
    show(part.after, after),
    signed(part.difference, after.money.code, after),
  ];
}

/** `931 → 945 bricks` beside what a purchase moved the price by. */
export function boughtText({ bought }: MoneyPart, before: Env, after: Env): string {
  if (!bought) return '';
  const was = bought.before ? showTerm(bought.before, before) : phrase`none`;
  const is = bought.after ? showTerm(bought.after, after) : phrase`none`;
  return was === is ? is : `${was} → ${is}`;
}
