/** Requests of our own about an open file: they name it by its address, and are answered as all others are. */
import type { CancellationToken } from 'vscode-languageserver';
import type { FileParams } from '../../../shared/protocol';
import type { AboutFile, LongWork, LongWorkOf, Work } from '../answers';
import type { Parts } from '../parts';

type Named<P extends FileParams> = P & AboutFile;

function about<P extends FileParams>(params: P): Named<P> {
  return { ...params, textDocument: { uri: params.uri } };
}

/** For what looks at one file. */
export function onFile<P extends FileParams, R>(
  { connection, answers }: Parts,
  method: string,
  work: Work<Named<P>, R>,
): void {
  const answer = answers.slow(work);
  connection.onRequest<unknown, never>(method, (params: P, token: CancellationToken) =>
    answer(about(params), token),
  );
}

/** For what reads other files too, or waits for something. */
export function onFileLong<P extends FileParams, R>(
  { connection, answers }: Parts,
  method: string,
  work: LongWorkOf<Named<P>, R>,
): void {
  const answer = answers.longOf(work);
  connection.onRequest<unknown, never>(method, (params: P, token: CancellationToken) =>
    answer(about(params), token),
  );
}

/** For what is of no file, or of many. */
export function onMany<P, R>(
  { connection, answers }: Parts,
  method: string,
  work: LongWork<P, R>,
): void {
  connection.onRequest<unknown, never>(method, answers.long(work));
}
