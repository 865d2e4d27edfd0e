/**
 * What the jobs in the open folders show of a firm's outputs. Nothing is looked at before a firm's file with an output block
 * is asked about; then a few files at a time, so that no key waits for it; then only what the editor says has changed.
 */
import { DiskIndex, filesUnder } from '../engine/firm/disk-index';
import { type MeasuredOutput, measuredOutputs } from '../engine/firm/outputs';
import { enoughIn } from '../engine/firm/rates';
import { Settings } from '../engine/firm/setting';
import type { FileStore } from '../engine/resolve/uses';
import type { JobFiles, Names } from './surroundings';
import { soon } from './turn';

/** Of a stretch of work between two looks whether a key was pressed. */
const STRETCH_MS = 8;
/** After the last change, before means are reckoned again. */
const PAUSE_MS = 500;

export class PastJobs {
  /** There is something new to tell of a file that was asked about. */
  ready: () => void = () => undefined;
  private folders: readonly string[] = [];
  private index: DiskIndex;
  private walk: Generator<string> | undefined;
  private state: 'idle' | 'walking' | 'done' = 'idle';
  private readonly settings: Settings;
  /** By the files that were asked about. */
  private readonly known = new Map<string, readonly MeasuredOutput[]>();
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(
    store: FileStore,
    private readonly host: JobFiles,
    private readonly names: Names,
  ) {
    this.settings = new Settings(store);
    this.index = new DiskIndex(host);
  }

  openFolders(folders: readonly string[]): void {
    this.folders = folders;
    this.index = new DiskIndex(this.host);
    this.known.clear();
    this.walk = undefined;
    this.state = 'idle';
  }

  /** How many files were read. */
  get reads(): number {
    return this.index.reads;
  }

  /** Of the jobs that use this file; nothing yet where they have not been looked through. */
  of(file: string): readonly MeasuredOutput[] {
    const known = this.known.get(file);
    if (known) return known;
    this.known.set(file, []);
    if (this.state === 'idle') this.begin();
    else if (this.state === 'done') this.later();
    return [];
  }

  private begin(): void {
    this.state = 'walking';
    const walk = under(this.folders, this.host);
    this.walk = walk;
    const go = () => soon(() => this.goOn(walk));
    const brought = this.host.bring(this.folders);
    if (brought) void brought.then(go);
    else go();
  }

  private goOn(walk: Generator<string> | undefined): void {
    if (!walk || walk !== this.walk) return;
    const start = performance.now();
    while (performance.now() - start < STRETCH_MS) {
      const next = walk.next();
      if (next.done) {
        this.state = 'done';
        this.reckon();
        return;
      }
      this.index.look(next.value);
    }
    soon(() => this.goOn(walk));
  }

  /** The editor says that these files are other ones now, or gone. */
  changed(files: readonly string[]): void {
    if (this.state === 'idle') return;
    const own = files.filter((file) => this.isJobFile(file));
    const brought = own.length ? this.host.again(own) : undefined;
    if (brought) void brought.then(() => this.lookAgain(own));
    else this.lookAgain(own);
  }

  private lookAgain(files: readonly string[]): void {
    for (const file of files) this.index.changed(file);
    if (files.length && this.state === 'done') this.later();
  }

  private later(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => this.reckon(), PAUSE_MS);
  }

  private reckon(): void {
    let news = false;
    this.settings.forget();
    for (const [file, before] of this.known) {
      const now = this.measured(file);
      news ||= JSON.stringify(now) !== JSON.stringify(before);
      this.known.set(file, now);
    }
    if (news) this.ready();
  }

  /** As the walk would come to it. */
  private isJobFile(file: string): boolean {
    if (!/\.perp$/i.test(file)) return false;
    return this.folders.some((folder) =>
      this.names
        .wayTo(folder, file)
        ?.every((part) => !part.startsWith('.') && part !== 'node_modules'),
    );
  }

  private measured(file: string): readonly MeasuredOutput[] {
    const own = this.index.jobs.filter(
      (job) => job.summary.isJob && this.settings.of(job).files.has(file),
    );
    const [first] = own;
    const enough = first && enoughIn(this.settings.of(first).env);
    return enough ? measuredOutputs(own, this.settings, enough) : [];
  }
}

function* under(folders: readonly string[], host: JobFiles): Generator<string> {
  for (const folder of folders) yield* filesUnder(folder, host);
}
