/** The language server as the extension sees it: started, asked, started again. */
import {
  EventEmitter,
  type ExtensionContext,
  type LogOutputChannel,
  type Uri,
  window,
} from 'vscode';
import {
  LanguageClient,
  type LanguageClientOptions,
  type ServerOptions,
  TransportKind,
} from 'vscode-languageclient/node';
import {
  CHANGED,
  FIGURES,
  type FigureItem,
  type FileParams,
  TOTALS,
  type Totals,
  WORKING,
  type Working,
  type WorkingParams,
} from '../shared/protocol';

export const LANGUAGE = 'perpend';

export class Server {
  /** One channel for the server’s words and, when asked for, its messages. */
  readonly log: LogOutputChannel = window.createOutputChannel('Perpend', { log: true });
  private readonly changedEmitter = new EventEmitter<void>();
  /** Totals may have changed though the open file has not. */
  readonly onChanged = this.changedEmitter.event;
  private readonly client: LanguageClient;

  constructor(context: ExtensionContext) {
    const module = context.asAbsolutePath('dist/server.cjs');
    const server: ServerOptions = { module, transport: TransportKind.ipc };
    const options: LanguageClientOptions = {
      documentSelector: [{ language: LANGUAGE }],
      outputChannel: this.log,
      traceOutputChannel: this.log,
      markdown: { isTrusted: false, supportHtml: false },
    };
    this.client = new LanguageClient(LANGUAGE, 'Perpend', server, options);
    this.client.onNotification(CHANGED, () => this.changedEmitter.fire());
  }

  async start(): Promise<void> {
    await this.client.start();
    this.changedEmitter.fire();
  }

  async restart(): Promise<void> {
    await this.client.restart();
    this.changedEmitter.fire();
  }

  async stop(): Promise<void> {
    this.changedEmitter.dispose();
    await this.client.stop();
  }

  /** Null for a file that is no job; nothing when there was no answer. */
  totals(file: Uri): Promise<Totals | null | undefined> {
    return this.ask<FileParams, Totals | null>(TOTALS, { uri: this.uri(file) });
  }

  async figures(file: Uri): Promise<FigureItem[]> {
    return (await this.ask<FileParams, FigureItem[]>(FIGURES, { uri: this.uri(file) })) ?? [];
  }

  working(file: Uri, id: string): Promise<Working | null | undefined> {
    return this.ask<WorkingParams, Working | null>(WORKING, { uri: this.uri(file), id });
  }

  private uri(file: Uri): string {
    return this.client.code2ProtocolConverter.asUri(file);
  }

  /** Nothing when the server is not there, or the file was edited before it could answer. */
  private async ask<P, R>(method: string, params: P): Promise<R | undefined> {
    if (!this.client.isRunning()) return undefined;
    try {
      return await this.client.sendRequest<R>(method, params);
    } catch (error) {
      this.log.debug(`${method}: ${String(error)}`);
      return undefined;
    }
  }
}
