/** The files a session knows, and the job each of them makes. The one place where anything changes. */

import type { MeasuredOutput } from '../firm/outputs';
import { allFiles, type FileStore, type Host } from '../resolve/uses';
import { Job } from './job';
import { SourceFile, type TextChange } from './source';

export interface Library {
  /** What the host calls the file, so that a reader can be led to its lines. */
  readonly file: string;
  readonly text: string;
}

/** Most files kept from disk; the least recently read go first. Open ones are never let go. */
const MOST_KEPT = 256;

export class Workspace implements FileStore {
  generation = 0;
  private readonly open = new Map<string, SourceFile>();
  private readonly kept = new Map<string, SourceFile>();
  private readonly shelf = new Map<string, SourceFile>();
  private readonly jobs = new Map<string, Job>();
  /** Set by whoever has looked through a firm’s jobs: what they show for a file of it. */
  pastOutputs: (file: string) => readonly MeasuredOutput[] = () => [];

  constructor(
    private readonly host: Host,
    private readonly shipped: Readonly<Record<string, Library>>,
  ) {}

  /** Names that `use` takes without quotation marks. */
  get libraries(): readonly string[] {
    return Object.keys(this.shipped).filter((name) => name !== 'world');
  }

  library(name: string): SourceFile | undefined {
    const text = Object.hasOwn(this.shipped, name) ? this.shipped[name] : undefined;
    const known = text && (this.open.get(text.file) ?? this.shelf.get(name));
    if (known || !text) return known;
    const file = new SourceFile(text.file, text.text, true);
    this.shelf.set(name, file);
    return file;
  }

  /** The name of the library that stands in that file. */
  private libraryAt(file: string): string | undefined {
    return Object.keys(this.shipped).find((key) => this.shipped[key]!.file === file);
  }

  find(from: SourceFile, to: string): SourceFile | 'outside' | 'missing' {
    const name = this.host.resolve(from.name, to);
    if (name === undefined) return 'outside';
    return this.file(name) ?? 'missing';
  }

  /** A file that is open in the editor, else as it stands outside. */
  file(name: string): SourceFile | undefined {
    const known = this.open.get(name) ?? this.kept.get(name);
    if (known) return known;
    const shipped = this.libraryAt(name);
    if (shipped) return this.library(shipped);
    const text = this.host.read(name);
    if (text === undefined) return undefined;
    const file = new SourceFile(name, text);
    this.kept.set(name, file);
    if (this.kept.size > MOST_KEPT) this.kept.delete(this.kept.keys().next().value!);
    return file;
  }

  opened(name: string, text: string): void {
    this.generation += 1;
    this.kept.delete(name);
    // A library is the same one in an editor: only that all of it is read there.
    const ships = this.libraryAt(name) !== undefined;
    this.open.set(name, new SourceFile(name, text, ships, false));
    this.jobs.delete(name);
  }

  edited(name: string, changes: readonly TextChange[]): void {
    const file = this.open.get(name);
    if (file) for (const change of changes) file.edit(change);
  }

  replaced(name: string, text: string): void {
    this.open.get(name)?.replaceAll(text);
  }

  closed(name: string): void {
    this.generation += 1;
    this.open.delete(name);
    this.jobs.delete(name);
  }

  /** The file changed outside; nothing if it is open here, where the editor’s text counts. */
  changedOutside(name: string): void {
    this.generation += 1;
    this.kept.delete(name);
  }

  /** Files that are not open and were read. */
  get keptFiles(): Iterable<string> {
    return this.kept.keys();
  }

  isOpen(name: string): boolean {
    return this.open.has(name);
  }

  get openFiles(): readonly string[] {
    return [...this.open.keys()];
  }

  /** The files that an open file was last worked out from; nothing before anyone has asked for its job. */
  scopeNow(name: string): readonly SourceFile[] | undefined {
    const scope = this.jobs.get(name)?.scope;
    return scope?.lent.length ? allFiles(scope) : scope?.files;
  }

  /** The job that a text makes, and that nobody keeps: for a look through many. */
  jobOf(file: SourceFile): Job {
    const job = new Job(file, this);
    job.refresh();
    return job;
  }

  /** The job of a file as it is now. Nothing when there is no such file. */
  job(name: string): Job | undefined {
    const file = this.file(name);
    if (!file) return undefined;
    let job = this.jobs.get(name);
    if (job?.file !== file) {
      job = new Job(file, this);
      this.jobs.set(name, job);
    }
    job.refresh();
    return job;
  }
}
