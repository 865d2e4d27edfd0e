/** A coping of bricks on edge taken off and laid again. */
import { phrase } from '../../../../../shared/phrase';
import { missing, quotient, sum, type Term, up } from '../../../working/term';
import { brickTerms } from '../../count';
import { inMm } from '../../lengths';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { underCoping } from '../mortar';
import { recopeSaid } from '../says';
import type { Site } from '../site';

export const recope: MendingOf = (site) => {
  const line = site.facts.line('recope');
  if (!line) return undefined;
  const length = inMm(line.term('length', phrase`Coping laid again`));
  const each = eachOnEdge(site, line.origin);
  const bricks = up(
    phrase`Bricks on edge`,
    'bricks',
    quotient(phrase`bricks on edge`, 'bricks', length, each),
  );
  const mortar = site.masonry.brick.size && underCoping(bricks, site);
  return {
    down: bricks,
    wanted: bricks,
    mortar,
    old: mortar,
    figures: [{ key: 'recoped', term: bricks }],
    tasks: [
      amountIn('take-down', phrase`Taking off the coping`, bricks),
      amountIn('coping', phrase`Laying the coping again`, bricks),
    ],
    says: saidFrom(recopeSaid(line, site.env), line),
  };
};

function eachOnEdge({ masonry }: Site, origin: Term['origin']): Term {
  if (!masonry.brick.size)
    return missing(phrase`a brick on edge`, 'mm', phrase`the brick is not known`, origin);
  const [, , height] = brickTerms(masonry);
  return sum(phrase`a brick on edge`, 'mm', [height!, masonry.jointTerms.perpend]);
}
