/** A window on a very long wall, beside the same window on a short one. */
import { elevation } from '../../server/engine/drawing';
import { setOut, type WallSpec } from '../../server/engine/setting-out';
import { wallWithOpenings } from './openings';
import { type Paired, paired, timed } from './stats';

const wall = (halves: number): WallSpec => ({
  ...wallWithOpenings(1, 'rows'),
  openings: [],
  length: 112.5 * halves - 10,
  courses: 40,
});

const VISIBLE = { from: 8000, to: 12_000, courses: { from: 0, to: 40 } };

/** Set out and drawn: nothing is kept from one time to the next. */
const draw = (spec: WallSpec) => elevation(setOut(spec), { title: 'part', visible: VISIBLE });

export async function windowOf(rounds: number): Promise<Paired> {
  const [long, short] = [wall(88_890), wall(178)];
  const count = draw(long).boxes.length;
  if (count !== draw(short).boxes.length || count < 40 * 17)
    throw new Error('A window on a long wall and on a short one do not show the same bricks.');
  for (let i = 0; i < 20; i++) draw(long);
  return paired(
    rounds,
    () => timed(() => draw(long)),
    () => timed(() => draw(short)),
  );
}
