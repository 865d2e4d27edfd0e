/** What there is to tell of a repair as a whole. */
import type { Mending } from '../../brickwork/repair/mending';
import type { Salvage } from '../../brickwork/repair/salvage';
import type { Site } from '../../brickwork/repair/site';
import { repairIdle } from '../idle';
import type { Remark } from '../remark';
import { halvesHomeless } from './halves-homeless';
import { mendOver } from './mend-over';
import { pierElsewhere } from './pier-elsewhere';
import { rebuildOpenings } from './rebuild-openings';
import { rebuildOver } from './rebuild-over';
import { repairNothing } from './repair-nothing';
import { salvageOver } from './salvage-over';

export function repairRemarks(
  site: Site,
  mendings: readonly Mending[],
  salvage: Salvage,
): Remark[] {
  const over = salvageOver(site.facts, salvage);
  const found = [
    mendings.length ? undefined : repairNothing(site.facts),
    over,
    over ? undefined : halvesHomeless(site.facts, salvage),
    rebuildOver(site),
    rebuildOpenings(site),
    pierElsewhere(site.facts),
  ];
  return [
    ...repairIdle(site.facts, mendings),
    ...mendOver(site),
    ...found.filter((remark): remark is Remark => remark !== undefined),
  ];
}
