/** A wall: laid, counted, timed, and looked at for what does not work and what is not safe. */

import { phrase } from '../../../../shared/phrase';
import { daysForHeight } from '../../findings/lift';
import { gapsIn, type Remark } from '../../findings/remark';
import type { Gang } from '../../labour/gang';
import { taskHours } from '../../labour/output';
import { laidIn } from '../../mortar/lays';
import type { Env } from '../../resolve/env';
import { mostCourses, sumTallies, type WallSpec } from '../../setting-out';
import { fact, type Gap, sum, type Term, withGaps } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import { apartNeeds, dampApart } from '../apart';
import { type Counted, laidFrom, mortarOf } from '../count';
import { volumeShown } from '../lengths';
import type { Masonry } from '../masonry';
import type {
  BrickNeed,
  Figure,
  MixNeed,
  Needs,
  PieceNeed,
  TaskNeed,
  TopRun,
  Work,
  WorkFacts,
} from '../needs';
import { capsOf, capTop } from '../tops/cap';
import { countWall, inputsOf, type WallCounts } from './counts';
import { wallCuts } from './cuts';
import { faceShown, wallFigures } from './figures';
import { withHeads } from './heads/let-in';
import { type LaidAlone, wallAlone } from './meet/alone';
import { besideOf } from './meet/beside';
import { Neighbours } from './meet/neighbours';
import { type Cornered, cornered } from './meet/quoins';
import { meetingRemarks, unanswered } from './meet/remarks';
import { notesOf } from './notes';
import { partsOf } from './parts';
import type { Part, PartBricks } from './parts/part';
import { wallRemarks } from './remarks';
import { sayWall } from './says';
import type { WallPlan } from './spec';
import { wallFooting } from './tops/stepped-footing';

/** `neighbours` are the walls of the job that it may meet. */
export function workWall(
  block: SourceBlock,
  env: Env,
  gang: Gang,
  neighbours: Neighbours = new Neighbours([block]),
): Work {
  const wall = begun(block, env, gang, neighbours);
  return wall instanceof WallWork ? wall.done() : wall;
}

/**
 * The same without its figures and what it needs: all that is looked at when a way out of a finding is tried. Of a wall
 * that meets no other only so much is laid as that hangs on.
 */
export function toldOfWall(
  block: SourceBlock,
  env: Env,
  gang: Gang,
  neighbours: Neighbours,
  code?: string,
): ToldOf {
  wallAlone(block, env, besideOf(block, neighbours).length ? undefined : layingFor(code));
  const wall = begun(block, env, gang, neighbours);
  return wall instanceof WallWork ? wall.told() : wall;
}

/**
 * How much of a wall has to be laid to know whether a finding of such a code stands: all of it where perpends are looked
 * at, its face where the bond is, else each stretch by itself. No warning or error hangs on more.
 */
export function layingFor(code: string | undefined): WallSpec['only'] {
  if (code === undefined || code === 'perpends-aligned') return undefined;
  return code === 'bond-broken' ? 'face' : 'apart';
}

export type ToldOf = Pick<Work, 'block' | 'remarks' | 'facts'>;

function begun(block: SourceBlock, env: Env, gang: Gang, neighbours: Neighbours): WallWork | Work {
  const { masonry, gaps, remarks, laid } = wallAlone(block, env);
  const { facts } = masonry;
  if (!laid) return unlaid(masonry, gaps, [...remarks, ...unanswered(facts, neighbours)]);
  const corners = cornered(block, laid, neighbours, env);
  const told = [...remarks, ...meetingRemarks(facts, laid, corners, neighbours)];
  return new WallWork(masonry, laid, corners, gang, told);
}

