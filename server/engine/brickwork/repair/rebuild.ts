/** How many bricks are taken down and built again, in what mortar, and where halves go unseen. */
import { phrase, spoken } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import { fact, type Term, withGaps } from '../../working/term';
import { jointsIn } from '../masonry';
import { BEHIND } from './as-it-stands';
import { type Extent, extentOf } from './extent';
import { hiddenOf } from './hidden';
import type { Mending } from './mending';
import { bedded } from './mortar';
import { pierRebuilt } from './rebuild-pier';
import { wallRebuilt } from './rebuild-wall';
import type { Site } from './site';

export interface Rebuilt extends Pick<Mending, 'places' | 'mortar' | 'mixes' | 'blocks' | 'cuts'> {
  readonly bricks: Term;
  readonly drawn?: Mending['rebuilt'];
}

export function rebuiltIn(line: LineFacts, site: Site): Rebuilt {
  if (line.values.bricks) return byBricks(line, site);
  const extent = extentOf(line, site);
  const laid = site.isPier
    ? site.pier && pierRebuilt(extent, site, site.pier)
    : wallRebuilt(extent, site);
  if (!laid) return { bricks: notLaid(line, extent, site) };
  return { ...laid, bricks: withGaps(laid.bricks, site.masonry.gaps) };
}

/** So many bricks, wherever they are: of a wall, halves go behind its face as they would in any part of it. */
function byBricks(line: LineFacts, site: Site): Rebuilt {
  const bricks = withGaps(
    line.term('bricks', phrase`Bricks to build again`, 'bricks'),
    site.masonry.gaps,
  );
  const halves = site.isPier ? undefined : hiddenOf(bricks, site);
  const mortar = bedded(phrase`building again`, bricks, site);
  return { bricks, mortar, ...(halves ? { places: { halves, where: spoken(BEHIND) } } : {}) };
}

/** No bricks, and why: what is not known of the brickwork itself comes first. */
function notLaid(line: LineFacts, extent: Extent, { masonry, facts, pier, isPier }: Site): Term {
  const { gaps } = masonry;
  const why = whyNotLaid(
    extent,
    masonry.facts.name || phrase`this repair`,
    isPier,
    pier !== undefined,
  );
  const told = gaps.length ? gaps : [{ what: why(jointsIn(masonry)), origin: line.origin }];
  return withGaps(fact(phrase`Bricks to build again`, 0, 'bricks', facts.origin), told);
}

function whyNotLaid({ length, courses }: Extent, name: string, isPier: boolean, planned: boolean) {
  return (joints: unknown): string => {
    if (isPier && !planned) return phrase`the size of the pier that ${name} is in is not known`;
    if (!measured(courses) || (!isPier && !measured(length)))
      return phrase`how much of ${name} is rebuilt is not known`;
    if (!joints) return phrase`the joints of ${name} are not known, or no joints at all`;
    return phrase`the bond of ${name} is not known, or its thickness is not set out yet`;
  };
}

function measured(term: Term | undefined): boolean {
  return term?.value.gt(0) ?? false;
}
