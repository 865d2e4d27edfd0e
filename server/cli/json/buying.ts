/** The buying list as JSON: merchant by merchant, amounts as exact decimals. No money unless it is asked for. */
import { heldBy, ordersOf } from '../../documents/buying/list';
import type { Job } from '../../engine/workspace/job';
import { VERSION } from '../version';
import { amountJson } from './measure';

export function buyingJson(job: Job, prices: boolean, file: string): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-buying',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file,
    merchants: ordersOf(job).map(({ merchant, purchases }) => ({
      merchant,
      items: purchases.map((purchase) => {
        const { kind, name, title, needed, bought, cost } = purchase;
        const holds = heldBy(purchase);
        return {
          kind,
          name,
          title,
          complete: bought.gaps.length === 0,
          needed: amountJson(needed, job),
          buy: amountJson(bought, job),
          holds: holds && amountJson(holds, job),
          cost: prices ? amountJson(cost, job) : undefined,
        };
      }),
    })),
  };
  return `${JSON.stringify(document)}\n`;
}
