/** Of a job that holds ranges: between what and what its price lies, and how much of that hangs on each of them. */
import type { ReadLine, Value } from '../../../../grammar/read/values';
import { phrase } from '../../../../shared/phrase';
import { rangeKey } from '../../resolve/env';
import { inJobsAlike } from '../../views/alike';
import { rangePlace } from '../../views/measure';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { rangesTold, rangeTold } from '../range-said';
import { rangeOf } from '../totals';
import type { CloserPart } from './closer';
import { atEnd, behind, type MadeHint, type MadePart } from './made';

export function rangeHints(block: SourceBlock, job: Job): MadeHint[] {
  if (!job.isJob) return [];
  const own = block.kind === 'job' ? jobHint(block, block.read.heading!, job) : [];
  return [...own, ...rangedLines(block).flatMap((ranged) => lineHint(ranged, block, job))];
}

interface RangedLine {
  readonly line: ReadLine;
  readonly ranges: readonly object[];
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
    const keys = found.map((each) => rangeKey(block, each));
    return found.length ? [{ line, ranges: found, keys }] : [];
  });
}

function jobHint(block: SourceBlock, heading: ReadLine, job: Job): MadeHint[] {
  const range = rangeOf(job);
  if (!range) return [];
  const text = phrase`${range} ${inJobsAlike(job.env)}`;
  const tells: MadePart['tells'] = (link) => rangesTold(job, link);
  return [{ ...atEnd(block, heading), kind: 'range', parts: [{ text, tells }] }];
}

function lineHint(ranged: RangedLine, block: SourceBlock, job: Job): MadeHint[] {
  const { line, keys } = ranged;
  const found = job.spread?.ranges.filter((range) => keys.includes(range.key)) ?? [];
  const share = Math.round(100 * found.reduce((total, range) => total + range.share, 0));
  if (!share) return [];
  const text = phrase`${share}% of what the price may move by`;
  const tells = () => closer(ranged, block, job);
  return [{ ...behind(line), kind: 'range', parts: [{ text, tells }] }];
}

/** Of the one that counts most among those of the line it leads to the very place. */
function closer({ ranges, keys }: RangedLine, block: SourceBlock, job: Job): CloserPart {
  const text = ranges.flatMap((each) => rangeTold(each, block, job)).join('\n\n');
  const first = job.spread?.ranges.find((range) => keys.includes(range.key));
  return { text, place: first && rangePlace(first) };
}

function rangesIn(value: Value): object[] {
  if (value.kind === 'size') return value.sides.filter((side) => side.high);
  if (value.kind === 'list')
    return value.of.flatMap((each) => Object.values(each).flatMap((v) => (v ? rangesIn(v) : [])));
  return (value.kind === 'quantity' || value.kind === 'money') && value.high ? [value] : [];
}
