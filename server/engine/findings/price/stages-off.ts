/** Stages of the price that do not add up to it. */

import { phrase } from '../../../../shared/phrase';
import type { JobPrice } from '../../price/total';
import { originOf } from '../../resolve/book';
import type { Env } from '../../resolve/env';
import { showTerm } from '../../views/show';
import { sum } from '../../working/term';
import { lineAfter, type Remark } from '../remark';

/** Nothing where no stage is said, or where one of them takes the rest. */
export function stagesOff({ stages, total }: JobPrice, env: Env): Remark[] {
  const last = stages.at(-1);
  if (!last || total.gaps.length || total.value.isZero()) return [];
  const rests = stages.filter((s) => s.line.values.rest);
  if (rests.length > 1) return [twoRests(rests[1]!)];
  const all = sum(
    phrase`stages`,
    total.unit,
    stages.map((s) => s.amount),
  );
  const negative = stages.find((s) => s.amount.value.isNegative() && !s.amount.value.isZero());
  if (all.value.eq(total.value) && !negative) return [];
  const { block, line } = (negative ?? last).line;
  const message = negative
    ? phrase`The stages come to more than the price of ${showTerm(total, env)}, so that nothing is left for “${negative.title}”. Make another stage smaller.`
    : phrase`The stages come to ${showTerm(all, env)}, and the price is ${showTerm(total, env)}. Give one of them the rest.`;
  const end = lineAfter(block, line.syntax.span.line, '  stage "On completion" rest');
  const ways = all.value.lt(total.value)
    ? [{ title: phrase`Add a stage for the rest`, edits: [end], preferred: true }]
    : [];
  return [
    {
      code: 'stages-off',
      severity: 'error',
      origin: { block, span: line.syntax.span },
      message,
      ways,
    },
  ];
}

function twoRests({ line, title }: JobPrice['stages'][number]): Remark {
  const value = line.values.rest!;
  return {
    code: 'stages-off',
    severity: 'error',
    origin: originOf(line.block, value),
    message: phrase`Two stages take the rest. Say how much “${title}” is.`,
  };
}
