import { describe, expect, test } from 'vitest';
import { allTerms } from '../engine/evaluate';
import { jobOf } from '../engine/world';
import { FIRM, findingsOf, silent, tells } from './tells';

describe('bond-broken', () => {
  test('is told where the pattern of the bond does not close on a length in half bricks', () => {
    const [found] = tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          bond    flemish
          thick   1 brick
          stands  held
          length  1790 mm
                  ^^^^^^^ bond-broken: The bond does not close on the wall from the left end to the right end
          height  12 courses
      `,
      {
        ways: [
          'Keep it: broken bond is meant',
          'Make the wall 1565 mm: the run is 225 mm shorter, 7 bricks',
          'Make the wall 1902.5 mm: the run is 112.5 mm longer, 8½ bricks',
        ],
      },
    );
    expect(found!.severity).toBe('information');
    expect(found!.message).toContain('in the middle. Reverse bond comes first, but');
  });

  test('is not told of a length on which it closes, nor where it is said to be meant', () => {
    const wall = (bond: string, length: string, more = '') =>
      `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  bond ${bond}\n  thick 1 brick\n  stands held\n  length ${length}\n  height 12 courses\n${more}`;
    silent(wall('flemish', '1902.5 mm'), 'bond-broken');
    silent(wall('english', '1790 mm'), 'bond-broken');
    silent(wall('flemish', '1790 mm', '  fit run-1 half-bond\n'), 'bond-broken');
  });

  test('over a window it is broken at the window, and says why there', () => {
    const text = `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  bond flemish\n  thick 1 brick\n  stands held\n  length 3590 mm\n  height 16 courses\n  opening window\n    from left 1227.5 mm\n    width 910 mm\n    sill 4 courses\n    height 8 courses\n`;
    const told = findingsOf('bond-broken', text);
    const across = told.find((f) => f.message.includes('from the left end to the right end'));
    expect(across!.message).toContain('under or over the opening window. Reverse bond comes first');
  });
});

describe('reverse bond', () => {
  const work = (bond: string, thick: string, length: string) => {
    const text = `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  bond ${bond}\n  thick ${thick}\n  stands held\n  length ${length}\n  height 8 courses\n`;
    const [only] = jobOf(text, { 'firm.perp': FIRM }).works;
    const { term } = only!.figures.find((f) => f.key === 'bricks')!;
    const terms = [...allTerms(term)];
    return terms.flatMap((t) => (typeof t.detail === 'function' ? t.detail() : [])).join('\n');
  };

  test('is taken in stretcher bond on an odd half brick, and the working says so', () => {
    const said = work('stretcher', '1/2 brick', '1902.5 mm');
    expect(said).toContain(
      'Reverse bond: on an odd half brick one end of a course is a stretcher where the other is a half bat',
    );
    expect(said).not.toContain('Broken bond');
    silent(
      `perpend 1\nuse "firm.perp"\nwall n\n  brick red\n  stands held\n  length 1902.5 mm\n  height 7 courses\n`,
      'bond-broken',
    );
  });

  test('is not said where both ends are alike, nor where the bond is broken', () => {
    expect(work('stretcher', '1/2 brick', '2015 mm')).not.toMatch(/Reverse|Broken/);
    const broken = work('flemish', '1 brick', '1790 mm');
    expect(broken).toContain('Broken bond 900 mm from the left end of the wall, in the middle');
    expect(broken).not.toContain('Reverse bond:');
  });
});
