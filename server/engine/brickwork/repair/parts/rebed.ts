/** Copings and caps lifted, cleaned and bedded again. */
import { phrase } from '../../../../../shared/phrase';
import type { LineFacts } from '../../../resolve/env';
import { sum, type Term, up } from '../../../working/term';
import { unitNames } from '../../lengths';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import { beddingLength, beddingPieces, lengthOf, sizeOfPiece } from '../capping';
import type { MendingOf, Task } from '../mending';
import { into } from '../mortar';
import { rebedSaid } from '../says';
import type { Site } from '../site';

export const rebed: MendingOf = (site) => {
  const lines = site.facts.lines('rebed');
  if (!lines.length) return undefined;
  const all = lines.map((line) => bedded(line, site));
  const mortar = sum(
    phrase`bedding`,
    unitNames(site.env).volume,
    all.map((each) => each.mortar),
  );
  return {
    mortar,
    old: mortar,
    tasks: all.map((each) => each.task),
    says: lines.flatMap((line) => saidFrom(rebedSaid(line, site), line)),
    does: ['lifting'],
  };
};

interface Bedded {
  readonly amount: Term;
  readonly mortar: Term;
  readonly task: Task;
}

/** A length whose pieces are known is bedded piece by piece. */
function bedded(line: LineFacts, site: Site): Bedded {
  const label = phrase`Bedding again`;
  const size = sizeOfPiece(line, site);
  if (line.values.pieces) {
    const amount = line.term('pieces', label, 'pieces');
    return {
      amount,
      mortar: beddingPieces(amount, size, site),
      task: amountIn('rebed-pieces', label, amount),
    };
  }
  const amount = line.term('length', label);
  const task = amountIn('rebed', label, amount);
  if (!size) return { amount, mortar: beddingLength(amount, site), task };
  const each = sum(phrase`a piece and its joint`, 'mm', [
    lengthOf(size),
    site.masonry.jointTerms.perpend,
  ]);
  const pieces = up(phrase`pieces`, 'pieces', into('pieces', 'pieces', amount, each));
  return { amount, mortar: beddingPieces(pieces, size, site), task };
}
