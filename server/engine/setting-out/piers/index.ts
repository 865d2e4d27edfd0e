/** Piers: where every piece of each course lies, and what each face shows of it. */
export type { AttachedLaid } from './attached';
export type { AttachedShape } from './attached-region';
export { faceOf } from './face';
export { attachPiers } from './in-wall';
export { firstOnTop } from './on-top';
export { hasCore, pierPlans } from './standing';
export type { CoreFill, CoursePlan, PierLaid } from './types';
export { MOST_HALVES } from './types';
