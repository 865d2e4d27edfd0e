/** What there is to tell of the brick that is chosen for a repair beside the others that might be bought. */
import type { Matching } from '../../brickwork/matching/types';
import type { Site } from '../../brickwork/repair/site';
import type { Remark } from '../remark';
import { matchIdle } from './match-idle';
import { matchOpen } from './match-open';
import { matchWorse } from './match-worse';

export function matchRemarks(site: Site, matching: Matching | undefined): Remark[] {
  const found = [
    matchIdle(site.facts, matching),
    matchOpen(site.facts, matching),
    matchWorse(site.facts, matching, site.env),
  ];
  return found.filter((remark): remark is Remark => remark !== undefined);
}
