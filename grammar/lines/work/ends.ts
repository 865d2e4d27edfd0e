/** How a wall ends, what walls it meets, and where it is parted so that it can move. */
import { choice, either, line, lit, name, optional, quantity, whole } from '../slots';

const END = either(
  [choice('end', 'stopped')],
  [choice('end', 'toothed'), optional(choice('standing', 'cut'))],
  [choice('end', 'butted')],
  [choice('end', 'quoin'), name('wall', 'wall'), optional(choice('faces', 'inside'))],
  [
    choice('end', 'tee'),
    name('wall', 'wall'),
    quantity('distance', 'length'),
    optional(choice('how', 'tied', 'bonded')),
  ],
  [choice('end', 'block-bonded'), optional(whole(quantity('block', 'courses')))],
);

export const LEFT = line(
  'left',
  [END],
  'How the left end stops: free, bonded into standing work by toothing or by blocks of courses, against something with a plain joint, at a corner that it makes with another wall of the job (whose own line says which of its ends it is), or against the face of another wall, so far from that wall’s left end. `cut` says that the standing work was not left toothed, and indents are cut in it. Lengths of walls that make a corner are over all, to the outer corner. `inside` says that this wall’s front is on the inner side of the corner.',
  'left stopped',
  { unless: 'the defaults’ left' },
);

export const RIGHT = line(
  'right',
  [END],
  'How the right end stops.',
  'right block-bonded 3 courses',
  { unless: 'the defaults’ right' },
);

export const MOVEMENT_JOINT = line(
  'movement-joint',
  [
    either(
      [choice('side', 'left', 'right'), quantity('distance', 'length')],
      [lit('every'), quantity('every', 'length')],
    ),
    optional(lit('wide'), quantity('width', 'length')),
  ],
  'A plain upright gap through the wall that lets it move: after so much wall from one end, or as many as leave no length of wall longer than is said, in whole bricks. Filler and ties are bought for it.',
  'movement-joint every 6 m',
  { many: true, unless: 'none' },
);
