/** A wall: laid, counted, timed, and looked at for what does not work and what is not safe. */

import { capOverhang } from '../../findings/cap-overhang';
import { dpcOff } from '../../findings/dpc';
import { idleFits } from '../../findings/fit-idle';
import { daysForHeight, higherThanALift } from '../../findings/lift';
import { openingWidth } from '../../findings/opening-width';
import type { Remark } from '../../findings/remark';
import { standInEachOther } from '../../findings/wall';
import { type Gang, taskHours } from '../../labour/gang';
import type { BlockFacts, Env } from '../../resolve/env';
import { sumTallies } from '../../setting-out';
import { fact, type Gap, named, sum, type Term, withGaps } from '../../working/term';
import { capsOf, capTop } from '../cap';
import { type CopingLaid, countCoping } from '../coping';
import { type Counted, countBricks, courseTerms, laidFrom, mortarOf } from '../count';
import { footingOf } from '../footing';
import { areaShown, lengthShown } from '../lengths';
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
import { ruleOfThumb } from '../rule';
import { copingRuns } from './copings';
import { countWall, inputsOf, type WallCounts } from './counts';
import { remarkOnRuns } from './fits';
import { heightRun } from './height';
import { notesOf } from './notes';
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

  constructor(
    private readonly masonry: Masonry,
    private readonly plan: WallPlan,
    private readonly gang: Gang,
    private readonly remarks: Remark[],
  ) {
    this.env = masonry.env;
    this.counts = countWall(masonry, plan);
    for (const { a, b } of this.counts.out.clashes)
      remarks.push(standInEachOther(masonry.facts, a, b));
    remarkOnRuns(this.counts.runs, masonry, remarks);
    for (const opening of plan.openings) this.note(openingWidth(opening, plan, masonry));
    for (const pier of plan.piers)
      this.note(capOverhang(pier.facts, pier.spec.width, pier.spec.depth, this.env));
    const { dpc } = this.counts;
    if (dpc) remarks.push(...dpcOff(dpc.line, dpc.brick, plan.spec.unit, plan.spec.courses));
    this.note(higherThanALift(masonry.facts, this.counts.out.gauge * plan.spec.courses, this.env));
    for (const { facts, spec } of plan.piers)
      this.tops.push(...capTop(facts, spec.from, spec.width, spec.courses));
    this.coping = this.countCopings();
    this.caps = plan.piers.flatMap((p) => capsOf(p.facts));
  }

  /** Decisions of the wall itself and of each pier in it that answer nothing. */
  private lookAtFits(copings: readonly CopingLaid[]): void {
    const { facts } = this.masonry;
    const runs = this.counts.runs.map(({ text, fit, segment }) => ({
      name: text.name,
      open: fit.works === 'no' || segment.broken.length > 0,
    }));
    const tops = (home: BlockFacts) =>
      copings
        .filter((c) => c.run.text.home === home)
        .map((c) => ({ name: c.run.text.name, open: !c.works }));
    this.remarks.push(...idleFits(facts, [...runs, ...tops(facts), heightRun(this.plan.height)]));
    for (const pier of this.plan.piers)
      this.remarks.push(...idleFits(pier.facts, [...tops(pier.facts), heightRun(pier.height)]));
  }

  private note(remark: Remark | undefined): void {
    if (remark) this.remarks.push(remark);
  }

  private countCopings(): Counted | undefined {
    const runs = copingRuns(this.masonry, this.plan).map((run) => ({
      run,
      ...countCoping(run, this.masonry, this.remarks),
    }));
    this.lookAtFits(runs);
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
    const figures = this.figures(needs);
    const settingOut = this.counts.out;
    const { unit, joints } = this.plan.spec;
    const coped = this.masonry.facts.line('coping')?.word('kind') === 'brick-on-edge';
    const coping = coped ? unit.width + joints.bed : 0;
    const height = settingOut.gauge * this.plan.spec.courses + coping;
    const says = sayWall(this.masonry, this.plan, this.coping !== undefined);
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
        cuts ? 'cutting' : '',
        this.plan.piers.length ? 'piers' : '',
        stands === 'held' ? '' : stands === 'free' ? 'free-standing' : stands,
      ].filter(Boolean),
    );
  }

  private bricks(): BrickNeed[] {
    const { brick } = this.masonry;
    const { wall, piers, dpc } = this.counts;
    const parts = [wall, piers, this.coping]
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
    return needs;
  }

  private mortar(): MixNeed {
    const { mix, brick } = this.masonry;
    const { wall, piers, dpc } = this.counts;
    const own = [wall, piers, this.coping].filter((c): c is Counted => c !== undefined);
    const laid = [{ tally: sumTallies(own.map((c) => c.tally)), brick }];
    if (dpc) laid.push({ tally: dpc.counted.tally, brick: dpc.brick });
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
    const mixes = [this.mortar(), ...(footing ? [footing] : [])];
    const height = this.counts.out.gauge * this.plan.spec.courses;
    const leastDays = daysForHeight(height, this.env);
    return { bricks, mixes, pieces: this.caps, tasks: this.tasks(footing), leastDays };
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
    return tasks.flatMap(([task, label, amount]) =>
      amount ? [{ task, hours: taskHours(task, label, amount, this.env, this.gang) }] : [],
    );
  }

  private figures(needs: Needs): Figure[] {
    const { spec, height } = this.plan;
    const area = areaShown(this.env, 'Face of the wall', faceArea(this.counts), {
      note: 'openings and piers left out',
      args: this.laidFrom(),
    });
    const high = lengthShown(
      this.env,
      'Height of the courses',
      this.counts.out.gauge * spec.courses,
      { args: courseTerms(height, this.masonry) },
    );
    const bricks =
      needs.bricks.length > 1
        ? sum(
            'Bricks, all kinds',
            'bricks',
            needs.bricks.map((b) => b.bricks),
          )
        : named('Bricks', needs.bricks[0]!.bricks);
    const figures: Figure[] = [
      { key: 'bricks', term: bricks },
      { key: 'area', term: area },
      { key: 'courses', term: { ...height.term, label: 'Courses' } },
      { key: 'height', term: high },
      { key: 'mortar', term: named('Mortar, laid', needs.mixes[0]!.litres) },
      {
        key: 'hours',
        term: sum(
          'Hours of the gang',
          'h',
          needs.tasks.map((t) => t.hours),
        ),
      },
    ];
    const rule = ruleOfThumb(area, spec.thickness, this.masonry);
    if (rule) figures.splice(1, 0, { key: 'rule', term: rule });
    if (needs.mixes[1])
      figures.push({
        key: 'concrete',
        term: named('Concrete in the footing', needs.mixes[1].litres),
      });
    return figures;
  }
}

/** Of the stretches laid, mm²: the piers have their own. */
function faceArea(counts: WallCounts): number {
  let area = 0;
  for (const band of counts.out.bands)
    for (const segment of band.segments)
      area += (segment.to - segment.from) * (band.to - band.from) * counts.out.gauge;
  return area;
}
