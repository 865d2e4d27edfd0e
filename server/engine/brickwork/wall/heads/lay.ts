/** Bricks of heads, arches and sills, each counted with its working. */
import { phrase } from '../../../../../shared/phrase';
import { sumTallies, type Tally } from '../../../setting-out';
import { counted, type Term } from '../../../working/term';
import { countBricks } from '../../count';
import type { Brick } from '../../goods';
import { lengthText } from '../../lengths';
import type { Masonry } from '../../masonry';
import { inputsOf, type WallCounts } from '../counts';
import type { WallPlan } from '../spec';
import { type Laying, rowTally, sillTally, splitsOver } from './counts';
import type { Head } from './head';
import { brickIn, type Count, called, factsOf, keyOf, type Laid } from './laid';
import { arched } from './lay-arch';
import { lowCuts } from './low-row';
import type { UprightRow } from './row';

export function layHeads(
  masonry: Masonry,
  plan: WallPlan,
  counts: WallCounts,
  site: Laying,
): Laid[] {
  const inputs = [...inputsOf(masonry, plan), ...plan.heads.flatMap(factsOf)];
  const count: Count = (label, tallies, brick, how, cutOnEdge = 0) => {
    const laid = brick === masonry.brick || !brick.size ? masonry : { ...masonry, brick };
    return countBricks(label, tallies, laid, inputs, () => how, cutOnEdge);
  };
  return plan.heads.flatMap((head) => [
    ...overOpening(head, site, count),
    ...(head.arch ? [arched(head, head.arch, counts, site, count)] : []),
    ...(head.subsill ? [atFoot(head, head.subsill, site, count)] : []),
  ]);
}

/** Soldiers or bricks on edge; what is cut to lie on them, or on the lintel, is of the wall’s own brick. */
function overOpening(head: Head, site: Laying, count: Count): Laid[] {
  const { row, lintel } = head;
  const { brick: own } = site.masonry;
  const brick = row ? brickIn(row.line, site.masonry) : own;
  const over = [lintel, row].filter((each) => each !== undefined);
  const splits = over.map((each) => splitsOver(each, site));
  const places = () => over.flatMap((each) => lowCuts(each, site));
  if (!row || brick.name !== own.name) {
    const low = ownOver(head, splits, own, count).map((laid) => ({ ...laid, places }));
    return row ? [rowOver(head, row, [], brick, site, count), ...low] : low;
  }
  return [{ ...rowOver(head, row, splits, brick, site, count), places }];
}

function rowOver(
  head: Head,
  row: UprightRow,
  splits: readonly Tally[],
  brick: Brick,
  site: Laying,
  count: Count,
): Laid {
  const tallies = [...splits, rowTally(row, site)];
  const cut = wholesIn(splits) + cutsIn(row);
  const counted = count(phrase`Over ${called(head)}`, tallies, brick, [rowText(row, site)], cut);
  const figures = [{ key: keyOf(head, 'head'), term: placesTerm(row, head) }];
  return { task: 'head', brick, counted, figures, cuts: cut > 0 || counted.tally.halves > 0 };
}

/** Bricks of the wall’s own cut to lie on what is not of them; a joint alone is counted too, for its mortar. */
function ownOver(head: Head, splits: readonly Tally[], brick: Brick, count: Count): Laid[] {
  const cut = wholesIn(splits);
  const { grossVolume } = sumTallies(splits);
  if (cut === 0 && (grossVolume === 0 || !head.row)) return [];
  const label = head.row ? phrase`Cut to lie over ${called(head)}` : phrase`Over ${called(head)}`;
  const counted = count(label, splits, brick, [], cut);
  return [{ task: 'head', brick, counted, figures: [], cuts: cut > 0 }];
}

const wholesIn = (tallies: readonly Tally[]) => tallies.reduce((all, t) => all + t.wholes, 0);

function atFoot(head: Head, row: UprightRow, site: Laying, count: Count): Laid {
  const how = [rowText(row, site)];
  const cut = cutsIn(row);
  const brick = brickIn(row.line, site.masonry);
  const counted = count(
    phrase`At the foot of ${called(head)}`,
    [sillTally(row, site)],
    brick,
    how,
    cut,
  );
  const figures = [{ key: keyOf(head, 'subsill'), term: placesTerm(row, head) }];
  return { task: 'subsill', brick, counted, figures, cuts: cut > 0 || counted.tally.halves > 0 };
}

const placesOf = ({ way }: UprightRow) => (way?.wholes ?? 0) + (way?.kind === 'cut' ? way.cuts : 0);

function cutsIn(row: UprightRow | undefined): number {
  if (row?.way?.kind !== 'cut') return 0;
  return row.way.cuts * (row.across.wholes + row.across.halves);
}

function placesTerm(row: UprightRow, head: Head): Term {
  const label = `${row.kind === 'soldier' ? phrase`Soldiers` : phrase`Bricks on edge`}, ${called(head)}`;
  return counted(label, placesOf(row), 'pieces', {
    note: phrase`side by side in the face`,
    args: [
      head.opening.facts.line('width')!.term('width', phrase`width of the opening`),
      ...factsOf(head),
    ],
  });
}

function rowText({ way, from, to, text }: UprightRow, { masonry, spec }: Laying): string {
  const { env } = masonry;
  const cut =
    way?.kind === 'cut' ? phrase` and ${way.cuts} cut to ${lengthText(env, way.cut)}` : '';
  const joint = lengthText(env, way?.joint ?? spec.joints.perpend);
  return phrase`over ${lengthText(env, to - from)}: ${way?.wholes ?? 0} ${text.pieces}${cut}, joints of ${joint}`;
}
