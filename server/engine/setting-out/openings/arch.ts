/** Arches struck from one centre: segmental and semicircular, in rings half a brick deep. */

/** What an arch is struck from, mm. */
export interface ArchShape {
  /** Clear, between the springings. */
  span: number;
  /** From the springing line up to the crown of the soffit: at most half the span. */
  rise: number;
  rings: number;
  /** Depth of one ring: a header on its end. */
  ring: number;
  /** Joint between two rings. */
  bed: number;
}

/** An arch as it is set out, mm. */
export interface Arch extends ArchShape {
  /** Of the soffit (intrados). */
  radius: number;
  /** Of the back of the outermost ring (extrados). */
  back: number;
  /** Centre below the springing line; nought for a semicircle. */
  drop: number;
  /** Half the angle it is struck through, and what the skewback leans from the upright, radians. */
  lean: number;
  /** Height of the extrados at its ends over the springing line: what the skewback takes up. */
  skewback: number;
  /** Height of the extrados at the crown over the springing line. */
  crown: number;
}

/** Rises that differ less from half the span make a semicircle, mm. */
const SAME = 1e-6;

/** Radius of an arc from its chord and rise: (s²/4 + h²) / 2h. Euclid III.35; sagitta formula. */
export function radiusOf(span: number, rise: number): number {
  return (span ** 2 / 4 + rise ** 2) / (2 * rise);
}

/** Nothing where the sizes make no arch: no span, no rise, a rise over half the span, no ring. */
export function archOf(shape: ArchShape): Arch | null {
  const { span, rise, rings, ring, bed } = shape;
  const sound = [span, rise, rings, ring].every((size) => Number.isFinite(size) && size > 0);
  if (!sound || !(bed >= 0) || rise > span / 2 + SAME) return null;
  const round = Math.abs(rise - span / 2) <= SAME;
  const radius = radiusOf(span, rise);
  const back = radius + rings * ring + (rings - 1) * bed;
  const drop = round ? 0 : radius - rise;
  const lean = round ? Math.PI / 2 : Math.asin(Math.min(1, span / (2 * radius)));
  const skewback = round ? 0 : back * Math.cos(lean) - drop;
  return { ...shape, radius, back, drop, lean, skewback, crown: back - drop };
}

/** Half the width that opening and arch together take at a height over the springing line, mm; nought over the crown. */
export function halfWidthAt(arch: Arch, height: number): number {
  if (height < arch.skewback) return arch.span / 2 + height * Math.tan(arch.lean);
  const up = height + arch.drop;
  return up < arch.back ? Math.sqrt(arch.back ** 2 - up ** 2) : 0;
}

/** Of the opening over its springing line, mm²: a segment of a circle. */
export function soffitArea({ radius, lean }: Arch): number {
  return (radius ** 2 * (2 * lean - Math.sin(2 * lean))) / 2;
}

/** Of the rings, with their joints, mm²: a part of an annulus. */
export function ringArea({ radius, back, lean }: Arch): number {
  return lean * (back ** 2 - radius ** 2);
}

/** Width over all, at the widest, mm. */
export function widthOver(arch: Arch): number {
  return 2 * Math.max(halfWidthAt(arch, 0), halfWidthAt(arch, arch.skewback));
}
