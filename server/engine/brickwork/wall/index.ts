/** A wall: laid, counted, timed, and looked at for what does not work and what is not safe. */

import { daysForHeight } from '../../findings/lift';
import type { Remark } from '../../findings/remark';
import { type Gang, taskHours } from '../../labour/gang';
import type { BlockFacts, Env } from '../../resolve/env';
import { sumTallies } from '../../setting-out';
import { fact, type Gap, sum, type Term, withGaps } from '../../working/term';
import { capsOf, capTop } from '../cap';
import { countCoping } from '../coping';
import { type Counted, countBricks, laidFrom, mortarOf } from '../count';
import { footingOf } from '../footing';
import { type Masonry, masonryOf } from '../masonry';
import type {
  BrickNeed,
  Figure,
  MixNeed,
  Needs,
  PieceNeed,
  TaskNeed,
  TopRun,
  Work,
} from '../needs';
import { copingRuns } from './copings';
import { countWall, inputsOf, type WallCounts } from './counts';
import { wallFigures } from './figures';
import { notesOf } from './notes';
import { partsOf } from './parts';
import type { Part, PartBricks } from './parts/part';
import { decisionRemarks, wallRemarks } from './remarks';
import { sayWall } from './says';
import { planWall, type WallPlan } from './spec';

export function workWall(facts: BlockFacts, env: Env, gang: Gang): Work {
  const remarks: Remark[] = [];
  const masonry = masonryOf(facts, env);
  const gaps: Gap[] = [...masonry.gaps];
  const plan = planWall(masonry, remarks, gaps);
  return plan ? new WallWork(masonry, plan, gang, remarks).done() : unlaid(masonry, gaps, remarks);
}

/** Nothing can be laid, but what is missing is said, and every total that needs it knows. */
function unlaid({ facts, brick }: Masonry, gaps: readonly Gap[], remarks: readonly Remark[]): Work {
  const bricks = withGaps(fact('Bricks', 0, 'bricks', facts.origin), gaps);
  const needs: Needs = {
    bricks: [{ brick: brick.name, bricks, origin: facts.origin }],
    mixes: [],
    pieces: [],
    tasks: [{ task: 'facework', hours: withGaps(fact('Hours', 0, 'h', facts.origin), gaps) }],
  };
  const figures: Figure[] = [{ key: 'bricks', term: bricks }];
  return {
    block: facts.block,
    kind: 'wall',
    name: facts.name,
    title: facts.title,
    figures,
    needs,
    remarks,
    facts: { does: new Set(), says: [] },
    notes: notesOf(facts),
  };
}

class WallWork {
  private readonly env: Env;
  private readonly counts: WallCounts;
  private readonly coping: Counted | undefined;
  /** Bricks of it that are cut on edge. */
  private copingCuts = 0;
  private readonly tops: TopRun[] = [];
  private readonly caps: PieceNeed[];
  private readonly parts: readonly Part[];

  constructor(
    private readonly masonry: Masonry,
    private readonly plan: WallPlan,
    private readonly gang: Gang,
    private readonly remarks: Remark[],
  ) {
    this.env = masonry.env;
    this.counts = countWall(masonry, plan);
    remarks.push(...wallRemarks(masonry, plan, this.counts));
    for (const { facts, spec } of plan.piers)
      this.tops.push(...capTop(facts, spec.from, spec.width, spec.courses));
    this.coping = this.countCopings();
    this.caps = plan.piers.flatMap((p) => capsOf(p.facts));
    this.parts = partsOf(masonry, plan, this.counts, gang);
    remarks.push(...this.parts.flatMap((p) => p.remarks ?? []));
    this.tops.push(...this.parts.flatMap((p) => p.tops ?? []));
  }

  private countCopings(): Counted | undefined {
    const runs = copingRuns(this.masonry, this.plan).map((run) => ({
      run,
      ...countCoping(run, this.masonry, this.remarks),
    }));
    this.remarks.push(...decisionRemarks(runs, this.masonry, this.plan, this.counts));
    if (!runs.length) return undefined;
    this.tops.push(...runs.map((r) => r.top));
    this.copingCuts = runs.reduce((sum, r) => sum + r.cuts, 0);
    const how = () => runs.map((r) => r.detail);
    return countBricks(
      'Bricks on edge',
      runs.map((r) => r.tally),
      this.masonry,
      inputsOf(this.masonry, this.plan),
      how,
      this.copingCuts,
    );
  }

