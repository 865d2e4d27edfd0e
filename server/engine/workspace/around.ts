/**
 * What a job is worked out in: the files it uses, what can be looked up in them, and the gang. It stays the same objects
 * for as long as nothing has changed in it, and so does all that was worked out in it.
 */
import { type Gang, gangOf } from '../labour/gang';
import { isIn } from '../life/in-option';
import { Book, bookBlocks } from '../resolve/book';
import { type Env, envOf } from '../resolve/env';
import { allLent } from '../resolve/partners';
import { allFiles, type FileStore, type Scope, scopeOf } from '../resolve/uses';
import type { SourceBlock, SourceFile } from './source';

interface Seen {
  readonly generation: number;
  readonly files: readonly SourceFile[];
  readonly versions: readonly number[];
}

export class Around {
  scope!: Scope;
  book!: Book;
  env!: Env;
  gang!: Gang;
  /** Whether a piece of work comes out here as it does in the job without options. */
  asBase = false;
  private seen: Seen | undefined;

  /** @param base with options taken: what the job as its file has it is worked out in */
  constructor(
    private readonly file: SourceFile,
    private readonly store: FileStore,
    private readonly taken: ReadonlySet<string>,
    private readonly base?: Around,
  ) {}

  /** @returns whether anything has changed that pieces of work are worked out from */
  refresh(): boolean {
    if (this.bookStands()) return false;
    this.scope = this.scopeNow();
    const blocks = bookBlocks(this.scope.files).filter((b) => isIn(b, this.taken));
    const isNew = !this.book || !same(blocks, this.book.blocks) || !this.lentAlike(this.book);
    const forWork = isNew && this.newBook(blocks);
    const files = allFiles(this.scope);
    this.seen = { generation: this.store.generation, files, versions: files.map(versionOf) };
    return forWork;
  }

  /** Whether nothing but work has changed, here or in any file that this one uses. */
  private bookStands(): boolean {
    const { seen } = this;
    return (
      seen?.generation === this.store.generation &&
      seen.files.every((file, i) => versionOf(file, i) === seen.versions[i])
    );
  }

  private lentAlike(book: Book): boolean {
    return same(allLent(book.lent), allLent(this.scope.lent));
  }

  /** The files that the job without options uses, whatever they say of its own. */
  private scopeNow(): Scope {
    if (!this.base) return scopeOf(this.file, this.store);
    const { scope } = this.base;
    return { ...scope, files: [this.file, ...scope.files.slice(1)] };
  }

  /** @returns whether it says anything else that pieces of work are worked out from */
  private newBook(blocks: readonly SourceBlock[]): boolean {
    const { base, book, env } = this;
    const shared = base && same(blocks, base.book.blocks) ? base : undefined;
    this.book = shared?.book ?? new Book(blocks, this.scope.lent);
    this.env = shared?.env ?? envOf(this.book, 'middle');
    this.asBase = base !== undefined && alikeForWork(base, this);
    if (book && this.lentAlike(book) && alikeForWork({ book, env }, this)) return false;
    this.gang = gangOf(this.env);
    return true;
  }
}

/** Work of the job’s own file is not in its book; work of a file it uses is. */
function versionOf(file: SourceFile, place: number): number {
  return place === 0 ? file.bookVersion : file.version;
}

/** Kinds of block that no piece of work is worked out from. */
const NOT_FOR_WORK: ReadonlySet<string> = new Set([
  'perpend',
  'template',
  'job',
  'use',
  'firm',
  'bill-to',
  'travel',
  'cost',
  'price',
  'option',
  'record',
  'caution',
]);

type LookedUp = Pick<Around, 'book' | 'env'>;

function alikeForWork(a: LookedUp, b: LookedUp): boolean {
  return sameEnv(a.env, b.env) && same(forWork(a.book.blocks), forWork(b.book.blocks));
}

function forWork(blocks: readonly SourceBlock[]): SourceBlock[] {
  return blocks.filter((b) => !NOT_FOR_WORK.has(b.kind!));
}

function sameEnv(a: Env, b: Env): boolean {
  return a.imperial === b.imperial && alike(a.money, b.money) && alike(a.style, b.style);
}

function alike(a: object, b: object): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** The same objects, in the same order. */
export function same(a: readonly SourceBlock[], b: readonly SourceBlock[]): boolean {
  return a.length === b.length && a.every((block, i) => block === b[i]);
}
