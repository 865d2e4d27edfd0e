/** Options side by side: what each adds, and what the job comes to with it. */
import { phrase } from '../../../shared/phrase';
import { acceptedOptions, agreedJob, heldPrice } from '../../engine/life/agreed';
import type { PricedOption } from '../../engine/life/priced';
import { showTerm } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { type Row, table } from './table';

/** Of the job without options; with some taken they are told at its head. */
export function optionTable(job: Job): string[] {
  const { priced } = job.options;
  if (job.taken.size || !priced.length) return [];
  const accepted = new Set(acceptedOptions(job));
  const head = ['', phrase`before tax`, phrase`with tax`, phrase`price with it`, ''];
  const rows = priced.map((option) => rowOf(option, accepted, job));
  return [
    ...table([head, ...rows], ['left', 'right', 'right', 'right', 'left']),
    ...agreedLine(job, accepted),
  ];
}

function rowOf(option: PricedOption, accepted: ReadonlySet<string>, job: Job): Row {
  const { name, title, more, price, excludes } = option;
  const notes = [
    accepted.has(name) ? phrase`accepted` : '',
    excludes.length ? phrase`not with ${excludes.join(', ')}` : '',
    price.total.gaps.length ? phrase`INCOMPLETE` : '',
  ];
  return [
    title === name ? name : `${title} (${name})`,
    added(more.net, job),
    added(more.total, job),
    showTerm(price.total, job.env),
    notes.filter(Boolean).join('; '),
  ];
}

/** Less is shown by its sign; so is more. */
function added(term: Term, { env }: Job): string {
  const { value } = term;
  return value.isNegative() || value.isZero() ? showTerm(term, env) : `+${showTerm(term, env)}`;
}

function agreedLine(job: Job, accepted: ReadonlySet<string>): string[] {
  if (!accepted.size) return [];
  const total = showTerm(agreedJob(job).price.total, job.env);
  const held = showTerm(heldPrice(job), job.env);
  const names = [...accepted].join(', ');
  const given = held === total ? '' : phrase`; the client holds ${held}`;
  return [phrase`  As accepted, with ${names}: ${total}${given}`];
}

export function takenText({ taken }: Job): string {
  return taken.size ? phrase`with the options taken: ${[...taken].join(', ')}` : '';
}
