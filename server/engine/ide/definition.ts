/** Where a word leads: to what it names, to a used file, to the default that holds where a line is left out. */
import type { LineKind } from '../../../grammar/lines';
import type { ReadLine } from '../../../grammar/read/values';
import type { Span } from '../../../shared/span';
import type { Setting } from '../resolve/book';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { defaultOf } from './defaults';
import { type Named, thingsMeant } from './names';
import { namedAt } from './occurrences';
import { onKey, type Spot, spotAt, textOf } from './spot';
import type { Definition, Position, Target } from './types';

export function definition(job: Job, at: Position): Definition | undefined {
  const spot = spotAt(job.file, at);
  if (!spot?.read) return undefined;
  if (onKey(spot)) return found(spot, spot.syntax!.key!.span, ofKey(spot, job));
  const value = namedAt(spot);
  const text = value && textOf(value.value);
  if (!value || text === undefined) return undefined;
  const targets =
    NAMES_FILES.has(spot.read.kind.key) && value.slot.slot !== 'name'
      ? usedFile(spot.read, job)
      : thingsMeant(job, value, spot).map(ofThing);
  return found(spot, value.value.span, targets);
}

/** `use`, and the file of a partner. */
const NAMES_FILES: ReadonlySet<string> = new Set(['use', 'file']);

function found(spot: Spot, span: Span, targets: readonly Target[]): Definition | undefined {
  if (!targets.length) return undefined;
  return { span: { ...span, line: spot.block.firstLine + span.line }, targets };
}

/** A line’s word leads to the default it stands in for; a heading’s to all that hold for lines it leaves out. */
function ofKey({ read, parents }: Spot, job: Job): Target[] {
  if (!read || read.kind.key === 'defaults' || parents[0]?.kind.key === 'defaults') return [];
  const kinds = read.kind.body ? leftOut(read) : [read.kind];
  return kinds.flatMap((kind) => {
    const setting = defaultOf(kind, job.book)?.setting;
    return setting ? [ofLine(setting)] : [];
  });
}

function leftOut(heading: ReadLine): LineKind[] {
  const said = new Set(heading.body.map((line) => line.kind));
  return (heading.kind.body ?? []).filter((kind) => !said.has(kind));
}

function ofLine({ block, line }: Setting): Target {
  return target(block, line, line.syntax.span);
}

function ofThing({ block, line, span }: Named): Target {
  return target(block, line, span);
}

function target(block: SourceBlock, line: ReadLine, span: Span): Target {
  const first = line.syntax.span.line;
  const last = Math.max(first, ...line.syntax.body.map((l) => l.span.line));
  const lines = { first: block.firstLine + first, last: block.firstLine + last };
  return { place: block.place(span), lines };
}

/** The first line of the file that `use` names, or of the library. */
function usedFile(line: ReadLine, job: Job): Target[] {
  const file = job.usedBy(line);
  if (!file) return [];
  const place = { file: file.name, line: 0, start: 0, end: 0 };
  return [{ place, lines: { first: 0, last: 0 } }];
}
