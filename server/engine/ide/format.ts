/** The formatter as edits of an open file. */
import { type FormatEdit, formatEdits } from '../../../grammar/print';
import type { SourceFile } from '../workspace/source';
import type { LineRange } from './types';

export type { FormatEdit };

/** The whole file, or only what lies within some lines. None for a file that is not read. */
export function formatting(file: SourceFile, range?: LineRange): FormatEdit[] {
  if (file.refused) return [];
  const edits = formatEdits(file.text);
  if (!range) return edits;
  return edits.filter((e) => e.startLine >= range.first && e.endLine <= range.last);
}
