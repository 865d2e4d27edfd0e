/** Mixes that are weaker than their place wants, and mixes sandier than all that the library knows. */
import { describe, expect, test } from 'vitest';
import { expectFindings } from '../../harness/marks';
import { afterWay, findingsIn, findingsOf, silent, tells } from '../tells';

const wall = (lines: string, mix = '') => `perpend 1
use "firm.perp"
${mix}
wall a
  brick red
  length 2240 mm
  height 12 courses
  left toothed
  right toothed
${lines}`;

/** BS 5628-3, Table 13, from memory: a wall that stands free wants designation (iii), M4. */
describe('mix-weak', () => {
  const text = wall(
    '  mix weak\n      ^^^^ mix-weak: Weak mortar 1 : 2 : 9 is M2 (Designation (iv))\n  exposure zone-1\n  thick 1 brick\n  bond english\n  height 5 courses\n',
  );

  test('a wall that stands free in designation (iv)', () => {
    const found = tells(text.replace('  height 12 courses\n', ''), {
      ways: [
        'Lay it in General mortar 1 : 1 : 6, M4',
        'Lay it in Strong mortar 1 : 1/2 : 4 1/2, M6',
        'Lay it in Mortar for a brick damp-proof course 1 : 1/4 : 3, M12',
      ],
    });
    expect(found[0]!.message).toContain('wants M4 (Designation (iii))');
    expect(found[0]!.message).toContain('BS 5628-3');
  });

  test('not of a wall that a building holds, nor of one in a mix that is strong enough', () => {
    silent(wall('  mix weak\n  stands held\n'), 'mix-weak');
    silent(wall('  mix general\n'), 'mix-weak');
  });

  test('nothing is said of a mix whose class is not known', () => {
    silent(wall('  mix lime-soft\n'), 'mix-weak');
    silent(wall('  mix bagged\n'), 'mix-weak');
  });

  test('a class that the mix’s own line gives is taken', () => {
    silent(
      wall('  mix own\n', 'mix own\n  parts cement 1, sand 9\n  class M6\n  joint 10 mm\n'),
      'mix-weak',
    );
  });

  test('a firm may want more, or less in one exposure', () => {
    const own = 'least-mortar\n  free-standing M6\n  free-standing M2 zone-1\n';
    const codes = (lines: string) => findingsIn(wall(lines, own)).map((f) => f.code);
    expect(codes('  mix general\n  exposure zone-3\n')).toContain('mix-weak');
    expect(codes('  mix weak\n  exposure zone-1\n')).not.toContain('mix-weak');
  });
});

/** BS 5628-3, Table 13, from memory; a damp course of engineering brick in (i): manufacturer’s sheet C14. */
describe('caution-mortar', () => {
  const told = (lines: string) => findingsOf('caution-mortar', wall(lines));

  /** Of all cautions only this one is held against the marks; each way out of it has to clear it. */
  function mortar(marked: string, ways: readonly string[]): void {
    const find = (text: string) => findingsOf('caution-mortar', text);
    const { text, found } = expectFindings(marked, find);
    expect(found.flatMap((f) => f.ways.map((w) => w.title))).toEqual(ways);
    for (const { ways: all } of found)
      for (const { edits } of all) expect(find(afterWay(text, edits))).toEqual([]);
  }

  test('courses that want more than the wall’s mix', () => {
    const [found, ...more] = told('  dpc engineering 2 courses\n  coping brick-on-edge\n');
    expect(more).toEqual([]);
    expect(found!.severity).toBe('information');
    expect(found!.message).toContain(
      'for its damp course M12 (Designation (i)) and the bricks on its top M12',
    );
  });

  test('each line may have a stronger mix of its own, and a weak one of its own is told of too', () => {
    const text = (dpc: string, coping: string) =>
      wall(`  dpc engineering 2 courses${dpc}\n  coping brick-on-edge${coping}\n`).replace(
        'wall a',
        'wall a\n     ^ caution-mortar: Give them a mix of their own',
      );
    const way = 'in Mortar for a brick damp-proof course 1 : 1/4 : 3, M12';
    mortar(text('', ''), [`Lay the damp course and the coping ${way}`]);
    mortar(text(' mix dpc-mortar', ''), [`Lay the coping ${way}`]);
    mortar(text(' mix dpc-mortar', ' mix strong'), [`Lay the coping ${way}`]);
    expect(
      told('  dpc engineering 2 courses mix dpc-mortar\n  coping brick-on-edge mix dpc-mortar\n'),
    ).toEqual([]);
  });

  test('nothing where the mix is strong enough, or where nothing asks for more', () => {
    expect(told('  mix dpc-mortar\n  dpc engineering 2 courses\n  coping brick-on-edge\n')).toEqual(
      [],
    );
    expect(told('')).toEqual([]);
  });

  test('of several walls alike it is told once', () => {
    const two = `${wall('  dpc engineering 2 courses\n')}${wall('  dpc engineering 2 courses\n').slice(wall('').indexOf('wall a')).replace('wall a', 'wall b')}`;
    const found = findingsOf('caution-mortar', two);
    expect(found).toHaveLength(1);
    expect(found[0]!.related.map((r) => r.message)).toContain('Here too');
  });

  test('a wall that holds soil back', () => {
    expect(told('  stands retaining\n')[0]!.message).toContain('a wall that holds back soil M6');
  });
});

describe('mix-sandy', () => {
  const sandy = 'mix pale\n  parts cement 1, lime 3, sand 15\n  joint 10 mm\n';

  test('more sand than the weakest of the library has', () => {
    const text = `perpend 1
use "firm.perp"
${sandy}
wall a
     ^ mix-sandy: Pale has 15 parts of sand
  brick red
  mix pale
  length 2240 mm
  height 12 courses
  stands held
`.replace('mix pale\n', 'mix pale "Pale"\n');
    const [found] = tells(text);
    expect(found!.message).toContain('Designation (v), has at most 12 (Lyons');
    expect(found!.message).toContain('structural engineer');
  });

  test('by the bag as well', () => {
    const bag = 'mix pale\n  batch 1 bag sand, 1 trowel cement\n  joint 10 mm\n';
    const codes = findingsIn(wall('  mix pale\n', bag)).map((f) => f.code);
    // The firm sells sand in bags of 850 kg: a trowel of cement is next to nothing in it.
    expect(codes).toContain('mix-sandy');
  });

  test('not of a mix that has a class', () => {
    silent(wall('  mix weak\n'), 'mix-sandy');
    silent(wall('  mix lime-soft\n'), 'mix-sandy');
  });
});
