/** So little wall between a head or a lintel and what stands beside it that no brick can be cut to it. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { Head } from '../../brickwork/wall/heads/head';
import type { Near } from '../../brickwork/wall/heads/near';
import type { Remark, RemarkWay } from '../remark';
import { bearingEdit } from './other-bearing';

export function headNear(head: Head, near: Near, leastCut: number): Remark {
  const { facts } = head.opening;
  const { env } = facts;
  const shown = (mm: number) => lengthText(env, mm);
  const { other, left } = near;
  const origin = (facts.line('head') ?? facts.line('lintel'))!.origin;
  const both =
    head.lintel && other.head
      ? phrase`, let one lintel run over both or lay a padstone between`
      : '';
  const message = phrase`Between what spans the opening ${facts.name} and ${other.what} only ${shown(left)} of wall is left: too little for a brick cut to ${shown(leastCut)}, so it is filled with mortar. Change the bearing${both}.`;
  return {
    code: 'head-near',
    about: facts.name,
    severity: 'warning',
    origin,
    message,
    ways: bearings(head, near),
  };
}

/** So much less bearing that a cut goes in, or so much more that one joint closes it. */
function bearings(head: Head, { left, needs, joint, other }: Near): RemarkWay[] {
  const { lintel, opening } = head;
  const { facts } = opening;
  if (!lintel || lintel.line.sides('size')?.[2]) return [];
  const { mm, least } = lintel.bearing;
  const shorter = { mm: mm - (needs - left), title: phrase`room for a cut brick` };
  const longer = { mm: mm + left - joint, title: phrase`one joint between` };
  const asked = least?.number('bearing') ?? 0;
  return [shorter, ...(other.against === 'air' ? [] : [longer])]
    .filter((way) => way.mm >= asked && way.mm > 0)
    .map((way) => {
      const text = lengthText(facts.env, way.mm);
      return {
        title: phrase`A bearing of ${text}: ${way.title}`,
        edits: [bearingEdit(head, text)],
      };
    });
}
