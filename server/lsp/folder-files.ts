/**
 * All files in the notation of the open folders, and those that are open in the editor. Nothing is looked at before
 * somebody asks; then the folders are walked, in stretches; then a file is read again only when the editor says that it
 * has changed.
 *
 *     const stretch = new Stretch(token, () => session.edition);
 *     for (const file of await session.folder.list(stretch)) {
 *       const source = session.folder.source(file); // an open text counts, not the disk
 *       if (stretch.due) await stretch.rest(); // throws Stopped when it was cancelled
 *     }
 *
 * Files are called by the engine’s names; `session.uriOf(name)` is the address. Where there is no disk, `JobFiles` of the
 * surroundings asks the client.
 */
import { stepsUnder } from '../engine/firm/disk-index';
import { type Glance, glanceAt } from '../engine/ide/glance';
import { SourceFile } from '../engine/workspace/source';
import { OURS } from './outside';
import type { Stretch } from './stretch';
import type { JobFiles, Names } from './surroundings';

/** The texts of the editor. */
export interface OpenTexts {
  readonly names: readonly string[];
  /** Nothing for a file that is not open. */
  source(name: string): SourceFile | undefined;
}

/** After so long the folders are walked again: of a folder that is gone the editor tells, but not of the files in it. */
const FRESH_MS = 2000;

/** Most files kept read; those asked for longest ago go first. */
const MOST_KEPT = 256;

export class FolderFiles {
  /** Whether the editor tells of what changes outside; else everything is looked at again for every question. */
  watched = true;
  private folders: readonly string[] = [];
  private found: Set<string> | undefined;
  private walkedAt = 0;
  /** Folders that have come: a walk that was under way may have missed what is in them. */
  private came = 0;
  /** Going on now, each with what has changed meanwhile. */
  private readonly walks = new Set<Set<string>>();
  private readonly kept = new Map<string, SourceFile>();
  private readonly glances = new Map<string, Glance>();
  private readonly ofOpen = new WeakMap<SourceFile, { version: number; glance: Glance }>();

  constructor(
    private readonly host: JobFiles,
    private readonly names: Names,
    private readonly open: OpenTexts,
  ) {}

  openFolders(folders: readonly string[]): void {
    this.folders = folders;
    this.forget();
  }

  private forget(): void {
    this.found = undefined;
    this.kept.clear();
    this.glances.clear();
  }

  /** Each once: two folders may stand in one another. */
  async list(stretch: Stretch): Promise<readonly string[]> {
    if (!this.watched) this.forget();
    const old = performance.now() - this.walkedAt > FRESH_MS;
    const found = this.found && !old ? this.found : await this.walked(stretch);
    return [...new Set([...found, ...this.open.names])];
  }

  private async walked(stretch: Stretch): Promise<Set<string>> {
    const { folders, came } = this;
    const late = new Set<string>();
    this.walks.add(late);
    try {
      await this.host.bring(folders);
      const found = new Set<string>();
      for (const folder of folders) await stretch.through(gathered(folder, this.host, found));
      for (const file of late) this.lookAgain(file, found);
      if (folders !== this.folders) return await this.walked(stretch);
      this.take(found);
      if (came !== this.came) this.walkedAt = Number.NEGATIVE_INFINITY;
      return found;
    } finally {
      this.walks.delete(late);
    }
  }

  /** What is there no more is forgotten: it may come again as another. */
  private take(found: Set<string>): void {
    for (const file of this.found ?? []) if (!found.has(file)) this.drop(file);
    this.found = found;
    this.walkedAt = performance.now();
  }

  private drop(file: string): void {
    this.kept.delete(file);
    this.glances.delete(file);
  }

  /** As the last walk found them. */
  get listed(): Iterable<string> {
    return this.found ?? [];
  }

  /** Inside an open folder, where the walk comes to. */
  isInside(file: string): boolean {
    return this.folders.some((folder) =>
      this.names
        .wayTo(folder, file)
        ?.every((part) => !part.startsWith('.') && part !== 'node_modules'),
    );
  }

  /** The editor says that these are other ones now, or gone. */
  changed(files: readonly string[]): void {
    for (const file of files) this.drop(file);
    // A folder has come: nobody tells of what is in it.
    if (!files.every((file) => OURS.test(file))) this.walkedAgain();
    const own = files.filter((file) => /\.perp$/i.test(file) && this.isInside(file));
    const brought = own.length ? this.host.again(own) : undefined;
    const look = () => {
      for (const file of own) if (this.found) this.lookAgain(file, this.found);
      for (const late of this.walks) for (const file of own) late.add(file);
    };
    if (brought) void brought.then(look);
    else look();
  }

  private walkedAgain(): void {
    this.came += 1;
    this.walkedAt = Number.NEGATIVE_INFINITY;
  }

  private lookAgain(file: string, found: Set<string>): void {
    if (this.host.stamp(file)) found.add(file);
    else found.delete(file);
  }

  /** As it is now. Nothing where it cannot be read, or lies outside and is not open. */
  text(file: string): string | undefined {
    const open = this.open.source(file);
    return open ? open.text : this.onDisk(file);
  }

  private onDisk(file: string): string | undefined {
    return this.isInside(file) && this.host.stamp(file) ? this.host.read(file) : undefined;
  }

  /** As lines and blocks: of an open file the one that the editor writes in. */
  source(file: string): SourceFile | undefined {
    const known = this.open.source(file) ?? this.kept.get(file);
    if (known) return known;
    const text = this.onDisk(file);
    if (text === undefined) return undefined;
    const source = new SourceFile(file, text);
    this.kept.set(file, source);
    if (this.kept.size > MOST_KEPT) this.kept.delete(this.kept.keys().next().value!);
    return source;
  }

  /** The same, but of a file that is not open only those blocks are read that are asked for. */
  skimmed(file: string): SourceFile | undefined {
    const open = this.open.source(file);
    if (open) return open;
    const text = this.onDisk(file);
    return text === undefined ? undefined : new SourceFile(file, text, false, true);
  }

  /** What it names, without reading it. */
  glance(file: string): Glance | undefined {
    const open = this.open.source(file);
    return open ? this.glanceAtOpen(open) : this.glanceOnDisk(file);
  }

  private glanceAtOpen(source: SourceFile): Glance {
    const known = this.ofOpen.get(source);
    if (known?.version === source.version) return known.glance;
    const glance = glanceAt(source.text);
    this.ofOpen.set(source, { version: source.version, glance });
    return glance;
  }

  private glanceOnDisk(file: string): Glance | undefined {
    const known = this.glances.get(file);
    if (known) return known;
    const text = this.onDisk(file);
    if (text === undefined) return undefined;
    const glance = glanceAt(text);
    this.glances.set(file, glance);
    return glance;
  }
}

function* gathered(folder: string, host: JobFiles, found: Set<string>): Generator<void, void> {
  for (const file of stepsUnder(folder, host)) {
    if (file !== undefined) found.add(file);
    yield;
  }
}
