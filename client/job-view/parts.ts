/** The parts of the job in front, as a tree asks for them. */
import { Disposable, EventEmitter, type TreeDataProvider, type TreeItem } from 'vscode';
import { type JobParts, PART_TOLD, type Part, type PartTold } from '../../shared/protocol/parts';
import type { Server } from '../server';
import { itemOf, tooltipOf } from './item';

/** A row keeps the address of the job it is of: another may be in front when its menu is used. */
export interface Row {
  readonly part: Part;
  readonly uri: string;
  readonly parent?: Row;
}

export class PartsOfJob extends Disposable implements TreeDataProvider<Row> {
  private readonly changed = new EventEmitter<undefined>();
  readonly onDidChangeTreeData = this.changed.event;
  private rows: readonly Row[] = [];
  private last = '';

  constructor(private readonly server: Server) {
    super(() => this.changed.dispose());
  }

  /** Nothing is drawn again where nothing has changed. */
  show(uri: string, job: JobParts | undefined): void {
    const now = JSON.stringify([uri, job]);
    if (now === this.last) return;
    this.last = now;
    this.rows = job ? job.parts.map((part) => ({ part, uri })) : [];
    this.changed.fire(undefined);
  }

  getChildren(row?: Row): readonly Row[] & Row[] {
    if (!row) return [...this.rows];
    return row.part.children.map((part) => ({ part, uri: row.uri, parent: row }));
  }

  getParent(row: Row): Row | undefined {
    return row.parent;
  }

  getTreeItem({ part }: Row): TreeItem {
    const item = itemOf(part);
    // What has a working is told only when the pointer rests there.
    if (!part.figure) item.tooltip = tooltipOf(part, undefined);
    return item;
  }

  async resolveTreeItem(item: TreeItem, { part, uri }: Row): Promise<TreeItem> {
    const params = { uri, figure: part.figure };
    const told = part.figure
      ? await this.server.ask<PartTold | null>(PART_TOLD, params)
      : undefined;
    item.tooltip = tooltipOf(part, told?.markdown);
    return item;
  }
}
