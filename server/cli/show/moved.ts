/** The money of two revisions: from cost to price, and what moved it. */
import { later, phrase, spoken } from '../../../shared/phrase';
import type { Comparison } from '../../engine/compare';
import { showTerm } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { boughtText, moneyRow, signed } from './changes';
import { table } from './table';

const SIDES = ['left', 'right', 'right', 'right'] as const;

/** Each step that is another; where there is nothing to put beside it, the price alone. */
export function prices({ money, nothing, before, after }: Comparison): string[] {
  if (!money) return alone(before, after);
  const rows = money.steps.map((step) => moneyRow(step, before.env, after.env));
  const open = money.incomplete && !nothing ? [spoken(OPEN)] : [];
  return [...table(rows, SIDES), ...open];
}

const OPEN = later`  A price is incomplete: perpend check tells what it lacks.`;

function alone(before: Job, after: Job): string[] {
  const say = (job: Job, word: string) =>
    job.isJob ? [`  ${word} ${showTerm(job.price.total, job.env)}`] : [];
  return [...say(before, phrase`it was`), ...say(after, phrase`it is`)];
}

/** Parts, then pieces of work where there are several: each adds up to what it is a part of. */
export function moved({ money, before, after }: Comparison): string[] {
  if (!money?.parts.length) return [];
  const { code } = after.env.money;
  const by = (of: typeof money.net) => signed(of.difference, code, after.env);
  const parts = money.parts.map((p) => [p.label, by(p), boughtText(p, before.env, after.env)]);
  const works = money.works.map((p) => [p.label, by(p)]);
  return [
    ...table([...parts, [phrase`Together`, by(money.total)]], ['left', 'right', 'left']),
    ...(works.length > 1
      ? [
          phrase`  By piece of work, before tax`,
          ...table([...works, [phrase`Together`, by(money.net)]], ['left', 'right'], 4),
        ]
      : []),
  ];
}
