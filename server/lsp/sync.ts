/** What the editor tells of its files: opened, edited, closed, changed on disk. */
import {
  CodeLensRefreshRequest,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
} from 'vscode-languageserver';
import { CHANGED } from '../../shared/protocol';
import type { Diagnostics } from './diagnostics';
import * as from from './from-proto';
import { concerned, WATCHED } from './outside';
import type { Parts } from './parts';
import type { OpenFile } from './session';

/** After the last change of a used file, before the editor is told to ask again: hints must not flicker. */
const PAUSE_MS = 300;

export interface Listeners {
  readonly diagnostics: Diagnostics;
  readonly settingsChanged: () => void;
  readonly forget: (uri: string) => void;
}

export interface Sync {
  /** Folders have come or gone: other files may be read now, and other settings may hold. */
  readonly foldersChanged: () => void;
}

export function registerSync(parts: Parts, listeners: Listeners): Sync {
  const { answers, connection, session } = parts;
  const refresh = new Refresh(parts, listeners.diagnostics);
  connection.onDidOpenTextDocument(({ textDocument: { uri, version, text } }) => {
    session().past.ready = () => refresh.otherFiles();
    session().late = () => refresh.otherFiles();
    listeners.diagnostics.changed(session().opened(uri, version, text));
    refresh.otherFiles();
  });
  connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
    const file = session().file(uri);
    if (!file) return;
    for (const event of contentChanges)
      session().edited(file, version, [
        from.change(answers.columns.in(event, uri), session().source(file)),
      ]);
    listeners.diagnostics.changed(file);
    if (session().isUsed(file)) refresh.otherFiles();
  });
  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    const file = session().file(uri);
    if (!file) return;
    session().closed(file);
    listeners.diagnostics.closed(file);
    listeners.forget(uri);
    refresh.otherFiles();
  });
  connection.onDidChangeWatchedFiles(({ changes }) => {
    const uris = concerned(changes, session().known);
    if (uris.length && session().changedOutside(uris)) refresh.otherFiles();
  });
  connection.onDidChangeConfiguration(() => {
    listeners.settingsChanged();
    listeners.diagnostics.settingsChanged();
    refresh.hints();
  });
  return {
    foldersChanged: () => {
      listeners.settingsChanged();
      listeners.diagnostics.forgetSettings();
      refresh.otherFiles();
    },
  };
}

/** Tells the editor to ask again, once, when things have been quiet for a moment. */
class Refresh {
  private waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly parts: Parts,
    private readonly diagnostics: Diagnostics,
  ) {}

  otherFiles(): void {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => this.now(), PAUSE_MS);
  }

  private now(): void {
    const { connection, client, session } = this.parts;
    const files: readonly OpenFile[] = session().files;
    if (!files.length) return;
    if (client().refreshesDiagnostics) connection.languages.diagnostics.refresh();
    for (const file of files) this.diagnostics.changed(file);
    this.hints();
    void connection.sendNotification(CHANGED);
  }

  hints(): void {
    const { connection, client } = this.parts;
    if (client().refreshesHints) void connection.languages.inlayHint.refresh();
    if (client().refreshesLenses) void connection.sendRequest(CodeLensRefreshRequest.type);
  }
}

/** Asks to be told of changes on disk and of settings, where the client lets us ask. */
export function watch({ connection, client }: Parts): void {
  if (client().watchesFiles)
    void connection.client.register(DidChangeWatchedFilesNotification.type, {
      watchers: WATCHED,
    });
  if (client().hasConfiguration)
    void connection.client.register(DidChangeConfigurationNotification.type, {
      section: 'perpend',
    });
}
