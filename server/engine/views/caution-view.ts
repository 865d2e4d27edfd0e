/** Cautions of a job as a list for the site: each once, with every place and reason that brings it up. */
import type { CautionView } from '../../../shared/views';
import type { Told } from '../cautions';
import { cautionsIn } from '../findings/cautions';
import type { Job } from '../workspace/job';

/** In the order of the libraries: the same caution of several pieces of work is one. */
export function cautionViews(job: Job): CautionView[] {
  const all = new Map<string, Told[]>();
  for (const told of cautionsIn(job)) {
    const list = all.get(told.rule.name);
    if (list) list.push(told);
    else all.set(told.rule.name, [told]);
  }
  return [...all.values()].map(viewOf);
}

function viewOf(told: readonly Told[]): CautionView {
  const { rule } = told[0]!;
  return {
    code: `caution-${rule.name}`,
    title: rule.title,
    here: told.map(({ work, at, why }) => ({
      name: work.name,
      title: work.title,
      why: [...why],
      places: at.map(({ origin }) => origin.block.place(origin.span)),
    })),
    say: rule.say,
    ask: rule.ask,
    source: rule.source,
  };
}
