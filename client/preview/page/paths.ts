/** Parts of a drawing as paths of SVG, mm on the screen. */
import { INKS, type MarksPart, type RowPart } from '../../../shared/protocol/preview';
import type { Store } from './store';

/** To a thousandth of a mm. */
export const n = (value: number) => String(Math.round(value * 1000) / 1000 + 0);

export interface Path {
  readonly ink: string;
  readonly d: string;
}

export interface RowPaths {
  readonly x: number;
  readonly y: number;
  readonly paths: readonly Path[];
}

/** One path for the pieces of each ink: a course of any length is a few elements. */
export class Paths {
  /** Courses alike have one pattern, and so one set of paths. */
  private readonly known = new Map<string, readonly Path[]>();

  constructor(private readonly store: Store) {}

  /** Where the row stands, and its paths from there. */
  row({ frame: key, pattern, y, height }: RowPart): RowPaths | undefined {
    const frame = this.store.frame(key);
    if (!frame) return undefined;
    const { scale } = frame;
    const id = `${pattern} ${scale} ${height}`;
    let paths = this.known.get(id);
    if (!paths) this.known.set(id, (paths = this.pieces(pattern, scale, height)));
    return { x: frame.x / 100, y: frame.y / 100 - (y + height) / 10 / scale, paths };
  }

  private pieces(pattern: string, scale: number, height: number): Path[] {
    const all = this.store.pieces(pattern);
    const high = n(height / 10 / scale);
    const byInk = new Map<number, string>();
    for (let i = 0; i < all.length; i += 4) {
      const [x, width, ink] = [all[i]! / 10 / scale, n(all[i + 1]! / 10 / scale), all[i + 2]!];
      const d = `M${n(x)} 0h${width}v${high}h-${width}z`;
      byInk.set(ink, (byInk.get(ink) ?? '') + d);
    }
    return [...byInk].map(([ink, d]) => ({ ink: INKS[ink]!, d }));
  }

  /** Before a drawing is gone through again. */
  forget(): void {
    this.known.clear();
  }
}

/** Ends two by two. */
export function linePath(at: readonly number[]): string {
  let d = '';
  for (let i = 0; i + 3 < at.length; i += 4)
    d += `M${n(at[i]! / 100)} ${n(at[i + 1]! / 100)}L${n(at[i + 2]! / 100)} ${n(at[i + 3]! / 100)}`;
  return d;
}

export function shapePath(at: readonly number[]): string {
  const corners: string[] = [];
  for (let i = 0; i + 1 < at.length; i += 2)
    corners.push(`${n(at[i]! / 100)} ${n(at[i + 1]! / 100)}`);
  return corners.length > 2 ? `M${corners.join('L')}z` : '';
}

/** Lines and outlines of one ink together, outlines first. */
export function markPaths({
  lines,
  shapes,
}: MarksPart): { ink: string; d: string; open: boolean }[] {
  const byInk = new Map<string, { ink: string; d: string; open: boolean }>();
  const add = (ink: number, d: string, open: boolean) => {
    const key = `${open} ${ink}`;
    const known = byInk.get(key);
    if (known) known.d += d;
    else byInk.set(key, { ink: INKS[ink]!, d, open });
  };
  for (const { ink, at } of shapes) add(ink, shapePath(at), false);
  for (const { ink, at } of lines) add(ink, linePath(at), true);
  return [...byInk.values()];
}
