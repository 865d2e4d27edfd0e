/** Bricks in the rings of an arch, and the joints they leave. */
import type { Arch } from './arch';

/** One ring, laid from springing to springing with a joint at each end. */
export interface Ring {
  /** Radii of its soffit and its back, mm. */
  inner: number;
  outer: number;
  /** Bricks round it: an odd number, so that there is a key. */
  count: number;
  /** Joint at the soffit and at the back, mm. */
  soffit: number;
  back: number;
}

/** How its bricks are laid: whole, so that the joints are wedges; or cut to wedges (axed), so that the joints are even. */
export type Voussoir = 'rough' | 'axed';

/** More bricks than any ring has. */
const MOST = 100_000;

function oddWithin(arc: number, each: number, joint: number): number {
  const most = Math.min(MOST, Math.floor((arc - joint) / (each + joint) + 1e-9));
  return most % 2 === 0 ? most - 1 : most;
}

/** As many as go in, at `joint` or wider: a rough ring at its soffit, where bricks come closest; an axed one at its back, where they are whole. */
function ringOf(
  inner: number,
  outer: number,
  lean: number,
  each: number,
  joint: number,
  how: Voussoir,
): Ring {
  const arc = 2 * lean * (how === 'rough' ? inner : outer);
  const count = Math.max(1, oddWithin(arc, each, joint));
  const left = (radius: number) => (2 * lean * radius - count * each) / (count + 1);
  const back = left(outer);
  return { inner, outer, count, soffit: how === 'rough' ? left(inner) : back, back };
}

/**
 * The rings of an arch from the soffit outward. `each` is the height of a brick, mm, which it takes
 * of the ring; `joint` the least joint, mm. Lengths are taken along the arc: a flat brick on it stands
 * off by less than a tenth of a millimetre from 500 mm of radius up.
 */
export function ringsOf(arch: Arch, each: number, joint: number, how: Voussoir = 'rough'): Ring[] {
  const step = arch.ring + arch.bed;
  return Array.from({ length: arch.rings }, (_, i) => {
    const inner = arch.radius + i * step;
    return ringOf(inner, inner + arch.ring, arch.lean, each, joint, how);
  });
}

/** Of the bricks in a ring, as they show in the face, mm². An axed brick is a wedge between even joints. */
export function ringBricks(ring: Ring, lean: number, each: number, how: Voussoir): number {
  const { inner, outer, count, back } = ring;
  if (how === 'rough') return count * each * (outer - inner);
  return lean * (outer ** 2 - inner ** 2) - (count + 1) * back * (outer - inner);
}
