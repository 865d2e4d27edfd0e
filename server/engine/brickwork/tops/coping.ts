/** A run of coping over a wall or a pier: how many pieces, whether they fill it, and where each stands. */

import { phrase } from '../../../../shared/phrase';
import { decisionFor } from '../../findings/fit/decision';
import type { RunInText } from '../../findings/fit/fit';
import type { Remark } from '../../findings/remark';
import { copingUnfit } from '../../findings/tops/fit-coping';
import {
  type CutWay,
  type Fit,
  fitRun,
  type JointWay,
  NOTHING_COUNTED,
  type Tally,
} from '../../setting-out';
import type { Origin } from '../../working/term';
import type { TopRun } from '../faces';
import type { Mix } from '../goods';
import { lengthText } from '../lengths';
import { limitsOf, type Masonry, waysIn } from '../masonry';
import { type CopingMade, depthOf } from './coping-made';

export interface CopingRun {
  /** Mm from the left of the wall or pier. */
  readonly from: number;
  readonly to: number;
  readonly endJoints: 0 | 1 | 2;
  /** Course it stands on. */
  readonly on: number;
  /** Mm that it stands above that course: tiles lie between. */
  readonly over?: number;
  readonly made: CopingMade;
  readonly text: RunInText;
  readonly origin: Origin;
  /** What it is laid in, where that is another mix than the wall’s. */
  readonly mix?: Mix;
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
  /** Whole pieces along the run, and each piece cut to less. */
  readonly wholes: number;
  readonly cut: { readonly length: number; readonly count: number };
  /** How many of its bricks are cut on edge, to less than their height. */
  readonly cuts: number;
}

/** Counts a run, and remarks when it does not work and no `fit` line settles it. */
export function countCoping(run: CopingRun, masonry: Masonry, remarks: Remark[]): CopingCount {
  const limits = limitsOf(masonry.env, 'joints-accepted', masonry.jointTerms.perpend);
  const { endJoints, cap, made } = run;
  const length = run.to - run.from;
  const prefer = waysIn(masonry.env, cap ? 'pier-ways' : 'ways');
  const fit = fitRun({ length, piece: made.along, half: null, endJoints, limits, cap, prefer });
  const way = chosenWay(fit, run);
  const remark = copingUnfit(run, fit, way, masonry);
  if (remark) remarks.push(remark);
  return laid(run, fit, way, masonry);
}

/** What the file decides, else the best way that needs no other length: a cut, then joints, then a cut shorter than anyone would lay. */
function chosenWay(fit: Fit, run: CopingRun): JointWay | CutWay | undefined {
  if (fit.works !== 'no')
    return { kind: 'joints', ...fit.pieces, joint: fit.joint!, acceptable: true };
  const joints = fit.ways.find((w): w is JointWay => w.kind === 'joints');
  const cuts = fit.ways.filter((w): w is CutWay => w.kind === 'cut');
  const decision = decisionFor(run.text.home, run.text.name);
  if (decision?.how === 'joints') return joints;
  const said = cuts.find((w) => decision?.cut !== undefined && near(w, decision.cut));
  return said ?? cuts.find((w) => !w.short) ?? joints ?? cuts[0];
}

function near(way: CutWay, cut: number): boolean {
  return Math.abs(way.cut - cut) < 1;
}

function laid(
  run: CopingRun,
  fit: Fit,
  way: JointWay | CutWay | undefined,
  masonry: Masonry,
): CopingCount {
  const { made } = run;
  const wholes = way?.wholes ?? 0;
  const cut = way?.kind === 'cut' ? way : undefined;
  const joint = way?.joint ?? masonry.jointTerms.perpend.value.toNumber();
  return {
    works: fit.works !== 'no',
    tally: tallyOf(run, wholes, cut, joint, masonry),
    top: topOf(run, wholes, cut, joint),
    detail: detailOf(run, wholes, cut, joint, masonry),
    wholes,
    cut: { length: cut?.cut ?? 0, count: cut?.cuts ?? 0 },
    cuts: (cut?.cuts ?? 0) * (made.across.wholes + made.across.halves),
  };
}

/** Bricks of the run. A precast length has none: what is left of its volume is its mortar alone. */
function tallyOf(
  run: CopingRun,
  wholes: number,
  cut: CutWay | undefined,
  joint: number,
  masonry: Masonry,
): Tally {
  const { across, solid, high } = run.made;
  const rows = wholes + (cut?.cuts ?? 0);
  const bed = masonry.jointTerms.bed.value.toNumber();
  const deep = depthOf(run.made, joint);
  const along = wholes * run.made.along + (cut ? cut.cuts * cut.cut : 0);
  const gross = (run.to - run.from) * deep * (high + bed);
  const solids = solid * along;
  return {
    ...NOTHING_COUNTED,
    wholes: rows * across.wholes,
    halves: rows * across.halves,
    brickVolume: run.made.brick ? solids : 0,
    grossVolume: run.made.brick ? gross : gross - solids,
  };
}

function topOf(run: CopingRun, wholes: number, cut: CutWay | undefined, joint: number): TopRun {
  const rows = wholes + (cut?.cuts ?? 0);
  const { kind, along, high, deep } = run.made;
  const pieces = [...Array<number>(Math.min(rows, MOST_DRAWN)).keys()].map((i) =>
    pieceAt(i, rows, along, cut),
  );
  const { from, to, on, over } = run;
  return { from, to, on, over, kind, pieces, joint, height: high, deep };
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
  const cuts = cut ? phrase` and ${cut.cuts} cut to ${lengthText(masonry.env, cut.cut)}` : '';
  return phrase`over ${length}: ${wholes} ${run.made.said}${cuts}, joints of ${lengthText(masonry.env, joint)}`;
}
