/** What the job costs, and the steps from there to what the client pays. */
import { phrase } from '../../../../shared/phrase';
import type { PartKind } from '../../../../shared/protocol/parts';
import type { Figure } from '../../brickwork/needs';
import { priceFigures } from '../../views/price-figures';
import { showTerm } from '../../views/show';
import type { Term } from '../../working/term';
import type { Job } from '../../workspace/job';
import { figurePart, groupPart, type JobPart } from './part';

/** What stands between cost and price; a discount and a row of tax come in lists of their own. */
const STEPS = [
  'contingency',
  'overhead',
  'profit',
  'discount',
  'net',
  'tax',
  'rounding',
  'price',
  'deducted',
  'leaves',
  'earns',
];
const LISTED = /^(discount|tax|stage|deducted)\.\d+$/;
const TOTALS = new Set(['net', 'price']);

export function moneyParts(job: Job): JobPart[] {
  const { price, env } = job;
  return [
    ...groupPart(
      { id: 'costs', kind: 'costs', label: phrase`Costs`, text: showTerm(price.cost, env) },
      costParts(job),
    ),
    ...groupPart(
      { id: 'price', kind: 'price', label: phrase`Price`, text: showTerm(price.total, env) },
      stepParts(job),
    ),
  ];
}

function costParts(job: Job): JobPart[] {
  const { price } = job;
  const own = (
    key: string,
    kind: PartKind,
    children: (all: Term) => readonly JobPart[] = () => [],
  ) =>
    ofJob(price.figures, key).map(({ term }) =>
      part(job, { id: `costs/${key}`, kind, figure: `job.${key}`, term, children: children(term) }),
    );
  const partners = price.partners.map(({ name, title, labour }) =>
    part(job, {
      id: `costs/partner/${name}`,
      kind: 'labour',
      figure: `partner.${name}.labour`,
      term: labour,
      label: title,
    }),
  );
  return [
    ...own('materials', 'goods', () => goodsParts(job)),
    ...own('labour', 'labour'),
    ...partners,
    ...own('travel', 'travel'),
    ...own('others', 'other', (all) => otherParts(job, all)),
  ];
}

/** What is bought: how many packs, and what they cost. */
function goodsParts(job: Job): JobPart[] {
  return job.price.purchases.map(({ name, title, bought, cost }) => {
    const made = part(job, {
      id: `costs/buy/${name}`,
      kind: 'goods',
      figure: `cost.${name}`,
      term: cost,
      label: title,
    });
    const amount = showTerm(bought, job.env);
    return {
      ...made,
      text: `${amount} · ${made.text}`,
      heard: `${title}, ${amount}, ${made.text.replace(' …', '')}`,
    };
  });
}

/** One alone is told by the whole already. */
function otherParts(job: Job, all: Term): JobPart[] {
  const each = all.args.length > 1 ? all.args : [];
  return each.map((term, i) => ({
    ...part(job, { id: `costs/others/${i + 1}`, kind: 'other', term }),
    figure: undefined,
  }));
}

/** Those that come in lists are told one by one where there are several. */
function stepParts(job: Job): JobPart[] {
  const all = priceFigures(job.price).filter(({ key }) => LISTED.test(key));
  const several = (key: string) => all.filter((f) => f.key.startsWith(`${key}.`)).length > 1;
  const lists = all.filter(({ key }) => key.startsWith('stage.') || several(key.split('.')[0]!));
  const steps = STEPS.flatMap((key) => ofJob(job.price.figures, key));
  return [
    ...steps.map((f) => step(job, f, `job.${f.key}`)),
    ...lists.map((f) => step(job, f, f.key)),
  ];
}

function step(job: Job, { key, term }: Figure, figure: string): JobPart {
  const kind = TOTALS.has(key) ? 'total' : 'step';
  return part(job, { id: `price/${key}`, kind, figure, term });
}

function ofJob(figures: readonly Figure[], key: string): Figure[] {
  return figures.filter((f) => f.key === key && (!f.term.value.isZero() || f.term.gaps.length > 0));
}

function part(job: Job, shown: Parameters<typeof figurePart>[0]): JobPart {
  return figurePart(shown, job.env);
}
