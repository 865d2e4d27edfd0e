/** Heads, lintels and arches let into a wall that is set out. */
import { archGaps, carve, NOTHING_COUNTED, type Tally, wedgeArea } from '../../../setting-out';
import type { Cornered } from '../meet/quoins';
import { gapsOf, type Head } from './head';

/** Faces with the room that heads take cut out of them. */
export function withHeads(corners: Cornered, heads: readonly Head[]): Cornered {
  const gaps = gapsOf(heads);
  if (!gaps.length) return corners;
  const face = carve(corners.face, gaps);
  const laid = corners.laid === corners.face ? face : carve(corners.laid, gaps);
  const met = corners.met === corners.laid ? laid : carve(corners.met, gaps);
  return { ...corners, face, laid, met };
}

/** What arches take of the face over the whole gaps that bricks are cut to, mm². */
export function wedgesOf(heads: readonly Head[], gauge: number): number {
  return heads.reduce(
    (sum, { arch }) =>
      arch ? sum + wedgeArea(arch.arch, archGaps(arch.courses, arch.at), gauge) : sum,
    0,
  );
}

/** The wedges are no part of the wall: neither its bricks, by their share of a face, nor its joints. */
export function withoutWedges(
  heads: readonly Head[],
  { gauge, thickness, spec }: Cornered['face'],
): Tally {
  const wedges = wedgesOf(heads, gauge);
  const { unit, joints } = spec;
  const share = (unit.length * unit.height) / ((unit.length + joints.perpend) * gauge);
  return {
    ...NOTHING_COUNTED,
    brickVolume: -wedges * thickness * share,
    grossVolume: -wedges * thickness,
  };
}
