/** What a wall takes: bricks of each kind, mortar of each mix, what is bought by the piece, and hours. */
import { phrase } from '../../../../shared/phrase';
import { daysForHeight } from '../../findings/lift';
import { gapsIn, type Remark } from '../../findings/remark';
import type { Gang } from '../../labour/gang';
import { taskHours } from '../../labour/output';
import { laidIn } from '../../mortar/lays';
import { mostCourses, sumTallies } from '../../setting-out';
import { sum, type Term, withGaps } from '../../working/term';
import { apartNeeds, dampApart } from '../apart';
import { type Counted, laidFrom, mortarOf } from '../count';
import { volumeShown } from '../lengths';
import type { Masonry } from '../masonry';
import type { BrickNeed, MixNeed, Needs, PieceNeed, TaskNeed } from '../needs';
import { inputsOf, type WallCounts } from './counts';
import { faceShown } from './figures';
import type { Part, PartBricks } from './parts/part';
import type { WallPlan } from './spec';
import { wallFooting } from './tops/stepped-footing';

/** A wall that is counted, with what its features add. */
export interface WallCounted {
  readonly masonry: Masonry;
  readonly plan: WallPlan;
  readonly counts: WallCounts;
  readonly parts: readonly Part[];
  readonly caps: readonly PieceNeed[];
  readonly remarks: readonly Remark[];
  readonly gang: Gang;
}

/** All of it in the wall’s own terms: what is missing is a gap of each amount that hangs on it. */
export function wallNeeds(of: WallCounted): Needs {
  return new WallNeeds(of).needs();
}

class WallNeeds {
  constructor(private readonly of: WallCounted) {}

  needs(): Needs {
    const bricks = this.bricks();
    const footing = wallFooting(this.of.masonry, this.of.plan, this.length(), this.of.counts);
    const tasks = this.tasks(footing);
    const mortar = this.mortar();
    const laid = bricks.map((b) => b.bricks);
    const apart = this.apart(tasks);
    const lays = laidIn(mortar.litres, laid, tasks, this.of.masonry, apart);
    const mixes = [
      { ...mortar, lays },
      ...(footing ? [footing] : []),
      ...apart,
      ...this.of.parts.flatMap((p) => p.mixes ?? []),
    ];
    const height = this.of.counts.out.gauge * mostCourses(this.of.plan.ground, this.of.plan.top);
    const leastDays = daysForHeight(height, this.of.masonry.env);
    const pieces = [...this.of.caps, ...this.of.parts.flatMap((p) => p.pieces ?? [])];
    return { bricks, mixes, pieces, tasks, leastDays };
  }

  private bricks(): BrickNeed[] {
    const { brick } = this.of.masonry;
    const { wall, piers, dpc } = this.of.counts;
    const parts = [wall, piers, ...this.own()]
      .filter((c): c is Counted => c !== undefined)
      .map((c) => c.bricks);
    const apart = this.of.parts.flatMap((p) => p.apart ?? []).map(({ mix }) => mix);
    const others = [dpc?.mix, ...apart].flatMap((mix) => mix?.gaps ?? []);
    const gaps = [...this.of.masonry.gaps, ...gapsIn(this.of.remarks), ...others];
    const main = sum(
      phrase`Bricks`,
      'bricks',
      parts.map((p) => withGaps(p, gaps)),
    );
    const needs: BrickNeed[] = [
      { brick: brick.name, block: brick.facts?.block, bricks: main, origin: brick.origin },
    ];
    if (dpc)
      needs.push({
        brick: dpc.brick.name,
        block: dpc.brick.facts?.block,
        bricks: withGaps(dpc.counted.bricks, dpc.brick.gaps),
        origin: dpc.line.at('brick'),
      });
    for (const { brick: other, counted } of this.others())
      needs.push({
        brick: other.name,
        block: other.facts?.block,
        bricks: withGaps(counted.bricks, other.gaps),
        origin: other.origin,
      });
    return needs;
  }

  /** Bricks of the wall's features that are the wall's own kind. */
  private own(): Counted[] {
    const mine = this.of.parts.flatMap((p) => p.bricks ?? []);
    return mine.filter((b) => this.isOwn(b)).map((b) => b.counted);
  }

