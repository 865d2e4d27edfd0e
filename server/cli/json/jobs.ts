/** What perpend jobs --json prints. Its shape is promised in shared/json-schema. */
import type { Exact } from '../../../shared/exact';
import { showMoney } from '../../../shared/show';
import type { CurrencyOverview, Overview } from '../../engine/firm/overview';
import { type JobState, STATES } from '../../engine/firm/state';
import type { Turnover } from '../../engine/firm/turnover';
import { VERSION } from '../version';

type Named = (file: string) => string;

export function jobsDocument(of: Overview, folder: string, named: Named): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-jobs',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    folder,
    day: of.day,
    jobs: of.jobs,
    others: of.others,
    currencies: of.currencies.map((currency) => currencyJson(currency, named)),
  };
  return `${JSON.stringify(document)}\n`;
}

function currencyJson(of: CurrencyOverview, named: Named) {
  const amount = amountsOf(of);
  return {
    currency: of.code,
    states: STATES.map((state) => {
      const { jobs, price, unpriced } = of.states[state];
      return { state, jobs, price: amount(price), unpriced };
    }),
    invoiced: amount(of.invoiced),
    paid: amount(of.paid),
    held: amount(of.held),
    owed: amount(of.owed),
    open: of.open.map(({ job, date, amount: open, days, late }) => ({
      file: named(job.file),
      date,
      amount: amount(open),
      days,
      late,
    })),
    quarters: of.quarters.map(({ from, to, invoiced, paid }) => ({
      from,
      to,
      invoiced: turnoverJson(invoiced, amount),
      paid: turnoverJson(paid, amount),
    })),
    jobs: of.jobs.map((job) => jobJson(job, named, amount)),
  };
}

type Amounts = (value: Exact) => { value: string; unit: string; text: string };

function amountsOf({ code, money, style }: CurrencyOverview): Amounts {
  const { sign, digits } = money;
  return (value) => ({
    value: value.toFixed(),
    unit: code,
    text: showMoney(value, sign, digits, style),
  });
}

function turnoverJson({ net, tax, gross, unknown }: Turnover, amount: Amounts) {
  return { net: amount(net), tax: amount(tax), gross: amount(gross), unknown: amount(unknown) };
}

function jobJson(job: JobState, named: Named, amount: Amounts) {
  const { ref, title, client, date } = job.summary;
  return {
    file: named(job.file),
    ref,
    title,
    client,
    date,
    state: job.state,
    since: job.since,
    price: job.price && amount(job.price),
    priceMoved: job.priceMoved,
    invoiced: amount(job.invoiced),
    paid: amount(job.paid),
    held: amount(job.held),
    owed: amount(job.owed),
    leftOut: job.leftOut,
    lost: job.setting.lost,
  };
}
