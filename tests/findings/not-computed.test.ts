import { describe, expect, test } from 'vitest';
import { HEADINGS, type LineKind } from '../../grammar/lines';
import { findingsIn, silent } from './tells';

/** Every kind of line that is read and not computed, with an example under the headings it needs. */
function later(
  kind: LineKind,
  above: readonly LineKind[] = [],
): { key: string; text: string; line: number }[] {
  const kinds = [...above, kind];
  const text = kinds.map((each, depth) => '  '.repeat(depth) + each.example).join('\n');
  const own = kind.later ? [{ key: kind.key, text, line: above.length }] : [];
  return [...own, ...(kind.body ?? []).flatMap((line) => later(line, kinds))];
}

const all = HEADINGS.flatMap((kind) => later(kind));

describe('not-computed', () => {
  test('is told of what the table of lines says, and of nothing else', () => {
    expect(all.map((each) => each.key)).toEqual([]);
  });

  test.each(all)('is told of $key, at its line', ({ key, text, line }) => {
    const found = findingsIn(`perpend 1\nuse "firm.perp"\n${text}\n`);
    const at = found.filter((f) => f.code === 'not-computed' && f.message.includes(`“${key}”`));
    expect(at.map((f) => f.place.line)).toEqual([2 + line]);
  });

  test('is not told of a coping that is counted', () => {
    for (const coping of ['brick-on-edge', 'brick-on-end', 'precast 600 x 200 mm', 'tiles', 'none'])
      silent(
        `perpend 1\nuse "firm.perp"\nwall a\n  brick red\n  length 1790 mm\n  height 4 courses\n  coping ${coping}\n`,
        'not-computed',
      );
  });
});
