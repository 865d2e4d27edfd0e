/** What a partner’s file says otherwise, written into ours. */
import { expect, test } from 'vitest';
import { taken } from '../../../server/engine/share/take';
import { SourceFile } from '../../../server/engine/workspace/source';

const OURS = [
  'perpend 1',
  'wall north "North wall"  # by the lane',
  '  brick   red',
  '  length  7.3 m      # paced out',
  '  note    "Agreed at £400"',
  '',
  '  opening gate',
  '    from   left 2 m',
  '    width  1010 mm  # the gate decides',
  '',
  'record',
  '  sent 2026-03-02 £815.40',
  '',
].join('\r\n');
const FIRM =
  'brick red "Red facing"\n  size 215 x 102.5 x 65 mm\n  price £1 each\n\nmaterial cement\n  pack 25 kg bag at £6\n';
const used = new SourceFile('', FIRM).blocks;

const take = (theirs: string, more: { names?: ReadonlySet<string>; rates?: boolean } = {}) =>
  taken(OURS, new SourceFile('', theirs), used, { rates: false, ...more });

test('lines that say something else take the place of ours, beside our comments and line ends', () => {
  const { text, edits, ours } = take(
    'wall north "North wall"\n  brick red\n  length 7500 mm\n  note "Agreed at …"\n  opening gate\n    width 1022.5 mm\n    head soldier\n',
  );
  expect(text).toBe(
    OURS.replace('length  7.3 m', 'length  7500 mm')
      .replace('1010 mm', '1022.5 mm')
      .replace('the gate decides\r\n', 'the gate decides\r\n    head   soldier\r\n'),
  );
  expect(edits.map((e) => e.change)).toEqual(['changed', 'changed', 'new']);
  expect(ours).toEqual(['wall north, opening gate: from left 2 m']);
});

test('the same length in another unit is no change, and taking twice takes nothing more', () => {
  const theirs =
    'wall north "North wall"\n  length 7300 mm\n  dpc engineering 2 courses\n\npier lone\n  size 2 x 2 bricks\n';
  const once = take(theirs);
  expect(once.edits.map((e) => e.after)).toEqual(['dpc engineering 2 courses', 'pier lone']);
  const twice = taken(once.text, new SourceFile('', theirs), used, { rates: false });
  expect([twice.text, twice.edits]).toEqual([once.text, []]);
});

test('what our firm’s file says is ours already; what it says otherwise is written in the job', () => {
  const same = take(
    'brick red "Red facing"\n  size 215 x 102.5 x 65 mm\nmaterial cement\n  pack 25 kg bag\n',
  );
  expect(same.text).toBe(OURS);
  const other = take('brick red "Red facing"\n  size 215 x 103 x 65 mm\n');
  expect(other.text).toBe(`${OURS}\r\nbrick red\r\n  size 215 x 103 x 65 mm\r\n`);
});

test('their prices and rates only where that is said, and their record never', () => {
  const theirs =
    'brick red "Red facing"\n  size 215 x 102.5 x 65 mm\n  price £1.20 each\nlabour\n  bricklayer £30 per h\nprice\n  profit 30%\nrecord\n  sent 2026-04-04 £900\njob "Other"\nfirm "Halden"\n';
  expect(take(theirs).text).toBe(OURS);
  const { text } = take(theirs, { rates: true });
  expect(text).toBe(
    `${OURS}\r\nbrick red\r\n  price £1.20 each\r\n\r\nlabour\r\n  bricklayer £30 per h\r\n`,
  );
});

test('only the blocks that are named', () => {
  const theirs = 'wall north "North wall"\n  length 8 m\npier lone\n  size 2 x 2 bricks\n';
  const { text, offered } = take(theirs, { names: new Set(['lone']) });
  expect(text).toContain('length  7.3 m');
  expect(text).toContain('pier lone');
  expect(offered).toEqual(['north', 'lone']);
});

test('a text that is no job takes nothing and breaks nothing', () => {
  for (const odd of [
    '',
    '# x',
    'wall',
    'wall north\n wall north',
    '\u0000"',
    'opening gate\n  from',
  ])
    expect(() => take(odd)).not.toThrow();
});
