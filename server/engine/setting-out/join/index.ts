/** Walls that meet: which course of which runs through, and what that leaves of the other. */
export { begunWith } from './bond-courses';
export type { ChainQuestion, Placing } from './chain';
export { chooseChain } from './chain';
export type { Courses, Parity, Side } from './corner';
export { coursesAt, givesWay } from './corner';
export type { GivingWay } from './lay-corner';
export { layCorners } from './lay-corner';
export type { LetIn } from './let-in';
export { letIn } from './let-in';
export type { CornerWall } from './nested';
export { bondsAt, wayAt } from './nested';
export type { MovementGap, PanelQuestion } from './panels';
export { MOST_GAPS, panelsOf } from './panels';
export type { RunningOn, RunsOn } from './run-on';
export { backInPlace, runOn } from './run-on';
export type { Entry, Tie, TieQuestion } from './tie';
export { bondIn, entriesFor, GOOD_TIE, tieOf } from './tie';
