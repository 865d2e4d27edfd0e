/** A client at the other end of a server’s standard input and output. */
import { type ChildProcess, spawn } from 'node:child_process';
import {
  createProtocolConnection,
  DidChangeTextDocumentNotification,
  DidOpenTextDocumentNotification,
  DocumentDiagnosticRequest,
  ExitNotification,
  InitializedNotification,
  InitializeRequest,
  InlayHintRequest,
  type ProtocolConnection,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

/** Lines an editor shows at once. */
const SCREEN = 60;

export class Peer {
  readonly process: ChildProcess;
  readonly connection: ProtocolConnection;
  private version = 1;

  constructor(
    server: string,
    args: readonly string[],
    private readonly uri: string,
  ) {
    this.process = spawn(process.execPath, [server, ...args], {
      stdio: ['pipe', 'pipe', 'ignore'],
    });
    this.connection = createProtocolConnection(
      new StreamMessageReader(this.process.stdout!),
      new StreamMessageWriter(this.process.stdin!),
    );
    this.connection.listen();
  }

  async open(root: string, text: string): Promise<void> {
    await this.connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      rootUri: root,
      workspaceFolders: [{ uri: root, name: 'bench' }],
      capabilities: { textDocument: { inlayHint: {}, diagnostic: {} } },
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
    const document = { uri: this.uri, languageId: 'perpend', version: 1, text };
    await this.connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: document,
    });
  }

  findings() {
    return this.connection.sendRequest(DocumentDiagnosticRequest.type, {
      textDocument: { uri: this.uri },
    });
  }

  /** One key: a character replaced, and the hints of the screen about it. */
  async key(line: number, column: number, character: string) {
    const at = { line, character: column };
    const range = { start: at, end: { line, character: column + 1 } };
    this.version += 1;
    await this.connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: this.uri, version: this.version },
      contentChanges: [{ range, text: character }],
    });
    const first = Math.max(0, line - SCREEN / 2);
    const screen = {
      start: { line: first, character: 0 },
      end: { line: first + SCREEN, character: 0 },
    };
    return this.connection.sendRequest(InlayHintRequest.type, {
      textDocument: { uri: this.uri },
      range: screen,
    });
  }

  /** As an editor ends it: what it keeps for its next start it may keep now. */
  async end(): Promise<void> {
    const gone = new Promise((resolve) => this.process.once('exit', resolve));
    await this.connection.sendRequest(ShutdownRequest.type);
    await this.connection.sendNotification(ExitNotification.type);
    await gone;
    this.connection.dispose();
  }

  stop(): void {
    this.connection.dispose();
    this.process.kill();
  }
}
