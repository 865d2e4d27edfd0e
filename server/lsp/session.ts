/** The open files and the workspace over them: the one place where anything changes. */
import path from 'node:path';
import { shippedLibraries } from '../engine/shipped';
import type { Job } from '../engine/workspace/job';
import type { TextChange } from '../engine/workspace/source';
import { Workspace } from '../engine/workspace/workspace';
import { DiskFiles, nameOf, uriOf } from './files';
import { FOLDER } from './folder';
import { PastJobs } from './past-jobs';

/** A file in the editor. */
export interface OpenFile {
  readonly uri: string;
  readonly name: string;
  version: number;
  /** How its lines end, for the text we put in. */
  readonly eol: string;
}

/** Library files are copied beside the bundle, so that an editor can open the lines a figure came from. */
const LIBRARY_FOLDER = path.join(__dirname, 'library');

export class Session {
  private readonly disk = new DiskFiles();
  private readonly workspace = new Workspace(
    this.disk,
    shippedLibraries((file) => path.join(LIBRARY_FOLDER, file)),
  );
  /** What the jobs of the open folders show for a firm’s file. */
  readonly past = new PastJobs(this.workspace, FOLDER);
  private readonly byUri = new Map<string, OpenFile>();
  private readonly byName = new Map<string, OpenFile>();

  constructor() {
    this.workspace.pastOutputs = (file) => this.past.of(file);
  }

  openFolders(uris: readonly string[]): void {
    this.disk.openFolders(uris);
    this.past.openFolders(uris.map(nameOf).filter((name) => path.isAbsolute(name)));
  }

  opened(uri: string, version: number, text: string): OpenFile {
    const eol = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
    const file = { uri, name: nameOf(uri), version, eol };
    this.byUri.set(uri, file);
    this.byName.set(file.name, file);
    this.workspace.opened(file.name, text);
    return file;
  }

  edited(file: OpenFile, version: number, changes: readonly (TextChange | string)[]): void {
    file.version = version;
    for (const change of changes)
      if (typeof change === 'string') this.workspace.replaced(file.name, change);
      else this.workspace.edited(file.name, [change]);
  }

  closed(file: OpenFile): void {
    this.byUri.delete(file.uri);
    this.byName.delete(file.name);
    this.workspace.closed(file.name);
  }

  /** Something changed on disk. @returns whether an open file may be concerned */
  changedOutside(uris: readonly string[]): boolean {
    this.disk.changed();
    const names = uris.map(nameOf).filter((name) => !this.byName.has(name));
    for (const name of names) this.workspace.changedOutside(name);
    this.past.changed(uris.map(nameOf));
    return names.length > 0;
  }

  file(uri: string): OpenFile | undefined {
    return this.byUri.get(uri);
  }

  get files(): readonly OpenFile[] {
    return [...this.byUri.values()];
  }

  /** @throws Error when the file is not open */
  job(file: OpenFile): Job {
    return this.workspace.job(file.name)!;
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
  readonly uriOf = (name: string): string => this.byName.get(name)?.uri ?? uriOf(name);

  readonly eolOf = (name: string): string => this.byName.get(name)?.eol ?? '\n';
}
