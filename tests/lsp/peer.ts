/** A client at the other end of the bundled server’s standard input and output. */
import { type ChildProcess, spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  type ClientCapabilities,
  createMessageConnection,
  type Diagnostic,
  type DocumentDiagnosticReport,
  type InitializeResult,
  type InlayHint,
  type MessageConnection,
  type Position,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { makeBundle, shipped } from '../../.scripts/bundles.mjs';
import { root } from '../tree';

const FOLDER = '.cache/lsp-test';

/** Bundles the server as the build does, apart from `dist`. @returns its path */
export async function bundled(): Promise<string> {
  const bundle = shipped.find(({ entry }) => entry === 'server/lsp/node/main.ts')!;
  const out = `${FOLDER}/server.cjs`;
  // Other workers make the same file, and start it: nobody may find half of one.
  const own = `${out}.${process.pid}.cjs`;
  await makeBundle({ ...bundle, out: own });
  renameSync(path.join(root, own), path.join(root, out));
  copyLibrary(path.join(root, 'server/library'), path.join(root, FOLDER, 'library'));
  return path.join(root, out);
}

function copyLibrary(from: string, to: string): void {
  for (const name of readdirSync(from, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.perp')) continue;
    const [text, file] = [readFileSync(path.join(from, name), 'utf8'), path.join(to, name)];
    if (existsSync(file) && readFileSync(file, 'utf8') === text) continue;
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(`${file}.${process.pid}`, text);
    renameSync(`${file}.${process.pid}`, file);
  }
}

/** What VS Code says it can do, as far as this server asks. */
export const EDITOR: ClientCapabilities = {
  textDocument: {
    diagnostic: { relatedDocumentSupport: false },
    inlayHint: {},
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    definition: { linkSupport: true },
    completion: { completionItem: { snippetSupport: true } },
  },
  workspace: {
    workspaceFolders: true,
    diagnostics: { refreshSupport: true },
    inlayHint: { refreshSupport: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
  },
};

export interface Started {
  readonly folders?: readonly string[];
  readonly capabilities?: ClientCapabilities;
  /** What this client says of itself. */
  readonly options?: object;
}

/** What a server says, and where it listens. */
export interface Ends {
  readonly said: NodeJS.ReadableStream;
  readonly heard: NodeJS.WritableStream;
}

export class Peer {
  /** Not there for a server in this process. */
  readonly process!: ChildProcess;
  readonly connection: MessageConnection;
  readonly folder: string;
  /** Requests and notifications that the server sent of itself, by their method. */
  readonly heard: { method: string; params: unknown }[] = [];
  stderr = '';
  private version = 1;
  private made: string[] = [];

  /** @param server the path of one to start, or the ends of one that runs already */
  constructor(server: string | Ends) {
    this.folder = this.newFolder();
    if (typeof server === 'string')
      this.process = spawn(process.execPath, [server, '--stdio'], { stdio: 'pipe' });
    this.process?.stderr?.on('data', (data) => {
      this.stderr += data;
    });
    const { said, heard } =
      typeof server === 'string'
        ? { said: this.process.stdout!, heard: this.process.stdin! }
        : server;
    this.connection = createMessageConnection(
      new StreamMessageReader(said),
      new StreamMessageWriter(heard),
    );
    this.connection.onRequest((method, params) => {
      this.heard.push({ method, params });
      return null;
    });
    this.connection.onNotification((method, params) => {
      this.heard.push({ method, params });
    });
    this.connection.listen();
  }

  newFolder(): string {
    const folder = mkdtempSync(path.join(tmpdir(), 'perpend-lsp-'));
    this.made.push(folder);
    return folder;
  }

  async start({ folders = [this.folder], capabilities = EDITOR, options }: Started = {}) {
    const result = await this.ask<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: folders.map((f) => ({ uri: uriOf(f), name: path.basename(f) })),
      capabilities,
      initializationOptions: options,
    });
    await this.tell('initialized', {});
    return result;
  }

  ask<R>(method: string, params: unknown): Promise<R> {
    return this.connection.sendRequest(method, params) as Promise<R>;
  }

  tell(method: string, params: unknown): Promise<void> {
    return this.connection.sendNotification(method, params);
  }

  uri(name: string): string {
    return uriOf(path.join(this.folder, name));
  }

  async open(name: string, text: string): Promise<string> {
    const uri = name.includes(':') ? name : this.uri(name);
    await this.tell('textDocument/didOpen', {
      textDocument: { uri, languageId: 'perpend', version: this.version, text },
    });
    return uri;
  }

  /** Replaces a piece of one line, or the whole text. */
  edit(uri: string, text: string, start?: Position, end = start): Promise<void> {
    this.version += 1;
    const range = start && { start, end };
    return this.tell('textDocument/didChange', {
      textDocument: { uri, version: this.version },
      contentChanges: [range ? { range, text } : { text }],
    });
  }

  about<R>(method: string, uri: string, more: object = {}): Promise<R> {
    return this.ask<R>(`textDocument/${method}`, { textDocument: { uri }, ...more });
  }

  async findings(uri: string): Promise<Diagnostic[]> {
    const report = await this.about<DocumentDiagnosticReport>('diagnostic', uri);
    return report.kind === 'full' ? report.items : [];
  }

  hints(uri: string, first = 0, last = 1000): Promise<InlayHint[]> {
    const range = { start: { line: first, character: 0 }, end: { line: last, character: 0 } };
    return this.about<InlayHint[]>('inlayHint', uri, { range });
  }

  /** Waits until the server has sent this. */
  async hear(method: string, limitMs = 60_000): Promise<unknown> {
    const limit = Date.now() + limitMs;
    for (;;) {
      const found = this.heard.find((each) => each.method === method);
      if (found) return found.params;
      if (Date.now() > limit) throw new Error(`The server never sent ${method}.`);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  }

  async ended(): Promise<number | null> {
    if (this.process.exitCode !== null) return this.process.exitCode;
    return new Promise((resolve) => this.process.once('exit', resolve));
  }

  stop(): void {
    this.connection.dispose();
    this.process?.kill();
    for (const folder of this.made) rmSync(folder, { recursive: true, force: true });
  }
}

/** Of what has an address already, that. */
export function uriOf(file: string): string {
  return /^[a-z-]{2,}:/.test(file) ? file : pathToFileURL(file).href;
}
