/** Setting-out: where every piece of a wall goes, and whether a length works. Pure geometry, mm. */

export type { Coping, CopingQuestion } from './coping';
export { fitCoping } from './coping';
export type {
  CapWay,
  CutWay,
  Fit,
  FitNumbers,
  FitQuestion,
  JointWay,
  LengthWay,
  Pieces,
  Way,
  WayKind,
  Where,
} from './fit';
export { fitRun, PREFERENCE } from './fit';
export type { Row } from './halves';
export { sizeOf } from './halves';
export { fitHeight, gaugeJoint, heightOf } from './height';
export type { BricksNeeded } from './needed';
export { bricksNeeded } from './needed';
export { setOut } from './set-out';
export { rowOf } from './stretch';
export type { CourseRange, FaceTally, Tally } from './tally';
export { ALL_COURSES, sumTallies, tally, tallyFace, tallyPier } from './tally';
export type {
  Band,
  BondPattern,
  BrokenBond,
  CountedPiece,
  CoursePattern,
  EndKind,
  FacePiece,
  FaceUnit,
  JointLimits,
  Joints,
  LaidRun,
  OpeningSpec,
  PieceCount,
  PieceGroup,
  PieceRun,
  PierPlan,
  PierSpec,
  Segment,
  SettingOut,
  UnitSize,
  WallSpec,
} from './types';
