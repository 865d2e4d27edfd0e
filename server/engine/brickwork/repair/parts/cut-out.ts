/** Single bricks cut out and replaced. They come out in pieces. */
import { phrase } from '../../../../../shared/phrase';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { aroundBricks } from '../mortar';
import { cutOutSaid } from '../says';

export const cutOut: MendingOf = (site) => {
  const line = site.facts.line('cut-out');
  if (!line) return undefined;
  const bricks = line.term('bricks', phrase`Bricks cut out`, 'bricks');
  const mortar = aroundBricks(bricks, site);
  return {
    cut: bricks,
    wanted: bricks,
    mortar,
    old: mortar,
    figures: [{ key: 'cut-out', term: bricks }],
    tasks: [amountIn('cut-out', phrase`Cutting out and replacing bricks`, bricks)],
    says: saidFrom(cutOutSaid(line), line),
    does: ['raking'],
  };
};
