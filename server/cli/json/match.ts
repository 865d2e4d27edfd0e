/** What perpend match --json prints. Its shape is promised in shared/json-schema. */
import type { Candidate } from '../../engine/brickwork/matching';
import { SIDES, type Sides } from '../../engine/brickwork/matching/types';
import type { Work } from '../../engine/brickwork/work';
import type { Term } from '../../engine/working/term';
import type { Job } from '../../engine/workspace/job';
import type { Opened } from '../session';
import { VERSION } from '../version';
import { amountJson } from './measure';

export function matchDocument(works: readonly Work[], { job, shown }: Opened): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-match',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    blocks: works.map((work) => blockJson(work, job)),
  };
  return `${JSON.stringify(document)}\n`;
}

/** What is not known is left out, never null. */
function blockJson({ kind, name, title, facts }: Work, job: Job) {
  const { stood, order, candidates } = facts.matching!;
  return {
    kind,
    name,
    title,
    order,
    stands: {
      title: stood.title,
      measured: stood.measured,
      gauged: stood.gauged,
      sample: stood.sample && amountJson(stood.sample, job),
      size: sidesJson(stood.size, job),
      course: stood.course && amountJson(stood.course, job),
    },
    candidates: candidates.map((one) => candidateJson(one, job)),
  };
}

function candidateJson(one: Candidate, job: Job) {
  const { rank, chosen, brick, larger, near, bed, perpend, buy, why, honest } = one;
  const amount = (term: Term | undefined) =>
    term && !term.gaps.length ? amountJson(term, job) : undefined;
  return {
    rank,
    chosen,
    brick: brick.name,
    title: brick.title,
    larger: sidesJson(larger, job),
    tolerance: near && {
      class: near.title,
      within: near.out === undefined,
      side: near.out?.side,
      out: amount(near.out?.term),
    },
    bed: bed && {
      joint: amountJson(bed.joint, job),
      accepted: bed.accepted,
      least: amount(bed.within?.least),
      most: amount(bed.within?.most),
      drift: amount(bed.drift?.term),
    },
    perpend: perpend && {
      joint: amountJson(perpend.joint, job),
      accepted: perpend.accepted,
      creep: amount(perpend.creep),
    },
    frog: amount(brick.frog),
    waste: amount(one.waste),
    bought: amount(buy.bought),
    cost: amount(buy.cost),
    left: amount(buy.left),
    why,
    honest,
  };
}

function sidesJson(sides: Sides<Term> | undefined, job: Job) {
  if (!sides) return undefined;
  return Object.fromEntries(SIDES.map((side) => [side, amountJson(sides[side], job)]));
}
