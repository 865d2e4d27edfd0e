/** Summaries of the files of a folder, kept by what the disk says of each: only a file that has changed is read again. */
import { summaryOf } from './read';
import type { FiledJob, JobSummary } from './summary';

/** What tells that a file is still the one that was read. */
export interface Stamp {
  readonly size: number;
  /** Last changed, in ms. */
  readonly changed: number;
}

/** The outside, as far as an index needs it. */
export interface FolderHost {
  /** What stands in a folder; nothing where it cannot be read. Links are given as what they are. */
  list(folder: string): readonly Listed[];
  /** Nothing for what is no ordinary file, is too large, or leads out of the folder. */
  stamp(file: string): Stamp | undefined;
  read(file: string): string | undefined;
  join(folder: string, name: string): string;
}

export interface Listed {
  readonly name: string;
  readonly is: 'file' | 'folder' | 'other';
}

export interface Indexed extends Stamp {
  readonly summary: JobSummary;
}

/** Folders as deep as nobody keeps jobs, and more files than a firm has: a folder may hold a whole disk. */
const DEEPEST = 16;
const MOST_FILES = 100_000;

export class DiskIndex {
  private readonly known: Map<string, Indexed>;
  /** How many files were read since it was made. */
  reads = 0;

  constructor(
    private readonly host: FolderHost,
    saved: ReadonlyMap<string, Indexed> = new Map(),
  ) {
    this.known = new Map(saved);
  }

  /** Looks at one file again. @returns whether anything of it is another now */
  look(file: string): boolean {
    const before = this.known.get(file);
    const stamp = this.host.stamp(file);
    if (!stamp) return this.known.delete(file);
    if (before && before.size === stamp.size && before.changed === stamp.changed) return false;
    return this.readAgain(file, stamp);
  }

  /** It changed, whatever the disk says of when. */
  changed(file: string): boolean {
    const stamp = this.host.stamp(file);
    return stamp ? this.readAgain(file, stamp) : this.known.delete(file);
  }

  private readAgain(file: string, stamp: Stamp): boolean {
    this.reads += 1;
    const text = this.host.read(file);
    if (text === undefined) return this.known.delete(file);
    this.known.set(file, { ...stamp, summary: summaryOf(text) });
    return true;
  }

  /** Those that are no longer there are forgotten. @returns how many */
  only(files: readonly string[]): number {
    const there = new Set(files);
    const gone = [...this.known.keys()].filter((file) => !there.has(file));
    for (const file of gone) this.known.delete(file);
    return gone.length;
  }

  get entries(): ReadonlyMap<string, Indexed> {
    return this.known;
  }

  get jobs(): FiledJob[] {
    return [...this.known].map(([file, { summary }]) => ({ file, summary }));
  }
}

/**
 * The files in the notation under a folder, one at a time: so that whoever walks may stop for others. Hidden folders and
 * those of tools are passed by; links are not followed.
 */
export function* filesUnder(folder: string, host: FolderHost): Generator<string> {
  for (const found of stepsUnder(folder, host)) if (found !== undefined) yield found;
}

/** The same, stopping after each folder too: one may hold many that hold nothing of ours. */
export function* stepsUnder(folder: string, host: FolderHost): Generator<string | undefined> {
  const waiting: [folder: string, depth: number][] = [[folder, 0]];
  let found = 0;
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [at, depth] = next;
    for (const { name, is } of host.list(at)) {
      if (name.startsWith('.') || name === 'node_modules') continue;
      if (is === 'folder' && depth < DEEPEST) waiting.push([host.join(at, name), depth + 1]);
      if (is !== 'file' || !/\.perp$/i.test(name)) continue;
      if (++found > MOST_FILES) return;
      yield host.join(at, name);
    }
    yield undefined;
  }
}
