/** The brick that is bought, beside what stands and whatever else might be bought: figures, remarks, and what a client is told. */
import { matchRemarks } from '../../findings/matching';
import type { Remark } from '../../findings/remark';
import type { Term } from '../../working/term';
import { type Matching, matchingFigures, matchingIn, matchingSays } from '../matching';
import type { Figure } from '../needs';
import type { Site } from './site';

interface Matched {
  readonly matching?: Matching;
  readonly figures: readonly Figure[];
  readonly remarks: readonly Remark[];
  readonly says: readonly string[];
}

/** `short` is what is bought; `cut` where bricks are cut to a height that keeps the gauge. */
export function matchIn(site: Site, short: Term | undefined, cut: boolean): Matched {
  const matching = matchingIn(site, short);
  return {
    matching,
    figures: matchingFigures(site, matching),
    remarks: matchRemarks(site, matching),
    says: matchingSays(site, matching, cut),
  };
}
