/** The one way in which a request is answered: on a snapshot, given up when it is stale, and never with a crash. */
import {
  type CancellationToken,
  type Connection,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import type { OpenFile, Session } from './session';

/** Whatever asks about a file. */
export interface AboutFile {
  readonly textDocument: { readonly uri: string };
}

export type Answer<R> = R | null | ResponseError<never>;
export type Work<P, R> = (params: P, file: OpenFile) => R | null | undefined;

export class Answers {
  constructor(
    private readonly session: () => Session,
    private readonly log: Connection['console'],
  ) {}

  /** For what is worked out at once. Null for a file that is not open, or when the work fails. */
  quick<P extends AboutFile, R>(work: Work<P, R>) {
    return (params: P, token: CancellationToken): Answer<R> => {
      if (token.isCancellationRequested) return cancelled();
      const file = this.session().file(params.textDocument.uri);
      return file ? this.safely(() => work(params, file)) : null;
    };
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

  safely<R>(work: () => R | null | undefined): R | null {
    try {
      return work() ?? null;
    } catch (error) {
      this.log.error(error instanceof Error ? (error.stack ?? error.message) : String(error));
      return null;
    }
  }
}

/** Lets one waiting message be handled. */
function turn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

function cancelled(): ResponseError<never> {
  return new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
}

function modified(): ResponseError<never> {
  return new ResponseError(LSPErrorCodes.ContentModified, 'the file was edited in the meantime');
}
