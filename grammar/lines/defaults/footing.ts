/** What work stands on. */
import { type LineKind, line, lit, name, number, quantity } from '../slots';

export const FOOTING_MIX: LineKind = line(
  'footing-mix',
  [name('mix', 'mix')],
  'The concrete of a footing.',
  'footing-mix concrete',
);

export const FOOTING_LAP: LineKind = line(
  'footing-lap',
  [quantity('least', 'length'), lit('or'), lit('steps'), number('times')],
  'How far a footing laps itself where it steps: the greatest of this length, so many times the height of the step, and its own thickness.',
  'footing-lap 300 mm or steps 2',
);
