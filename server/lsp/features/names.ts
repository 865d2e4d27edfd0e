/** Names: where they lead, where they are meant, and other names for them. */
import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { definition } from '../../engine/ide/definition';
import { linkedAt } from '../../engine/ide/linked';
import { highlights } from '../../engine/ide/occurrences';
import { referencesAround } from '../../engine/ide/references';
import { isRefused, renamableAt, renamed } from '../../engine/ide/rename';
import { worldFor } from '../folder-world';
import * as from from '../from-proto';
import type { Parts } from '../parts';
import * as to from '../to-proto';

export function registerNames(parts: Parts): void {
  const { connection, answers, client, session } = parts;
  connection.onDefinition(
    answers.quick((params, file) => {
      const found = definition(session().job(file), from.position(params.position));
      return to.definition(found, session().uriOf, client().takesLinks);
    }),
  );
  connection.onDocumentHighlight(
    answers.quick((params, file) =>
      highlights(session().job(file), from.position(params.position)).map(to.highlight),
    ),
  );
  connection.languages.onLinkedEditingRange(
    answers.quick((params, file) =>
      to.linked(linkedAt(session().job(file), from.position(params.position))),
    ),
  );
  registerReferences(parts);
  registerRename(parts);
}

function registerReferences({ connection, answers, session }: Parts): void {
  connection.onReferences(
    answers.longOf(async (params, file, stretch) => {
      const world = await worldFor(session(), stretch);
      const at = from.position(params.position);
      const { includeDeclaration } = params.context;
      const steps = referencesAround(session().job(file), at, world, includeDeclaration);
      const places = await stretch.through(steps);
      return places.map((place) => to.location(place, session().uriOf));
    }),
  );
}

function registerRename({ connection, answers, client, session }: Parts): void {
  connection.onPrepareRename(
    answers.quick((params, file) => {
      const found = renamableAt(session().job(file), from.position(params.position));
      return isRefused(found) ? refusal(found.refused) : to.renamable(found);
    }),
  );
  connection.onRenameRequest(
    answers.steadyOf(async (params, file, stretch) => {
      const world = await worldFor(session(), stretch);
      const at = from.position(params.position);
      const steps = renamed(session().job(file), at, params.newName, world);
      const found = await stretch.through(steps);
      if (isRefused(found)) return refusal(found.refused);
      return to.workspaceEdit(found.edits, session(), client().versionsEdits);
    }),
  );
}

/** Shown to the reader as it is. */
function refusal(why: string): ResponseError<never> {
  return new ResponseError(LSPErrorCodes.RequestFailed, why);
}
