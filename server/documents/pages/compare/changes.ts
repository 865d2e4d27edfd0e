/** Lines of the notation and figures that are others than before, as texts and rows. */
import type { Exact } from '../../../../shared/exact';
import {
  type FigureChange,
  type LineChange,
  type MoneyPart,
  saidChange,
} from '../../../engine/compare';
import type { Env } from '../../../engine/resolve/env';
import { showValue } from '../../../engine/views/show';
import type { Job } from '../../../engine/workspace/job';
import { rowOf, termCell } from '../../cells';
import type { Cell, Row } from '../../paper/model';
import type { CompareWords } from '../../words';

/** `length 7.3 m → 7.4 m`; in openings and the like their name before it. */
export function lineText(change: LineChange, words: CompareWords): string {
  const under = change.under.map((head) => `${head}: `).join('');
  return under + changeText(change, words);
}

function changeText(change: LineChange, words: CompareWords): string {
  const { what, before, after } = saidChange(change);
  const all = [what, before ?? after].filter(Boolean).join(' ');
  switch (change.change) {
    case 'moved':
      return words.movedLines(what);
    case 'changed':
      return words.changed(what, before ?? '', after ?? '');
    case 'new':
      return words.isNew(all);
    case 'gone':
      return words.isGone(all);
  }
}

type Two = { readonly before: Pick<Job, 'env'>; readonly after: Pick<Job, 'env'> };

/** What it was, what it is, and by how much it has moved. */
export function figureRow(change: FigureChange, label: string, { before, after }: Two): Row {
  const { difference } = change;
  const { unit } = (change.after ?? change.before)!;
  const { env } = change.after ? after : before;
  const by = difference ? signed(difference, unit, env) : '';
  return rowOf(label, termCell(change.before, before), termCell(change.after, after), by);
}

export function moneyRow(part: MoneyPart, { before, after }: Two): Row {
  const show = (value: Exact | undefined, { env }: Pick<Job, 'env'>): Cell =>
    value ? amountCell(value, env) : { text: '' };
  return rowOf(
    part.label,
    show(part.before, before),
    show(part.after, after),
    signedMoney(part.difference, after.env),
  );
}

function amountCell(value: Exact, env: Env): Cell {
  const { code } = env.money;
  return { text: showValue(value, code, env), value: value.toFixed(), unit: code };
}

export function signedMoney(value: Exact, env: Env): Cell {
  return signed(value, env.money.code, env);
}

/** `+£12.40`, `−3 bricks`, all digits that it has. */
function signed(value: Exact, unit: string, env: Env): Cell {
  const sign = value.isZero() ? '' : value.isNegative() ? '−' : '+';
  return {
    text: `${sign}${showValue(value.abs(), unit, env)}`,
    value: value.toFixed(),
    unit,
  };
}
