/** What a status bar shows of a job. */
import { phrase } from '../../../shared/phrase';
import type { Totals } from '../../../shared/protocol';
import { ofJobsAlike } from '../views/alike';
import { showTerm } from '../views/show';
import type { Job } from '../workspace/job';

const STEPS = [
  'materials',
  'labour',
  'travel',
  'others',
  'cost',
  'contingency',
  'overhead',
  'profit',
  'discount',
  'net',
  'tax',
];

/** Nothing for a file that is no job. */
export function totalsOf(job: Job): Totals | undefined {
  if (!job.isJob) return undefined;
  const { price, env } = job;
  const steps = price.figures.filter(
    (f) => STEPS.includes(f.key) && (!f.term.value.isZero() || f.key === 'cost'),
  );
  return {
    price: showTerm(price.total, env),
    range: rangeOf(job),
    alike: job.spread && ofJobsAlike(env),
    hours: showTerm(price.hours, env),
    earns: price.earns && showTerm(price.earns, env),
    leaves: showTerm(price.leaves, env),
    paid: showTerm(price.paid, env),
    missing: [...new Set(price.total.gaps.map((g) => g.what))],
    steps: steps.flatMap(({ key, term }) => {
      const others = key === 'labour' ? price.partners.map((p) => p.labour) : [];
      return [term, ...others].map((t) => ({ label: t.label, text: showTerm(t, env) }));
    }),
  };
}

/** From what to what, when a line of the job is a range. */
export function rangeOf(job: Job): string | undefined {
  const { spread, env } = job;
  return spread && [spread.low, spread.high].map((end) => showTerm(end, env)).join(phrase` to `);
}
