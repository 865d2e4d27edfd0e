/** What spans the openings of a wall, and lies at their feet: counted, timed and told. */
import { later, phrase, spoken } from '../../../../../shared/phrase';
import type { Gang } from '../../../labour/gang';
import { taskHours } from '../../../labour/output';
import { sum, type Term } from '../../../working/term';
import type { Masonry } from '../../masonry';
import type { TaskNeed } from '../../needs';
import { beddingOf } from '../heads/counts';
import type { Laid } from '../heads/laid';
import { layHeads } from '../heads/lay';
import { lintelNeeds } from '../heads/needs';
import { saysOf } from '../heads/says';
import { shapesOf } from '../heads/shapes';
import { siteOf } from '../heads/site';
import type { PartOf } from './part';

export const heads: PartOf = (masonry, plan, counts, gang) => {
  if (!plan.heads.length) return undefined;
  const site = { ...siteOf(masonry, plan), deep: counts.out.thickness, wall: counts.out };
  const laid = layHeads(masonry, plan, counts, site);
  const { lintels, centres } = lintelNeeds(plan.heads, masonry);
  const arched = plan.heads.some((head) => head.arch);
  const pieces = [...lintels, ...centres.flatMap((centre) => centre.need ?? [])];
  return {
    bricks: laid.map(({ brick, counted, places }) => ({ brick, counted, places })),
    mortar: plan.heads.flatMap((head) => (head.lintel ? [beddingOf(head.lintel, head, site)] : [])),
    pieces,
    tasks: [
      ...brickTasks(laid, masonry, gang),
      ...pieceTasks(
        'lintel',
        phrase`Bedding lintels`,
        lintels.map((l) => l.count),
        masonry,
        gang,
      ),
      ...pieceTasks(
        'centre',
        phrase`Setting up and striking centres`,
        centres.map((c) => c.count),
        masonry,
        gang,
      ),
    ],
    figures: laid.flatMap((each) => each.figures),
    says: saysOf(plan, masonry),
    does: [
      lintels.length ? 'lintel' : '',
      arched ? 'arch' : '',
      laid.some((each) => each.cuts) ? 'cutting' : '',
    ].filter(Boolean),
    facts: { carved: counts.out, shapes: shapesOf(plan.heads, site) },
  };
};

const LABELS: Readonly<Record<Laid['task'], string>> = {
  head: later`Laying heads over openings`,
  subsill: later`Laying sills`,
  arch: later`Turning arches`,
};

function brickTasks(laid: readonly Laid[], { env }: Masonry, gang: Gang): TaskNeed[] {
  return (['head', 'arch', 'subsill'] as const).flatMap((task) => {
    const mine = laid.filter((each) => each.task === task).map((each) => each.counted.bricks);
    if (!mine.length) return [];
    const label = spoken(LABELS[task]);
    const amount = mine.length === 1 ? mine[0]! : sum(phrase`bricks: ${label}`, 'bricks', mine);
    return [{ task, hours: taskHours(task, label, amount, env, gang) }];
  });
}

function pieceTasks(
  task: string,
  label: string,
  counts: readonly Term[],
  { env }: Masonry,
  gang: Gang,
): TaskNeed[] {
  if (!counts.length) return [];
  return [{ task, hours: taskHours(task, label, sum(label, 'pieces', counts), env, gang) }];
}
