/** Proofs of whole layouts for tests: both faces and every course on plan. */
import { type PlacedPiece, placeCourse, type SettingOut } from '../../server/engine/setting-out';
import { builtBack, builtFace, rulesOf } from '../../server/engine/setting-out/place/built';
import { planOutline } from '../../server/engine/setting-out/place/outline';
import {
  type LayoutFault,
  type PlanOutline,
  proveFace,
  provePlan,
} from '../../server/engine/setting-out/prove';
import type { Box } from './on-plan';

export const facesOf = (out: SettingOut): LayoutFault[] =>
  [builtFace(out), builtBack(out)].flatMap((face) => proveFace(face, rulesOf(out.spec)));

export const plansOf = (out: SettingOut): LayoutFault[] =>
  Array.from({ length: out.spec.courses }, (_, course) =>
    provePlan(course, placeCourse(out, course), planOutline(out, course), rulesOf(out.spec).joint),
  ).flat();

export const ofLap = ({ kind }: LayoutFault) =>
  kind === 'aligned' || kind === 'lap-short' || kind === 'closer-missing';

/** Boxes on the ground as pieces: what they are cut as is nothing to a plan. */
export const asPieces = (boxes: readonly Box[]): PlacedPiece[] =>
  boxes.map(({ x, y, right, top }) => ({
    piece: 'cut',
    x,
    y,
    along: right - x,
    across: top - y,
  }));

/** A rectangle to be filled from edge to edge. */
export const area = (x: number, y: number, right: number, top: number): PlanOutline => {
  return { x, y, width: right - x, height: top - y, left: 'stopped', right: 'stopped' };
};
