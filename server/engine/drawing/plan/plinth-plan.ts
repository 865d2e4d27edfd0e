/** A plinth on plan: its rows of stretchers before the wall, and behind it. */
import type { FaceProjection } from '../../brickwork/needs';
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
  const { laid, areas, both, rows = 0 } = plinth;
  const here = areas.filter(({ courses }) => course >= courses.from && course < courses.to);
  if (!laid || !here.length || !hasRows(plinth)) return [];
  const inside = ({ x, along }: PlacedPiece) =>
    here.some(({ from, to }) => x + along / 2 > from && x + along / 2 < to);
  const row = placeCourse(laid, course, low, high).filter(inside);
  const pitch = laid.thickness + laid.spec.joints.perpend;
  const each = both ? rows / 2 : rows;
  const before = Array.from({ length: each }, (_, i) => 0 - pitch * (i + 1));
  const behind = both
    ? Array.from({ length: each }, (_, i) => wall.thickness + pitch * (i + 1) - laid.thickness)
    : [];
  return [...before, ...behind].flatMap((y) => row.map((piece) => ({ ...piece, y: piece.y + y })));
}