  /** Those of another kind. */
  private others(): PartBricks[] {
    return this.of.parts.flatMap((p) => p.bricks ?? []).filter((b) => !this.isOwn(b));
  }

  private isOwn({ brick }: PartBricks): boolean {
    return brick.name === this.of.masonry.brick.name;
  }

  private mortar(): MixNeed {
    const { mix, brick } = this.of.masonry;
    const { wall, piers, dpc } = this.of.counts;
    const inIt = this.of.parts.flatMap((p) => p.bricks ?? []).filter((b) => !b.mix);
    const own = [wall, piers, ...inIt.filter((b) => this.isOwn(b)).map((b) => b.counted)];
    const mortar = this.of.parts.flatMap((p) => p.mortar ?? []);
    const tallies = own.flatMap((c) => (c ? [c.tally] : []));
    const laid = [{ tally: sumTallies([...tallies, ...mortar]), brick }];
    if (dpc && !dpc.mix) laid.push({ tally: dpc.counted.tally, brick: dpc.brick });
    for (const { counted, brick: other } of inIt.filter((b) => !this.isOwn(b)))
      laid.push({ tally: counted.tally, brick: other });
    const litres = mortarOf(phrase`Mortar`, laid, this.of.masonry.env, this.laidFrom());
    return {
      mix: mix.name,
      block: mix.facts?.block,
      litres: withGaps(litres, mix.gaps),
      origin: mix.origin,
    };
  }

  /** In mixes of their own: the damp course, the coping. */
  private apart(tasks: readonly TaskNeed[]): MixNeed[] {
    const { dpc, wall, bands } = this.of.counts;
    const all = this.of.parts.flatMap((p) => p.apart ?? []);
    if (dpc?.mix) {
      const { brick, counted } = dpc;
      const laid = [wall, counted, ...bands.map((b) => b.counted)].map((c) => c.bricks);
      all.unshift(dampApart(dpc.mix, { tally: counted.tally, brick }, counted.bricks, laid, tasks));
    }
    return apartNeeds(all, this.of.masonry, this.laidFrom());
  }

  private laidFrom(): readonly Term[] {
    return laidFrom(this.of.masonry, inputsOf(this.of.masonry, this.of.plan));
  }

  private length(): Term {
    return this.of.masonry.facts.line('length')!.term('length', phrase`length of the wall`);
  }

  private tasks(footing: MixNeed | undefined): TaskNeed[] {
    const { wall, piers, dpc, bands } = this.of.counts;
    const others = [...(dpc ? [dpc] : []), ...bands].map((o) => o.counted.bricks);
    const face = others.length
      ? sum(phrase`bricks laid in the wall`, 'bricks', [wall.bricks, ...others])
      : wall.bricks;
    const tasks: [string, string, Term | undefined][] = [
      ['facework', phrase`Laying the wall`, face],
      ['pier-work', phrase`Laying the piers`, piers?.bricks],
      ['footing', phrase`Digging and concreting`, footing?.litres],
      [
        'cap',
        phrase`Bedding caps`,
        this.of.caps.length
          ? sum(
              phrase`caps`,
              'pieces',
              this.of.caps.map((c) => c.count),
            )
          : undefined,
      ],
    ];
    const own = tasks.flatMap(([task, label, amount]) =>
      amount ? [{ task, hours: this.hours(task, label, amount) }] : [],
    );
    return [...own, ...this.of.parts.flatMap((p) => p.tasks ?? [])];
  }

  private hours(task: string, label: string, amount: Term): Term {
    const faces = task === 'facework' ? () => this.facework() : undefined;
    return taskHours(task, label, amount, this.of.masonry.env, this.of.gang, faces);
  }

  /** What its bricks make, for an output by area or by volume: its face, and that as deep as the wall. */
  private facework(): Term[] {
    const { wall, dpc, bands } = this.of.counts;
    const laid = [wall, ...[...(dpc ? [dpc] : []), ...bands].map((o) => o.counted)];
    const { grossVolume } = sumTallies(laid.map((c) => c.tally));
    const args = this.laidFrom();
    return [
      faceShown(this.of.masonry, this.of.plan, this.of.counts),
      volumeShown(this.of.masonry.env, phrase`brickwork of the wall`, grossVolume, { args }),
    ];
  }
}
