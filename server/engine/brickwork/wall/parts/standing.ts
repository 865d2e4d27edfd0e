/** A wall whose gauge was measured off something that stands: the joints it takes, and how far it would drift without. */
import { besideRemarks, besideStanding } from '../../standing/beside';
import { standingFigures } from '../../standing/gauge';
import type { PartOf } from './part';

export const standing: PartOf = (masonry, plan) => {
  const beside = besideStanding(masonry, plan.height.term);
  if (!beside) return undefined;
  return { figures: standingFigures(beside), remarks: besideRemarks(beside, masonry) };
};
