/** The open files and the workspace over them: the one place where anything changes. */
import type { FileStore } from '../engine/resolve/uses';
import { shippedLibraries } from '../engine/shipped';
import type { Job } from '../engine/workspace/job';
import type { TextChange } from '../engine/workspace/source';
import { Workspace } from '../engine/workspace/workspace';
import { changed, exactly, marked } from './exact';
import { FolderFiles, type OpenTexts } from './folder-files';
import type { Known } from './outside';
import { PastJobs } from './past-jobs';
import type { Surroundings } from './surroundings';

/** A file in the editor. */
export interface OpenFile {
  readonly uri: string;
  readonly name: string;
  version: number;
  /** How its lines end, for the text we put in. */
  readonly eol: string;
  /** All of it, where its lines alone would not do. */
  exact?: string;
}

export class Session {
  /** Told of each change, with the names of the files; without names when anything may have changed. */
  readonly heard = new Set<(names?: readonly string[]) => void>();
  /** Set by whoever tells the editor to ask again: files came too late for an answer. */
  late: () => void = () => undefined;
  private toldWithout = false;
  private readonly workspace: Workspace;
  /** What the jobs of the open folders show for a firm’s file. */
  readonly past: PastJobs;
  /** All files of the open folders, for questions over many of them. */
  readonly folder: FolderFiles;
  /** Changes with every text, and with every change outside: an answer over many files is of one of them. */
  edition = 0;
  /** Addresses of the open folders. */
  private roots: readonly string[] = [];
  private readonly byUri = new Map<string, OpenFile>();
  private readonly byName = new Map<string, OpenFile>();

  /**
   * @param lent by where the server runs
   * @param scratch a folder that is not open, whose files may be read as if it were
   */
  constructor(
    readonly lent: Surroundings,
    private readonly scratch?: string,
  ) {
    this.workspace = new Workspace(lent.files, shippedLibraries(lent.libraryFile));
    this.past = new PastJobs(this.workspace, lent.jobFiles, lent.names);
    this.folder = new FolderFiles(lent.jobFiles, lent.names, this.openTexts());
    this.workspace.pastOutputs = (file) => this.past.of(file);
    lent.files.arrived = (names) => this.arrived(names);
  }

  openFolders(uris: readonly string[]): void {
    const { files, names } = this.lent;
    this.roots = uris;
    files.openFolders(this.scratch === undefined ? uris : [...uris, this.scratch]);
    const folders = uris.map(names.nameOf).filter(names.hasPlace);
    this.past.openFolders(folders);
    this.folder.openFolders(folders);
    this.edition += 1;
    this.workspace.changedOutside(''); // names may mean other files now
    this.tell();
  }

  private openTexts(): OpenTexts {
    const { byName, workspace } = this;
    return {
      get names() {
        return [...byName.keys()];
      },
      source: (name) => (byName.has(name) ? workspace.file(name) : undefined),
    };
  }

  private arrived(names: readonly string[]): void {
    for (const name of names) if (!this.byName.has(name)) this.workspace.changedOutside(name);
    this.tell(names);
    if (this.toldWithout && !this.lent.files.coming) {
      this.toldWithout = false;
      this.late();
    }
  }

  private tell(names?: readonly string[]): void {
    for (const listener of this.heard) listener(names);
  }

  /** An answer could not wait any longer for files that are on their way. */
  answeredWithout(): void {
    this.toldWithout = true;
  }

  opened(uri: string, version: number, text: string): OpenFile {
    const eol = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
    const exact = exactly(text);
    const file = { uri, name: this.lent.names.nameOf(uri), version, eol, exact };
    this.byUri.set(uri, file);
    this.byName.set(file.name, file);
    this.edition += 1;
    this.workspace.opened(file.name, marked(text));
    this.tell([file.name]);
    return file;
  }

