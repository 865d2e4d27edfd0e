/**
 * Which line of a piece of work each part of its drawing comes from. A drawing tells nothing of lines: it is asked
 * where a part lies, and the work, what stands there.
 */
import { toBase } from '../../../shared/units';
import type { TopRun } from '../../engine/brickwork/faces';
import type { Work } from '../../engine/brickwork/work';
import { wordOf } from '../../engine/resolve/book';
import type { SettingOut } from '../../engine/setting-out';
import { dpcCourses } from '../work-tops';
import { type Lines, lineIn, type ReadLine } from './lines';

/** Lengths nearer than this are the same, mm. */
export const SAME = 0.6;

/** Something with a line of its own that takes up part of a face: mm along it, and up. */
export interface Thing {
  readonly kind: 'opening' | 'pier';
  readonly line: ReadLine | undefined;
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
  /** The side that its line puts somewhere; the other is where its width leaves it. */
  readonly put: 'from' | 'to';
}

export interface Top extends TopRun {
  readonly at: number;
  readonly line: ReadLine | undefined;
}

/** What stands where in a piece of work. */
export class Origins {
  readonly things: readonly Thing[];
  readonly tops: readonly Top[];
  readonly out: SettingOut | undefined;
  readonly gauge: number;
  /** Of a wall, mm; of a pier how deep it is. */
  readonly thickness: number;
  /** Up to this height lie the bricks that keep damp out, mm; nought where there are none. */
  readonly damp: number;
  private readonly heading: ReadLine | undefined;

  constructor(
    readonly work: Work,
    readonly lines: Lines,
  ) {
    const { settingOut, rebuilt, pier } = work.facts;
    this.heading = work.block.read.heading;
    lines.ofBlock(work.block);
    this.out = settingOut ?? rebuilt?.settingOut;
    const unit = this.out?.spec.unit ?? pier?.unit ?? rebuilt?.pier?.unit;
    const joints = this.out?.spec.joints ?? pier?.joints ?? rebuilt?.pier?.joints;
    this.gauge = this.out?.gauge ?? (unit && joints ? unit.height + joints.bed : 0);
    this.thickness = this.out?.thickness ?? (pier ?? rebuilt?.pier)?.plan.depth ?? 0;
    this.things = [...this.openings(), ...this.piers()];
    this.tops = (work.facts.tops ?? []).map((top) => this.topOf(top, joints?.bed ?? 0));
    this.damp = (dpcCourses(work) ?? 0) * this.gauge;
  }

  private openings(): Thing[] {
    const { openings = [], courses = 0 } = this.out?.spec ?? {};
    return openings.map(({ name, from, width, sill, top }) => ({
      kind: 'opening',
      ...putBy(this.line('opening', name)),
      from,
      to: from + width,
      bottom: sill * this.gauge,
      top: (top ?? courses) * this.gauge,
    }));
  }

  private piers(): Thing[] {
    return (this.out?.spec.piers ?? []).map(({ name, from, width, courses, base = 0 }) => ({
      kind: 'pier',
      ...putBy(this.line('pier', name)),
      from,
      to: from + width,
      bottom: base * this.gauge,
      top: (base + courses) * this.gauge,
    }));
  }

  private topOf(top: TopRun, bed: number): Top {
    const at = top.on * this.gauge + (top.over ?? 0) + bed;
    const middle = (top.from + top.to) / 2;
    const under = this.things.find(
      (thing) => thing.kind === 'pier' && isOver(thing, middle) && thing.top <= at + SAME,
    );
    const own = under && coverOf(under.line);
    return { ...top, at, line: own ?? coverOf(this.heading) };
  }

  /** A line of the work itself. */
  line(key: string, name?: string): ReadLine | undefined {
    return lineIn(this.heading, key, name);
  }

  /** The first of these lines that there is, else the heading: its place in the list. */
  own(...keys: readonly string[]): number {
    const found = keys.map((key) => this.line(key)).find(Boolean);
    return found ? this.of(found) : this.lines.of(this.heading, this.work.block);
  }

  of(line: ReadLine | undefined): number {
    return line ? this.lines.of(line, this.work.block) : this.own();
  }

  /** Bricks are most of what is drawn: they come from the line that names them. */
  bricks(): number {
    const line = this.line('brick') ?? this.line('bond') ?? this.heading;
    return this.lines.of(line, this.work.block);
  }

  /** The line by which the ground or the top steps so far from the left end. */
  stepAt(x: number): ReadLine | undefined {
    return this.heading?.body.find(
      ({ kind, values }) =>
        (kind.key === 'ground' || kind.key === 'top') &&
        Object.values(values).some((value) => isAway(value, x)),
    );
  }

  /** What says where joints lie: a line of its own, the bond, or the brick. */
  joints(): number {
    const line = this.line('gauge') ?? this.line('joints');
    return line ? this.of(line) : this.bricks();
  }

  /** A line within that of an opening or a pier, else its own. */
  within(thing: Thing, ...keys: readonly string[]): number {
    const inner = keys.map((key) => lineIn(thing.line, key)).find(Boolean);
    return this.of(inner ?? thing.line);
  }

  thingAt(x: number, y: number, kind?: Thing['kind']): Thing | undefined {
    return this.things.find(
      (thing) =>
        (!kind || thing.kind === kind) &&
        isOver(thing, x) &&
        y > thing.bottom - SAME &&
        y < thing.top + SAME,
    );
  }

  /** What covers the work at a place. */
  topAt(x: number, y: number): Top | undefined {
    return this.tops.find(
      ({ from, to, at, height }) =>
        x > from - SAME && x < to + SAME && y > at - SAME && y < at + Math.max(height, 50) + SAME,
    );
  }

  /** The band in another brick that a height lies in. */
  bandAt(y: number): ReadLine | undefined {
    const course = Math.floor(y / this.gauge) + 1;
    return this.heading?.body.find(({ kind, values }) => {
      if (kind.key !== 'band' || values.first?.kind !== 'quantity') return false;
      const last = values.last?.kind === 'quantity' ? values.last : values.first;
      return values.first.low.lte(course) && last.low.gte(course);
    });
  }
}

function isAway(value: ReadLine['values'][string], x: number): boolean {
  if (value?.kind !== 'quantity' || !value.unit) return false;
  return Math.abs(toBase(value.low, value.unit).toNumber() - x) < SAME;
}

function isOver({ from, to }: Thing, x: number): boolean {
  return x > from - SAME && x < to + SAME;
}

/** An opening is so far from the left or the right; a pier at an end, or so far from it. */
function putBy(line: ReadLine | undefined): Pick<Thing, 'line' | 'put'> {
  const values = lineIn(line, 'from')?.values ?? lineIn(line, 'at')?.values;
  const side = wordOf(values?.end ?? (values?.opening ? undefined : values?.side));
  return { line, put: side === 'right' ? 'to' : 'from' };
}

function coverOf(line: ReadLine | undefined): ReadLine | undefined {
  return lineIn(line, 'cap') ?? lineIn(line, 'coping');
}
