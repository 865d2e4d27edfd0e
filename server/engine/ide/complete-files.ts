/** Names of files, in the text of a line that takes one: `use "…"`, a partner’s `file "…"`. */
import { readLine } from '../../../grammar/blocks';
import { headingNamed, type LineKind, type Slot } from '../../../grammar/lines';
import type { Job } from '../workspace/job';
import type { SourceFile } from '../workspace/source';
import { enclosing } from './enclosing';
import type { Completions, Position } from './types';

/** The files of the notation that a file may name, each as it would write it. */
export type FilesBeside = (file: string) => readonly string[];

/** Whether the cursor is where a file is named. */
export function namesFile(file: SourceFile, at: Position): boolean {
  return placeOf(file, at) !== undefined;
}

export function fileNames(job: Job, at: Position, files: FilesBeside): Completions | undefined {
  const start = placeOf(job.file, at);
  if (start === undefined) return undefined;
  const text = job.file.lines[at.line]!;
  const rest = /^[^"”#]*(["”]?)/.exec(text.slice(at.column))!;
  const wordEnd = at.column + rest[0].length - rest[1]!.length;
  const end = rest[1] ? '' : '"';
  return {
    span: { line: at.line, start, end: at.column },
    wordEnd,
    items: files(job.file.name).map((name) => ({
      label: name,
      kind: 'file',
      insert: `${name}${end}`,
    })),
  };
}

/** Where the name begins; nothing where no file is named. */
function placeOf(file: SourceFile, at: Position): number | undefined {
  const text = file.lines[at.line] ?? '';
  const line = readLine(text.slice(0, at.column), 0);
  const open = line?.items[0];
  if (open?.kind !== 'text' || open.closed || line?.items.length !== 1 || line.comment)
    return undefined;
  const kind = line.key && kindAt(file, at, line.key.text, text);
  return kind?.takes.some(takesFile) ? open.span.start + 1 : undefined;
}

function kindAt(file: SourceFile, at: Position, key: string, text: string): LineKind | undefined {
  if (!/^\s/.test(text)) return headingNamed(key);
  const parent = enclosing(file, at.line, text)?.parents.at(-1);
  return parent?.kind.body?.find((kind) => kind.key === key);
}

function takesFile(slot: Slot): boolean {
  if (slot.slot === 'either') return slot.of.some((group) => group.some(takesFile));
  return slot.slot === 'text' && slot.key === 'file';
}
