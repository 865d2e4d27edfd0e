/** How a file is built: its outline, what of it can be folded away, and what a selection grows to. */
import { foldsOf, mostFolds } from '../../engine/ide/folds';
import { hintsOf } from '../../engine/ide/hints';
import { selectionsAt } from '../../engine/ide/selection';
import { symbolsOf } from '../../engine/ide/symbols';
import * as from from '../from-proto';
import type { Parts } from '../parts';
import type { OpenFile } from '../session';
import * as to from '../to-proto';

export function registerOutline(parts: Parts): void {
  const { connection, answers, client, session } = parts;
  connection.onDocumentSymbol(
    answers.slow((_, file) => {
      const symbols = symbolsOf(session().source(file));
      return client().nestsSymbols
        ? symbols.map(to.documentSymbol)
        : symbols.flatMap((symbol) => to.flatSymbols(symbol, file.uri));
    }),
  );
  connection.onFoldingRanges(
    answers.slow((_, file) => {
      const { mostFolds: most, collapsesText } = client();
      const folds = mostFolds(foldsOf(session().source(file)), most);
      const totals = collapsesText ? totalsOf(parts, file) : undefined;
      return folds.map((fold) => to.foldingRange(fold, totals?.get(fold.first)));
    }),
  );
  connection.onSelectionRanges(
    answers.quick((params, file) => {
      const source = session().source(file);
      return params.positions.map((at) =>
        to.selectionRange(selectionsAt(source, from.position(at))),
      );
    }),
  );
}

/** What stands in place of folded lines: what they come to, by the line of their heading. */
function totalsOf({ session }: Parts, file: OpenFile): Map<number, string> {
  const { lines } = session().source(file);
  const all = { first: 0, last: lines.length };
  const hints = hintsOf(session().job(file), all, new Set(['total']));
  return new Map(hints.map(({ line, text }) => [line, text]));
}
