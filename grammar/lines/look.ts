/** How a brick looks and how it was made: words for the client, nothing is worked out from them. */
import { choice, line, text } from './slots';

export const LOOK = [
  line(
    'colour',
    [text('colour')],
    'Its colour, in the maker’s words or one’s own.',
    'colour "red multi, darker when weathered"',
    { unless: 'nothing is said of it' },
  ),
  line('texture', [text('texture')], 'What its face is like.', 'texture "sanded"', {
    unless: 'nothing is said of it',
  }),
  line(
    'made',
    [choice('made', 'wirecut', 'pressed', 'soft-mud', 'handmade', 'reclaimed')],
    'How it was made, or that it was laid before: the client is told that reclaimed and handmade bricks differ among themselves.',
    'made reclaimed',
    { unless: 'nothing is said of it' },
  ),
];
