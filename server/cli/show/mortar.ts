/** Mortar as it is mixed, batch by batch, and what is left of what was bought. */
import { phrase } from '../../../shared/phrase';
import { type MortarOf, mortarIn } from '../../engine/mortar/figures';
import { mixedIn } from '../../engine/views/mixing';
import { showTerm, showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { numberAndUnit, table } from './table';

/** Each mix: how many batches of how much, the last by itself; under it what goes into a whole one. */
export function mixing(job: Job): string[] {
  const rows = mixedIn(job).flatMap(({ title, wet, batches, parts }) => [
    [title, ...numberAndUnit(wet), batches],
    ...parts.map((part) => [
      part.title ? phrase`  in a batch: ${part.title}` : phrase`  in a batch`,
      ...numberAndUnit(part.amount),
      part.measures.join(', '),
    ]),
  ]);
  return table(rows, ['left', 'right', 'left', 'left']);
}

/** What is left in the last packs, and what the mixes made of it would lay. */
export function leftOver(job: Job): string[] {
  const packs = job.price.purchases.flatMap(({ title, left }) =>
    left && !left.gaps.length ? [[title, ...numberAndUnit(showTerm(left, job.env)), '']] : [],
  );
  const mixes = mortarIn(job.price, job.env).flatMap(({ mix, left }) => {
    if (!left || left.mortar.gaps.length) return [];
    const makes = numberAndUnit(showTerm(left.mortar, job.env));
    return [[phrase`  would make ${mix.title}`, ...makes, laysText(left, job)]];
  });
  return packs.length ? table([...packs, ...mixes], ['left', 'right', 'left', 'left']) : [];
}

function laysText({ bricks, pointing, joints }: NonNullable<MortarOf['left']>, job: Job): string {
  const ways = [
    ...(bricks ? [phrase`lays ${showTerm(bricks, job.env)}`] : []),
    ...(pointing ? [phrase`points ${pointedText(pointing, joints, job)}`] : []),
  ];
  return ways.join(phrase` or `);
}

function pointedText(area: Term, joints: Term | undefined, job: Job): string {
  const long = joints
    ? `, ${showValue(joints.value.toDecimalPlaces(0), joints.unit, job.env)}`
    : '';
  return `${showTerm(area, job.env)}${long}`;
}
