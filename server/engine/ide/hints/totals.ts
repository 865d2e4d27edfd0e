/** At the end of headings: what a piece of work, a mix, an option or the whole job comes to. */
import { phrase } from '../../../../shared/phrase';
import type { Work } from '../../brickwork/work';
import { amounts } from '../../views/job-view';
import { mixParts } from '../../views/mortar';
import { showTerm } from '../../views/show';
import type { Job } from '../../workspace/job';
import type { SourceBlock } from '../../workspace/source';
import { atEnd, type MadeHint, type MadePart } from './made';

export function totalHints(block: SourceBlock, home: Job): MadeHint[] {
  const heading = block.read.heading!;
  const parts = totalParts(block, home);
  return parts?.length ? [{ ...atEnd(block, heading), kind: 'total', parts }] : [];
}

function totalParts(block: SourceBlock, job: Job): readonly MadePart[] | undefined {
  if (block.kind === 'job') return job.works.length ? priceParts(job) : undefined;
  if (block.kind === 'option') return optionParts(block, job);
  if (block.kind === 'mix') return mixParts(block.name, job);
  const work = job.workAt(block);
  // One without a name cannot be read yet: there is nothing to tell of it but noughts.
  return work?.name ? workParts(work, job) : undefined;
}

/** The price first: the end of a long hint may be cut off, and it is what a reader looks for. */
function workParts(work: Work, job: Job): readonly MadePart[] {
  const { cost, price } = job.shareOf(work);
  return [
    { text: phrase`price ${showTerm(price, job.env)}`, term: price },
    ...amountsOf(work, job),
    { text: phrase`cost ${showTerm(cost, job.env)}`, term: cost },
  ];
}

/** What hangs on a piece of work alone is worked out once, and stands until it changes. */
const kept = new WeakMap<Work, readonly MadePart[]>();

function amountsOf(work: Work, job: Job): readonly MadePart[] {
  const known = kept.get(work) ?? amounts(work, job.env);
  kept.set(work, known);
  return known;
}

/** An incomplete price says so. */
function priceParts(job: Job): readonly MadePart[] {
  const { total, tax, taxName } = job.price;
  const price = showTerm(total, job.env);
  const text = tax.value.isZero() ? price : phrase`${price} incl. ${taxName}`;
  return [{ text: total.gaps.length ? phrase`${text}, not complete` : text, term: total }];
}

/** What it adds, and what the job comes to with it. */
function optionParts({ name }: SourceBlock, job: Job): readonly MadePart[] | undefined {
  const option = job.options.priced.find((each) => each.name === name);
  if (!option || !job.isJob) return undefined;
  const { more, price } = option;
  const sign = more.total.value.isNegative() ? '' : '+';
  const all = phrase`${showTerm(price.total, job.env)} with it`;
  return [
    { text: `${sign}${showTerm(more.total, job.env)}`, term: more.total },
    {
      text: price.total.gaps.length ? phrase`${all}, not complete` : all,
      term: price.total,
    },
  ];
}
