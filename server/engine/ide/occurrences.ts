/** Everywhere a name is meant: where it is given, and each line that uses it. */
import type { ReadLine } from '../../../grammar/read/values';
import type { Place, Span } from '../../../shared/span';
import { isTrade } from '../labour/gang';
import type { Job } from '../workspace/job';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { givenAt, isCounted, type Named, thingsNamed } from './names';
import { saidOf } from './said';
import { onKey, type Spot, spotAt, textOf, valueAt } from './spot';
import type { Highlight, Position } from './types';

/** In this file only. */
export function highlights(job: Job, at: Position): Highlight[] {
  const thing = meantAt(job, at);
  if (!thing) return [];
  return occurrencesIn(job.file, thing).map(({ block, span, declares }) => ({
    ...span,
    line: block.firstLine + span.line,
    declares,
  }));
}

/** In every file of the job. */
export function references(job: Job, at: Position, withGiven: boolean): Place[] {
  const thing = meantAt(job, at);
  if (!thing) return [];
  const found = job.scope.files.flatMap((file) => occurrencesIn(file, thing));
  return found.filter((o) => withGiven || !o.declares).map((o) => o.block.place(o.span));
}

function meantAt(job: Job, at: Position): Named | undefined {
  const spot = spotAt(job.file, at);
  if (!spot?.read) return undefined;
  const given = givenAt(spot);
  if (given && onSpan(given.span, spot)) return given;
  const value = onKey(spot) ? undefined : valueAt(spot);
  const name = value && textOf(value.value);
  return name === undefined ? undefined : thingsNamed(job, value!.names, name, spot.block)[0];
}

function onSpan(span: Span, spot: Spot): boolean {
  return span.line === spot.line && span.start <= spot.column && spot.column <= span.end;
}

interface Occurrence {
  readonly block: SourceBlock;
  readonly span: Span;
  readonly declares: boolean;
}

/** Blocks that speak of openings of any wall. */
const SPEAKS: ReadonlySet<string> = new Set(['option', 'template']);

/** An opening is only known in its own wall, and in those. */
function occurrencesIn(file: SourceFile, thing: Named): Occurrence[] {
  const knows = (block: SourceBlock) =>
    thing.kind !== 'opening' || block === thing.block || SPEAKS.has(block.kind ?? '');
  return file.blocks
    .filter(knows)
    .flatMap((block) => (block.read.heading ? inLine(block, block.read.heading, thing) : []));
}

function inLine(block: SourceBlock, line: ReadLine, thing: Named): Occurrence[] {
  const own = givenAt({ block, read: line, line: 0, column: 0, parents: [] });
  const given =
    own && own.kind === thing.kind && own.name === thing.name
      ? [{ block, span: own.span, declares: true }]
      : [];
  const used = saidOf(line)
    .filter(({ names, value }) => names.includes(thing.kind) && means(thing, textOf(value)))
    .map(({ value }) => ({ block, span: value.span, declares: false }));
  return [...given, ...used, ...line.body.flatMap((inner) => inLine(block, inner, thing))];
}

function means(thing: Named, text: string | undefined): boolean {
  if (text === undefined) return false;
  return isCounted(thing.kind) ? isTrade(thing.name, text) : text === thing.name;
}
