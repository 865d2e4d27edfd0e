/** Of a job that holds ranges: between what and what its price lies, and how much of that hangs on each of them. */
import type { ReadLine, Value } from '../../../../grammar/read/values';
import { phrase } from '../../../../shared/phrase';
import { rangeKey } from '../../resolve/env';
import { inJobsAlike } from '../../views/alike';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { rangeOf } from '../totals';
import { atEnd, behind, type MadeHint } from './made';

export function rangeHints(block: SourceBlock, job: Job): MadeHint[] {
  if (!job.isJob) return [];
  const own = block.kind === 'job' ? jobHint(block, block.read.heading!, job) : [];
  return [...own, ...rangedLines(block).flatMap((ranged) => lineHint(ranged, job))];
}

interface RangedLine {
  readonly line: ReadLine;
  /** What its ranges are known by. */
  readonly keys: readonly object[];
}

/** It hangs on the text alone; hardly any block has one. */
const kept = new WeakMap<SourceBlock, readonly RangedLine[]>();

function rangedLines(block: SourceBlock): readonly RangedLine[] {
  const known = kept.get(block) ?? rangedIn(block);
  kept.set(block, known);
  return known;
}

function rangedIn(block: SourceBlock): readonly RangedLine[] {
  const heading = block.read.heading!;
  const lines = [heading, ...heading.body, ...heading.body.flatMap((line) => line.body)];
  return lines.flatMap((line) => {
    const found = Object.values(line.values).flatMap((value) => (value ? rangesIn(value) : []));
    return found.length ? [{ line, keys: found.map((each) => rangeKey(block, each)) }] : [];
  });
}

function jobHint(block: SourceBlock, heading: ReadLine, job: Job): MadeHint[] {
  const range = rangeOf(job);
  if (!range) return [];
  const text = phrase`${range} ${inJobsAlike(job.env)}`;
  return [{ ...atEnd(block, heading), kind: 'range', parts: [{ text }] }];
}

function lineHint({ line, keys }: RangedLine, job: Job): MadeHint[] {
  const found = job.spread?.ranges.filter((range) => keys.includes(range.key)) ?? [];
  const share = Math.round(100 * found.reduce((total, range) => total + range.share, 0));
  if (!share) return [];
  const text = phrase`${share}% of what the price may move by`;
  return [{ ...behind(line), kind: 'range', parts: [{ text }] }];
}

function rangesIn(value: Value): object[] {
  if (value.kind === 'size') return value.sides.filter((side) => side.high);
  if (value.kind === 'list')
    return value.of.flatMap((each) => Object.values(each).flatMap((v) => (v ? rangesIn(v) : [])));
  return (value.kind === 'quantity' || value.kind === 'money') && value.high ? [value] : [];
}
