/** More invoiced than the price, more paid than invoiced. */
import { phrase } from '../../../../shared/phrase';
import { owedOf } from '../../life/owed';
import { type Entry, recordOf } from '../../life/record';
import { showTerm } from '../../views/show';
import type { Term } from '../../working/term';
import type { Job } from '../../workspace/job';
import type { Remark } from '../remark';

export function recordOver(job: Job): Remark[] {
  const { invoiced, paid } = recordOf(job);
  if (![...invoiced, ...paid].length) return [];
  const owed = owedOf(job);
  const text = (term: Term) => showTerm(term, job.env);
  const over: Remark[] = [];
  const [asked, came] = [invoiced.at(-1), paid.at(-1)];
  if (asked && !owed.price.gaps.length && owed.invoiced.value.gt(owed.price.value))
    over.push(
      remark(
        asked,
        phrase`${text(owed.invoiced)} is invoiced in all, and the price is ${text(owed.price)}. Where more was agreed, record that it was sent or accepted at the new price.`,
      ),
    );
  if (asked && came && owed.paid.value.gt(owed.invoiced.value))
    over.push(
      remark(
        came,
        phrase`${text(owed.paid)} is paid in all, and ${text(owed.invoiced)} is invoiced.`,
      ),
    );
  return over;
}

function remark({ line }: Entry, message: string): Remark {
  return { code: 'record-over', severity: 'warning', origin: line.at('money'), message };
}