/** Nothing can be laid, but what is missing is said, and every total that needs it knows. */
function unlaid({ facts, brick }: Masonry, gaps: readonly Gap[], remarks: readonly Remark[]): Work {
  const bricks = withGaps(fact(phrase`Bricks`, 0, 'bricks', facts.origin), gaps);
  const needs: Needs = {
    bricks: [{ brick: brick.name, bricks, origin: facts.origin }],
    mixes: [],
    pieces: [],
    tasks: [{ task: 'facework', hours: withGaps(fact(phrase`Hours`, 0, 'h', facts.origin), gaps) }],
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

/** What is said to the client is put into words when it is asked for: nobody reads it while a line is typed. */
function saidLater(facts: WorkFacts, say: () => readonly string[]): WorkFacts {
  let said: readonly string[] | undefined;
  return {
    ...facts,
    get says() {
      said ??= say();
      return said;
    },
  };
}

class WallWork {
  private readonly env: Env;
  private readonly counts: WallCounts;
  private readonly tops: TopRun[] = [];
  private readonly caps: PieceNeed[];
  private readonly parts: readonly Part[];
  private readonly plan: WallPlan;
  private readonly corners: Cornered;
  /** With its heads let in. */
  private readonly carved: Cornered;

  constructor(
    private readonly masonry: Masonry,
    laid: LaidAlone,
    corners: Cornered,
    private readonly gang: Gang,
    private readonly remarks: Remark[],
  ) {
    this.env = masonry.env;
    const { plan } = laid;
    this.plan = plan;
    this.corners = corners;
    this.carved = withHeads(corners, plan.heads);
    this.counts = countWall(masonry, laid, this.carved);
    remarks.push(...wallRemarks(masonry, plan, this.counts));
    for (const { facts, spec } of plan.piers)
      this.tops.push(...capTop(facts, spec.from, spec.width, (spec.base ?? 0) + spec.courses));
    this.caps = plan.piers.flatMap((p) => capsOf(p.facts));
    this.parts = partsOf(masonry, plan, this.counts, gang);
    remarks.push(...this.parts.flatMap((p) => p.remarks ?? []));
    this.tops.push(...this.parts.flatMap((p) => p.tops ?? []));
  }

  done(): Work {
    const { facts } = this.masonry;
    const needs = this.needs();
    const figures = [
      ...wallFigures(this.masonry, this.plan, this.counts, needs),
      ...this.parts.flatMap((p) => p.figures ?? []),
    ];
    const told = this.told();
    return {
      ...told,
      kind: 'wall',
      name: facts.name,
      title: facts.title,
      figures,
      needs,
      facts: saidLater(told.facts, () => this.said()),
      notes: notesOf(facts),
    };
  }

  private said(): readonly string[] {
    return [...sayWall(this.masonry, this.plan), ...this.parts.flatMap((p) => p.says ?? [])];
  }

  told(): ToldOf {
    return { block: this.masonry.facts.block, remarks: this.remarks, facts: this.facts() };
  }

  /** What there is to ask of it, but for what is said to the client. */
  private facts(): WorkFacts {
    const settingOut = this.corners.face;
    const coping = this.parts.reduce((high, p) => high + (p.high ?? 0), 0);
    const courses = mostCourses(this.plan.ground, this.plan.top);
    return {
      ...Object.assign({}, ...this.parts.map((p) => p.facts ?? {})),
      settingOut,
      ...(this.counts.laid === settingOut ? {} : { laid: this.counts.laid }),
      ...this.met(),
      tops: this.tops,
      cuts: () => wallCuts(this.masonry, this.plan, this.counts, this.parts),
      height: settingOut.gauge * courses + coping,
      does: this.does(),
      says: [],
    };
  }

  /** As its faces show where other walls run into it. */
  private met(): Pick<WorkFacts, 'met'> {
    const { arms, met } = this.carved;
    const bonded = arms.flatMap(({ ends }) => ends ?? []);
    if (!bonded.length) return {};
    const ends: NonNullable<WorkFacts['met']>['ends'] = (face, course) =>
      bonded.flatMap((of) => of(face, course));
    return { met: { settingOut: met, ends } };
  }

  private does(): Set<string> {
    const { cuts: lengths, closers, halves } = this.counts.all;
    const cuts = lengths.length + closers + halves > 0;
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
    const parts = [wall, piers, ...this.own()]
      .filter((c): c is Counted => c !== undefined)
      .map((c) => c.bricks);
    const apart = this.parts.flatMap((p) => p.apart ?? []).map(({ mix }) => mix);
    const others = [dpc?.mix, ...apart].flatMap((mix) => mix?.gaps ?? []);
    const gaps = [...this.masonry.gaps, ...gapsIn(this.remarks), ...others];
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
    const inIt = this.parts.flatMap((p) => p.bricks ?? []).filter((b) => !b.mix);
    const own = [wall, piers, ...inIt.filter((b) => this.isOwn(b)).map((b) => b.counted)];
    const mortar = this.parts.flatMap((p) => p.mortar ?? []);
    const tallies = own.flatMap((c) => (c ? [c.tally] : []));
    const laid = [{ tally: sumTallies([...tallies, ...mortar]), brick }];
    if (dpc && !dpc.mix) laid.push({ tally: dpc.counted.tally, brick: dpc.brick });
    for (const { counted, brick: other } of inIt.filter((b) => !this.isOwn(b)))
      laid.push({ tally: counted.tally, brick: other });
    const litres = mortarOf(phrase`Mortar`, laid, this.env, this.laidFrom());
    return {
      mix: mix.name,
      block: mix.facts?.block,
      litres: withGaps(litres, mix.gaps),
      origin: mix.origin,
    };
  }

  /** In mixes of their own: the damp course, the coping. */
  private apart(tasks: readonly TaskNeed[]): MixNeed[] {
    const { dpc, wall, bands } = this.counts;
    const all = this.parts.flatMap((p) => p.apart ?? []);
    if (dpc?.mix) {
      const { brick, counted } = dpc;
      const laid = [wall, counted, ...bands.map((b) => b.counted)].map((c) => c.bricks);
      all.unshift(dampApart(dpc.mix, { tally: counted.tally, brick }, counted.bricks, laid, tasks));
    }
    return apartNeeds(all, this.masonry, this.laidFrom());
  }

  private laidFrom(): readonly Term[] {
    return laidFrom(this.masonry, inputsOf(this.masonry, this.plan));
  }

  private needs(): Needs {
    const bricks = this.bricks();
    const footing = wallFooting(this.masonry, this.plan, this.length(), this.counts);
    const tasks = this.tasks(footing);
    const mortar = this.mortar();
    const laid = bricks.map((b) => b.bricks);
    const apart = this.apart(tasks);
    const lays = laidIn(mortar.litres, laid, tasks, this.masonry, apart);
    const mixes = [
      { ...mortar, lays },
      ...(footing ? [footing] : []),
      ...apart,
      ...this.parts.flatMap((p) => p.mixes ?? []),
    ];
    const height = this.counts.out.gauge * mostCourses(this.plan.ground, this.plan.top);
    const leastDays = daysForHeight(height, this.env);
    const pieces = [...this.caps, ...this.parts.flatMap((p) => p.pieces ?? [])];
    return { bricks, mixes, pieces, tasks, leastDays };
  }

  private length(): Term {
    return this.masonry.facts.line('length')!.term('length', phrase`length of the wall`);
  }

  private tasks(footing: MixNeed | undefined): TaskNeed[] {
    const { wall, piers, dpc, bands } = this.counts;
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
        this.caps.length
          ? sum(
              phrase`caps`,
              'pieces',
              this.caps.map((c) => c.count),
            )
          : undefined,
      ],
    ];
    const own = tasks.flatMap(([task, label, amount]) =>
      amount ? [{ task, hours: this.hours(task, label, amount) }] : [],
    );
    return [...own, ...this.parts.flatMap((p) => p.tasks ?? [])];
  }

  private hours(task: string, label: string, amount: Term): Term {
    const faces = task === 'facework' ? () => this.facework() : undefined;
    return taskHours(task, label, amount, this.env, this.gang, faces);
  }

  /** What its bricks make, for an output by area or by volume: its face, and that as deep as the wall. */
  private facework(): Term[] {
    const { wall, dpc, bands } = this.counts;
    const laid = [wall, ...[...(dpc ? [dpc] : []), ...bands].map((o) => o.counted)];
    const { grossVolume } = sumTallies(laid.map((c) => c.tally));
    const args = this.laidFrom();
    return [
      faceShown(this.masonry, this.plan, this.counts),
      volumeShown(this.env, phrase`brickwork of the wall`, grossVolume, { args }),
    ];
  }
}
