/** Files that lines name: those that are used, partners’, pictures. */
import type { ReadLine } from '../../../grammar/read/values';
import type { Place, Span } from '../../../shared/span';
import type { SourceBlock, SourceFile } from '../workspace/source';
import type { WideSight, World } from './sight';
import { spotAt } from './spot';
import type { Position } from './types';

/** A text that names a file, as it is written there. */
export interface FileSaid {
  readonly block: SourceBlock;
  readonly line: ReadLine;
  /** With its quotation marks. */
  readonly span: Span;
  readonly path: string;
  /** Read as notation, or a picture. */
  readonly is: 'used' | 'partner' | 'picture';
}

const IS: Readonly<Record<string, FileSaid['is']>> = {
  use: 'used',
  file: 'partner',
  logo: 'picture',
};

/** Blocks that a line naming a file may stand in. */
const HOMES: ReadonlySet<string> = new Set(['use', 'partner', 'firm']);

export function filesSaid(file: SourceFile): FileSaid[] {
  return file.blocks.flatMap((block) => {
    if (!HOMES.has(block.kind ?? '')) return [];
    const { heading } = block.read;
    return heading ? [heading, ...heading.body].flatMap((line) => saidIn(block, line)) : [];
  });
}

function saidIn(block: SourceBlock, line: ReadLine): FileSaid[] {
  const value = line.values.file;
  const is = IS[line.kind.key];
  if (value?.kind !== 'text' || !is) return [];
  return [{ block, line, span: value.span, path: value.text, is }];
}

/** Every line of the files around that names the same file as the one at a position. */
export function* filePlaces(job: WideSight, at: Position, world: World): Generator<void, Place[]> {
  const target = targetAt(job, at, world);
  if (target === undefined) return [];
  const found: Place[] = [];
  for (const user of new Set([job.file.name, ...world.usersOf(target)])) {
    const sight = user === job.file.name ? job : world.sight(user);
    if (sight) found.push(...placesIn(sight, target, world));
    yield;
  }
  return found;
}

function placesIn({ file }: WideSight, target: string, world: World): Place[] {
  return filesSaid(file)
    .filter((said) => world.fileNamed(file.name, said.path) === target)
    .map(({ block, span }) => block.place(span));
}

function targetAt(job: WideSight, at: Position, world: World): string | undefined {
  const spot = spotAt(job.file, at);
  const said = spot?.read && saidIn(spot.block, spot.read)[0];
  if (!said || at.column < said.span.start || at.column > said.span.end) return undefined;
  return world.fileNamed(job.file.name, said.path);
}
