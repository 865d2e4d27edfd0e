/** Copings and caps taken off, and new ones bedded in their place. */
import { phrase } from '../../../../../shared/phrase';
import type { LineFacts } from '../../../resolve/env';
import { sum } from '../../../working/term';
import { unitNames } from '../../lengths';
import { saidFrom } from '../../said';
import { amountIn } from '../amounts';
import { beddingPieces, blocksGone, sizeOfPiece } from '../capping';
import type { MendingOf } from '../mending';
import { replaceSaid } from '../says';
import type { Site } from '../site';

export const replace: MendingOf = (site) => {
  const lines = site.facts.lines('replace');
  if (!lines.length) return undefined;
  const all = lines.map((line) => replaced(line, site));
  const mortar = sum(
    phrase`bedding`,
    unitNames(site.env).volume,
    all.map((each) => each.mortar),
  );
  const count = sum(
    phrase`Pieces replaced`,
    'pieces',
    all.map((each) => each.count),
  );
  return {
    mortar,
    old: mortar,
    blocks: all.map((each) => each.gone),
    pieces: all.map(({ line, count }) => ({
      material: line.word('material'),
      count,
      origin: line.at('material'),
    })),
    figures: [{ key: 'replaced', term: count }],
    tasks: [amountIn('replace', phrase`Taking off and bedding new ones`, count)],
    says: lines.flatMap((line) => saidFrom(replaceSaid(line, site), line)),
    does: ['lifting'],
  };
};

function replaced(line: LineFacts, site: Site) {
  const size = sizeOfPiece(line, site);
  const count = line.term('pieces', line.word('material'), 'pieces');
  return {
    line,
    count,
    mortar: beddingPieces(count, size, site),
    gone: blocksGone(count, size, line, site),
  };
}
