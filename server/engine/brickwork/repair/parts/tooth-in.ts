/** Indents cut in standing work, so that new work bonds into it. */

import { exact } from '../../../../../shared/exact';
import { phrase } from '../../../../../shared/phrase';
import type { LineFacts } from '../../../resolve/env';
import { fact, named, product, quotient, sum, type Term, up } from '../../../working/term';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import type { MendingOf } from '../mending';
import { bedded } from '../mortar';
import { toothInSaid } from '../says';
import type { Site } from '../site';

export const toothIn: MendingOf = (site) => {
  const lines = site.facts.lines('tooth-in');
  if (!lines.length) return undefined;
  const indents = sum(phrase`Indents cut`, '', lines.map(indentsIn));
  const bricks = product(phrase`Bricks cut out for indents`, 'bricks', [indents, abreast(site)]);
  const filled = up(phrase`Bricks that run into indents`, 'bricks', half(bricks, lines[0]!));
  const mortar = bedded(phrase`in the indents`, filled, site);
  return {
    cut: bricks,
    wanted: filled,
    mortar,
    old: bedded(phrase`out of the indents`, bricks, site),
    figures: [{ key: 'indents', term: indents }],
    tasks: [
      amountIn('cut-out', phrase`Cutting indents in standing work`, bricks),
      amountIn('facework', phrase`Building into them`, filled),
    ],
    says: lines.flatMap((line) => saidFrom(toothInSaid(line), line)),
    does: ['cutting'],
  };
};

/** Every second course runs in, the lowest first. */
function indentsIn(line: LineFacts): Term {
  const courses = line.term('courses', phrase`courses toothed in`);
  return up(
    phrase`indents`,
    '',
    quotient(phrase`every second course`, '', courses, fact(phrase`of`, exact(2), '', line.origin)),
  );
}

/** A brick is cut out for each indent and each brick of thickness (common practice). */
function abreast({ thickness, stands }: Site): Term {
  const count = exact(Math.ceil((thickness ?? 1) / 2));
  return fact(phrase`bricks through the wall`, count, 'bricks', stands.orDefault('thick')?.origin);
}

function half(bricks: Term, { origin }: LineFacts): Term {
  const each = fact(phrase`halves to a brick`, exact(2), '', origin);
  return quotient(
    phrase`half a brick into each`,
    'bricks',
    named(phrase`indents and bricks abreast`, bricks),
    each,
  );
}
