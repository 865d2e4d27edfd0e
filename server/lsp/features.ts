/** Each question of the editor, handed to the engine and its answer handed back. No rule of the trade is here. */
import type { Connection } from 'vscode-languageserver';
import { actionsFor } from '../engine/ide/actions';
import { completion } from '../engine/ide/completion';
import { definition } from '../engine/ide/definition';
import { foldsOf } from '../engine/ide/folds';
import { formatting } from '../engine/ide/format';
import { hover } from '../engine/ide/hover';
import { highlights, references } from '../engine/ide/occurrences';
import { symbolsOf } from '../engine/ide/symbols';
import type { Answers } from './answers';
import * as from from './from-proto';
import { linker } from './links';
import type { Session } from './session';
import * as to from './to-proto';

export interface Parts {
  readonly connection: Connection;
  readonly answers: Answers;
  readonly client: () => from.Client;
  readonly session: () => Session;
}

export function registerFeatures({ connection, answers, client, session }: Parts): void {
  const uriOf = (name: string) => session().uriOf(name);
  const eolOf = (name: string) => session().eolOf(name);
  const { quick, slow } = { quick: answers.quick.bind(answers), slow: answers.slow.bind(answers) };

  connection.onHover(
    quick((params, file) => {
      const found = hover(session().job(file), from.position(params.position), linker(uriOf));
      return found && to.hover(found);
    }),
  );
  connection.onCompletion(
    quick((params, file) => {
      const { triggerCharacter } = params.context ?? {};
      const at = from.position(params.position);
      // A space at the beginning of a line indents it: nothing has been asked for yet.
      const before = session().source(file).lines[at.line]?.slice(0, at.column) ?? '';
      if (triggerCharacter && !before.trim()) return null;
      return to.completionList(completion(session().job(file), at), client().fillsSnippets);
    }),
  );
  connection.onDefinition(
    quick((params, file) => {
      const found = definition(session().job(file), from.position(params.position));
      return to.definition(found, uriOf, client().takesLinks);
    }),
  );
  connection.onReferences(
    quick((params, file) => {
      const at = from.position(params.position);
      const places = references(session().job(file), at, params.context.includeDeclaration);
      return places.map((place) => to.location(place, uriOf));
    }),
  );
  connection.onDocumentHighlight(
    quick((params, file) =>
      highlights(session().job(file), from.position(params.position)).map(to.highlight),
    ),
  );
  connection.onDocumentSymbol(
    slow((_, file) => symbolsOf(session().source(file)).map(to.documentSymbol)),
  );
  connection.onFoldingRanges(
    slow((_, file) => foldsOf(session().source(file)).map(to.foldingRange)),
  );
  connection.onCodeAction(
    quick((params, file) =>
      actionsFor(session().job(file), from.actionRange(params.range)).map((action) =>
        to.codeAction(action, params, { uriOf, eolOf }),
      ),
    ),
  );
  connection.onDocumentFormatting(
    quick((_, file) =>
      formatting(session().source(file)).map((edit) => to.textEdit(edit, file.eol)),
    ),
  );
  connection.onDocumentRangeFormatting(
    quick((params, file) =>
      formatting(session().source(file), from.lineRange(params.range)).map((edit) =>
        to.textEdit(edit, file.eol),
      ),
    ),
  );
}
