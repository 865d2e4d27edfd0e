/** A window on a very long wall, beside the same window on a short one. */
import { elevation } from '../../server/engine/drawing';
import { type SettingOut, setOut, type WallSpec } from '../../server/engine/setting-out';
import { wallWithOpenings } from './openings';
import { type Paired, paired, spent } from './stats';

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
    () => spent(() => draw(long)),
    () => spent(() => draw(short)),
  );
}

/** A window in a wall of a million bricks with 400 openings, beside the same window where only the openings near it stand. */
export async function windowAmong(rounds: number): Promise<Paired> {
  const spec = wallWithOpenings(400, 'own');
  const seen = { from: 500_000, to: 504_000, courses: { from: 60, to: 100 } };
  const near = spec.openings.filter(
    ({ from, width }) => from + width > seen.from - MARGIN && from < seen.to + MARGIN,
  );
  const [all, few] = [setOut(spec), setOut({ ...spec, openings: near })];
  const look = (out: SettingOut) => elevation(out, { title: 'part', visible: seen });
  const count = look(all).boxes.length;
  if (count !== look(few).boxes.length || count < 500)
    throw new Error('A window among many openings and among few do not show the same bricks.');
  for (let i = 0; i < 50; i++) for (const out of [all, few]) look(out);
  return paired(
    rounds,
    () => spent(() => look(all)),
    () => spent(() => look(few)),
  );
}

/** Mm on either side of a window, past which nothing that stands is drawn in it. */
const MARGIN = 30_000;
