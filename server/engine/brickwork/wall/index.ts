/** A wall: laid, counted, timed, and looked at for what does not work and what is not safe. */

import { phrase } from '../../../../shared/phrase';
import type { Remark } from '../../findings/remark';
import type { Gang } from '../../labour/gang';
import type { Env } from '../../resolve/env';
import { mostCourses, type WallSpec } from '../../setting-out';
import { fact, type Gap, withGaps } from '../../working/term';
import type { SourceBlock } from '../../workspace/source';
import type { TopRun } from '../faces';
import type { Masonry } from '../masonry';
import type { Figure, Needs, PieceNeed } from '../needs';
import type { Said } from '../said';
import { capsOf, capTop } from '../tops/cap';
import type { Work, WorkFacts } from '../work';
import { countWall, type WallCounts } from './counts';
import { wallCuts } from './cuts';
import { wallFigures } from './figures';
import { withHeads } from './heads/let-in';
import { type LaidAlone, wallAlone } from './meet/alone';
import { besideOf } from './meet/beside';
import { Neighbours } from './meet/neighbours';
import { type Cornered, cornered } from './meet/quoins';
import { meetingRemarks, unanswered } from './meet/remarks';
import { type WallCounted, wallNeeds } from './needs';
import { notesOf } from './notes';
import { partsOf } from './parts';
import type { Part } from './parts/part';
import { wallRemarks } from './remarks';
import { sayWall } from './says';
import type { WallPlan } from './spec';

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
function saidLater(facts: WorkFacts, say: () => readonly Said[]): WorkFacts {
  let said: readonly Said[] | undefined;
  let says: readonly string[] | undefined;
  return {
    ...facts,
    get said() {
      said ??= say();
      return said;
    },
    get says() {
      says ??= this.said!.map(({ text }) => text);
      return says;
    },
  };
}

class WallWork implements WallCounted {
  readonly counts: WallCounts;
  private readonly tops: TopRun[] = [];
  readonly caps: PieceNeed[];
  readonly parts: readonly Part[];
  readonly plan: WallPlan;
  private readonly corners: Cornered;
  /** With its heads let in. */
  private readonly carved: Cornered;

  constructor(
    readonly masonry: Masonry,
    laid: LaidAlone,
    corners: Cornered,
    readonly gang: Gang,
    readonly remarks: Remark[],
  ) {
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
    const needs = wallNeeds(this);
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

  private said(): readonly Said[] {
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
}
