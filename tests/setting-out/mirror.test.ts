/** A wall seen from behind is the same wall: what is counted does not know left from right. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { setOut, type Tally, tally, type WallSpec } from '../../server/engine/setting-out';
import { builtFace, rulesOf } from '../../server/engine/setting-out/place/built';
import { proveFace } from '../../server/engine/setting-out/prove';
import { coordinatedWall, plainWall } from './arbitrary';

function mirrored(spec: WallSpec): WallSpec {
  const over = <T extends { from: number; width: number }>(each: T): T => ({
    ...each,
    from: spec.length - each.from - each.width,
  });
  return {
    ...spec,
    left: spec.right,
    right: spec.left,
    openings: spec.openings.map(over).reverse(),
    piers: spec.piers.map(over).reverse(),
  };
}

/** What was laid, cuts to the thousandth of a millimetre. */
function pieces({ wholes, halves, threeQuarters, closers, cuts }: Tally) {
  const lengths = cuts.map(({ length, count }) => [length.toFixed(3), count]);
  return { wholes, halves, threeQuarters, closers, cuts: lengths };
}

describe('the mirror image of a wall', () => {
  test('has the same halves, fits and clear stretches, and the same pieces', () => {
    fc.assert(
      fc.property(coordinatedWall, ({ spec }) => {
        const [one, other] = [setOut(spec), setOut(mirrored(spec))];
        const said = (out: typeof one) =>
          out.bands.map(({ from, to, segments }) => ({
            from,
            to,
            segments: segments.map(({ halves, fits }) => `${halves} ${fits}`),
          }));
        const turned = said(other).map((band) => ({ ...band, segments: band.segments.reverse() }));
        expect(turned).toEqual(said(one));
        const [a, b] = [tally(one), tally(other)];
        expect(b.grossVolume / a.grossVolume).toBeCloseTo(1, 9);
        expect(pieces(b)).toEqual(pieces(a));
        expect(proveFace(builtFace(other), rulesOf(other.spec))).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test('of a plain wall has the same pieces', () => {
    fc.assert(
      fc.property(plainWall, (spec) => {
        const out = setOut(spec);
        // Toothed at both ends and with nothing in it, it is the left that the pattern is set out from.
        fc.pre(spec.left !== 'toothed' || spec.right !== 'toothed');
        expect(pieces(tally(setOut(mirrored(spec))))).toEqual(pieces(tally(out)));
      }),
      { numRuns: 500 },
    );
  });
});
