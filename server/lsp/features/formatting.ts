/** The text in its one form: all of it, some lines, or what Enter has just left. */
import { type FormatEdit, formatting } from '../../engine/ide/format';
import { onEnter } from '../../engine/ide/on-enter';
import * as from from '../from-proto';
import type { Parts } from '../parts';
import type { OpenFile } from '../session';
import * as to from '../to-proto';

export function registerFormatting({ connection, answers, session }: Parts): void {
  const edits = (list: readonly FormatEdit[], { eol }: OpenFile) =>
    list.map((edit) => to.textEdit(edit, eol));
  connection.onDocumentFormatting(
    answers.quick((_, file) => edits(formatting(session().source(file)), file)),
  );
  connection.onDocumentRangeFormatting(
    answers.quick(({ range }, file) =>
      edits(formatting(session().source(file), [from.lineRange(range)]), file),
    ),
  );
  connection.onDocumentRangesFormatting(
    answers.quick(({ ranges }, file) =>
      edits(formatting(session().source(file), ranges.map(from.lineRange)), file),
    ),
  );
  connection.onDocumentOnTypeFormatting(
    answers.quick(({ ch, position }, file) =>
      ch === '\n' ? edits(onEnter(session().source(file), from.position(position)), file) : [],
    ),
  );
}
