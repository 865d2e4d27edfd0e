/** A plinth on plan: its rows of stretchers before the wall, and behind it. */
import type { FaceProjection, ProjectingRow } from '../../brickwork/faces';
import { type PlacedPiece, placeCourse, type SettingOut } from '../../setting-out';

/** Whether its rows lie before the wall and behind it whole: half bricks shared between both faces lie within. */
export function hasRows({ both, rows = 0 }: FaceProjection): boolean {
  return rows > 0 && (!both || rows % 2 === 0);
}

/** Its pieces in one course of the wall, between two points along it. */
export function plinthRows(
  plinth: FaceProjection,
  wall: SettingOut,
  course: number,
  low: number,
  high: number,
): PlacedPiece[] {
  if (plinth.turned) return turnedRows(plinth, wall, course, low, high);
  const { laid, areas, both, rows = 0 } = plinth;
  const here = areas.filter(({ courses }) => course >= courses.from && course < courses.to);
  if (!laid || !here.length || !hasRows(plinth)) return [];
  const inside = ({ x, along }: PlacedPiece) =>
    here.some(({ from, to }) => x + along / 2 > from && x + along / 2 < to);
  const row = placeCourse(laid, course, low, high).filter(inside);
  const each = both ? rows / 2 : rows;
  const faces = both ? (['front', 'back'] as const) : (['front'] as const);
  return faces.flatMap((face) =>
    Array.from({ length: each }, (_, i) => lying(row, { face, row: i + 1, laid }, wall)).flat(),
  );
}

/** Each row as it lies: at corners rows are not all as long as one another. */
function turnedRows(
  { turned = [] }: FaceProjection,
  wall: SettingOut,
  course: number,
  low: number,
  high: number,
): PlacedPiece[] {
  return turned.flatMap((row) => {
    const here = row.zones.filter(
      ({ courses: { from, to } }) => course >= from && course < (to ?? Number.POSITIVE_INFINITY),
    );
    if (!here.length) return [];
    const pieces = placeCourse(row.laid, course, low, high).filter(({ x, along }) =>
      here.some(({ from, to }) => x + along / 2 > from && x + along / 2 < to),
    );
    return lying(pieces, row, wall);
  });
}

type Row = Pick<ProjectingRow, 'face' | 'row' | 'laid'>;

/** A joint from the wall, and from the row before it. */
function lying(pieces: readonly PlacedPiece[], { face, row, laid }: Row, wall: SettingOut) {
  const pitch = laid.thickness + laid.spec.joints.perpend;
  const y = face === 'front' ? 0 - pitch * row : wall.thickness + pitch * row - laid.thickness;
  return pieces.map((piece) => ({ ...piece, y: piece.y + y }));
}

/** Mm that its rows reach past a face, and so past the end of a wall that it turns a corner with. */
export function plinthDeep(plinth: FaceProjection | undefined): number {
  const { laid, rows = 0 } = plinth ?? {};
  return laid ? rows * (laid.thickness + laid.spec.joints.perpend) : 0;
}
