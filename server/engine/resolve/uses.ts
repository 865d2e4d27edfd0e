/** Which files a job is made of: its own, those it uses, those they use, and a library. */
import type { ReadLine } from '../../../grammar/read/values';
import * as findings from '../findings/files';
import { type NoFile, partnerFile } from '../findings/partner';
import { useRefused } from '../findings/refused';
import { headOrigin, type Remark } from '../findings/remark';
import type { MeasuredOutput } from '../firm/outputs';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { wordOf } from './book';
import { firmNear } from './firm-near';
import { type Lent, lentBlocks } from './partners';

/** What the outside lends the engine. It never touches a disk itself. */
export interface Host {
  /** The name of a file as another names it, or nothing when that lies outside the workspace. */
  resolve(from: string, to: string): string | undefined;
  /** Its text, or nothing when there is no such file or it cannot be read. */
  read(name: string): string | undefined;
}

/** Gives out files by name, each read once until it changes. */
export interface FileStore {
  /** Changes when a file is opened, closed, or changes outside: then names may mean other files. */
  readonly generation: number;
  readonly libraries: readonly string[];
  /** What the past jobs of a firm’s file show; nothing where nobody has looked through them. */
  pastOutputs?(file: string): readonly MeasuredOutput[];
  library(name: string): SourceFile | undefined;
  find(from: SourceFile, to: string): SourceFile | 'outside' | 'missing';
}

const DEEPEST = 12;
const MOST_FILES = 64;
/** Files asked for in all, those that are not there too: asking the disk takes time. */
const MOST_ASKED = 4 * MOST_FILES;

/** What no country owns, such as the currencies: every job has it, and no line names it. */
const WORLD = 'world';

export interface Scope {
  /** The job first, then what it uses in order, nearest first, then libraries. */
  readonly files: readonly SourceFile[];
  readonly remarks: readonly Remark[];
  /** The library that was taken because no `use` names one. */
  readonly assumed?: string;
  /** What partners’ files give. */
  readonly lent: readonly Lent[];
  /** How the job would name the nearest firm’s file, used or not; nothing where none is seen. Looked for once. */
  readonly firmNear: () => string | undefined;
}

/** Those of partners too: a change of any may change the job. */
export function allFiles({ files, lent }: Scope): readonly SourceFile[] {
  return [...files, ...lent.flatMap((each) => each.files)];
}

export function scopeOf(job: SourceFile, store: FileStore): Scope {
  const walk = new Walk(store);
  walk.visit(job, [], 0);
  const isLibrary = [...store.libraries, WORLD].some((name) => store.library(name) === job);
  const assumed = isLibrary || walk.libraries.length ? undefined : assumedBy(store);
  if (assumed) walk.takeLibrary(assumed);
  walk.takeLibrary(WORLD);
  const lent = walk.lent();
  const files = [...walk.files, ...walk.libraries];
  return { files, remarks: walk.remarks, assumed, lent, firmNear: once(() => nearOf(job, store)) };
}

function nearOf(job: SourceFile, store: FileStore): string | undefined {
  return firmNear((way) => {
    const found = store.find(job, way);
    if (found === 'outside') return found;
    return found === 'missing' || found === job ? 'missing' : 'there';
  });
}

function once<T>(ask: () => T): () => T {
  let known: { readonly value: T } | undefined;
  return () => {
    known ??= { value: ask() };
    return known.value;
  };
}

/** The country that the world’s library names for jobs that name none: said in a finding, never in silence. */
function assumedBy(store: FileStore): string | undefined {
  const use = store.library(WORLD)?.blocks.find((block) => block.kind === 'use');
  const library = use?.read.heading?.values.library;
  return library?.kind === 'word' ? library.text : undefined;
}

class Walk {
  readonly files: SourceFile[] = [];
  readonly libraries: SourceFile[] = [];
  readonly remarks: Remark[] = [];
  private readonly partners: SourceBlock[] = [];

  constructor(
    private readonly store: FileStore,
    /** Counted together with that of partners’ files. */
    private readonly asked = { times: 0 },
  ) {}

  takeLibrary(name: string): boolean {
    const file = this.store.library(name);
    if (file && !this.libraries.includes(file) && !this.files.includes(file))
      this.libraries.push(file);
    return file !== undefined;
  }

  visit(file: SourceFile, above: readonly SourceFile[], depth: number): void {
    if (this.files.includes(file)) return;
    this.files.push(file);
    for (const block of file.blocks) {
      if (block.kind === 'partner') this.partners.push(block);
      const heading = block.kind === 'use' ? block.read.heading : undefined;
      if (heading) this.use(file, block, heading, [...above, file], depth);
    }
  }

  private use(
    file: SourceFile,
    block: SourceBlock,
    line: ReadLine,
    above: readonly SourceFile[],
    depth: number,
  ) {
    const { library, file: path } = line.values;
    if (library?.kind === 'word') {
      if (!this.takeLibrary(library.text))
        this.remarks.push(
          findings.libraryUnknown(
            { block, span: library.span },
            library.text,
            this.store.libraries,
          ),
        );
      return;
    }
    if (path?.kind !== 'text') return;
    const origin = { block, span: path.span };
    this.asked.times += 1;
    if (this.asked.times > MOST_ASKED) {
      this.remarks.push(findings.useTooDeep(origin, DEEPEST, MOST_FILES));
      return;
    }
    const found = this.store.find(file, path.text);
    if (found === 'outside') this.remarks.push(findings.useOutside(origin, path.text));
    else if (found === 'missing') this.remarks.push(findings.useMissing(origin, path.text));
    else if (above.includes(found)) this.remarks.push(findings.useCycle(origin, path.text));
    else if (found.refused) this.remarks.push(useRefused(origin, path.text, found.refused));
    else if (depth >= DEEPEST || this.files.length >= MOST_FILES)
      this.remarks.push(findings.useTooDeep(origin, DEEPEST, MOST_FILES));
    else this.visit(found, above, depth + 1);
  }

  /** Of each partner’s file what counts. A partner of a partner does nothing here. */
  lent(): Lent[] {
    return this.partners.flatMap((block) => {
      const line = block.read.heading?.body.find((l) => l.kind.key === 'file');
      const value = line?.values.file;
      const path = wordOf(value);
      const found = value ? this.partnerAt(block, path) : 'unsaid';
      if (typeof found === 'string') {
        this.remarks.push(
          partnerFile(value ? { block, span: value.span } : headOrigin(block), found, path),
        );
        return [];
      }
      const walk = new Walk(this.store, this.asked);
      walk.visit(found, [], 0);
      this.remarks.push(...walk.remarks);
      return [{ block, files: walk.files, blocks: lentBlocks(walk.files) }];
    });
  }

  private partnerAt({ file }: SourceBlock, path: string): SourceFile | NoFile {
    this.asked.times += 1;
    if (this.asked.times > MOST_ASKED) return 'many';
    const found = this.store.find(file, path);
    if (typeof found === 'string') return found;
    if (found === file) return 'circle';
    return found.refused ?? found;
  }
}
