/** Setting-out: where every piece of a wall goes, and whether a length works. Pure geometry, mm. */

export type { BricksNeeded } from './count/needed';
export { bricksNeeded } from './count/needed';
export type { CourseRange, FaceTally, Tally } from './count/tally';
export { ALL_COURSES, sumTallies, tally, tallyFace, tallyPier } from './count/tally';
export type { Coping, CopingQuestion } from './fit/coping';
export { fitCoping } from './fit/coping';
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
} from './fit/fit';
export { fitRun, PREFERENCE } from './fit/fit';
export type { Row } from './fit/halves';
export { sizeOf } from './fit/halves';
export { fitHeight, gaugeJoint, heightOf } from './fit/height';
export { setOut } from './lay/set-out';
export { rowOf } from './lay/stretch';
export type {
  Area,
  Band,
  BondPattern,
  BrokenBond,
  CountedPiece,
  CoursePattern,
  Decided,
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
  PlacedPiece,
  Segment,
  SettingOut,
  UnitSize,
  WallSpec,
} from './types';
