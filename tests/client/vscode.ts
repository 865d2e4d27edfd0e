/**
 * As much of an editor as our own code asks for, for tests without one. What a reader would do is put into `reader`; what
 * was shown and done stands in `seen`. Used by `vi.mock('vscode', () => import('./vscode'))`.
 */
import { vi } from 'vitest';

type Fn = (...given: never[]) => unknown;

/** What the reader answers, first to last: a title of a button, a row of a list, a text. Nothing is turning away. */
export const reader = {
  answers: [] as unknown[],
  saves: undefined as unknown,
  folder: undefined as unknown,
};

export const seen = {
  messages: [] as string[],
  picks: [] as { items: readonly unknown[]; title?: string }[],
  ran: [] as { command: string; given: unknown[] }[],
  opened: [] as string[],
  files: new Map<string, Uint8Array>(),
  commands: new Map<string, Fn>(),
  tools: new Map<string, { invoke: Fn; prepareInvocation: Fn }>(),
  edits: [] as WorkspaceEdit[],
};

/** Before each test: files of tests may share one reading of this one. */
export function forget(): void {
  for (const each of [window, workspace, commands, env, extensions])
    for (const fn of Object.values(each)) if (vi.isMockFunction(fn)) fn.mockReset();
  reader.answers = [];
  reader.saves = undefined;
  reader.folder = undefined;
  for (const list of [seen.messages, seen.picks, seen.ran, seen.opened, seen.edits])
    list.length = 0;
  for (const map of [seen.files, seen.commands, seen.tools]) map.clear();
  workspace.textDocuments = [];
  workspace.workspaceFolders = [{ uri: Uri.parse('file:///jobs'), name: 'jobs', index: 0 }];
  window.activeTextEditor = undefined;
  window.visibleTextEditors = [];
  Object.assign(env, { remoteName: undefined, uiKind: UIKind.Desktop });
}