  done(): Work {
    const { facts } = this.masonry;
    const needs = this.needs();
    const figures = [
      ...wallFigures(this.masonry, this.plan, this.counts, needs),
      ...this.parts.flatMap((p) => p.figures ?? []),
    ];
    const settingOut = this.counts.out;
    const { unit, joints } = this.plan.spec;
    const coped = this.masonry.facts.line('coping')?.word('kind') === 'brick-on-edge';
    const coping = coped ? unit.width + joints.bed : 0;
    const height = settingOut.gauge * this.plan.spec.courses + coping;
    const says = [
      ...sayWall(this.masonry, this.plan, this.coping !== undefined),
      ...this.parts.flatMap((p) => p.says ?? []),
    ];
    return {
      block: facts.block,
      kind: 'wall',
      name: facts.name,
      title: facts.title,
      figures,
      needs,
      remarks: this.remarks,
      facts: { settingOut, tops: this.tops, height, does: this.does(), says },
      notes: notesOf(facts),
    };
  }

  private does(): Set<string> {
    const { cuts: lengths, closers, halves } = this.counts.all;
    const coping = this.copingCuts + (this.coping?.tally.halves ?? 0);
    const cuts = lengths.length + closers + halves + coping > 0;
    const stands = this.masonry.facts.orDefault('stands')?.word('how') ?? 'free';
    return new Set(
      [
        ...this.parts.flatMap((p) => p.does ?? []),
        cuts ? 'cutting' : '',
        this.plan.piers.length ? 'piers' : '',
        stands === 'held' ? '' : stands === 'free' ? 'free-standing' : stands,
      ].filter(Boolean),
    );
  }

  private bricks(): BrickNeed[] {
    const { brick } = this.masonry;
    const { wall, piers, dpc } = this.counts;
    const parts = [wall, piers, this.coping, ...this.own()]
      .filter((c): c is Counted => c !== undefined)
      .map((c) => c.bricks);
    const main = sum(
      'Bricks',
      'bricks',
      parts.map((p) => withGaps(p, this.masonry.gaps)),
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
    const mine = this.parts.flatMap((p) => p.bricks ?? []);
    return mine.filter((b) => this.isOwn(b)).map((b) => b.counted);
  }

  /** Those of another kind. */
  private others(): PartBricks[] {
    return this.parts.flatMap((p) => p.bricks ?? []).filter((b) => !this.isOwn(b));
  }

  private isOwn({ brick }: PartBricks): boolean {
    return brick.name === this.masonry.brick.name;
  }

  private mortar(): MixNeed {
    const { mix, brick } = this.masonry;
    const { wall, piers, dpc } = this.counts;
    const own = [wall, piers, this.coping, ...this.own()].filter(
      (c): c is Counted => c !== undefined,
    );
    const laid = [{ tally: sumTallies(own.map((c) => c.tally)), brick }];
    if (dpc) laid.push({ tally: dpc.counted.tally, brick: dpc.brick });
    for (const { counted, brick: other } of this.others())
      laid.push({ tally: counted.tally, brick: other });
    const litres = mortarOf('Mortar', laid, this.env, this.laidFrom());
    return {
      mix: mix.name,
      block: mix.facts?.block,
      litres: withGaps(litres, mix.gaps),
      origin: mix.origin,
    };
  }

  private laidFrom(): readonly Term[] {
    return laidFrom(this.masonry, inputsOf(this.masonry, this.plan));
  }

  private needs(): Needs {
    const bricks = this.bricks();
    const footing = footingOf(this.masonry.facts, this.env, this.length());
    const mixes = [
      this.mortar(),
      ...(footing ? [footing] : []),
      ...this.parts.flatMap((p) => p.mixes ?? []),
    ];
    const height = this.counts.out.gauge * this.plan.spec.courses;
    const leastDays = daysForHeight(height, this.env);
    const pieces = [...this.caps, ...this.parts.flatMap((p) => p.pieces ?? [])];
    return { bricks, mixes, pieces, tasks: this.tasks(footing), leastDays };
  }

  private length(): Term {
    return this.masonry.facts.line('length')!.term('length', 'length of the wall');
  }

  private tasks(footing: MixNeed | undefined): TaskNeed[] {
    const { wall, piers, dpc } = this.counts;
    const face = dpc
      ? sum('bricks laid in the wall', 'bricks', [wall.bricks, dpc.counted.bricks])
      : wall.bricks;
    const tasks: [string, string, Term | undefined][] = [
      ['facework', 'Laying the wall', face],
      ['pier-work', 'Laying the piers', piers?.bricks],
      ['coping', 'Laying the coping', this.coping?.bricks],
      ['footing', 'Digging and concreting', footing?.litres],
      [
        'cap',
        'Bedding caps',
        this.caps.length
          ? sum(
              'caps',
              'pieces',
              this.caps.map((c) => c.count),
            )
          : undefined,
      ],
    ];
    const own = tasks.flatMap(([task, label, amount]) =>
      amount ? [{ task, hours: taskHours(task, label, amount, this.env, this.gang) }] : [],
    );
    return [...own, ...this.parts.flatMap((p) => p.tasks ?? [])];
  }
}
