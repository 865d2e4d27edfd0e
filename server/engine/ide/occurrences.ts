/** Where a name is meant in a file: where it is given, and each line that uses it. */
import type { NamedKind } from '../../../grammar/lines/slots';
import type { ReadLine } from '../../../grammar/read/values';
import type { Span } from '../../../shared/span';
import { isTrade } from '../labour/gang';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { figureName } from './figure-name';
import { givenAt, isCounted, isInner, isKnown, type Named, type Sight, thingsMeant } from './names';
import { type Said, saidOf } from './said';
import { onKey, type Spot, spotAt, textOf, valueAt } from './spot';
import type { Highlight, Position } from './types';

/** In this file only. */
export function highlights(job: Sight, at: Position): Highlight[] {
  const meant = meantAt(job, at);
  if (!meant) return [];
  return occurrencesIn(job.file, meant.thing).map(({ block, span, declares }) => ({
    ...span,
    line: block.firstLine + span.line,
    declares,
  }));
}

export interface Meant {
  /** The nearest of them, where several files say something of it. */
  readonly thing: Named;
  readonly all: readonly Named[];
  /** Where the name stands that was asked about, in the block of the question. */
  readonly span: Span;
}

/** What the name at a position means. */
export function meantAt(job: Sight, at: Position): Meant | undefined {
  const spot = spotAt(job.file, at);
  if (!spot?.read) return undefined;
  const given = givenAt(spot);
  if (given && onSpan(given.span, spot)) return { thing: given, all: [given], span: given.span };
  const said = onKey(spot) ? undefined : namedAt(spot);
  const all = said ? thingsMeant(job, said, spot) : [];
  return all.length ? { thing: all[0]!, all, span: said!.value.span } : undefined;
}

/** A value, or the name within the id of a figure. */
export function namedAt(spot: Spot): Said | undefined {
  const within = spot.read && figureName(spot.read);
  return within && onSpan(within.value.span, spot) ? within : valueAt(spot);
}

function onSpan(span: Span, spot: Spot): boolean {
  return span.line === spot.line && span.start <= spot.column && spot.column <= span.end;
}

export interface Occurrence {
  readonly block: SourceBlock;
  readonly span: Span;
  readonly declares: boolean;
  /** As it is written there: a trade may stand in the plural. */
  readonly text: string;
  /** What the name may mean there. */
  readonly names: readonly NamedKind[];
}

export function occurrencesIn(file: SourceFile, thing: Named): Occurrence[] {
  return file.blocks.flatMap((block) => occurrencesInBlock(block, thing));
}

/** A block without the letters of the name is not read. */
function occurrencesInBlock(block: SourceBlock, thing: Named): Occurrence[] {
  if (!block.lines.some((line) => line.includes(thing.name))) return [];
  const { heading } = block.read;
  return heading ? inLine(block, heading, thing) : [];
}

function inLine(block: SourceBlock, line: ReadLine, thing: Named): Occurrence[] {
  const own = givenAt({ block, read: line, line: 0, column: 0, parents: [] });
  const given = own && isSame(own, thing) ? [givenOf(own)] : [];
  const figure = figureName(line);
  const said = figure ? [...saidOf(line), figure] : saidOf(line);
  const used = said.flatMap(({ slot, names, value }): Occurrence[] => {
    const text = textOf(value);
    const use = { block, line, key: 'key' in slot ? slot.key : '' };
    const known = text !== undefined && names.includes(thing.kind) && isKnown(thing, use);
    return known && means(thing, text)
      ? [{ block, span: value.span, declares: false, text, names }]
      : [];
  });
  return [...given, ...used, ...line.body.flatMap((inner) => inLine(block, inner, thing))];
}

function givenOf({ block, span, name, kind }: Named): Occurrence {
  return { block, span, declares: true, text: name, names: [kind] };
}

/** Two openings of one name in two walls are two things; a brick that two files tell of is one. */
function isSame(a: Named, b: Named): boolean {
  if (a.kind !== b.kind || a.name !== b.name) return false;
  if (!isOfBlock(a) && !isOfBlock(b)) return true;
  return a.block === b.block && isInner(a) === isInner(b);
}

/** Known in its own wall only. */
export function isOfBlock(thing: Named): boolean {
  return thing.kind === 'opening' || (thing.kind === 'pier' && isInner(thing));
}

function means(thing: Named, text: string): boolean {
  return isCounted(thing.kind) ? isTrade(thing.name, text) : text === thing.name;
}
