/** Some blocks of a file, and those of them that are work. */
import { claimsOf } from '../brickwork/wall/meet/ends';
import { isIn } from '../life/in-option';
import { type SourceBlock, WORK } from './source';

export interface FilePart {
  /** Those that are done: without an option, or with one that is taken. */
  readonly blocks: readonly SourceBlock[];
  readonly options: readonly SourceBlock[];
  readonly walls: readonly SourceBlock[];
  readonly work: readonly SourceBlock[];
  /** None of them is worked out from another piece of work. */
  readonly alone: boolean;
}

export function partOf(all: readonly SourceBlock[], taken: ReadonlySet<string>): FilePart {
  const blocks = all.filter((b) => isIn(b, taken));
  const options = all.filter((b) => b.kind === 'option');
  const walls = blocks.filter((b) => b.kind === 'wall');
  const work = blocks.filter((b) => b.kind !== undefined && WORK.has(b.kind));
  const alone = work.every((b) => b.kind !== 'repair') && !walls.some((b) => claimsOf(b).length);
  return { blocks, options, walls, work, alone };
}
