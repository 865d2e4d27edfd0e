/** The language server as the extension sees it: started, asked, started again. */
import {
  type CancellationToken,
  commands,
  type Disposable,
  EventEmitter,
  type ExtensionContext,
  type LogOutputChannel,
  l10n,
  Uri,
  window,
} from 'vscode';
import {
  type BaseLanguageClient,
  type LanguageClientOptions,
  ProgressType,
  State,
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
import { Ends } from './ends';
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
  private readonly extensionUri: Uri;
  private client: BaseLanguageClient;
  private options: StartOptions;
  private begun: Promise<void> | undefined;
  private ends: Ends | undefined;
  /** It has ended, and is not begun again until somebody says so: what was told is of no worth any more. */
  gone = false;

  constructor(
    context: ExtensionContext,
    private readonly make: MakeClient,
  ) {
    const { extensionUri } = context;
    const home = Uri.joinPath(extensionUri, 'dist').toString();
    const scratch = scratchOf(context).toString();
    this.options = { readsFiles: true, home, scratch, commands: COMMANDS, help: HELP_SCHEME };
    this.extensionUri = extensionUri;
    this.client = this.connect();
  }

  private connect(): BaseLanguageClient {
    this.ends = new Ends(() => this.lost());
    const client = this.make({
      initializationOptions: () => this.options,
      documentSelector: [{ language: LANGUAGE }],
      outputChannel: this.log,
      traceOutputChannel: this.log,
      markdown: { isTrusted: { enabledCommands: TRUSTED }, supportHtml: false },
      errorHandler: this.ends,
    });
    answerFiles(client, this.extensionUri);
    client.onNotification(CHANGED, () => this.changedEmitter.fire());
    client.onDidChangeState(({ newState }) => {
      if (newState === State.Running) this.changedEmitter.fire();
    });
    return client;
  }

  /** Begun once, by whoever asks for something first. */
  start(): Promise<void> {
    this.begun ??= this.begin();
    return this.begun;
  }

  private async begin(): Promise<void> {
    try {
      this.options = { ...this.options, words: await serverWords(this.extensionUri) };
      await this.client.start();
    } catch (error) {
      this.log.error(String(error));
      this.lost();
    }
  }

  /** A client that has failed once starts no more: it gives way to another. */
  async restart(): Promise<void> {
    const { client, ends } = this;
    // One that is let go while it begins complains of it.
    await this.begun;
    if (ends) ends.meant = true;
    this.gone = false;
    await client.dispose().catch((error) => this.log.debug(String(error)));
    this.client = this.connect();
    this.begun = undefined;
    await this.start();
  }

  private lost(): void {
    if (this.gone) return;
    this.gone = true;
    this.changedEmitter.fire();
    void this.sayLost();
  }

  private async sayLost(): Promise<void> {
    const [again, show] = [l10n.t('Restart'), l10n.t('Show the Log')];
    const said = l10n.t(
      'The language server has stopped. Without it there are no totals, findings and drawings.',
    );
    const chosen = await window.showErrorMessage(said, again, show);
    if (chosen === again) await commands.executeCommand('perpend.restart');
    if (chosen === show) this.log.show();
  }

  /** An editor that is closed waits for it; a server that is there no more is no reason to complain then. */
  async stop(): Promise<void> {
    this.changedEmitter.dispose();
    if (this.client.needsStop()) await this.client.stop();
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
  async request<R>(method: string, params: unknown, token?: CancellationToken): Promise<R> {
    await this.start();
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
