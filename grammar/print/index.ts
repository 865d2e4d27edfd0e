/**
 * The formatter. Order of lines and blocks, numbers, words and comments stay; indentation, columns and
 * spacing are made one. A line that cannot be read is only moved to its depth.
 */
import { cutBlocks } from '../blocks';
import { inColumns } from './columns';
import { editsTo, type FormatEdit, type LaidLine, type SourceLine } from './edits';
import { rowsOf } from './rows';

export type { FormatEdit } from './edits';

interface Laid {
  readonly lead: string;
  readonly source: readonly SourceLine[];
  readonly eol: string;
  readonly lines: readonly LaidLine[];
}

/** The text in canonical form. Says the same, whatever it says; formatting it again changes nothing. */
export function format(text: string): string {
  const { lead, eol, lines } = lay(text);
  return lead + lines.map((line) => line.text + eol).join('');
}

/** The same as edits of the text as it is: in its order, none touching another, none when nothing changes. */
export function formatEdits(text: string): FormatEdit[] {
  const { lead, source, eol, lines } = lay(text);
  return editsTo(lines, source, eol, lead.length);
}

/** Only of some lines: all others stay as they are written, empty ones too. */
export function formatLines(text: string, within: (line: number) => boolean): FormatEdit[] {
  const { lead, source, eol, lines } = lay(text);
  const edits = editsTo(only(lines, source, within), source, eol, lead.length, '');
  // Outside, a line’s end that is not the usual one would still be made so.
  return edits.filter(({ startLine, endLine }) => {
    for (let line = startLine; line <= endLine; line++) if (within(line)) return true;
    return false;
  });
}

function only(
  lines: readonly LaidLine[],
  source: readonly SourceLine[],
  within: (line: number) => boolean,
): LaidLine[] {
  const texts = new Map(lines.map((line) => [line.source, line.text]));
  const led = new Set(
    lines.flatMap((line, i) => (line.source === undefined ? [lines[i + 1]?.source] : [])),
  );
  return source.flatMap((line, i): LaidLine[] => {
    if (!within(i)) return [{ source: i, text: line.text }];
    const before = led.has(i) ? [{ text: '' }] : [];
    const text = texts.get(i) ?? (i === source.length - 1 ? '' : undefined);
    return text === undefined ? before : [...before, { source: i, text }];
  });
}

function lay(text: string): Laid {
  const lead = text.startsWith('\ufeff') ? '\ufeff' : '';
  const source = sourceLines(text);
  const texts = source.map((line) => line.text);
  return { lead, source, eol: endOf(source), lines: spaced(layBlocks(texts)) };
}

function sourceLines(text: string): SourceLine[] {
  const parts = text.split(/(\r\n|\n|\r)/);
  const lines: SourceLine[] = [];
  for (let i = 0; i < parts.length; i += 2)
    lines.push({ text: parts[i]!, end: parts[i + 1] ?? '' });
  return lines;
}

/** The end that most lines have; CR alone becomes LF, which every tool knows. */
function endOf(source: readonly SourceLine[]): string {
  const crlf = source.filter((line) => line.end === '\r\n').length;
  return crlf * 2 > source.length - 1 ? '\r\n' : '\n';
}

/** Every line in its order, empty ones as an empty text. */
function layBlocks(lines: readonly string[]): LaidLine[] {
  const starts = cutBlocks(lines);
  return starts.flatMap((start, i) => {
    const block = lines.slice(start, starts[i + 1]);
    const laid: LaidLine[] = block.map((_, n) => ({ source: start + n, text: '' }));
    const rows = rowsOf(block);
    const texts = inColumns(rows);
    rows.forEach((row, n) => {
      laid[row.source] = { source: start + row.source, text: texts[n]! };
    });
    return laid;
  });
}

const EDITION = /^perpend(?: |$)/;

/** At most one empty line in a row, one after the edition, none at the beginning and at the end. */
function spaced(lines: readonly LaidLine[]): LaidLine[] {
  const kept: LaidLine[] = [];
  for (const line of lines) {
    const before = kept.at(-1);
    if (!line.text && !before?.text) continue;
    const first =
      before && EDITION.test(before.text) && !kept.some((k) => k !== before && opens(k));
    if (first && line.text && !line.text.startsWith(' ')) kept.push({ text: '' });
    kept.push(line);
  }
  while (kept.length && !kept.at(-1)!.text) kept.pop();
  return kept;
}

function opens(line: LaidLine): boolean {
  return line.text !== '' && !line.text.startsWith('#');
}
