/** Edits that lead from one text to another: applied, they are that text, and they leave alone what stays. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withLines } from '../../server/engine/share/take/lines';
import { editsIn, editsTo } from '../../server/lsp/own/edits';
import type { Edits } from '../../shared/protocol/edits';
import { withEdits } from '../harness/edits';
import '../harness/seed';

const file = { uri: 'file:///job.perp', name: 'job.perp', version: 3, eol: '\n' };

function applied(text: string, { documentChanges: [change] }: Edits): string {
  const edits = change?.edits.map(({ range: { start, end }, newText }) => ({
    startLine: start.line,
    startColumn: start.character,
    endLine: end.line,
    endColumn: end.character,
    text: newText,
  }));
  return edits ? withEdits(text, edits) : text;
}

const line = fc.constantFrom('', 'a', 'b', '  c', 'long line');
const text = fc.array(line, { minLength: 1, maxLength: 8 }).map((lines) => lines.join('\n'));

describe('one edit of the lines that differ', () => {
  test('leads to the other text, whatever both are', () => {
    fc.assert(
      fc.property(text, text, (before, after) => {
        expect(applied(before, editsTo(after, before.split('\n'), file))).toBe(after);
      }),
    );
  });

  test('is none where both are alike, and touches no more lines than it has to', () => {
    expect(editsTo('a\nb', ['a', 'b'], file).documentChanges).toEqual([]);
    const [change] = editsTo('a\nx\nc\n', ['a', 'b', 'c', ''], file).documentChanges;
    expect(change).toEqual({
      textDocument: { uri: file.uri, version: 3 },
      edits: [
        {
          range: { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } },
          newText: 'x\n',
        },
      ],
    });
  });

  test('has the ends of lines that the file has', () => {
    const [change] = editsTo('a\r\nx\r\n', ['a', ''], { ...file, eol: '\r\n' }).documentChanges;
    expect(change!.edits[0]!.newText).toBe('x\r\n');
  });
});

test('edits line by line lead where the text of them does', () => {
  const number = fc.nat({ max: 7 });
  fc.assert(
    fc.property(
      text,
      fc.dictionary(number.map(String), line),
      fc.dictionary(number.map(String), fc.array(line, { minLength: 1, maxLength: 2 })),
      fc.array(line, { maxLength: 2 }),
      (before, over, after, last) => {
        const lines = before.split('\n');
        const within = <T>(of: Record<string, T>) =>
          new Map(
            Object.entries(of)
              .map(([at, value]) => [Number(at), value] as const)
              .filter(([at]) => at < lines.length),
          );
        // Nothing is put in behind the last line: that is what `last` is for.
        const inner = new Map([...within(after)].filter(([at]) => at < lines.length - 1));
        const outer = new Map([...within(over)].filter(([at]) => at < lines.length - 1));
        const edits = { over: outer, after: inner, last };
        if (!before) return;
        expect(applied(before, editsIn(edits, lines, file))).toBe(withLines(before, edits));
      },
    ),
  );
});
