/** A new name is tried before it is given: whether another thing has it, and whether each line still says the same. */
import type { NamedKind } from '../../../grammar/lines/slots';
import { Book } from '../resolve/book';
import { type SourceBlock, SourceFile } from '../workspace/source';
import { isInner, type Named, thingsNamed } from './names';
import { type Occurrence, occurrencesIn } from './occurrences';
import { readOtherwise, ships, takenBy } from './rename-words';
import type { Spread } from './spread';

/** Why the name cannot be taken, looked for in all files that would have it. */
export function* trouble(
  { thing, sites, around }: Spread,
  name: string,
): Generator<void, string | undefined> {
  const other = { ...thing, name };
  for (const { file, occurrences } of sites) {
    if (file.shipped) return ships(thing, file);
    const [taken] = occurrencesIn(file, other);
    if (taken) return takenBy(other, taken.block, taken.span);
    const wrong = firstUnread(file, occurrences, thing, name);
    if (wrong) return wrong;
    yield;
  }
  const occurrences = sites.flatMap((site) => site.occurrences);
  const kinds = [...new Set([thing.kind, ...occurrences.flatMap((o) => o.names)])];
  for (const file of around) {
    const known = givenIn(file, kinds, thing, name);
    if (known) return takenBy(known, known.block, known.span);
    yield;
  }
  return undefined;
}

/** A thing of that name that a line would mean then. */
function givenIn(
  file: SourceFile,
  kinds: readonly NamedKind[],
  thing: Named,
  name: string,
): Named | undefined {
  const blocks = file.blocks.filter((block) => block.lines.some((line) => line.includes(name)));
  if (!blocks.length) return undefined;
  const sight = { file, book: new Book(blocks) };
  return thingsNamed(sight, kinds, name, thing.block).find((found) => clashes(found, thing));
}

/** Two walls may each have an opening of that name. */
function clashes(found: Named, thing: Named): boolean {
  const inner = isInner(found) && found.kind === thing.kind && found.kind !== 'zone';
  return !inner || found.block === thing.block;
}

/** The blocks are written anew and read again: each place has to be the same thing under its new name, and nothing else. */
function firstUnread(
  file: SourceFile,
  occurrences: readonly Occurrence[],
  thing: Named,
  name: string,
): string | undefined {
  for (const [block, own] of byBlock(occurrences)) {
    const lines = rewritten(block, own, thing, name);
    const [fresh] = new SourceFile(file.name, lines.join('\n')).blocks;
    const found = fresh ? occurrencesIn(fresh.file, movedTo(fresh, block, { ...thing, name })) : [];
    if (found.length === own.length && faultsIn(fresh) <= faultsIn(block)) continue;
    const line = block.firstLine + own[0]!.span.line + 1;
    return readOtherwise(name, file, line);
  }
  return undefined;
}

/** An opening is told by its wall, which is written anew too. */
function movedTo(fresh: SourceBlock, block: SourceBlock, thing: Named): Named {
  if (thing.block !== block) return thing;
  const line = isInner(thing) ? thing.line : (fresh.read.heading ?? thing.line);
  return { ...thing, block: fresh, line };
}

function faultsIn(block: SourceBlock | undefined): number {
  return block ? block.read.faults.length : 0;
}

function byBlock(occurrences: readonly Occurrence[]): Map<SourceBlock, Occurrence[]> {
  const found = new Map<SourceBlock, Occurrence[]>();
  for (const each of occurrences) {
    const list = found.get(each.block);
    if (list) list.push(each);
    else found.set(each.block, [each]);
  }
  return found;
}

function rewritten(
  block: SourceBlock,
  occurrences: readonly Occurrence[],
  thing: Named,
  name: string,
): string[] {
  const lines = [...block.lines];
  const fromTheEnd = [...occurrences].sort(
    (a, b) => b.span.line - a.span.line || b.span.start - a.span.start,
  );
  for (const { span, text } of fromTheEnd) {
    const line = lines[span.line]!;
    lines[span.line] = line.slice(0, span.start) + asSaid(text, thing, name) + line.slice(span.end);
  }
  return lines;
}

/** A trade in the plural stays in the plural. */
export function asSaid(text: string, thing: Named, name: string): string {
  return text === thing.name ? name : `${name}s`;
}
