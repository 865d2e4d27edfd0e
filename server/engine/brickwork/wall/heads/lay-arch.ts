/** Bricks of an arch, and what its figures tell whoever marks it out. */

import { phrase } from '../../../../../shared/phrase';
import type { Env } from '../../../resolve/env';
import { touchedBy } from '../../../setting-out';
import { counted, type Term } from '../../../working/term';
import { lengthText } from '../../lengths';
import type { Figure } from '../../needs';
import type { WallCounts } from '../counts';
import type { HeadArch } from './arch';
import { archTally, type Laying } from './counts';
import type { Head } from './head';
import { brickIn, type Count, called, factsOf, keyOf, type Laid } from './laid';

export function arched(
  head: Head,
  arch: HeadArch,
  counts: WallCounts,
  site: Laying,
  count: Count,
): Laid {
  const { rings, courses, at, how } = arch;
  const touched = touchedBy(counts.out, courses, at);
  const brick = brickIn(arch.line, site.masonry);
  const counted = count(
    phrase`Arch over ${called(head)}`,
    [archTally(arch, site)],
    brick,
    [...rings.map((ring, i) => ringText(ring, i, site)), cutText(touched)],
    how === 'axed' ? rings.reduce((all, ring) => all + ring.count, 0) : 0,
  );
  return {
    task: 'arch',
    brick,
    counted,
    figures: archFigures(head, arch, touched.skewback + touched.extrados, site),
    cuts: true,
  };
}

function ringText(ring: HeadArch['rings'][number], at: number, { masonry }: Laying): string {
  const { env } = masonry;
  const radius = lengthText(env, ring.inner);
  return phrase`ring ${at + 1}, on a radius of ${radius}: ${ring.count} bricks, joints of ${lengthText(env, ring.soffit)} at the soffit and ${lengthText(env, ring.back)} at the back`;
}

function cutText({ skewback, extrados }: ReturnType<typeof touchedBy>): string {
  return phrase`bricks of the wall’s face cut to it: ${skewback} to the skewbacks, ${extrados} to the extrados`;
}

/** How it is struck, and what it leaves at the back. */
function archFigures(head: Head, { arch, rings }: HeadArch, cuts: number, site: Laying): Figure[] {
  const { env } = site.masonry;
  const name = called(head);
  const { facts } = head.opening;
  const args = [facts.line('width')!.term('width', phrase`width of the opening`), ...factsOf(head)];
  const round = rings.reduce((all, { count }) => all + count, 0);
  const pieces = (label: string, value: number, note: string) =>
    counted(`${label}, ${name}`, value, 'pieces', { note, args });
  const small = (label: string, mm: number, note: string) =>
    smallShown(env, `${label}, ${name}`, mm, { note, args });
  const struck = phrase`span squared over four and rise squared, over twice the rise`;
  const back = Math.max(...rings.map((ring) => ring.back));
  const terms: readonly [string, Term][] = [
    ['voussoirs', pieces(phrase`Bricks round`, round, phrase`in all rings, in the face`)],
    ['radius', small(phrase`Radius`, arch.radius, struck)],
    ['joint', small(phrase`Joint at the back`, back, phrase`the widest`)],
    ['cuts', pieces(phrase`Bricks cut to it`, cuts, phrase`of the wall, in its face`)],
  ];
  return terms.map(([key, term]) => ({ key: keyOf(head, key), term }));
}

/** A length that is marked out with a rule. */
function smallShown(
  env: Env,
  label: string,
  mm: number,
  more: { note: string; args: readonly Term[] },
): Term {
  return env.imperial ? counted(label, mm / 25.4, 'in', more) : counted(label, mm, 'mm', more);
}
