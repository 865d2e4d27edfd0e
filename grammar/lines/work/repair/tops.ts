/** Copings and caps taken off, bedded again or replaced. */
import { either, type LineKind, line, optional, pieceMaterial, ranged, whole } from '../../slots';

const RECOPE = line(
  'recope',
  [ranged('length', 'length')],
  'Brick-on-edge coping taken off and laid again.',
  'recope 1.35 m',
  { unless: 'none' },
);

const REBED = line(
  'rebed',
  [
    either([ranged('length', 'length')], [whole(ranged('pieces', 'pieces'))]),
    optional(pieceMaterial()),
  ],
  'Copings or caps lifted, cleaned and bedded again: a length of them, or so many. Their size is that of the material, else that of the coping or cap of what stands.',
  'rebed 3 pieces',
  { many: true, unless: 'none' },
);

const REPLACE = line(
  'replace',
  [whole(ranged('pieces', 'pieces')), pieceMaterial()],
  'Copings or caps taken off and new ones bedded: how many, and what is bought.',
  'replace 2 pieces slab',
  { many: true, unless: 'none' },
);

export const ON_TOP: readonly LineKind[] = [RECOPE, REBED, REPLACE];
