/** Sentences that may stand in many blocks: for the client, and where values come from. */
import { type LineKind, line, text } from './slots';

export const NOTE: LineKind = line(
  'note',
  [text('text')],
  'A sentence for the client: it stands in the quote under this part of the work.',
  'note "The old coping is kept for the owner."',
  { many: true },
);

/** The client’s papers say what the engine says of the work, or this. */
export const SAYS: LineKind = line(
  'says',
  [text('text')],
  'What will be done, in the firm’s own words: sentences that stand on the client’s papers in the place of those made from the work. The site sheet keeps those.',
  'says "Build the boundary wall again, as it was."',
  { many: true, unless: 'made from the work' },
);

export const SOURCE: LineKind = line(
  'source',
  [text('text')],
  'Where the values of this block come from. Shown in every working that uses one.',
  'source "Maker’s data sheet, 2026"',
  { many: true },
);
