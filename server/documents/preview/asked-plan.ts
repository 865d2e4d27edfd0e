/** What a course on plan is asked for its parts: it knows its height by its course, and what lies before, behind and across. */
import type { Box, Chain, Drawing, Group } from '../../engine/drawing';
import type { Asked, SetAsked } from './asked';
import { fromOfStop, isStop } from './figures';
import { NOWHERE } from './lines';
import { type Origins, SAME, type Thing } from './origins';
import { PiecesAt } from './pieces';

/** Mm beyond a face that still belong to it. */
const OVER = 1;

export function plansAsked(origins: Origins): SetAsked {
  return {
    title: (group) => placeOf(origins, group),
    caption: (drawing) => new CourseAsked(origins, drawing).own,
    of: (drawing) => new CourseAsked(origins, drawing),
  };
}

/** An end, an opening or a pier of the wall. */
function placeOf(origins: Origins, { drawings: [first] }: Group): number {
  if (!first) return NOWHERE;
  const { extent, part } = first;
  if (part?.meets) return origins.own(...(part.meets.own === 'across' ? [part.meets.side] : ENDS));
  const course = new CourseAsked(origins, first);
  const thing = course.thingIn(extent.left, extent.right);
  if (thing) return origins.of(thing.line);
  const length = origins.out?.spec.length ?? Number.NaN;
  if (extent.left < OVER) return origins.own('left');
  return extent.right > length - OVER ? origins.own('right') : origins.own();
}

const ENDS = ['left', 'right'];

class CourseAsked implements Asked {
  private readonly at: PiecesAt;
  private readonly up: number;

  constructor(
    private readonly origins: Origins,
    private readonly drawing: Drawing,
  ) {
    const { gauge } = origins;
    const course = drawing.part?.course ?? 1;
    this.up = (course - 0.5) * gauge;
    this.at = new PiecesAt(origins, (course - 1) * gauge, gauge);
  }

  /** What all of its bricks come from that stand at nothing. */
  get own(): number {
    return this.at.plainOne;
  }

  pieces(): (box: Box) => number {
    return (box) => this.piece(box);
  }

  private piece({ style, x, y, width, height }: Box): number {
    const { origins } = this;
    const at = x + width / 2;
    const meets = this.otherAt(at, y + height / 2);
    if (meets !== undefined) return meets;
    const pier = this.thingAt(at, 'pier');
    if (pier) return origins.of(pier.line);
    if (style === 'block') return origins.own('backing');
    const past = this.pastFaces(y, y + height);
    return past ?? this.at.of(style, x, width);
  }

  /** A brick of another wall that meets it; nothing where it is of this one. */
  private otherAt(x: number, y: number): number | undefined {
    const { meets } = this.drawing.part ?? {};
    if (!meets) return undefined;
    const { thickness } = this.origins;
    const across = y < -OVER || y > thickness + OVER;
    if (meets.own === 'along') return across ? this.origins.own(...this.endsAt(x)) : undefined;
    return across ? this.origins.bricks() : this.origins.own(meets.side);
  }

  /** The line of the end that something is near. */
  private endsAt(x: number): readonly string[] {
    const length = this.origins.out?.spec.length ?? 0;
    return x < length / 2 ? ['left'] : ['right'];
  }

  /** Before the face stands what is laid out of it; behind it another skin. */
  private pastFaces(front: number, back: number): number | undefined {
    const { origins } = this;
    const { thickness } = origins;
    if (!origins.out) return undefined;
    if (front < -OVER) return this.at.projecting();
    return back > thickness + OVER ? origins.own('backing') : undefined;
  }

  thingAt(x: number, kind?: Thing['kind']): Thing | undefined {
    return this.origins.thingAt(x, this.up, kind);
  }

  /** A pier or an opening that a place of the wall is drawn for. */
  thingIn(from: number, to: number): Thing | undefined {
    const here = this.origins.things.filter(
      (thing) => thing.to > from + OVER && thing.from < to - OVER,
    );
    const piers = here.filter(({ kind }) => kind === 'pier');
    return piers[0] ?? here[0] ?? this.reveal(from, to);
  }

  /** The opening whose side the place ends at. */
  private reveal(from: number, to: number): Thing | undefined {
    const near = (a: number, b: number) => Math.abs(a - b) < 30;
    return this.origins.things.find((thing) => near(thing.from, to) || near(thing.to, from));
  }

  course(): undefined {
    return undefined;
  }

  stroke({ style }: Parameters<Asked['stroke']>[0]): number {
    return style === 'movement' ? this.origins.own('movement-joint') : NOWHERE;
  }

  shape(): number {
    return this.own;
  }

  label({ x, y, room }: Parameters<Asked['label']>[0]): number {
    const { width = 0, height = 0 } = room ?? {};
    return this.piece({ style: 'cut', x: x - width / 2, y: y - height / 2, width, height });
  }

  chain({ side, form, stops }: Chain, i: number): number {
    if (side === 'right') return this.through(stops, form === 'running' ? undefined : i);
    const at = stops[i] ?? 0;
    if (this.drawing.part?.meets?.own === 'across') return this.origins.own('left', 'right');
    if (isStop(this.origins, at)) return fromOfStop(this.origins, at);
    const pier = this.thingAt(at, 'pier');
    return pier ? this.origins.within(pier, 'size') : this.origins.joints();
  }

  /** Through the work: its own thickness, what stands behind it, or how deep a pier is. */
  private through(stops: readonly number[], i: number | undefined): number {
    const { origins } = this;
    const { left, right } = this.drawing.extent;
    if (i === undefined) return origins.own('size', 'thick');
    const [from, to] = [stops[i] ?? 0, stops[i + 1] ?? 0];
    const isWall = from > -SAME && to < origins.thickness + SAME;
    if (isWall) return origins.own('thick', 'size');
    const pier = this.thingIn(left, right);
    if (pier?.kind === 'pier') return origins.within(pier, 'size');
    if (this.drawing.part?.meets) return origins.own(...ENDS);
    return to < SAME ? origins.own('plinth', 'corbel', 'thick') : origins.own('backing', 'thick');
  }

  rod(): number {
    return this.own;
  }
}
