/** Files that are given other names or places: lines that name them are mended, here and in the files that move. */
import type { TextEdit } from '../../../shared/finding';
import type { SourceFile } from '../workspace/source';
import { type FileSaid, filesSaid } from './used-file';

/** What happens to files, and how they name one another. */
export interface Moves {
  /** Where a file will be; itself for one that stays. */
  moved(file: string): string;
  /** The file that another names today; nothing where that lies outside. */
  resolve(from: string, path: string): string | undefined;
  /** How a file names another: `../firm.perp`. Nothing where there is no way. */
  way(from: string, to: string): string | undefined;
}

/**
 * The lines of a file that would name another file than they do today, or none. Edits count in the file as it is before
 * anything moves.
 */
export function mendedUses(file: SourceFile, moves: Moves): TextEdit[] {
  return filesSaid(file).flatMap((said) => mended(said, moves));
}

function mended({ block, span, path }: FileSaid, moves: Moves): TextEdit[] {
  const { name } = block.file;
  const target = moves.resolve(name, path);
  if (target === undefined) return [];
  const [from, to] = [moves.moved(name), moves.moved(target)];
  if (from === name && to === target) return [];
  const way = moves.way(from, to);
  // Both may have moved together: then the line stands as it is. A name of two lines can be written in none.
  if (way === undefined || /[\n\r]/.test(way) || way === moves.way(name, target) || way === path)
    return [];
  return [{ place: block.place(span), text: quoted(way) }];
}

function quoted(path: string): string {
  return `"${path.replace(/["\\]/g, '\\$&')}"`;
}
