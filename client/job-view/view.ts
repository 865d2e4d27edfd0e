/** The job view: follows the job in front, and keeps it while a file that is none is looked at. */
import { Disposable, l10n, type TextDocument, type TreeView, window, workspace } from 'vscode';
import { type JobParts, PARTS, type Part } from '../../shared/protocol/parts';
import { LANGUAGE } from '../language';
import type { Server } from '../server';
import { inFront } from '../status-bar';
import { shownName } from '../target';
import { PartsOfJob, type Row } from './parts';

const VIEW = 'perpend.job';

/** A tree that changes with every key cannot be read. */
const PAUSE_MS = 300;

export class JobView extends Disposable {
  private readonly tree: PartsOfJob;
  private readonly view: TreeView<Row>;
  private readonly listening: Disposable;
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private shown: TextDocument | undefined;

  constructor(private readonly server: Server) {
    super(() => this.end());
    this.tree = new PartsOfJob(server);
    this.view = window.createTreeView(VIEW, {
      treeDataProvider: this.tree,
      showCollapseAll: true,
    });
    this.listening = Disposable.from(
      this.view,
      this.tree,
      this.view.onDidChangeVisibility(() => this.soon(0)),
      window.onDidChangeActiveTextEditor(() => this.soon(0)),
      workspace.onDidChangeTextDocument(({ document }) => {
        if (document.languageId === LANGUAGE) this.soon(PAUSE_MS);
      }),
      workspace.onDidCloseTextDocument((document) => this.closed(document)),
      server.onChanged(() => this.soon(0)),
    );
  }

  private end(): void {
    clearTimeout(this.waiting);
    this.listening.dispose();
  }

  private closed(document: TextDocument): void {
    if (document !== this.shown) return;
    this.shown = undefined;
    this.soon(0);
  }

  private soon(pause: number): void {
    clearTimeout(this.waiting);
    if (this.view.visible) this.waiting = setTimeout(() => void this.refresh(), pause);
  }

  /** An answer is shown only if its file is still in front; without one, what is there stays. */
  private async refresh(): Promise<void> {
    this.view.message = this.server.gone
      ? l10n.t('The language server has stopped: what stands here may be old.')
      : undefined;
    const front = inFront();
    const job = front && (await this.jobOf(front));
    if (front !== inFront() || (front && job === undefined)) return;
    if (front && job) this.fill(front, job);
    else if (this.shown && this.shown !== front) await this.refill(this.shown);
    else this.empty();
  }

  /** The job that was in front before; its lines may be on screen no more, and still be changed. */
  private async refill(document: TextDocument): Promise<void> {
    const job = await this.jobOf(document);
    if (job) this.fill(document, job);
    else if (job === null) this.empty();
  }

  private jobOf(document: TextDocument): Promise<JobParts | null | undefined> {
    return this.server.ask<JobParts | null>(PARTS, { uri: this.server.uri(document.uri) });
  }

  private fill(document: TextDocument, job: JobParts): void {
    this.shown = document;
    const price = job.complete ? job.price : l10n.t('{0}, not complete', job.price);
    this.view.description = `${job.title || shownName(document.uri)} · ${price}`;
    this.tree.show(this.server.uri(document.uri), job);
  }

  private empty(): void {
    this.shown = undefined;
    this.view.description = undefined;
    this.tree.show('', undefined);
  }

  /** What is shown now. */
  get parts(): readonly Part[] {
    return this.tree.getChildren().map(({ part }) => part);
  }
}
