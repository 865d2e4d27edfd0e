/** A second skin behind the face of a wall. */
import { line, lit, name, optional, quantity } from '../slots';

export const BACKING = line(
  'backing',
  [name('brick', 'brick'), optional(lit('cavity'), quantity('cavity', 'length'))],
  'A skin behind the face, half a brick or one block thick, tied to it: what it is built of, and how wide the cavity is; without one the joint between them is filled.',
  'backing block-100 cavity 75 mm',
  { unless: 'none' },
);
