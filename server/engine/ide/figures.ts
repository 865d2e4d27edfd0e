/** The figures of a block: of a wall under its heading, of the job under its own, of what is bought of a brick. */

import type { Figure } from '../brickwork/needs';
import { optionFigures } from '../life/priced';
import { allFigures, workFigures } from '../views/job-view';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';

export interface BlockFigures {
  /** In the order a reader wants them. */
  readonly figures: readonly Figure[];
  /** The one whose working is shown. */
  readonly main?: Figure;
}

const NONE: BlockFigures = { figures: [] };

/** What a block’s heading stands for in figures; none for a block that only holds settings. */
export function figuresOf(block: SourceBlock, of: Job): BlockFigures {
  const job = of.homeOf(block);
  if (block.kind === 'option') return ofOption(block, job);
  const work = job.workAt(block);
  if (work) {
    const figures = workFigures(work, job);
    return { figures, main: figures[0] };
  }
  const ids = idsOf(block);
  if (!job.isJob || block.file !== of.file || !ids.length) return NONE;
  const all = allFigures(job);
  const figures = ids.flatMap((id) => all.find((f) => f.key === id) ?? []);
  return { figures, main: figures.at(-1) };
}

function ofOption({ name }: SourceBlock, job: Job): BlockFigures {
  const option = job.options.priced.find((each) => each.name === name);
  const figures = option ? optionFigures(option) : [];
  return { figures, main: figures[1] };
}

const OF_KIND: Readonly<Record<string, readonly string[]>> = {
  job: ['job.hours', 'job.days', 'job.cost', 'job.net', 'job.tax', 'job.price'],
  price: ['job.cost', 'job.overhead', 'job.profit', 'job.net'],
  labour: ['job.hours', 'job.days', 'job.labour'],
  travel: ['job.days', 'job.travel'],
  cost: ['job.others'],
};

const BOUGHT: ReadonlySet<string> = new Set(['brick', 'mix', 'material']);

/** Ids of the job’s figures that belong to a block that is no work itself; the main one last. */
function idsOf(block: SourceBlock): readonly string[] {
  const kind = block.kind ?? '';
  if (kind === 'partner')
    return [idOf('partner hours', block.name), idOf('partner labour', block.name)];
  if (!BOUGHT.has(kind)) return OF_KIND[kind] ?? [];
  const mortar = kind === 'mix' ? MIXED : kind === 'material' ? ['left'] : [];
  return [...mortar, 'buy', 'cost', 'mix'].map((part) => idOf(part, block.name));
}

/** What a mix is told by beside its own amount. */
const MIXED = ['batches', 'batch', 'last', 'left', 'lays', 'lays bricks', 'lays pointing'];

function idOf(part: string, name = ''): string {
  const [first, last] = part.split(' ');
  return [first, name, last].filter(Boolean).join('.');
}
