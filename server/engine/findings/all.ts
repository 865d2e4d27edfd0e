/** Everything there is to tell about a file, in the order of its lines. */

import type { Fault } from '../../../grammar/read/fault';
import type { Finding } from '../../../shared/finding';
import { phrase } from '../../../shared/phrase';
import { templateOf } from '../life/template';
import { ONCE } from '../resolve/book';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { askRemarks } from './asks';
import { cautions } from './cautions';
import { namesTwice } from './checks';
import { editionMissing, editionUnknown, jobTwice, libraryAssumed } from './files';
import { incomplete } from './fit/gaps';
import { mixSandy } from './mortar/mix-sandy';
import { mixWeak } from './mortar/mix-weak';
import { ofBlocks } from './of-blocks';
import { optionRemarks } from './options';
import { outputMeasured } from './output-measured';
import { partnersIdle } from './partner-idle';
import { priceRemarks } from './price';
import { recordRemarks } from './record';
import { refused } from './refused';
import { headOrigin, type Remark, toFinding } from './remark';
import { firmUnused } from './use-firm';

export function findingsOf(job: Job): Finding[] {
  const { file } = job;
  if (file.refused) return [refused(file.name, file.refused)];
  const faults = file.blocks
    .filter((block) => block.read.faults.length > 0)
    .flatMap((block) => block.read.faults.map((f) => faultFinding(block, f)));
  const remarks = remarksOf(job).filter((r) => r.origin.block.file === file);
  const all = [...faults, ...remarks.map(toFinding)];
  return all.sort((a, b) => a.place.line - b.place.line || a.place.start - b.place.start);
}

function remarksOf(job: Job): Remark[] {
  const { file, env, works } = job;
  const { names, remarks } = ofBlocks(file, env);
  const general = [
    ...fileRemarks(job),
    ...job.scope.remarks,
    ...namesTwice(file),
    ...askRemarks(file),
    ...remarks,
  ];
  if (!job.isJob) return [...general, ...outputMeasured(job)];
  return [
    ...general,
    ...optionRemarks(job, names),
    ...recordRemarks(job),
    ...partnersIdle(job),
    ...works.flatMap((w) => w.remarks),
    ...cautions(job),
    ...mixWeak(works, env),
    ...mixSandy(works, env),
    ...priceRemarks(job.price, env).map((r) => toldAt(r, home(job))),
    // A template has no prices: what a job of it lacks is told in the job.
    ...(templateOf(file) ? [] : incomplete(job.price.total, home(job))),
    ...firmUnused(job, home(job)),
  ];
}

/** A remark on a line of another file is told at the job’s own heading, and leads there. */
function toldAt(remark: Remark, here: SourceBlock): Remark {
  if (remark.origin.block.file === here.file) return remark;
  const related = [{ origin: remark.origin, message: phrase`The line it is about` }];
  return { ...remark, origin: headOrigin(here), related };
}

function home(job: Job): SourceBlock {
  return job.file.blocks.find((b) => b.kind === 'job') ?? job.file.blocks[0]!;
}

function fileRemarks(job: Job): Remark[] {
  const remarks: Remark[] = [];
  const first = job.file.blocks.find((b) => b.read.heading);
  if (!first) return [];
  if (first.kind !== 'perpend') remarks.push(editionMissing(first, saysEdition(job)));
  const { assumed } = job.scope;
  if (assumed) remarks.push(libraryAssumed(first, assumed));
  const seen = new Map<string, SourceBlock>();
  for (const block of job.file.blocks) {
    const kind = block.kind ?? '';
    if (kind === 'perpend') remarks.push(...editionRemarks(block));
    const before = seen.get(kind);
    if (before && ONCE.has(kind)) remarks.push(jobTwice(headOrigin(block), headOrigin(before)));
    else seen.set(kind, block);
  }
  return remarks;
}

function saysEdition(job: Job): boolean {
  return job.file.blocks.some((b) => b.kind === 'perpend');
}

function editionRemarks(block: SourceBlock): Remark[] {
  const value = block.read.heading?.values.edition;
  if (value?.kind !== 'quantity' || value.low.eq(1)) return [];
  return [editionUnknown({ block, span: value.span }, value.low.toFixed())];
}

function faultFinding(block: SourceBlock, fault: Fault): Finding {
  return {
    code: fault.code,
    severity: fault.severity,
    place: block.place(fault.span),
    message: fault.message,
    related: [],
    ways: fault.ways.map((way) => ({
      title: way.title,
      preferred: way.preferred,
      edits: way.edits.map((e) => ({ place: block.place(e.span), text: e.text })),
    })),
  };
}
