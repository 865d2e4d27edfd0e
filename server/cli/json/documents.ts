/** The documents that --json prints. Their shape is promised in shared/json-schema. */
import { usedWithErrors } from '../../documents/used';
import type { Figure } from '../../engine/brickwork/needs';
import { cautionViews } from '../../engine/views/caution-view';
import { allFigures, figureView, jobView } from '../../engine/views/job-view';
import type { Job } from '../../engine/workspace/job';
import type { Batch } from '../commands/command';
import { priceRange } from '../range';
import type { Opened, Session } from '../session';
import { VERSION } from '../version';
import { type Step, Workings } from '../workings';
import { chargedJson } from './charged';
import { amountJson } from './measure';
import { optionsJson } from './options';
import { cautionJson, figureJson, findingJson, placeJson, stepJson } from './plain';

const SCHEMA = 'perpend-1.schema.json';

export function checkDocument(batch: Batch, session: Session): string {
  return printed('perpend-check', batch, (opened) => ({
    file: opened.shown,
    findings: findings(opened.job, session),
    cautions: cautionViews(opened.job).map((each) => cautionJson(each, session)),
    used: used(opened.job, session),
  }));
}

export function priceDocument(batch: Batch, session: Session): string {
  return printed('perpend-price', batch, (opened) => pricedFile(opened, session));
}

/** Some figures of a job, each with all of its working. */
export function whyDocument(
  figures: readonly Figure[],
  { job, shown }: Opened,
  session: Session,
): string {
  const numbered = new Numbered(job);
  const document = {
    $schema: SCHEMA,
    format: 'perpend-why',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    figures: figures.map(({ key, term }) =>
      figureJson(figureView(key, term, job.env), numbered.of(term)),
    ),
    steps: numbered.steps.map((s) => stepJson(s, numbered.number, session)),
  };
  return `${JSON.stringify(document)}\n`;
}

function printed(format: string, batch: Batch, each: (opened: Opened) => object): string {
  const document = {
    $schema: SCHEMA,
    format,
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    files: batch.opened.map(each),
    unread: batch.unread,
  };
  return `${JSON.stringify(document)}\n`;
}

function findings(job: Job, session: Session) {
  return job.findings.map((f) => findingJson(f, session));
}

function used(job: Job, session: Session) {
  return usedWithErrors(job).map(({ file, errors }) => ({ file: session.shown(file), errors }));
}

function pricedFile({ job, shown }: Opened, session: Session) {
  const view = jobView(job);
  const common = { file: shown, edition: view.edition, isJob: job.isJob };
  if (!job.isJob) return { ...common, findings: findings(job, session), used: used(job, session) };
  const numbered = new Numbered(job);
  const figures = allFigures(job).map(({ key, term }) =>
    figureJson(figureView(key, term, job.env), numbered.of(term)),
  );
  return {
    ...common,
    title: view.name,
    currency: view.currency,
    complete: job.price.total.gaps.length === 0,
    range: rangeJson(job),
    taken: job.taken.size ? [...job.taken] : undefined,
    options: optionsJson(job),
    ...chargedJson(job),
    blocks: view.blocks.map((b) => ({
      kind: b.kind,
      name: b.name,
      title: b.title,
      place: placeJson(b.place, session),
      summary: b.summary,
      figures: b.figures.map((f) => f.id),
    })),
    figures,
    steps: numbered.steps.map((s) => stepJson(s, numbered.number, session)),
    findings: findings(job, session),
    used: used(job, session),
  };
}

function rangeJson(job: Job) {
  const range = priceRange(job);
  return range && { low: amountJson(range.low, job), high: amountJson(range.high, job) };
}

/** Gives every step its place in one list. A step's parts come before it, so no number points ahead. */
class Numbered {
  readonly steps: Step[] = [];
  private readonly numbers = new Map<Step, number>();
  private readonly workings: Workings;

  constructor(job: Job) {
    this.workings = new Workings(job.env);
  }

  of(term: Step['term']): number {
    return this.number(this.workings.of(term));
  }

  readonly number = (step: Step): number => {
    const known = this.numbers.get(step);
    if (known !== undefined) return known;
    for (const part of step.parts) this.number(part);
    this.numbers.set(step, this.steps.length);
    return this.steps.push(step) - 1;
  };
}
