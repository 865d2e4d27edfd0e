/** Proves a layout from its pieces alone, whoever made it and however. */
export { areaOf, slabsOf } from './cover';
export { proveFace } from './face';
export type { PlanOutline } from './plan';
export { provePlan } from './plan';
export { proveTied } from './tied';
export type {
  BrokenPlace,
  BuiltCourse,
  BuiltPiece,
  FaultKind,
  LayoutFault,
  ProofRules,
} from './types';
