/** The line that a brick comes from, by where it lies in a face. */
import type { Box, Style } from '../../engine/drawing';
import { type Origins, SAME, type Thing } from './origins';

/** Joints beside a reveal are no wider, mm. */
const JOINT = 25;

/** Of all pieces of one height of a face: what is beside them is looked up once. */
export class PiecesAt {
  private readonly beside: readonly Thing[];
  private readonly middle: number;
  /** Whether anything that covers the work lies at this height. */
  private readonly covered: boolean;
  private plain: number | undefined;

  constructor(
    private readonly origins: Origins,
    y: number,
    height: number,
  ) {
    this.middle = y + height / 2;
    const here = ({ bottom, top }: Thing) => this.middle > bottom && this.middle < top;
    this.beside = origins.things.filter(here);
    this.covered = origins.tops.some(({ at }) => this.middle > at - SAME);
  }

  /** The line of a piece, as a place in the list. */
  of(style: Style, x: number, width: number): number {
    const { origins, middle } = this;
    const at = x + width / 2;
    const on = this.beside.find(({ from, to }) => at > from && at < to);
    if (on) return origins.of(on.line);
    const top = this.covered ? origins.topAt(at, middle) : undefined;
    if (top) return origins.of(top.line);
    if (style === 'projecting') return this.projecting();
    if (style === 'cut') return this.cut(x, width);
    return this.brick(x, width);
  }

  private brick(x: number, width: number): number {
    const { origins } = this;
    const reveal = this.beside.find(
      (thing) => thing.kind === 'opening' && touches(thing, x, width),
    );
    if (reveal) return origins.of(reveal.line);
    return this.end(x, width) ?? this.plainOne;
  }

  /** The line of a brick that stands at nothing. */
  get plainOne(): number {
    this.plain ??= this.plainBrick();
    return this.plain;
  }

  private plainBrick(): number {
    const { origins, middle } = this;
    if (middle < origins.damp) return origins.own('dpc');
    const band = origins.bandAt(middle);
    return band ? origins.of(band) : origins.bricks();
  }

  /** Toothing past an end is what the line of that end says. */
  private end(x: number, width: number): number | undefined {
    const { out } = this.origins;
    if (!out) return undefined;
    if (x < -SAME) return this.origins.own('left', 'corbel');
    return x + width > out.spec.length + SAME ? this.origins.own('right', 'corbel') : undefined;
  }

  /** The low courses are a plinth’s, the high ones a corbel’s. */
  projecting(): number {
    const { origins } = this;
    const half = ((origins.out?.spec.courses ?? 0) * origins.gauge) / 2;
    const keys = ['plinth', 'corbel'];
    return origins.own(...(this.middle > half ? keys.reverse() : keys));
  }

  /** A cut closes its stretch: it comes from what puts the nearer end of that where it is. */
  private cut(x: number, width: number): number {
    const { origins } = this;
    const away = (thing: Thing) => Math.max(thing.from - (x + width), x - thing.to);
    const near = [...this.beside].sort((a, b) => away(a) - away(b))[0];
    if (!near) return origins.own('length', 'size');
    return origins.within(near, near.kind === 'opening' ? 'from' : 'at');
  }
}

function touches({ from, to }: Thing, x: number, width: number): boolean {
  return Math.abs(x + width - from) < JOINT || Math.abs(x - to) < JOINT;
}

/** The line of something that is no brick of a course. */
export function fromOfBox(origins: Origins, { style, x, y, width, height }: Box): number {
  const [middle, up] = [x + width / 2, y + height / 2];
  if (style === 'opening') {
    const opening = origins.thingAt(middle, up, 'opening');
    return opening ? origins.of(opening.line) : origins.own();
  }
  return new PiecesAt(origins, y, height).of(style, x, width);
}
