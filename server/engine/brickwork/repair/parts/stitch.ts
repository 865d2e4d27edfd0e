/** Cracks stitched: bars in raked bed joints across them. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import { stitchBars } from '../../../findings/repairs/stitch-bars';
import { defaultLine, type LineFacts } from '../../../resolve/env';
import { fact, named, product, sum, type Term, up } from '../../../working/term';
import { inMm } from '../../lengths';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { into, slot } from '../mortar';
import { stitchSaid } from '../says';
import type { Site } from '../site';

export const stitch: MendingOf = (site) => {
  const lines = site.facts.lines('stitch');
  const rule = defaultLine(site.env, 'crack-stitch');
  if (!lines.length) return undefined;
  if (!rule) return { remarks: lines.map(stitchBars) };
  const bars = sum(
    phrase`Bars across the crack`,
    'pieces',
    lines.map((line) => barsIn(line, rule)),
  );
  const mortar = inBeds(bars, rule, site);
  const material = rule.word('material');
  return {
    mortar,
    old: mortar,
    pieces: [{ material, count: bars, origin: rule.at('material') }],
    figures: [{ key: 'bars', term: bars }],
    tasks: [amountIn('stitch', phrase`Raking beds and setting bars`, bars)],
    says: lines.flatMap((line) => saidFrom(stitchSaid(line, rule, site.env), line)),
    does: ['raking'],
  };
};

/** One at its beginning, and one for every step along it. */
function barsIn(line: LineFacts, rule: LineFacts): Term {
  const long = line.term('length', phrase`crack`);
  const apart = rule.term('apart', phrase`bars apart`);
  const steps = up(phrase`steps between bars`, 'pieces', into('steps', 'pieces', long, apart));
  return sum(phrase`bars`, 'pieces', [
    steps,
    fact(phrase`one at its beginning`, exact(1), 'pieces', rule.origin),
  ]);
}

/** The raked bed of each is filled with mortar; what the bar itself takes of it is left in. */
function inBeds(bars: Term, rule: LineFacts, site: Site): Term {
  const sides = [rule.term('length', phrase`length of a bar`), rule.term('depth', phrase`raked`)];
  const joint = named('joint', site.masonry.jointTerms.bed);
  const each = slot(phrase`bed of one bar`, [...sides.map(inMm), joint], site);
  return product(phrase`round the bars`, each.unit, [bars, each]);
}
