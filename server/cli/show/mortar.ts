/** Mortar as it is mixed, batch by batch, and what is left of what was bought. */
import { inUnit } from '../../engine/brickwork/lengths';
import { type MortarOf, mortarIn } from '../../engine/mortar/figures';
import { firstMeasure } from '../../engine/mortar/measures';
import type { InBatch } from '../../engine/mortar/mixing';
import { asBought } from '../../engine/price/buying/material';
import { factsNamed } from '../../engine/resolve/env';
import { showTerm, showValue } from '../../engine/views/show';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import { numberAndUnit, table } from './table';

/** Each mix: how many batches of how much, the last by itself; under it what goes into a whole one. */
export function mixing(job: Job): string[] {
  const rows = mortarIn(job.price, job.env).flatMap((mortar) => rowsOf(mortar, job));
  return table(rows, ['left', 'right', 'left', 'left']);
}

function rowsOf({ mix, mixing }: MortarOf, job: Job): string[][] {
  if (!mixing || mixing.count.value.isZero()) return [];
  const show = (term: Term) => showTerm(term, job.env);
  const last = mixing.over.value.isZero() ? '' : `, the last ${show(mixing.last)}`;
  const text = `${show(mixing.count)} of ${show(mixing.size)}${last}`;
  const parts = mixing.materials.map((part) => partRow(part, job));
  return [[mix.title, ...numberAndUnit(show(mix.wet)), text], ...parts];
}

function partRow(part: InBatch, job: Job): string[] {
  if (!part.origin) return ['  in a batch', ...numberAndUnit(packsText(part, job)), ''];
  const title = factsNamed(job.env, 'material', part.material)?.title ?? part.material;
  const text = showTerm(part.amount, job.env);
  const measures = [measured(part.amount, job), inPacks(part, job)].filter(Boolean);
  return [`  in a batch: ${title}`, ...numberAndUnit(text), measures.join(', ')];
}

/** Packs of a ready mix. */
function packsText({ amount }: InBatch, job: Job): string {
  return showValue(amount.value.toDecimalPlaces(2), amount.unit, job.env);
}

/** In the measure that stands first in the library’s list, where it is told by volume. */
function measured(amount: Term, job: Job): string {
  const line = firstMeasure(job.env);
  const holds = line && inUnit(line.term('content', ''), amount.unit);
  if (!line || !holds || holds.unit !== amount.unit || holds.value.lte(0)) return '';
  const count = amount.value.div(holds.value).toDecimalPlaces(1);
  if (count.lt('0.1')) return '';
  return showValue(count, line.line.syntax.key!.text, job.env);
}

/** In packs as it is bought, where a batch takes some of one and not of a whole load. */
function inPacks({ material, dry, origin }: InBatch, job: Job): string {
  const line = factsNamed(job.env, 'material', material)?.line('pack');
  if (!line || !origin || !dry) return '';
  const taken = asBought(material, dry, job.env, origin);
  const holds = inUnit(line.term('content', ''), taken.unit);
  if (holds.unit !== taken.unit || holds.value.lte(0)) return '';
  const count = taken.value.div(holds.value).toDecimalPlaces(2);
  return count.lt('0.1') ? '' : showValue(count, line.word('pack'), job.env);
}

/** What is left in the last packs, and what the mixes made of it would lay. */
export function leftOver(job: Job): string[] {
  const packs = job.price.purchases.flatMap(({ title, left }) =>
    left && !left.gaps.length ? [[title, ...numberAndUnit(showTerm(left, job.env)), '']] : [],
  );
  const mixes = mortarIn(job.price, job.env).flatMap(({ mix, left }) => {
    if (!left || left.mortar.gaps.length) return [];
    const makes = numberAndUnit(showTerm(left.mortar, job.env));
    return [[`  would make ${mix.title}`, ...makes, laysText(left, job)]];
  });
  return packs.length ? table([...packs, ...mixes], ['left', 'right', 'left', 'left']) : [];
}

function laysText({ bricks, pointing, joints }: NonNullable<MortarOf['left']>, job: Job): string {
  const ways = [
    ...(bricks ? [`lays ${showTerm(bricks, job.env)}`] : []),
    ...(pointing ? [`points ${pointedText(pointing, joints, job)}`] : []),
  ];
  return ways.join(' or ');
}

function pointedText(area: Term, joints: Term | undefined, job: Job): string {
  const long = joints
    ? `, ${showValue(joints.value.toDecimalPlaces(0), joints.unit, job.env)}`
    : '';
  return `${showTerm(area, job.env)}${long}`;
}
