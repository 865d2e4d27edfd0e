/** Brick on edge over a wall or a pier: how many, whether the run works, and where each stands. */

import { decisionFor, type RunInText } from '../findings/fit';
import { copingUnfit } from '../findings/fit-coping';
import type { Remark } from '../findings/remark';
import type { Tally } from '../setting-out';
import {
  type Coping,
  type CutWay,
  fitCoping,
  type JointWay,
  type Way,
  type WayKind,
} from '../setting-out';
import type { Origin } from '../working/term';
import { lengthText } from './lengths';
import { limitsOf, type Masonry } from './masonry';
import type { TopRun } from './needs';

export interface CopingRun {
  /** Mm from the left of the wall or pier. */
  readonly from: number;
  readonly to: number;
  readonly endJoints: 0 | 1 | 2;
  /** Course it stands on. */
  readonly on: number;
  /** Half bricks through the work below. */
  readonly halves: number;
  readonly text: RunInText;
  readonly origin: Origin;
  /** A cap would do instead. */
  readonly cap?: boolean;
}

/** A run and what was counted for it. */
export interface CopingLaid extends CopingCount {
  readonly run: CopingRun;
}

export interface CopingCount {
  /** Whether it fills its length without a decision. */
  readonly works: boolean;
  readonly tally: Tally;
  readonly top: TopRun;
  readonly detail: string;
  /** How many of its bricks are cut on edge, to less than their height. */
  readonly cuts: number;
}

/** A pier’s face is what its bricks make: a cut or a cap comes before another size (common practice). */
const ON_PIER: readonly WayKind[] = ['joints', 'half-bond', 'cut', 'cap', 'length'];

/** Counts a run, and remarks when it does not work and no `fit` line settles it. */
export function countCoping(run: CopingRun, masonry: Masonry, remarks: Remark[]): CopingCount {
  const unit = masonry.brick.size!;
  const limits = limitsOf(masonry.env, 'joints-accepted', masonry.jointTerms.perpend);
  const length = run.to - run.from;
  const thickness = Math.min(4, Math.max(1, run.halves)) as 1 | 2 | 3 | 4;
  const coping = fitCoping({
    unit,
    length,
    thickness,
    endJoints: run.endJoints,
    limits,
    cap: run.cap,
    prefer: run.cap ? ON_PIER : undefined,
  });
  const way = chosenWay(coping, run);
  const remark = copingUnfit(run, coping.fit, way, masonry);
  if (remark) remarks.push(remark);
  return laid(run, coping, way, masonry);
}

/** What the file decides, else the best way that needs no other length: joints, then a cut. */
function chosenWay(coping: Coping, run: CopingRun): JointWay | CutWay | undefined {
  const { fit } = coping;
  if (fit.works !== 'no')
    return { kind: 'joints', ...fit.pieces, joint: fit.joint!, acceptable: true };
  const joints = fit.ways.find((w): w is JointWay => w.kind === 'joints');
  const cuts = fit.ways.filter((w): w is CutWay => w.kind === 'cut');
  const decision = decisionFor(run.text.home, run.text.name);
  if (decision?.how === 'joints') return joints;
  const said = cuts.find((w) => decision?.cut !== undefined && near(w, decision.cut));
  return said ?? cuts[0] ?? joints;
}

function near(way: CutWay, cut: number): boolean {
  return Math.abs(way.cut - cut) < 1;
}

function laid(
  run: CopingRun,
  coping: Coping,
  way: JointWay | CutWay | undefined,
  masonry: Masonry,
): CopingCount {
  const unit = masonry.brick.size!;
  const wholes = way?.wholes ?? 0;
  const cut = way?.kind === 'cut' ? way : undefined;
  const rows = wholes + (cut?.cuts ?? 0);
  const joint = way?.joint ?? masonry.jointTerms.perpend.value.toNumber();
  const bed = masonry.jointTerms.bed.value.toNumber();
  const { across } = coping;
  const deep =
    across.wholes * unit.length +
    across.halves * unit.width +
    (across.wholes + across.halves - 1) * joint;
  const section = unit.width * deep;
  const bricks = (across.wholes * unit.length + across.halves * unit.width) * unit.width;
  const along = wholes * unit.height + (cut ? cut.cuts * cut.cut : 0);
  const tally: Tally = {
    wholes: rows * across.wholes,
    halves: rows * across.halves,
    threeQuarters: 0,
    closers: 0,
    cuts: [],
    brickVolume: bricks * along,
    grossVolume: (run.to - run.from) * (section + bed * deep),
  };
  const pieces = [...Array<number>(Math.min(rows, MOST_DRAWN)).keys()].map((i) =>
    pieceAt(i, rows, unit.height, cut),
  );
  const top: TopRun = {
    from: run.from,
    to: run.to,
    on: run.on,
    kind: 'brick-on-edge',
    pieces,
    joint,
    height: unit.width,
  };
  return {
    works: coping.fit.works !== 'no',
    tally,
    top,
    detail: detailOf(run, wholes, cut, joint, masonry),
    cuts: (cut?.cuts ?? 0) * (across.wholes + across.halves),
  };
}

/** A coping longer than this is drawn as a band: nobody reads ten thousand bricks on edge. */
const MOST_DRAWN = 4000;

function pieceAt(i: number, rows: number, whole: number, cut: CutWay | undefined) {
  if (!cut) return { length: whole, cut: false };
  const middle = Math.floor((rows - cut.cuts) / 2);
  const first = cut.where === 'left' ? 0 : cut.where === 'right' ? rows - cut.cuts : middle;
  const isCut = i >= first && i < first + cut.cuts;
  return { length: isCut ? cut.cut : whole, cut: isCut };
}

function detailOf(
  run: CopingRun,
  wholes: number,
  cut: CutWay | undefined,
  joint: number,
  masonry: Masonry,
): string {
  const length = lengthText(masonry.env, run.to - run.from);
  const cuts = cut ? ` and ${cut.cuts} cut to ${lengthText(masonry.env, cut.cut)}` : '';
  return `over ${length}: ${wholes} on edge${cuts}, joints of ${lengthText(masonry.env, joint)}`;
}

export type { Way };