export class Uri {
  constructor(
    readonly scheme: string,
    readonly authority: string,
    readonly path: string,
    readonly query = '',
    readonly fragment = '',
  ) {}
  static parse(text: string): Uri {
    const found = /^([a-z][a-z\d+.-]*):(?:\/\/([^/]*))?([^?#]*)(?:\?([^#]*))?(?:#(.*))?$/i.exec(
      text,
    );
    if (!found) throw new Error(`${text} is no address`);
    const [, scheme, authority = '', path, query = '', fragment = ''] = found;
    return new Uri(scheme!, authority, decodeURIComponent(path!), query, fragment);
  }
  static file(path: string): Uri {
    return new Uri('file', '', path);
  }
  static from(parts: Partial<Uri>): Uri {
    return new Uri(
      parts.scheme!,
      parts.authority ?? '',
      parts.path ?? '',
      parts.query,
      parts.fragment,
    );
  }
  static joinPath(base: Uri, ...more: string[]): Uri {
    const parts: string[] = [];
    for (const part of [base.path, ...more].join('/').split('/'))
      if (part === '..') parts.pop();
      else if (part && part !== '.') parts.push(part);
    return base.with({ path: `/${parts.join('/')}` });
  }
  with(parts: Partial<Uri>): Uri {
    return Uri.from({ ...this, ...parts } as Uri);
  }
  get fsPath(): string {
    return this.path;
  }
  toString(): string {
    const query = this.query && `?${this.query}`;
    return `${this.scheme}://${this.authority}${encodeURI(this.path)}${query}${this.fragment && `#${this.fragment}`}`;
  }
}

export class Disposable {
  /** Of its own, as an editor’s is: who extends it may have one of that name. */
  readonly #end: () => unknown;
  constructor(end: () => unknown) {
    this.#end = end;
  }
  static from(...all: { dispose(): unknown }[]): Disposable {
    return new Disposable(() => all.forEach((each) => void each.dispose()));
  }
  dispose(): void {
    this.#end();
  }
}

export class EventEmitter<T> {
  private readonly told = new Set<(value: T) => unknown>();
  readonly event = (tell: (value: T) => unknown) => {
    this.told.add(tell);
    return new Disposable(() => this.told.delete(tell));
  };
  fire(value: T): void {
    for (const tell of [...this.told]) tell(value);
  }
  dispose(): void {
    this.told.clear();
  }
}

export class Position {
  constructor(
    readonly line: number,
    readonly character: number,
  ) {}
}

export class Range {
  readonly start: Position;
  readonly end: Position;
  constructor(line: number, from: number, lastLine: number, to: number) {
    this.start = new Position(line, from);
    this.end = new Position(lastLine, to);
  }
}

export class WorkspaceEdit {
  readonly made: { uri: Uri; range: Range; text: string }[] = [];
  replace(uri: Uri, range: Range, text: string): void {
    this.made.push({ uri, range, text });
  }
}

export class MarkdownString {
  value = '';
  appendMarkdown(text: string): this {
    this.value += text;
    return this;
  }
  appendText(text: string): this {
    this.value += text.replace(/[\\`*_{}[\]()#+\-.!|<>~]/g, '\\$&');
    return this;
  }
}

export class TabInputText {
  constructor(readonly uri: Uri) {}
}

export class ThemeColor {
  constructor(readonly id: string) {}
}
export class ThemeIcon {
  constructor(
    readonly id: string,
    readonly color?: ThemeColor,
  ) {}
}
export class TreeItem {
  [more: string]: unknown;
  constructor(
    readonly label: string,
    readonly collapsibleState: number,
  ) {}
}
export class ProcessExecution {
  constructor(
    readonly process: string,
    readonly args: string[],
    readonly options: { cwd?: string; env?: Record<string, string> },
  ) {}
}
export class Task {
  group: unknown;
  presentationOptions: unknown;
  constructor(
    readonly definition: unknown,
    readonly scope: unknown,
    readonly name: string,
    readonly source: string,
    readonly execution: ProcessExecution,
    readonly problemMatchers: string[],
  ) {}
}
export class LanguageModelTextPart {
  constructor(readonly value: string) {}
}
export class LanguageModelToolResult {
  constructor(readonly content: LanguageModelTextPart[]) {}
}

export const TreeItemCollapsibleState = { None: 0, Collapsed: 1, Expanded: 2 };
export const QuickPickItemKind = { Separator: -1, Default: 0 };
export const ProgressLocation = { Window: 10, Notification: 15 };
export const StatusBarAlignment = { Left: 1, Right: 2 };
export const ViewColumn = { Active: -1, Beside: -2 };
export const UIKind = { Desktop: 1, Web: 2 };
export const FileType = { File: 1, Directory: 2 };
export const TaskGroup = { Build: 'build' };
export const TaskRevealKind = { Silent: 2 };
export const TextEditorRevealType = { InCenterIfOutsideViewport: 2 };
export const QuickInputButtons = { Back: { iconPath: 'back' } };
export class RelativePattern {
  constructor(
    readonly base: Uri,
    readonly pattern: string,
  ) {}
}

export const l10n = {
  t: (text: string, ...values: unknown[]) => text.replace(/\{(\d)\}/g, (_, n) => String(values[n])),
};

export const env = {
  language: 'en',
  remoteName: undefined as string | undefined,
  uiKind: UIKind.Desktop,
  openExternal: vi.fn(async (uri: Uri) => {
    seen.opened.push(`outside ${uri}`);
    return true;
  }),
};

const message = async (text: string) => {
  seen.messages.push(text);
  return reader.answers.shift();
};

/** What a test makes happen in the editor. */
export const happens = {
  selection: new EventEmitter<unknown>(),
  front: new EventEmitter<unknown>(),
  edit: new EventEmitter<unknown>(),
  created: new EventEmitter<unknown>(),
  deleted: new EventEmitter<unknown>(),
  tabs: new EventEmitter<unknown>(),
};

const nothing = new Disposable(() => undefined);
const quiet = () => nothing;

export const window = {
  activeTextEditor: undefined as unknown,
  visibleTextEditors: [] as unknown[],
  showInformationMessage: vi.fn(message),
  showWarningMessage: vi.fn(message),
  showErrorMessage: vi.fn(message),
  showQuickPick: vi.fn(async (items: readonly { label: string }[], options: { title?: string }) => {
    seen.picks.push({ items, title: options.title });
    const wanted = reader.answers.shift();
    return items.find(({ label }) => label === wanted);
  }),
  showSaveDialog: vi.fn(async (_: unknown) => reader.saves),
  showOpenDialog: vi.fn(async (_: unknown) => reader.folder && [reader.folder]),
  showTextDocument: vi.fn(async () => ({ revealRange: () => undefined })),
  withProgress: (_: unknown, work: Fn) =>
    work({ report: () => undefined } as never, { isCancellationRequested: false } as never),
  tabGroups: { all: [] as { tabs: { input: unknown }[] }[], onDidChangeTabs: happens.tabs.event },
  onDidChangeActiveTextEditor: happens.front.event,
  onDidChangeTextEditorSelection: happens.selection.event,
};

export const workspace = {
  textDocuments: [] as { uri: Uri; languageId?: string; version?: number }[],
  workspaceFolders: [] as { uri: Uri; name: string; index: number }[] | undefined,
  asRelativePath: (uri: Uri) => uri.path.replace(/^\/jobs\//, ''),
  getWorkspaceFolder: (uri: Uri) =>
    workspace.workspaceFolders?.find((f) => uri.path.startsWith(`${f.uri.path}/`)),
  openTextDocument: vi.fn(async (uri: Uri) => {
    const known = workspace.textDocuments.find((each) => each.uri.toString() === uri.toString());
    if (known) return known;
    const languageId = uri.path.endsWith('.perp') ? 'perpend' : 'plaintext';
    return { uri, languageId, version: 1, lineCount: 1, isUntitled: uri.scheme === 'untitled' };
  }),
  applyEdit: vi.fn(async (edit: WorkspaceEdit) => Boolean(seen.edits.push(edit))),
  findFiles: vi.fn(async () => [...seen.files.keys()].map((each) => Uri.parse(each))),
  fs: {
    writeFile: async (uri: Uri, bytes: Uint8Array) => void seen.files.set(uri.toString(), bytes),
    stat: async (uri: Uri) => {
      if (!seen.files.has(uri.toString())) throw new Error('not there');
      return { type: FileType.File, size: 1 };
    },
    readDirectory: async () => [],
  },
  registerTextDocumentContentProvider: quiet,
  onDidChangeTextDocument: happens.edit.event,
  onDidRenameFiles: quiet,
  onDidDeleteFiles: quiet,
  onDidCloseTextDocument: quiet,
  createFileSystemWatcher: () => ({
    onDidCreate: happens.created.event,
    onDidDelete: happens.deleted.event,
    dispose() {},
  }),
};

export const commands = {
  registerCommand: (name: string, run: Fn) => {
    seen.commands.set(name, run);
    return nothing;
  },
  executeCommand: vi.fn(async (command: string, ...given: unknown[]) => {
    seen.ran.push({ command, given });
  }),
  getCommands: async () => ['revealFileInOS', 'revealInExplorer'],
};

export const lm = {
  registerTool: (name: string, tool: { invoke: Fn; prepareInvocation: Fn }) => {
    seen.tools.set(name, tool);
    return nothing;
  },
};

export const extensions = { getExtension: vi.fn((_: string): unknown => undefined) };
export const tasks = { registerTaskProvider: quiet };
