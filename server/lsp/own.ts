/** Requests of our own: totals, figures, workings. */
import type { CancellationToken } from 'vscode-languageserver';
import {
  FIGURES,
  type FigureItem,
  type FileParams,
  TOTALS,
  type Totals,
  WORKING,
  type Working,
  type WorkingParams,
} from '../../shared/protocol';
import { totalsOf } from '../engine/ide/totals';
import { figureItems, workingFor } from '../engine/ide/working';
import type { Parts } from './parts';

type About<P extends FileParams> = P & { readonly textDocument: FileParams };

function about<P extends FileParams>(params: P): About<P> {
  return { ...params, textDocument: params };
}

export function registerOwn({ connection, answers, session }: Parts): void {
  const totals = answers.slow((_: About<FileParams>, file) => totalsOf(session().job(file)));
  const figures = answers.slow((_: About<FileParams>, file) => {
    const job = session().job(file);
    return job.isJob ? figureItems(job) : [];
  });
  // Places in words: a page of Markdown opens no links to files.
  const working = answers.slow((params: About<WorkingParams>, file) =>
    workingFor(session().job(file), params.id),
  );
  connection.onRequest<Totals | null, never>(
    TOTALS,
    (params: FileParams, token: CancellationToken) => totals(about(params), token),
  );
  connection.onRequest<FigureItem[] | null, never>(
    FIGURES,
    (params: FileParams, token: CancellationToken) => figures(about(params), token),
  );
  connection.onRequest<Working | null, never>(
    WORKING,
    (params: WorkingParams, token: CancellationToken) => working(about(params), token),
  );
}
