/** The one way in which a request is answered: on a snapshot, given up when it is stale, and never with a crash. */

import {
  type CancellationToken,
  type Connection,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import { phrase } from '../../shared/phrase';
import type { Columns } from './encoding';
import type { OpenFile, Session } from './session';
import { Stopped, Stretch } from './stretch';
import { turn } from './turn';

/** Whatever asks about a file. */
export interface AboutFile {
  readonly textDocument: { readonly uri: string };
}

export type Answer<R> = R | null | ResponseError<never>;
export type Work<P, R> = (params: P, file: OpenFile) => R | null | undefined;

/** Nothing, or a refusal, is an answer too. */
export type LongWork<P, R> = (
  params: P,
  stretch: Stretch,
) => Promise<R | null | undefined | ResponseError<never>>;

export type LongWorkOf<P, R> = (
  params: P,
  file: OpenFile,
  stretch: Stretch,
) => ReturnType<LongWork<P, R>>;

/** So often what nobody asks again is done again. */
const TRIES = 20;

export class Answers {
  constructor(
    private readonly session: () => Session,
    private readonly log: Connection['console'],
    /** The client’s columns; every question and answer goes through it. */
    readonly columns: Columns,
  ) {}

  /** For what is worked out at once. Null for a file that is not open, or when the work fails. */
  quick<P extends AboutFile, R>(work: Work<P, R>) {
    return (params: P, token: CancellationToken): Answer<R> | Promise<Answer<R>> => {
      if (token.isCancellationRequested) return cancelled();
      const file = this.session().file(params.textDocument.uri);
      if (!file) return null;
      const answer = () =>
        this.columns.out(work(this.columns.in(params, file.uri), file), file.uri);
      return this.complete(() => this.safely(answer), this.stale(file, token));
    };
  }

  /** What to answer instead, once the file has gone on from what it is now. */
  private stale(file: OpenFile, token?: CancellationToken): () => ResponseError<never> | undefined {
    const { version } = file;
    return () => {
      if (token?.isCancellationRequested) return cancelled();
      const same = this.session().file(file.uri) === file && file.version === version;
      return same ? undefined : modified();
    };
  }

  /** Does the work again when files have come that it asked for. At once where nothing is on its way. */
  private complete<R>(
    work: () => R,
    stale: () => ResponseError<never> | undefined,
  ): R | Promise<R | ResponseError<never>> {
    const found = work();
    return this.session().lent.files.coming ? this.completeLater(work, stale) : found;
  }

  private async completeLater<R>(work: () => R, stale: () => ResponseError<never> | undefined) {
    const { files, patience } = this.session().lent;
    const end = performance.now() + patience;
    let found: R | undefined;
    while (files.coming && performance.now() < end) {
      await Promise.race([files.coming, pause(end - performance.now())]);
      const instead = stale();
      if (instead) return instead;
      found = work();
    }
    if (files.coming) this.session().answeredWithout();
    return found as R;
  }

  /** For what is sent unasked. Nothing where the file has gone on meanwhile, or the work fails. */
  async unasked<R>(file: OpenFile, work: () => R): Promise<R | null> {
    const found = await this.complete(
      () => this.safely(() => this.columns.out(work(), file.uri)),
      this.stale(file),
    );
    return found instanceof ResponseError ? null : found;
  }

  /**
   * For what looks at the whole of a file. A message that has come in the meantime goes first: a cancellation
   * ends the work before it begins, and after an edit the client asks again anyway.
   */
  slow<P extends AboutFile, R>(work: Work<P, R>) {
    const quick = this.quick(work);
    return async (params: P, token: CancellationToken): Promise<Answer<R>> => {
      const before = this.session().file(params.textDocument.uri)?.version;
      await turn();
      await turn();
      const now = this.session().file(params.textDocument.uri)?.version;
      if (now !== before && !token.isCancellationRequested) return modified();
      return quick(params, token);
    };
  }

  /**
   * For what looks through many files, in stretches: given up when it is cancelled, or when any text changes meanwhile.
   * It asks about no file of its own; `longOf` does.
   */
  long<P, R>(work: LongWork<P, R>) {
    return (params: P, token: CancellationToken) => this.inStretches(params, token, work);
  }

  /** The same about a file. Null for one that is not open. */
  longOf<P extends AboutFile, R>(work: LongWorkOf<P, R>) {
    return (params: P, token: CancellationToken) => {
      const { uri } = params.textDocument;
      const ofFile: LongWork<P, R> = async (asked, stretch) => {
        const file = this.session().file(uri);
        return file ? work(asked, file, stretch) : null;
      };
      return this.inStretches(params, token, ofFile, uri);
    };
  }

  /**
   * For long work that nobody asks again when it was given up: an editor passes by a rename that has no answer, and says
   * nothing. What changes meanwhile is mostly elsewhere, such as news of files on the disk: the work is done again.
   */
  steady<P, R>(work: LongWork<P, R>) {
    return (params: P, token: CancellationToken) =>
      this.again(() => this.inStretches(params, token, work));
  }

  /** The same about a file: given up once its own text is another one, and places in it are others. */
  steadyOf<P extends AboutFile, R>(work: LongWorkOf<P, R>) {
    const once = this.longOf(work);
    return (params: P, token: CancellationToken) => {
      const version = () => this.session().file(params.textDocument.uri)?.version;
      const first = version();
      return this.again(
        () => once(params, token),
        () => version() === first,
      );
    };
  }

  private async again<R>(
    work: () => Promise<Answer<R>>,
    wanted: () => boolean = () => true,
  ): Promise<Answer<R>> {
    for (let tries = 1; ; tries += 1) {
      const found = await work();
      if (!isModified(found) || !wanted() || tries === TRIES) return found;
    }
  }

  private async inStretches<P, R>(
    params: P,
    token: CancellationToken,
    work: LongWork<P, R>,
    uri?: string,
  ): Promise<Answer<R>> {
    const stretch = new Stretch(token, () => this.session().edition);
    try {
      await stretch.rest();
      const found = await this.whole(() => work(this.columns.in(params, uri), stretch));
      stretch.check();
      return this.columns.out(found ?? null, uri);
    } catch (error) {
      if (error instanceof Stopped) return error.why === 'cancelled' ? cancelled() : modified();
      return this.safely<R>(() => {
        throw error;
      });
    }
  }

  /** Again, where files have come that it asked for. */
  private async whole<R>(work: () => Promise<R>): Promise<R> {
    const { files, patience } = this.session().lent;
    const end = performance.now() + patience;
    let found = await work();
    while (files.coming && performance.now() < end) {
      await Promise.race([files.coming, pause(end - performance.now())]);
      found = await work();
    }
    return found;
  }

  safely<R>(work: () => R | null | undefined): R | null {
    try {
      return work() ?? null;
    } catch (error) {
      this.log.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
      return null;
    }
  }
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

function cancelled(): ResponseError<never> {
  return new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
}

function isModified(answer: unknown): boolean {
  return answer instanceof ResponseError && answer.code === LSPErrorCodes.ContentModified;
}

/** The text has gone on: the client asks again. */
export function modified(): ResponseError<never> {
  return new ResponseError(
    LSPErrorCodes.ContentModified,
    phrase`the file was edited in the meantime`,
  );
}
