/** More released than is held on that day. */
import { type Exact, exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { type Paying, recordOf } from '../../life/record';
import { moneyText } from '../../life/write';
import { showValue } from '../../views/show';
import type { Job } from '../../workspace/job';
import { type Remark, type RemarkWay, rewrite, takenOut } from '../remark';

export function releasedOver(job: Job): Remark[] {
  const { retained, released } = recordOf(job);
  let free = exact(0);
  return released.flatMap((each): Remark[] => {
    const held = total(retained.filter(({ date }) => date <= each.date)).minus(free);
    free = free.plus(each.amount.value);
    return each.amount.value.gt(held) ? [over(each, held, job)] : [];
  });
}

function total(of: readonly Paying[]): Exact {
  return of.reduce((sum, { amount }) => sum.plus(amount.value), exact(0));
}

function over({ line, date, amount }: Paying, held: Exact, job: Job): Remark {
  const text = (value: Exact) => showValue(value, job.env.money.code, job.env);
  const still = held.gt(0) ? text(held) : phrase`nothing`;
  return {
    code: 'record-over',
    severity: 'warning',
    origin: line.at('money'),
    message: phrase`More is released than was held back: on ${date} ${still} is held, and ${text(amount.value)} is released.`,
    ways: held.gt(0) ? [asHeld(line, held, job)] : [takenOut(line)],
  };
}

function asHeld(line: Paying['line'], held: Exact, { env }: Job): RemarkWay {
  const text = moneyText(held, env);
  return { title: phrase`Write ${text}`, edits: [rewrite(line.at('money'), text)] };
}
