/** Bricks of heads, arches and sills, each counted with its working. */
import type { Tally } from '../../../setting-out';
import { counted, type Term } from '../../../working/term';
import { countBricks } from '../../count';
import { lengthText } from '../../lengths';
import type { Masonry } from '../../masonry';
import { inputsOf, type WallCounts } from '../counts';
import type { WallPlan } from '../spec';
import { headTally, type Laying, sillTally, splitsOver } from './counts';
import type { Head } from './head';
import { type Count, called, factsOf, keyOf, type Laid } from './laid';
import { arched } from './lay-arch';
import type { UprightRow } from './row';

export function layHeads(
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  site: Laying,
): Laid[] {
  const inputs = [...inputsOf(masonry, plan), ...plan.heads.flatMap(factsOf)];
  const count = (label: string, tallies: readonly Tally[], how: string[], cutOnEdge = 0) =>
    countBricks(label, tallies, masonry, inputs, () => how, cutOnEdge);
  return plan.heads.flatMap((head) => [
    ...overOpening(head, site, count),
    ...(head.arch ? [arched(head, head.arch, counts, site, count)] : []),
    ...(head.subsill ? [atFoot(head, head.subsill, site, count)] : []),
  ]);
}

/** Soldiers or bricks on edge, and what is cut to lie on them or on the lintel. */
function overOpening(head: Head, site: Laying, count: Count): Laid[] {
  const { row, lintel } = head;
  const splits = lintel ? [splitsOver(lintel, site)] : [];
  const tallies = [...splits, ...(row ? headTally(row, site) : [])];
  const bricks = tallies.reduce((all, tally) => all + tally.wholes + tally.halves, 0);
  if (!row && bricks === 0) return [];
  const cutAlong =
    tallies.reduce((all, t) => all + t.wholes, 0) - (row ? placesOf(row) * row.across.wholes : 0);
  const how = row ? [rowText(row, site)] : [];
  const cut = cutAlong + cutsIn(row);
  const counted = count(`Over ${called(head)}`, tallies, how, cut);
  const figures = row ? [{ key: keyOf(head, 'head'), term: placesTerm(row, head) }] : [];
  return [{ task: 'head', counted, figures, cuts: cut > 0 || counted.tally.halves > 0 }];
}

function atFoot(head: Head, row: UprightRow, site: Laying, count: Count): Laid {
  const how = [rowText(row, site)];
  const cut = cutsIn(row);
  const counted = count(`At the foot of ${called(head)}`, [sillTally(row, site)], how, cut);
  const figures = [{ key: keyOf(head, 'subsill'), term: placesTerm(row, head) }];
  return { task: 'subsill', counted, figures, cuts: cut > 0 || counted.tally.halves > 0 };
}

const placesOf = ({ way }: UprightRow) => (way?.wholes ?? 0) + (way?.kind === 'cut' ? way.cuts : 0);

function cutsIn(row: UprightRow | undefined): number {
  if (row?.way?.kind !== 'cut') return 0;
  return row.way.cuts * (row.across.wholes + row.across.halves);
}

function placesTerm(row: UprightRow, head: Head): Term {
  const label = `${row.kind === 'soldier' ? 'Soldiers' : 'Bricks on edge'}, ${called(head)}`;
  return counted(label, placesOf(row), 'pieces', {
    note: 'side by side in the face',
    args: [
      head.opening.facts.line('width')!.term('width', 'width of the opening'),
      ...factsOf(head),
    ],
  });
}

function rowText({ way, from, to, text }: UprightRow, { masonry, spec }: Laying): string {
  const { env } = masonry;
  const cut = way?.kind === 'cut' ? ` and ${way.cuts} cut to ${lengthText(env, way.cut)}` : '';
  const joint = lengthText(env, way?.joint ?? spec.joints.perpend);
  return `over ${lengthText(env, to - from)}: ${way?.wholes ?? 0} ${text.pieces}${cut}, joints of ${joint}`;
}
