/** From all that the work takes to what the client pays. Each step is a term, so each can show its working. */

import { exact, roundTo } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Figure, Needs } from '../brickwork/needs';
import { type Around, aroundOf, daysOf, paidHours, visitsOf } from '../labour/day';
import { type Gang, gangOf } from '../labour/gang';
import { loadingOut } from '../labour/load-out';
import type { MixBatch } from '../mortar/batch';
import type { Env } from '../resolve/env';
import {
  cents,
  counted,
  type Gap,
  most,
  named,
  product,
  sum,
  type Term,
  withGaps,
} from '../working/term';
import { type Bought, bought } from './bought';
import type { Purchase } from './buying';
import { type Charged, charged } from './charged';
import { otherCosts } from './others';
import { type ByPartner, partnersIn } from './partners';
import { followedBy } from './tax/followed';
import type { Paid, Pieces } from './tax/portions';
import { travelOf } from './travel';
import { jobWaste, wasteIn } from './waste';
import { Weights } from './weights';

export interface JobPrice extends Charged {
  readonly purchases: readonly Purchase[];
  readonly batches: readonly MixBatch[];
  readonly gang: Gang;
  /** What of every day goes on other things than the work. */
  readonly around: Around;
  /** Bricks unloaded and stacked out; nothing where the firm does not reckon it. */
  readonly loading?: Term;
  /** Of the work itself, all of the gang together. */
  readonly hours: Term;
  readonly days: Term;
  /** Those hours, and what of each day goes on other things. */
  readonly paid: Term;
  readonly labour: Term;
  /** What is done by others, and what they charge. */
  readonly partners: readonly ByPartner[];
  readonly materials: Term;
  readonly cost: Term;
  /** In the order a reader wants them. */
  readonly figures: readonly Figure[];
}

/**
 * `lost`: what the files say and could not be taken in, so that the price lacks it. `pieces`: the work, by whose cost the
 * price is shared out where parts of it are taxed otherwise.
 */
export function priceOf(
  needs: readonly Needs[],
  env: Env,
  lost: readonly Gap[] = [],
  pieces?: Pieces,
): JobPrice {
  const { code } = env.money;
  const buys = bought(needs, env);
  const time = timeOf(needs, buys, env);
  const materials = sum(
    phrase`Materials`,
    code,
    buys.purchases.map((p) => p.cost),
  );
  const labour = cents(
    phrase`Labour`,
    product(phrase`labour`, code, [time.paid, time.gang.rate]),
    env.money.digits,
  );
  const partners = partnersIn(needs, env);
  const byOthers = partners.map((p) => p.labour);
  const travel = sum(phrase`Travel`, code, travelOf(time.visits, env));
  const waste = wasteIn(needs);
  const costs = otherCosts(time.days, waste, env);
  const others = sum(
    phrase`Other costs`,
    code,
    costs.map((c) => c.cost),
  );
  const cost = withGaps(
    sum(phrase`Cost`, code, [materials, labour, ...byOthers, travel, others]),
    lost,
  );
  const known = { ...buys, ...time, labour, materials, partners };
  const shared = { cost, others: costs, ...weighed(known, pieces, code) };
  const top = charged({ cost, labour, materials, others, paid: time.paid }, shared, pieces, env);
  const figures: Figure[] = [
    ...amountFigures(buys, time),
    ...jobWaste(waste),
    { key: 'materials', term: materials },
    { key: 'labour', term: labour },
    { key: 'travel', term: travel },
    { key: 'others', term: others },
    { key: 'cost', term: cost },
    {
      key: 'time',
      term: timeShare(
        byOthers.length ? sum(phrase`labour`, code, [labour, ...byOthers]) : labour,
        cost,
      ),
    },
    ...top.figures,
  ];
  return { ...known, cost, ...top, figures };
}

type Time = Pick<JobPrice, 'gang' | 'around' | 'loading' | 'hours' | 'days' | 'paid'> & {
  readonly visits: Term;
};

function timeOf(needs: readonly Needs[], { purchases }: Bought, env: Env): Time {
  const gang = gangOf(env);
  const around = aroundOf(env);
  const loading = loadingOut(purchases, gang, env);
  const hours = sum(phrase`Hours of the gang`, 'h', [
    ...needs.flatMap((n) => n.tasks.flatMap((t) => (t.by ? [] : [t.hours]))),
    ...(loading ? [loading] : []),
  ]);
  const days = atLeastFor(needs, daysOf(hours, gang.day, around, env));
  const visits = visitsOf(days);
  return { gang, around, loading, hours, days, visits, paid: paidHours(hours, visits, around) };
}

function amountFigures({ purchases }: Bought, { hours, days, paid, loading }: Time): Figure[] {
  const bricks = sum(
    phrase`Bricks to buy`,
    'bricks',
    purchases.filter((p) => p.kind === 'brick').map((p) => p.bought),
  );
  return [
    { key: 'bricks', term: bricks },
    { key: 'hours', term: named(phrase`Hours`, hours) },
    { key: 'days', term: named(phrase`Days on site`, days) },
    ...(paid === hours ? [] : [{ key: 'paid', term: paid }]),
    ...(loading ? [{ key: 'load-out', term: loading }] : []),
  ];
}

/** What pieces of work cost by themselves, for whoever asks. */
function weighed(
  known: Pick<JobPrice, 'purchases' | 'batches' | 'hours' | 'labour' | 'partners'>,
  pieces: Pieces | undefined,
  code: string,
): Pick<Paid, 'each' | 'followed'> {
  const works = pieces?.works ?? [];
  const each = () => {
    const weights = new Weights(known);
    return pieces?.costs.of(works, (key) => weights.each(key), weights.hour) ?? [];
  };
  return { each, followed: (at) => followedBy(known, works, code)(at) };
}

/** What part of all that the job costs is the time of those who do it. */
function timeShare(labour: Term, cost: Term): Term {
  const percent = cost.value.isZero() ? exact(0) : labour.value.div(cost.value).mul(100);
  return counted(phrase`Time, of the cost`, roundTo(percent, 1), '%', {
    args: [labour, cost],
    note: phrase`labour in a hundred of the cost, to a tenth`,
    again: ([of, all]) => (all ? (100 * of!) / all : 0),
  });
}

/** However few the hours, green work goes up no faster than a lift a day. */
function atLeastFor(needs: readonly Needs[], days: Term): Term {
  const least = needs.flatMap((n) => n.leastDays ?? []);
  const longest = least.reduce<Term | undefined>(
    (a, b) => (a?.value.gte(b.value) ? a : b),
    undefined,
  );
  // Where either hangs on a range, which is more may turn within it.
  const ranged = longest && (longest.ranged || days.ranged);
  return ranged || longest?.value.gt(days.value)
    ? most(phrase`days`, 'days', days, longest!)
    : days;
}
