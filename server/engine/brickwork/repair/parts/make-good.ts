/** Surfaces made good. */
import { phrase } from '../../../../../shared/phrase';
import { defaultTerm, type LineFacts } from '../../../resolve/env';
import { product, sum, type Term } from '../../../working/term';
import { inUnit, unitNames } from '../../lengths';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { makeGoodSaid } from '../says';
import type { Site } from '../site';

export const makeGood: MendingOf = (site) => {
  const lines = site.facts.lines('make-good');
  if (!lines.length) return undefined;
  const name = unitNames(site.env).area;
  const areas = lines.map((line) => inUnit(line.term('area', phrase`Area made good`), name));
  const mortar = sum(
    phrase`making good`,
    unitNames(site.env).volume,
    lines.map((line, i) => layer(areas[i]!, line, site)),
  );
  const area = sum(phrase`Area made good`, name, areas);
  return {
    mortar,
    figures: [{ key: 'made-good', term: area }],
    tasks: [amountIn('make-good', phrase`Making good`, area)],
    says: lines.flatMap((line) => saidFrom(makeGoodSaid(line, site.env), line)),
  };
};

function layer(area: Term, line: LineFacts, { env }: Site): Term {
  const thick = line.values.thick
    ? line.term('thick', phrase`thick`)
    : defaultTerm(env, 'make-good', 'thick', phrase`thick`);
  const metric = product(phrase`making good`, 'm3', [inUnit(area, 'm2'), inUnit(thick, 'm')]);
  return inUnit(metric, unitNames(env).volume);
}
