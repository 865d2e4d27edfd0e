/** Taken down, cleaned, and built again: a part of a wall, the topmost courses of a pier, or so many bricks. */
import { phrase } from '../../../../../shared/phrase';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { type Rebuilt, rebuiltIn } from '../rebuild';
import { rebuiltSaid } from '../says';
import type { Site } from '../site';

export const rebuild: MendingOf = (site) => {
  const line = site.facts.line('rebuild');
  if (!line) return undefined;
  const laid = rebuiltIn(line, site);
  const { bricks } = laid;
  return {
    down: bricks,
    wanted: bricks,
    mortar: laid.mortar,
    old: laid.mortar,
    places: laid.places,
    mixes: laid.mixes,
    blocks: laid.blocks,
    tasks: tasksOf(laid, site),
    remarks: site.pier?.remarks,
    says: rebuiltSaid(line, site),
    does: ['taking-down'],
    cuts: laid.cuts,
    rebuilt: laid.drawn,
  };
};

function tasksOf({ bricks, mixes = [] }: Rebuilt, site: Site) {
  const laying = site.pier ? 'pier-work' : 'facework';
  return [
    amountIn('take-down', phrase`Taking down`, bricks),
    amountIn(laying, phrase`Building again`, bricks),
    ...mixes.map((core) => amountIn('core', phrase`Filling the core`, core.litres)),
  ];
}
