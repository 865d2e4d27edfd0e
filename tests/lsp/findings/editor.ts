/** A client that shows findings as well as VS Code does, and the server in the same process. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import type {
  ClientCapabilities,
  Diagnostic,
  WorkspaceDiagnosticReport,
} from 'vscode-languageserver-protocol/node';
import { FIRM } from '../../ide/ask';
import { near } from '../near';
import { EDITOR, Peer, type Started } from '../peer';

export const FULL: ClientCapabilities = {
  textDocument: {
    ...EDITOR.textDocument,
    diagnostic: {
      relatedDocumentSupport: false,
      relatedInformation: true,
      tagSupport: { valueSet: [1, 2] },
      codeDescriptionSupport: true,
      dataSupport: true,
    },
    codeAction: {
      dataSupport: true,
      resolveSupport: { properties: ['edit'] },
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['', 'quickfix'] } },
    },
  },
  workspace: {
    ...EDITOR.workspace,
    workspaceEdit: { documentChanges: true, snippetEditSupport: true },
  },
};

export const WALL =
  'wall n\n  brick red\n  length 2240 mm\n  height 8 courses\n  stands held\n  mix general\n';
export const HEAD = 'perpend 1\nuse "firm.perp"\n';
export const JOB = HEAD + WALL;

export class Editor extends Peer {
  constructor() {
    super(near());
    this.put('firm.perp', FIRM);
  }

  put(name: string, text: string): string {
    writeFileSync(path.join(this.folder, name), text);
    return this.uri(name);
  }

  begin(more: Started = {}) {
    return this.start({ capabilities: FULL, options: { help: 'perpend-help' }, ...more });
  }

  /** Findings of a text that is opened, without cautions. */
  async told(text: string, name = 'job.perp'): Promise<Diagnostic[]> {
    return plain(await this.findings(await this.open(name, text)));
  }

  /** The editor says that files have changed outside. */
  changed(...names: string[]): Promise<void> {
    return this.tell('workspace/didChangeWatchedFiles', {
      changes: names.map((name) => ({ uri: this.uri(name), type: 2 })),
    });
  }

  /** Findings of the files that are not open, by the end of their addresses. */
  async folderReport(previous: readonly { uri: string; value: string }[] = [], token?: string) {
    return this.ask<WorkspaceDiagnosticReport>('workspace/diagnostic', {
      identifier: 'perpend',
      previousResultIds: previous,
      ...(token && { partialResultToken: token }),
    });
  }
}

export function plain(items: readonly Diagnostic[]): Diagnostic[] {
  return items.filter(({ code }) => !String(code).startsWith('caution-'));
}

export const codes = (items: readonly Diagnostic[]) => plain(items).map(({ code }) => code);

/** What was said of each file: its name, and codes of errors or `unchanged`. */
export function saidOf({ items }: WorkspaceDiagnosticReport): Record<string, unknown> {
  return Object.fromEntries(
    items.map((each) => [
      each.uri.split('/').at(-1),
      each.kind === 'full' ? codes(each.items.filter((d) => d.severity === 1)) : 'unchanged',
    ]),
  );
}

export function idsOf({ items }: WorkspaceDiagnosticReport) {
  return items.flatMap(({ uri, resultId }) => (resultId ? [{ uri, value: resultId }] : []));
}
