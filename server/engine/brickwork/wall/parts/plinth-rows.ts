/** What a plinth is made of: rows of stretchers before the faces of its wall. */
import type { LineFacts } from '../../../resolve/env';
import { type BondPattern, type OpeningSpec, type SettingOut, setOut } from '../../../setting-out';
import { jointsIn, type Masonry } from '../../masonry';
import type { WallPlan } from '../spec';

/** A row half a brick thick is laid in no other bond. */
const STRETCHERS: BondPattern = {
  name: 'stretcher',
  courses: [{ units: ['stretcher'] }, { units: ['stretcher'], start: 0.5 }],
  lap: 0.5,
};

/** Rows it may be thicker by. */
const MOST_ROWS = 4;

/** Mm that a length may be off so many half bricks: what a joint takes up. */
const NEAR = 6;

export type Face = 'front' | 'back';

export interface PlinthRows {
  /** Of all of them. */
  readonly rows: number;
  /** Whole rows before each face; nothing where half bricks are shared between both. */
  readonly sides?: Readonly<Record<Face, number>>;
  readonly courses: number;
}

/** Nothing where what it projects is no number of half bricks. */
export function plinthIn(masonry: Masonry): PlinthRows | undefined {
  const line = masonry.facts.line('plinth');
  const rows = line && rowsOf(line, masonry);
  if (!line || rows === undefined) return undefined;
  const courses = Math.floor(line.number('courses') ?? 0);
  if (line.word('faces') !== 'both') return { rows, courses, sides: { front: rows, back: 0 } };
  return rows % 2
    ? { rows, courses }
    : { rows, courses, sides: { front: rows / 2, back: rows / 2 } };
}

function rowsOf(line: LineFacts, masonry: Masonry): number | undefined {
  const joints = jointsIn(masonry);
  const size = masonry.brick.size;
  if (!joints || !size) return undefined;
  const value = line.values.project;
  const out = (line.number('project') ?? 0) * (line.word('faces') === 'both' ? 2 : 1);
  const inBricks = value?.kind === 'quantity' && value.unit?.dimension === 'bricks';
  const half = inBricks ? 0.5 : (size.length + joints.perpend) / 2;
  const rows = Math.round(out / half);
  const off = Math.abs(out - rows * half);
  return rows >= 1 && rows <= MOST_ROWS && off <= (inBricks ? 1e-9 : NEAR) ? rows : undefined;
}

/** One row over the length of its wall. It stops at openings and piers as the wall does, and where `stops` say. */
export function plainRow({ spec }: WallPlan, stops: readonly OpeningSpec[] = []): SettingOut {
  const openings = [...spec.openings, ...stops].sort((a, b) => a.from - b.from);
  return setOut({ ...spec, openings, thickness: 1, bond: STRETCHERS, decided: [] });
}

/** Over each stretch of ground. */
export function plinthZones(courses: number, { ground }: WallPlan) {
  return ground.map(({ from, to, level }) => {
    return { from, to, courses: { from: level, to: level + courses } };
  });
}
