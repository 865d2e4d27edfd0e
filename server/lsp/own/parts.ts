/** A job as a tree of its parts. */
import type { CancellationToken } from 'vscode-languageserver';
import type { FileParams } from '../../../shared/protocol';
import {
  type JobParts,
  PART_TOLD,
  PARTS,
  type Part,
  type PartTold,
  type PartToldParams,
} from '../../../shared/protocol/parts';
import { type JobPart, partsOf, partTold } from '../../engine/ide/parts';
import type { Parts } from '../parts';
import type { UriOf } from '../to-proto/places';

type About<P extends FileParams> = P & { readonly textDocument: FileParams };

function about<P extends FileParams>(params: P): About<P> {
  return { ...params, textDocument: params };
}

export function registerParts({ connection, answers, session }: Parts): void {
  const uriOf: UriOf = (name) => session().uriOf(name);
  const parts = answers.slow((_: About<FileParams>, file) => {
    const found = partsOf(session().job(file));
    return found && { ...found, parts: found.parts.map((part) => toPart(part, uriOf)) };
  });
  const told = answers.slow((params: About<PartToldParams>, file) =>
    partTold(session().job(file), params.figure),
  );
  connection.onRequest<JobParts | null, never>(
    PARTS,
    (params: FileParams, token: CancellationToken) => parts(about(params), token),
  );
  connection.onRequest<PartTold | null, never>(
    PART_TOLD,
    (params: PartToldParams, token: CancellationToken) => told(about(params), token),
  );
}

function toPart(part: JobPart, uriOf: UriOf): Part {
  const { at, children, ...rest } = part;
  return {
    ...rest,
    at: at && { uri: uriOf(at.file), line: at.line, start: at.start, end: at.end },
    children: children.map((child) => toPart(child, uriOf)),
  };
}
