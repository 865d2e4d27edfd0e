/** An option beside the job: what it adds, and what the job comes to with it. */
import { phrase } from '../../../shared/phrase';
import type { Figure } from '../brickwork/needs';
import type { JobPrice } from '../price/total';
import { difference, named, sum, type Term } from '../working/term';
import type { Job } from '../workspace/job';
import { exclude, type Option } from './option';

export interface PricedOption extends Option {
  /** Names of those that cannot be taken with it, whichever of them says so. */
  readonly excludes: readonly string[];
  /** The job with it, and no other option, taken. */
  readonly job: Job;
  /** What it adds to the price: less than nothing when the job costs less with it. */
  readonly more: Before;
  /** The price of the whole job with it. */
  readonly price: Before;
}

export interface Before {
  /** Before tax. */
  readonly net: Term;
  /** Tax in it. */
  readonly total: Term;
}

/** Worked out when asked for: the job with the option may never be. */
export function pricedOption(option: Option, job: Job): PricedOption {
  const excludes = job.options.all.filter((other) => exclude(option, other));
  const other = job.options.with([option.name])!;
  let more: Before | undefined;
  let price: Before | undefined;
  return {
    ...option,
    excludes: excludes.map(({ name }) => name),
    job: other,
    get more() {
      more ??= addedBy(option, job.price, other.price);
      return more;
    },
    get price() {
      price ??= priceWith(option, job.price, other.price);
      return price;
    },
  };
}

/** Where a price is agreed no option moves it: then by what would have been asked. */
function addedBy({ title }: Option, now: JobPrice, then: JobPrice): Before {
  const [a, b] = [now.asked ?? now, then.asked ?? then];
  return {
    net: difference(phrase`${title}, before tax`, now.price.unit, b.price, a.price),
    total: difference(title, now.total.unit, b.total, a.total),
  };
}

function priceWith(option: Option, now: JobPrice, then: JobPrice): Before {
  const label = phrase`Price with ${option.title}`;
  if (!now.asked)
    return {
      net: named(phrase`${label}, before tax`, then.price),
      total: named(label, then.total),
    };
  const more = addedBy(option, now, then);
  return {
    net: sum(phrase`${label}, before tax`, now.price.unit, [now.price, more.net]),
    total: sum(label, now.total.unit, [now.total, more.total]),
  };
}

/** Figures of the option, under `option.NAME`. */
export function optionFigures(option: PricedOption): Figure[] {
  const id = `option.${option.name}`;
  return [
    { key: `${id}.more-net`, term: option.more.net },
    { key: `${id}.more`, term: option.more.total },
    { key: `${id}.net`, term: option.price.net },
    { key: `${id}.price`, term: option.price.total },
  ];
}
