/** Which files have been looked at, by what they were worked out from: a change lets go of those that it may concern. */
import type { CancellationToken } from 'vscode-languageserver';
import { usesFile } from '../engine/life/template/firm';
import { allFiles } from '../engine/resolve/uses';
import type { Job } from '../engine/workspace/job';

/** So many files nobody opens one after another and renames. */
const MOST_OPENED = 200;

/** What is told of a file that hangs on more than the files it was worked out from: on some that are not there yet. */
const OPEN_ENDED: ReadonlySet<string> = new Set(['use-missing', 'use-outside', 'partner-file']);

/** A firm’s file may come to stand beside it, or go. */
function wantsFirm({ file, price }: Job): boolean {
  return price.total.gaps.length > 0 && !usesFile(file);
}

export class Looked {
  changes = 0;
  /** What was answered of each file. */
  private readonly seen = new Map<string, string>();
  /** Files that were worked out from a file, by its name. */
  private readonly users = new Map<string, Set<string>>();
  private readonly openEnded = new Set<string>();
  private readonly told = new Set<string>();
  /** Addresses of files that were open when something was told of them, the last of them. */
  readonly opened = new Set<string>();
  private readonly waiting = new Set<() => void>();

  /** What was answered of a file, if it stands. */
  at(name: string): string | undefined {
    return this.seen.get(name);
  }

  put(name: string, job: Job, resultId: string): void {
    this.seen.set(name, resultId);
    if (!job.isJob || wantsFirm(job) || job.findings.some(({ code }) => OPEN_ENDED.has(code)))
      this.openEnded.add(name);
    for (const { name: used, shipped } of allFiles(job.scope)) {
      if (shipped) continue;
      const users = this.users.get(used) ?? new Set();
      this.users.set(used, users.add(name));
    }
  }

  changed(names?: readonly string[]): void {
    this.changes += 1;
    if (names) for (const name of names) this.letGo(name);
    else this.seen.clear();
    this.told.clear();
    for (const go of [...this.waiting]) go();
  }

  /** Of a file that changed, and of all that may be told otherwise because of it. */
  private letGo(name: string): void {
    this.seen.delete(name);
    for (const user of [...(this.users.get(name) ?? []), ...this.openEnded]) this.seen.delete(user);
    this.users.delete(name);
    this.openEnded.clear();
  }

  /** Something is told of a file that is open. */
  open(uri: string): void {
    this.opened.delete(uri);
    this.opened.add(uri);
    const [oldest] = this.opened;
    if (this.opened.size > MOST_OPENED) this.opened.delete(oldest!);
  }

  /** Whether it has not been said yet that this one is gone, since anything changed. */
  goneOnce(uri: string): boolean {
    if (this.told.has(uri)) return false;
    this.told.add(uri);
    return true;
  }

  /** Waits for a change; not longer than so many ms, nor when nobody wants to know any more. */
  next(token: CancellationToken, ms: number): Promise<void> {
    return new Promise((resolve) => {
      const timer = setTimeout(done, Math.max(0, ms));
      const heard = token.onCancellationRequested(done);
      const { waiting } = this;
      function done(): void {
        clearTimeout(timer);
        heard.dispose();
        waiting.delete(done);
        resolve();
      }
      waiting.add(done);
    });
  }
}
