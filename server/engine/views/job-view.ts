/** A job as plain data, ready to show: every figure with its id, every block with its line for the editor. */
import { later, phrase, spoken } from '../../../shared/phrase';
import type { BlockView, FigureView, JobView } from '../../../shared/views';
import type { Figure } from '../brickwork/needs';
import type { Work } from '../brickwork/work';
import { headOrigin } from '../findings/remark';
import { optionFigures } from '../life/priced';
import { resultFigures, resultOf } from '../life/result';
import type { MixBatch } from '../mortar/batch';
import { mortarFigures } from '../mortar/figures';
import { namesOf } from '../mortar/named-twice';
import { wordOf } from '../resolve/book';
import type { Env } from '../resolve/env';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import { cautionViews } from './caution-view';
import { priceFigures } from './price-figures';
import { missingOf, showTerm } from './show';

export function figureView(id: string, term: Term, env: Env): FigureView {
  return {
    id,
    label: term.label,
    value: term.value.toFixed(),
    unit: term.unit,
    text: showTerm(term, env),
    complete: term.gaps.length === 0,
    missing: missingOf(term),
  };
}

/** Figures of a piece of work under its name: `north.bricks`; its cost and its part of the price last. */
export function workFigures(work: Work, job: Job): readonly Figure[] {
  const { cost, price } = job.shareOf(work);
  const all = [...work.figures, { key: 'cost', term: cost }, { key: 'price', term: price }];
  return all.map(({ key, term }) => ({ key: `${work.name}.${key}`, term }));
}

/** Every figure of the job by its id. */
export function allFigures(job: Job): readonly Figure[] {
  return [...job.works.flatMap((work) => workFigures(work, job)), ...jobFigures(job)];
}

/** Those of the job as a whole, by their ids. */
export function jobFigures(job: Job): readonly Figure[] {
  const { figures, purchases, batches } = job.price;
  return [
    ...batches.flatMap((b) => [{ key: `mix.${b.name}`, term: b.wet }, ...partFigures(b)]),
    ...purchases.flatMap((p) => [
      { key: `need.${p.name}`, term: p.needed },
      { key: `buy.${p.name}`, term: p.bought },
      { key: `cost.${p.name}`, term: p.cost },
    ]),
    ...mortarFigures(job.price, job.env),
    ...figures.map(({ key, term }) => ({ key: `job.${key}`, term })),
    ...job.options.priced.flatMap(optionFigures),
    ...happened(job),
    ...priceFigures(job.price),
  ];
}

/** What became of it, once something is recorded. */
function happened(job: Job): Figure[] {
  const result = resultOf(job);
  return result ? resultFigures(result) : [];
}

function partFigures({ name, parts }: MixBatch): Figure[] {
  return namesOf(parts).map((part, i) => ({ key: `mix.${name}.${part}`, term: parts[i]!.volume }));
}

export function jobView(job: Job): JobView {
  const { env, file } = job;
  const block = job.book.blocksOf('job').find((b) => b.file.name === file.name);
  return {
    file: file.name,
    edition: 1,
    name: wordOf(block?.read.heading?.values.title),
    currency: env.money.code,
    blocks: job.works.map((work) => blockView(work, job)),
    totals: allFigures(job)
      .filter(({ key }) =>
        /^(mix|need|buy|cost|left|lays|batch|batches|last|over|job|partner|discount|tax|stage|deducted)\./.test(
          key,
        ),
      )
      .map(({ key, term }) => figureView(key, term, env)),
    cautions: cautionViews(job),
    findings: job.findings,
  };
}

function blockView(work: Work, job: Job): BlockView {
  const figures = workFigures(work, job).map(({ key, term }) => figureView(key, term, job.env));
  const place = headOrigin(work.block).block.headPlace;
  return {
    kind: work.kind,
    name: work.name,
    title: work.title,
    place,
    summary: summaryOf(work, job),
    figures,
  };
}

/** Shown at the end of the heading’s line: bricks, mortar, hours, and the block’s part of the price. */
export function summaryOf(work: Work, job: Job): string {
  const { cost, price } = moneyOf(work, job);
  return [...amountsOf(work, job.env), cost, price].join(' · ');
}

/** What the work itself takes, in words: nothing else of the job is in it. */
function amountsOf(work: Work, env: Env): string[] {
  return amounts(work, env).map((amount) => amount.text);
}

/** The same, each with its figure. */
export function amounts(work: Work, env: Env): { readonly text: string; readonly term: Term }[] {
  const wanted = ['bricks', 'down', 'short', 'mortar', 'hours'];
  return wanted.flatMap((key) => {
    const term = work.figures.find((f) => f.key === key)?.term;
    if (!term || (term.value.isZero() && key !== 'bricks')) return [];
    const text = `${spoken(SHORT[key] ?? '')}${showTerm(term, env)}${term.gaps.length ? ' …' : ''}`;
    return [{ text, term }];
  });
}

/** Its share of the job’s cost and price, in words. */
function moneyOf(work: Work, job: Job): { readonly cost: string; readonly price: string } {
  const { cost, price } = job.shareOf(work);
  return {
    cost: phrase`cost ${showTerm(cost, job.env)}`,
    price: phrase`price ${showTerm(price, job.env)}`,
  };
}

const SHORT: Readonly<Record<string, string>> = {
  down: later`down `,
  short: later`buy `,
  mortar: later`mortar `,
};
