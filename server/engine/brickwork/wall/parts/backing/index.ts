/** A wall of two skins: a backing behind the face, and the ties that hold them together. */

import { phrase } from '../../../../../../shared/phrase';
import { backingCourses } from '../../../../findings/backing-courses';
import { cavityOff } from '../../../../findings/cavity';
import { endSaid } from '../../../../kinds-said';
import { taskHours } from '../../../../labour/output';
import { cutList, tally } from '../../../../setting-out';
import { type Gap, withGaps } from '../../../../working/term';
import { type Counted, countBricks, laidFrom } from '../../../count';
import { areaShown } from '../../../lengths';
import type { Masonry } from '../../../masonry';
import { saidFrom, sizeSaid } from '../../../said';
import { inputsOf } from '../../counts';
import type { WallPlan } from '../../spec';
import type { Part, PartOf } from '../part';
import { givenAway, type SkinEnds, skinEnds, turned } from './corners';
import { type Backing, layBacking } from './lay';
import { tiesFor } from './ties';

export const backing: PartOf = (masonry, plan, { quoins, out }, gang) => {
  const { facts, env } = masonry;
  if (!facts.line('backing')) return undefined;
  const straight = layBacking(masonry, plan);
  if (!straight) return unlaid(masonry);
  const ends = skinEnds(straight, out.gauge, quoins);
  const laid = quoins.length ? { ...straight, out: turned(straight.out, ends) } : straight;
  const blocks = count(laid, masonry, plan, ends);
  const face = faceOf(laid);
  const area = areaShown(env, phrase`face of the backing`, face - givenAway(laid.out, ends), {
    note: quoins.length ? phrase`openings left out, each corner once` : phrase`openings left out`,
    args: laidFrom(laid.masonry, inputsOf(masonry, plan)),
  });
  const ties = tiesFor(face, plan, env);
  return {
    bricks: [{ brick: laid.masonry.brick, counted: blocks, places: () => placesIn(laid) }],
    pieces: ties ? [ties.need] : [],
    tasks: [
      {
        task: 'blockwork',
        hours: taskHours('blockwork', phrase`Laying the backing`, area, env, gang),
      },
    ],
    figures: [
      { key: 'backing', term: { ...blocks.bricks, label: phrase`In the backing` } },
      ...(ties ? [{ key: 'ties', term: ties.count }] : []),
    ],
    remarks: [...backingCourses(laid, masonry, plan), ...cavityOff(laid.line, masonry)],
    says: saidFrom([said(laid, masonry, ties !== undefined)], laid.line),
    facts: { backing: { settingOut: laid.out, behind: laid.cavity } },
  };
};

/** What is missing is told where the line stands, and every total that needs it knows. */
function unlaid(masonry: Masonry): Part {
  const line = masonry.facts.line('backing')!;
  const gap: Gap = {
    what: phrase`the backing of ${masonry.facts.name} cannot be laid: its block, its size or its joints are not known`,
    origin: line.origin,
  };
  const none = countBricks(phrase`In the backing`, [], masonry, []);
  const bricks = withGaps(none.bricks, [gap]);
  return { bricks: [{ brick: masonry.brick, counted: { ...none, bricks } }] };
}

function count(laid: Backing, masonry: Masonry, plan: WallPlan, ends: SkinEnds): Counted {
  const inputs = inputsOf(masonry, plan);
  const how = () => endsText(ends, masonry);
  return countBricks(phrase`In the backing`, [tally(laid.out)], laid.masonry, inputs, how);
}

/** In its own courses, which are as high as its blocks. */
function placesIn({ out }: Backing) {
  return cutList(out, { from: 0, to: null });
}

function endsText(ends: SkinEnds, { env }: Masonry): string[] {
  return Object.entries(ends).map(([side, { inset, way }]) => {
    const by = sizeSaid(Math.abs(inset), env);
    const where = inset < 0 ? phrase`goes on ${by} past` : phrase`stops ${by} short of`;
    const how = way ? phrase`, and is bonded with the other backing there` : '';
    return phrase`At the ${endSaid(side)} it ${where} the end of the wall, for the corner${how}.`;
  });
}

/** Mm², on the side of the cavity, which at a corner is there once: what ties are spread over. */
function faceOf({ out }: Backing): number {
  let area = 0;
  for (const band of out.bands)
    for (const { from, to } of band.segments)
      area += (to - from) * (band.to - band.from) * out.gauge;
  return area;
}

function said({ masonry, line, cavity }: Backing, { env }: Masonry, tied: boolean): string {
  const between = line.number('cavity') ? phrase` across a cavity of ${sizeSaid(cavity, env)}` : '';
  return phrase`Build a backing of ${masonry.brick.title} behind it${tied ? phrase`, tied to it${between}` : between}.`;
}
