/** A file, what it uses, and the files around it: as much as names need. */
import { Book, bookBlocks } from '../resolve/book';
import { type FileStore, type Scope, scopeOf } from '../resolve/uses';
import type { SourceFile } from '../workspace/source';
import type { Sight } from './names';

/** A file, what it uses and what it can look up. A job is one. */
export interface WideSight extends Sight {
  readonly scope: Scope;
}

/** The files around, by the engine’s names. */
export interface World {
  /** Nothing for a file that cannot be read. */
  sight(file: string): WideSight | undefined;
  /** Those that name a file, in a `use` line or as a partner’s. */
  usersOf(file: string): readonly string[];
  /** Those that a file names, and those that they name. */
  usedBy(file: string): ReadonlySet<string>;
  /** Whether a word stands anywhere in the text of a file. */
  speaks(file: string, word: string): boolean;
  /** The file that another names; nothing where that lies outside. It may not be there. */
  fileNamed(from: string, path: string): string | undefined;
}

/** As much of a job as names need: nothing is worked out. */
export function sightOf(file: SourceFile, store: FileStore): WideSight {
  const scope = scopeOf(file, store);
  let book: Book | undefined;
  return {
    file,
    scope,
    get book() {
      book ??= new Book(bookBlocks(scope.files), scope.lent);
      return book;
    },
  };
}

/** A world of one job and what it uses. */
export function alone(job: WideSight): World {
  return {
    sight: (file) => (file === job.file.name ? job : undefined),
    usersOf: () => [],
    usedBy: () => new Set(),
    speaks: () => true,
    fileNamed: () => undefined,
  };
}
