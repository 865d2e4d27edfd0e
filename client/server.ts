/** The language server as the extension sees it: started, asked, started again. */
import {
  type CancellationToken,
  type Disposable,
  EventEmitter,
  type ExtensionContext,
  type LogOutputChannel,
  Uri,
  window,
} from 'vscode';
import {
  type BaseLanguageClient,
  type LanguageClientOptions,
  ProgressType,
} from 'vscode-languageclient';
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
import type { StartOptions } from '../shared/protocol/files';
import { HELP_SCHEME } from '../shared/protocol/help';
import { answerFiles } from './files';
import { scratchOf } from './first/examples';
import { LANGUAGE } from './language';
import { serverWords } from './words';

/** What a hover may lead to: a page to read. A job's own words never become a link. */
const TRUSTED = ['perpend.working'];
/** What the server may name. */
const COMMANDS = [...TRUSTED, 'perpend.preview', 'editor.action.triggerSuggest'];

/** Makes what talks to the language server: a process of Node, or a worker of a browser. */
export type MakeClient = (options: LanguageClientOptions) => BaseLanguageClient;

/** Progress as LSP 3.17 tells it: begun, reported, ended. */
export interface WorkDone {
  readonly kind: 'begin' | 'report' | 'end';
  readonly message?: string;
  readonly percentage?: number;
}

export class Server {
  /** One channel for the server’s words and, when asked for, its messages. */
  readonly log: LogOutputChannel = window.createOutputChannel('Perpend', { log: true });
  private readonly changedEmitter = new EventEmitter<void>();
  /** Totals may have changed though the open file has not. */
  readonly onChanged = this.changedEmitter.event;
  private readonly client: BaseLanguageClient;
  private readonly extensionUri: Uri;
  private options: StartOptions;

  constructor(context: ExtensionContext, make: MakeClient) {
    const { extensionUri } = context;
    const home = Uri.joinPath(extensionUri, 'dist').toString();
    const scratch = scratchOf(context).toString();
    this.options = { readsFiles: true, home, scratch, commands: COMMANDS, help: HELP_SCHEME };
    const options: LanguageClientOptions = {
      initializationOptions: () => this.options,
      documentSelector: [{ language: LANGUAGE }],
      outputChannel: this.log,
      traceOutputChannel: this.log,
      markdown: { isTrusted: { enabledCommands: TRUSTED }, supportHtml: false },
    };
    this.client = make(options);
    this.extensionUri = extensionUri;
    answerFiles(this.client, extensionUri);
    this.client.onNotification(CHANGED, () => this.changedEmitter.fire());
  }

  async start(): Promise<void> {
    this.options = { ...this.options, words: await serverWords(this.extensionUri) };
    await this.client.start();
    this.changedEmitter.fire();
  }

  async restart(): Promise<void> {
    if (this.client.needsStop()) await this.client.stop();
    await this.client.start();
    this.changedEmitter.fire();
  }

  async stop(): Promise<void> {
    this.changedEmitter.dispose();
    await this.client.stop();
  }

  /** Null for a file that is no job; nothing when there was no answer. */
  totals(file: Uri): Promise<Totals | null | undefined> {
    return this.ask<Totals | null>(TOTALS, this.params(file));
  }

  async figures(file: Uri): Promise<FigureItem[]> {
    return (await this.ask<FigureItem[]>(FIGURES, this.params(file))) ?? [];
  }

  working(file: Uri, id: string): Promise<Working | null | undefined> {
    const params: WorkingParams = { ...this.params(file), id };
    return this.ask<Working | null>(WORKING, params);
  }

  /** An answer, or the reason why there is none as an error. */
  request<R>(method: string, params: unknown, token?: CancellationToken): Promise<R> {
    // Nothing in the token's place would be taken for a second parameter.
    return token
      ? this.client.sendRequest<R>(method, params, token)
      : this.client.sendRequest<R>(method, params);
  }

  /** What the server tells of long work under a token that the request gave it. */
  onProgress(token: string, tell: (value: WorkDone) => void): Disposable {
    return this.client.onProgress(new ProgressType<WorkDone>(), token, tell);
  }

  private params(file: Uri): FileParams {
    return { uri: this.uri(file) };
  }

  /** As the server knows it. */
  uri(file: Uri): string {
    return this.client.code2ProtocolConverter.asUri(file);
  }

  /** Nothing when the server is not there, or the file was edited before it could answer. */
  async ask<R>(method: string, params: object): Promise<R | undefined> {
    if (!this.client.isRunning()) return undefined;
    try {
      return await this.client.sendRequest<R>(method, params);
    } catch (error) {
      this.log.debug(`${method}: ${String(error)}`);
      return undefined;
    }
  }
}