  edited(file: OpenFile, version: number, changes: readonly (TextChange | string)[]): void {
    file.version = version;
    this.edition += 1;
    for (const change of changes)
      if (typeof change === 'string') this.replaced(file, change);
      else this.changed(file, change);
    this.tell([file.name]);
  }

  private changed(file: OpenFile, change: TextChange): void {
    const whole = this.wholeAfter(file, change);
    if (whole === undefined) this.workspace.edited(file.name, [change]);
    else this.replaced(file, whole);
  }

  private replaced(file: OpenFile, text: string): void {
    file.exact = exactly(text);
    this.workspace.replaced(file.name, marked(text));
  }

  /** Only where its lines alone would not do. */
  private wholeAfter(file: OpenFile, change: TextChange): string | undefined {
    if (file.exact === undefined && exactly(change.text) === undefined) return undefined;
    return changed(file.exact ?? this.source(file).lines.join(file.eol), change);
  }

  closed(file: OpenFile): void {
    this.byUri.delete(file.uri);
    this.byName.delete(file.name);
    this.edition += 1;
    this.workspace.closed(file.name);
    this.tell([file.name]);
  }

  /** Something changed on disk. @returns whether an open file may be concerned */
  changedOutside(uris: readonly string[]): boolean {
    const all = uris.map(this.lent.names.nameOf);
    this.lent.files.changed(all);
    this.folder.changed(all);
    this.edition += 1;
    const names = all.filter((name) => !this.byName.has(name));
    for (const name of names) this.workspace.changedOutside(name);
    this.past.changed(all);
    this.tell(all);
    return names.length > 0;
  }

  /** Gives out the files that a job may use. */
  get store(): FileStore {
    return this.workspace;
  }

  file(uri: string): OpenFile | undefined {
    return this.byUri.get(uri);
  }

  /** How many folders are open. */
  get folders(): number {
    return this.roots.length;
  }

  /** The address of the open folder that a file is in; of folders in one another the inner one. */
  rootOf(uri: string): string | undefined {
    const { names } = this.lent;
    const file = names.nameOf(uri);
    const around = this.roots.filter((root) => names.wayTo(names.nameOf(root), file));
    return around.sort((a, b) => b.length - a.length)[0];
  }

  /** The text of a line of any file that is known. */
  lineAt(uri: string, line: number): string | undefined {
    const name = this.lent.names.nameOf(uri);
    return (this.workspace.file(name) ?? this.folder.source(name))?.lines[line];
  }

  /** What stands outside, as far as it was read or listed. */
  get known(): Known {
    const files = () => new Set([...this.workspace.keptFiles, ...this.folder.listed]);
    return { files, nameOf: this.lent.names.nameOf, uriOf: this.uriOf };
  }

  get files(): readonly OpenFile[] {
    return [...this.byUri.values()];
  }

  /** @throws Error when the file is not open */
  job(file: OpenFile): Job {
    return this.workspace.job(file.name)!;
  }

  /** The job of a file of the open folders that no editor holds; nothing where it cannot be read. It is not kept. */
  jobOnDisk(name: string): Job | undefined {
    const source = this.folder.source(name);
    return source && this.workspace.jobOf(source);
  }

  /** The lines of an open file. */
  source(file: OpenFile) {
    return this.workspace.file(file.name)!;
  }

  /** Whether another open file is worked out from this one too. */
  isUsed(file: OpenFile): boolean {
    const own = this.source(file);
    return this.files.some((other) => other !== file && this.uses(other, own));
  }

  private uses(file: OpenFile, source: unknown): boolean {
    return this.workspace.scopeNow(file.name)?.some((each) => each === source) ?? false;
  }

  /** As the editor writes it, for a file that is open there. */
  readonly uriOf = (name: string): string =>
    this.byName.get(name)?.uri ?? this.lent.names.uriOf(name);

  readonly eolOf = (name: string): string => this.byName.get(name)?.eol ?? '\n';

  /** Nothing for a file that is not open. */
  readonly versionOf = (name: string): number | undefined => this.byName.get(name)?.version;
}
