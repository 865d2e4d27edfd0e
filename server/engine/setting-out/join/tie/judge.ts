/** Whether a course that was opened may be laid so: its front as it was, its back lapping the courses over and under it, and no hole left. */
import { placeCourse } from '../../place/course';
import type { Area, PlacedPiece, SettingOut } from '../../types';
import { closesUp } from './closes';
import { brickOf, lapOf } from './cross';
import { SAME } from './fill';
import type { Room } from './open';

const REACH = 4;

/** Joints in the back of a wall near `box`, mm along it. */
export function backJoints(out: SettingOut, course: number, box: Area): number[] {
  const reach = REACH * brickOf(out);
  const near = placeCourse(out, course, box.x - reach, box.x + box.width + reach);
  return jointsAt(near, out.thickness);
}

function jointsAt(pieces: readonly PlacedPiece[], back: number): number[] {
  const shown = pieces.filter((p) => p.y + p.across > back - SAME).sort((a, b) => a.x - b.x);
  return shown.slice(1).map((p, i) => (p.x + shown[i]!.x + shown[i]!.along) / 2);
}

/** Whether what runs in stands clear of the joints over and under it: nothing that is laid beside it would mend that. */
export function standsClear(
  out: SettingOut,
  { x, width }: Area,
  was: readonly number[],
  over: readonly number[],
): boolean {
  const half = out.spec.joints.perpend / 2;
  const wanted = lapOf(out);
  return [x - half, x + width + half].every(
    (edge) =>
      was.some((w) => Math.abs(w - edge) < SAME) ||
      over.every((other) => Math.abs(other - edge) >= wanted),
  );
}

const boxPiece = ({ x, y, width, height }: Area): PlacedPiece => {
  return { piece: 'cut', x, y, along: width, across: height };
};

export class Judge {
  private readonly was: readonly number[];
  private readonly fronts: readonly PlacedPiece[];
  private readonly outline: Area;
  private readonly stays: readonly PlacedPiece[];

  /** @param over joints in the back of the courses over and under it */
  constructor(
    private readonly out: SettingOut,
    private readonly room: Room,
    private readonly box: Area,
    private readonly over: readonly number[],
  ) {
    this.was = jointsAt([...room.round, ...room.kept, ...room.freed], out.thickness);
    this.fronts = room.freed.filter((p) => p.y < SAME);
    const all = room.windows.filter((w) => w !== undefined);
    const joint = out.spec.joints.perpend;
    const from = Math.min(...all.map((w) => w.from)) - joint / 2;
    const to = Math.max(...all.map((w) => w.to)) + joint / 2;
    this.outline = { x: from, y: 0, width: to - from, height: out.thickness };
    const near = (p: PlacedPiece) => p.x < to + joint && p.x + p.along > from - joint;
    this.stays = [...room.round, ...room.kept].filter(near);
  }

  /** Whether a joint could stand in the back there, whatever is laid: `x` may be as much off as the joints allow. */
  mayPart(x: number): boolean {
    const { limits, joints } = this.out.spec;
    const off = Math.max(limits.most - joints.perpend, joints.perpend - limits.least, 0) / 2;
    return (
      this.was.some((w) => Math.abs(w - x) < SAME + off) ||
      this.over.every((other) => Math.abs(other - x) >= lapOf(this.out) - off)
    );
  }

  passes(pieces: readonly PlacedPiece[]): boolean {
    return this.frontStays(pieces) && this.backLaps(pieces) && this.closes(pieces);
  }

  private frontStays(pieces: readonly PlacedPiece[]): boolean {
    const now = pieces.filter((p) => p.y < SAME);
    const same = (a: PlacedPiece, b: PlacedPiece) =>
      Math.abs(a.x - b.x) < SAME && Math.abs(a.along - b.along) < SAME;
    return (
      now.length === this.fronts.length && now.every((a) => this.fronts.some((b) => same(a, b)))
    );
  }

  /** Only joints that were not there before: what the wall's own bond does elsewhere is not asked here. */
  private backLaps(pieces: readonly PlacedPiece[]): boolean {
    const { round, kept } = this.room;
    const laid = [...round, ...kept, ...pieces, boxPiece(this.box)];
    const wanted = lapOf(this.out);
    return jointsAt(laid, this.out.thickness).every(
      (x) =>
        this.was.some((w) => Math.abs(w - x) < SAME) ||
        this.over.every((other) => Math.abs(other - x) >= wanted),
    );
  }

  /** What is round it and stays is not asked: nothing that is laid here would mend it. */
  private closes(pieces: readonly PlacedPiece[]): boolean {
    const { limits, joints } = this.out.spec;
    const least = Math.min(limits.least, joints.perpend);
    const most = Math.max(limits.most, joints.perpend);
    return closesUp([...pieces, boxPiece(this.box)], this.stays, this.outline, { least, most });
  }
}
