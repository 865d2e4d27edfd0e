/** What is bought for a job, merchant by merchant: whole packs, and no money unless it is asked for. */
import type { Purchase } from '../../engine/price/buying';
import { factsNamed } from '../../engine/resolve/env';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';

/** What one merchant is asked for. */
export interface Order {
  /** Empty for what no file says whom it is bought from. */
  readonly merchant: string;
  readonly purchases: readonly Purchase[];
}

/** Merchants in the order of what is bought; what nobody is named for comes last. */
export function ordersOf(job: Job): Order[] {
  const orders = new Map<string, Purchase[]>();
  for (const purchase of job.price.purchases) {
    const merchant = merchantOf(purchase, job);
    const list = orders.get(merchant);
    if (list) list.push(purchase);
    else orders.set(merchant, [purchase]);
  }
  const all = [...orders].map(([merchant, purchases]) => ({ merchant, purchases }));
  return [...all.filter((o) => o.merchant), ...all.filter((o) => !o.merchant)];
}

/** How much one of the packs holds; nothing where it is bought singly, loose or in packs of several kinds. */
export function heldBy({ needed, bought, left }: Purchase): Term | undefined {
  const kinds = bought.mixed?.filter(({ value }) => !value.isZero()).length ?? 1;
  const unknown = bought.gaps.length > 0 || !bought.value.gt(0);
  if (!left || kinds > 1 || unknown || bought.unit === needed.unit) return undefined;
  const value = needed.value.add(left.value).div(bought.value);
  return { ...needed, value };
}

function merchantOf({ kind, name }: Purchase, { env }: Job): string {
  // A ready mix is bought under its own name, as a material or a mix.
  const kinds = kind === 'brick' ? (['brick'] as const) : (['material', 'mix'] as const);
  for (const of of kinds) {
    const said = factsNamed(env, of, name)?.line('merchant')?.word('merchant');
    if (said) return said;
  }
  return '';
}
