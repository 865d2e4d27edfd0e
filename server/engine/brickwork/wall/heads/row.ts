/** A row of bricks set upright between two points: soldiers or bricks on edge over an opening, bricks on edge at its foot. */
import { phrase } from '../../../../../shared/phrase';
import { decisionFor } from '../../../findings/fit/decision';
import type { RunInText } from '../../../findings/fit/fit';
import type { LineFacts } from '../../../resolve/env';
import { type CutWay, type Fit, fitRun, type JointWay } from '../../../setting-out';
import type { OpeningFacts } from '../openings';
import type { Site } from './site';

export type Upright = 'soldier' | 'brick-on-edge';

export interface UprightRow {
  readonly line: LineFacts;
  readonly kind: Upright;
  readonly from: number;
  readonly to: number;
  /** Joints of its own at its ends: on a lintel those beside it are the wall’s, between reveals it has one at each. */
  readonly endJoints: 0 | 2;
  /** Mm. */
  readonly high: number;
  /** Bricks that one place of it takes through the wall. */
  readonly across: { readonly wholes: number; readonly halves: number };
  readonly text: RunInText;
  readonly fit: Fit;
  readonly way: JointWay | CutWay | undefined;
}

export interface RowQuestion
  extends Pick<UprightRow, 'line' | 'kind' | 'from' | 'to' | 'across' | 'endJoints'> {
  /** What it is called in a `fit` line. */
  readonly name: 'head' | 'subsill';
  readonly move: RunInText['move'];
}

/** Bricks on end show their height along the wall like those on edge: both are set at the same pitch. */
export function rowOf(question: RowQuestion, opening: OpeningFacts, site: Site): UprightRow {
  const { name, move, ...row } = question;
  const { unit } = site.spec;
  const length = row.to - row.from;
  const pieces = row.kind === 'soldier' ? phrase`soldiers` : phrase`bricks on edge`;
  const text: RunInText = { name, home: opening.facts, pieces, move };
  const { joints: limits } = site;
  const { endJoints } = row;
  const fit = fitRun({ length, piece: unit.height, half: null, endJoints, limits });
  const high = row.kind === 'soldier' ? unit.length : unit.width;
  return { ...row, high, text, fit, way: chosen(fit, text) };
}

/** What the file decides, else a cut: it needs no other length. */
function chosen(fit: Fit, text: RunInText): JointWay | CutWay | undefined {
  if (fit.works !== 'no')
    return { kind: 'joints', ...fit.pieces, joint: fit.joint!, acceptable: true };
  const joints = fit.ways.find((w): w is JointWay => w.kind === 'joints');
  const cuts = fit.ways.filter((w): w is CutWay => w.kind === 'cut');
  const decision = decisionFor(text.home, text.name);
  if (decision?.how === 'joints') return joints;
  const said = cuts.find((w) => decision?.cut !== undefined && Math.abs(w.cut - decision.cut) < 1);
  return said ?? cuts[0] ?? joints;
}

/** Through a wall so many half bricks thick: soldiers stand one behind another, bricks on edge lie through it. */
export function acrossRow(kind: Upright, halves: number): UprightRow['across'] {
  if (kind === 'soldier') return { wholes: halves, halves: 0 };
  return { wholes: Math.floor(halves / 2), halves: halves % 2 };
}

/** Pieces of it in the face, left to right: lengths along the wall, and which are cut. */
export function piecesOf({ way }: UprightRow, unit: number): { length: number; cut: boolean }[] {
  if (!way) return [];
  const cut = way.kind === 'cut' ? way : undefined;
  const all = way.wholes + (cut?.cuts ?? 0);
  const first = firstCut(cut, all);
  return Array.from({ length: all }, (_, i) => {
    const isCut = cut !== undefined && i >= first && i < first + cut.cuts;
    return { length: isCut ? cut.cut : unit, cut: isCut };
  });
}

function firstCut(cut: CutWay | undefined, all: number): number {
  if (!cut || cut.where === 'left') return 0;
  return cut.where === 'right' ? all - cut.cuts : Math.floor((all - cut.cuts) / 2);
}
