/** Setting-out: where every piece of a wall goes, and whether a length works. Pure geometry, mm. */

export type { CourseRange, Tally } from './count/tally';
export {
  ALL_COURSES,
  NOTHING_COUNTED,
  sumTallies,
  tally,
  tallyFace,
  tallyPier,
} from './count/tally';
export type { BrickCut, BricksNeeded, PieceOut } from './cuts/bricks';
export { bricksNeeded, lengthsOf } from './cuts/bricks';
export type { CutPlace, Spots } from './cuts/list';
export { cutList, cutsInPier, cutsWithin, piecesAt } from './cuts/list';
export type { Bats } from './cuts/stock';
export { fitCoping } from './fit/coping';
export type {
  CutWay,
  Fit,
  FitQuestion,
  JointWay,
  LengthWay,
  Pieces,
  Way,
  WayKind,
  Where,
} from './fit/fit';
export { fitRun, isPoor } from './fit/fit';
export type { Row } from './fit/halves';
export { sizeOf } from './fit/halves';
export { fitHeight, gaugeJoint, heightOf } from './fit/height';
export type {
  CornerWall,
  CourseEnds,
  Courses,
  Entry,
  GivingWay,
  LetIn,
  MovementGap,
  Parity,
  Placing,
  RunningOn,
  RunsOn,
  Side,
  Tie,
} from './join';
export {
  backInPlace,
  begunWith,
  bondIn,
  bondsAt,
  chooseChain,
  coursesAt,
  entriesFor,
  GOOD_TIE,
  givesWay,
  layCorners,
  letIn,
  MOST_GAPS,
  panelsOf,
  runOn,
  stretched,
  takesUp,
  tieOf,
  wayAt,
} from './join';
export { depthsOf } from './lay/rows';
export { setOut } from './lay/set-out';
export { rowOf } from './lay/stretch';
export type { Arch } from './openings/arch';
export { archOf, halfWidthAt, radiusOf, ringArea, soffitArea, widthOver } from './openings/arch';
export type { Gap } from './openings/carve';
export { carve } from './openings/carve';
export type { ArchCourse, Standing } from './openings/gaps';
export { archCourses, archGaps, wedgeArea } from './openings/gaps';
export { carvedLap, lapAt } from './openings/laps';
export { partOfCourse } from './openings/low';
export type { Ring, Voussoir } from './openings/ring';
export { ringBricks, ringsOf } from './openings/ring';
export { touchedBy } from './openings/touched';
export type { AttachedLaid, AttachedShape, CoreFill, CoursePlan, PierLaid } from './piers';
export { attachPiers, faceOf, firstOnTop, hasCore, MOST_HALVES, pierPlans } from './piers';
export { placeCourse, placePatches } from './place/course';
export { bricksOf, piecesIn } from './place/face';
export type { BondProof } from './place/sample';
export { bondHolds, proveBond } from './place/sample';
export type { LayoutFault } from './prove';
export { between, inCourses } from './tops/between';
export type { CornerEnd, CornerTop } from './tops/corner';
export { copingAtCorner, copingAtTee } from './tops/corner';
export type { TileCourse, TileLine } from './tops/creasing';
export { creasingCourse, creasingLines, creasingWidth, halfTile } from './tops/creasing';
export type { Fall } from './tops/falls';
export { fallSteps, MOST_STEPS } from './tops/falls';
export type { FootingStep } from './tops/footing';
export { footingSteps, lapVolume } from './tops/footing';
export type { Level, StepAt } from './tops/profile';
export {
  groundOf,
  levelAt,
  levelsOf,
  mostCourses,
  stepsOf,
  stretchesOf,
  topOf,
} from './tops/profile';
export type { Strip } from './tops/strips';
export { stripAtCorner, stripInFace } from './tops/strips';
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
  Patch,
  PieceCount,
  PierPlan,
  PierSpec,
  PlacedPiece,
  PoorLap,
  RowPattern,
  Segment,
  SettingOut,
  Step,
  Thickness,
  UnitSize,
  WallSpec,
} from './types';
