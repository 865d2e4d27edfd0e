/** What each part of an overview of jobs is shown with. */
import type { Exact } from '../../../../shared/exact';
import { showMoney } from '../../../../shared/show';
import type { CurrencyOverview } from '../../../engine/firm/overview';
import type { JobState } from '../../../engine/firm/state';
import type { Cell } from '../../paper/model';
import type { JobsWords, Words } from '../../words';

export interface Showing {
  readonly of: CurrencyOverview;
  readonly day: string;
  readonly all: boolean;
  /** A file’s name for a reader. */
  readonly named: (file: string) => string;
  readonly words: JobsWords;
  readonly date: Words['date'];
}

export function nameOf({ file, summary }: JobState, { named }: Showing): string {
  const { ref, title, client } = summary;
  return [ref, title, client].filter(Boolean).join(', ') || named(file);
}

export function money(amount: Exact, { of: { code, money: as, style } }: Showing): Cell {
  const text = showMoney(amount, as.sign, as.digits, style);
  return { text, value: amount.toFixed(), unit: code };
}
