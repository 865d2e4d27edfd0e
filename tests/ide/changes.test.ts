import { describe, expect, test } from 'vitest';
import { format } from '../../grammar/print';
import { type ActionRange, actionsFor } from '../../server/engine/ide/actions';
import { formatting } from '../../server/engine/ide/format';
import { MOST_CHARACTERS, SourceFile } from '../../server/engine/workspace/source';
import { applied, withEdits } from '../harness/edits';
import { job } from './ask';

const at = (line: number, from: number, to = from): ActionRange => ({
  startLine: line,
  startColumn: from,
  endLine: line,
  endColumn: to,
});

describe('ways out', () => {
  const BAD =
    'perpend 1\nuse "firm.perp"\nwall n\n  lenght 1790 mm\n  height 8 courses\n  brick rad\n';

  test('are offered where the finding is touched', () => {
    const found = actionsFor(job(BAD), at(3, 4));
    expect(found.map((a) => a.title)).toEqual(['Write length']);
    expect(found[0]!.finding?.code).toBe('line-unknown');
  });

  test('at either end of it, and not beyond', () => {
    expect(actionsFor(job(BAD), at(3, 2))).toHaveLength(1);
    expect(actionsFor(job(BAD), at(3, 8))).toHaveLength(1);
    expect(actionsFor(job(BAD), at(3, 9))).toHaveLength(0);
    expect(actionsFor(job(BAD), at(3, 0, 1))).toHaveLength(0);
  });

  test('of every finding that a longer selection touches', () => {
    const range = { startLine: 3, startColumn: 0, endLine: 5, endColumn: 20 };
    expect(actionsFor(job(BAD), range).map((a) => a.title)).toEqual(['Write length', 'Write red']);
  });

  test('the preferred one first', () => {
    const text =
      'perpend 1\nuse "firm.perp"\nwall n\n  brick red\n  length 850 mm\n  height 8 courses\n';
    const found = actionsFor(job(text), at(4, 10));
    expect(found.length).toBeGreaterThan(1);
    expect(found.map((a) => a.preferred)).toEqual(found.map((_, i) => i === 0));
  });

  test('each clears its finding', () => {
    for (const action of actionsFor(job(BAD), { ...at(0, 0), endLine: 9 })) {
      const text = applied(
        BAD,
        action.edits.map((e) => ({ span: e.place, text: e.text })),
      );
      const left = job(text).findings.filter(
        (f) => f.code === action.finding!.code && f.place.line === action.finding!.place.line,
      );
      expect(left).toEqual([]);
    }
  });

  test('none where nothing is wrong', () => {
    expect(actionsFor(job('perpend 1\nuse uk\n'), at(0, 0))).toEqual([]);
  });
});

describe('formatting', () => {
  const UNTIDY =
    'perpend 1\nwall n\n brick   red\n     length 1 m   # paced\n\n\n\nwall m\n  brick red\n';
  const file = new SourceFile('a.perp', UNTIDY);

  test('of the whole is what the printer prints', () => {
    expect(withEdits(UNTIDY, formatting(file))).toBe(format(UNTIDY));
  });

  test('changes nothing that is in order', () => {
    expect(formatting(new SourceFile('a.perp', format(UNTIDY)))).toEqual([]);
  });

  test('of some lines leaves the others alone', () => {
    const edits = formatting(file, [{ first: 2, last: 2 }]);
    expect(edits.length).toBeGreaterThan(0);
    const lines = withEdits(UNTIDY, edits).split('\n');
    expect(lines[2]).toMatch(/^ {2}brick +red$/);
    expect(lines[3]).toBe('     length 1 m   # paced');
  });

  test('keeps comments and the meaning', () => {
    const after = withEdits(UNTIDY, formatting(file));
    expect(after).toContain('# paced');
    expect(after.match(/\S+/g)).toEqual(UNTIDY.match(/\S+/g));
  });

  test('leaves a file alone that is too large to read', () => {
    const large = new SourceFile('big.perp', `wall n\n${'#'.repeat(MOST_CHARACTERS)}`);
    expect(large.refused).toBe('too-large');
    expect(formatting(large)).toEqual([]);
  });

  test('of an empty file is nothing', () => {
    expect(formatting(new SourceFile('a.perp', ''))).toEqual([]);
  });
});
