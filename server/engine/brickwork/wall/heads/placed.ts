/** Whether what spans an opening has room: under the wall's top, between its ends, clear of piers, openings and one another. */
import { phrase } from '../../../../../shared/phrase';
import { bearsOnNothing } from '../../../findings/heads/bearing-short';
import { headClash } from '../../../findings/heads/head-clash';
import { headNear } from '../../../findings/heads/head-near';
import { headRoom } from '../../../findings/heads/head-room';
import type { Remark } from '../../../findings/remark';
import type { Head } from './head';
import { nearest } from './near';
import { type Site, topOver, type Zone } from './site';

const zonesOf = ({ lintel, row, arch }: Head): Zone[] =>
  [lintel?.zone, row?.zone, arch?.zone].filter((zone): zone is Zone => zone !== undefined);

/** Nearer than this is not in the way, mm. */
const TOUCH = 1e-6;

const meet = (a: Zone, b: Zone) =>
  a.from < b.to - TOUCH && b.from < a.to - TOUCH && a.low < b.high && b.low < a.high;

/** Something a head may run into. */
interface Obstacle {
  readonly zone: Zone;
  readonly what: string;
  /** Its pier, where it is one. */
  readonly pier?: Site['piers'][number];
  /** Where the wall ends at it with no joint. */
  readonly against?: 'air';
  /** It spans an opening too. */
  readonly head?: true;
}

function obstacles({ spec, openings, piers }: Site): Obstacle[] {
  const [from, to, high] = [0, spec.length, spec.courses];
  const all = { low: 0, high: Number.POSITIVE_INFINITY };
  return [
    {
      what: phrase`the left end of the wall`,
      against: 'air' as const,
      zone: { from: Number.NEGATIVE_INFINITY, to: from, ...all },
    },
    {
      what: phrase`the right end of the wall`,
      against: 'air' as const,
      zone: { from: to, to: Number.POSITIVE_INFINITY, ...all },
    },
    ...openings.map(({ spec: o }) => ({
      what: phrase`the opening ${o.name}`,
      against: 'air' as const,
      zone: { from: o.from, to: o.from + o.width, low: o.sill, high: o.top ?? high },
    })),
    ...piers.map((pier) => ({
      what: phrase`the pier ${pier.spec.name}`,
      pier,
      zone: {
        from: pier.spec.from,
        to: pier.spec.from + pier.spec.width,
        low: pier.spec.base ?? 0,
        high: (pier.spec.base ?? 0) + pier.spec.courses,
      },
    })),
  ];
}

/** The heads that can stand; of another, its opening and its sill stay, and a remark says why. */
export function placed(heads: readonly Head[], site: Site, remarks: Remark[]): Head[] {
  const fixed = obstacles(site);
  const taken: Obstacle[] = [];
  return heads.map((head) => {
    const why = inTheWay(head, [...fixed, ...taken], site);
    if (why) remarks.push(why);
    const near = why ? undefined : nearest(head, [...fixed, ...taken], site);
    if (near) remarks.push(headNear(head, near, site.spec.limits.leastCut));
    const { opening, subsill, large } = head;
    const kept = why ? { opening, subsill, large } : head;
    const what = phrase`what spans the opening ${head.opening.spec.name}`;
    taken.push(...zonesOf(kept).map((zone) => ({ zone, what, head: true as const })));
    return kept;
  });
}

function inTheWay(head: Head, others: readonly Obstacle[], site: Site): Remark | undefined {
  const { facts, spec } = head.opening;
  const asked = facts.line('head') ?? facts.line('lintel');
  if (!asked) return undefined;
  if (spec.top === null) return headRoom(head, asked, undefined, site);
  const unheld = bearsOnNothing(head.opening, head.lintel);
  if (unheld) return unheld;
  const zones = zonesOf(head);
  const tight = zones.find((zone) => zone.high > topOver(site, zone.from, zone.to));
  if (tight) return headRoom(head, asked, tight, site);
  const other = others.find(({ zone }) => zones.some((own) => meet(own, zone)));
  return other && headClash(head, asked, other);
}

export type { Obstacle };
