/** What a `tax` line says: how a part of the price is taxed. */
import { phrase } from '../../../../shared/phrase';
import type { Setting } from '../../resolve/book';
import { defaultLine, type Env, LineFacts } from '../../resolve/env';
import { counted, type Term } from '../../working/term';
import type { TaxCategory } from '../document-totals';

export interface TaxKind {
  /** Parts of the price that are taxed alike have the same. */
  readonly key: string;
  readonly category: TaxCategory;
  /** As it is charged, in percent: nought where the client owes it. */
  readonly rate: Term;
  /** What the client owes the state himself, in percent: of a reverse charge. */
  readonly owed?: Term;
  /** What it is called on paper. */
  readonly name: string;
  /** With its rate: VAT at 20%. */
  readonly said: string;
  /** Why none is charged, in the words for the paper. */
  readonly reason: string;
  /** The line that says so. */
  readonly line?: LineFacts;
}

/** What holds where a part of the price does not say. */
export function generalTax(env: Env): TaxKind {
  const setting = env.book.setting('job', 'tax') ?? env.book.setting('defaults', 'tax');
  if (setting) return taxOf(setting, env);
  return keyed({ category: 'O', rate: none(phrase`no tax line`), name: phrase`Tax`, reason: '' });
}

/** @param general gives the name where the line has none */
export function taxOf(setting: Setting, env: Env, general?: TaxKind): TaxKind {
  const line = new LineFacts(setting.block, setting.line, env);
  const name = line.word('name') || general?.name || phrase`Tax`;
  if (line.word('how') === 'none')
    return keyed({ category: 'E', rate: none('none'), name, reason: line.word('reason'), line });
  const rate = line.term('rate', phrase`tax`);
  if (line.word('how') === 'reverse-charge') {
    const reason = defaultLine(env, 'reverse-charge')?.word('words') ?? '';
    const charged = none(phrase`the client owes it to the state`);
    return keyed({ category: 'AE', rate: charged, owed: rate, name, reason, line });
  }
  const nought = rate.value.isZero() && !rate.gaps.length;
  return keyed({ category: nought ? 'Z' : 'S', rate, name, reason: '', line });
}

function none(note: string): Term {
  return counted(phrase`tax`, 0, '%', { note });
}

/** A rate is one row of tax, whatever it is called where; none for another reason is another row. */
function keyed(kind: Omit<TaxKind, 'key' | 'said'>): TaxKind {
  const { category, rate, owed, reason } = kind;
  return {
    ...kind,
    said: saidOf(kind),
    key: [category, (owed ?? rate).value.toFixed(), reason].join(' '),
  };
}

function saidOf({ category, rate, owed, name }: Omit<TaxKind, 'key' | 'said'>): string {
  if (owed) return phrase`${name} at ${owed.value.toFixed()}% that the client owes`;
  return category === 'E' ? phrase`no ${name}` : phrase`${name} at ${rate.value.toFixed()}%`;
}
