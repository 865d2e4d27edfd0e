/** Rooms that are alike are filled once: along a wall, and from one wall that runs in to the next, the same comes again and again. */
import type { Area, SettingOut } from '../../types';
import { brickOf } from './cross';
import { fills } from './fill';
import { Judge } from './judge';
import type { Room } from './open';
import type { Opened } from './types';

/** Pieces from the side of the wall that runs in on. */
type Laid = Pick<Opened, 'pieces' | 'cost'>;

/** What is known of rooms alike. */
interface Known {
  /** By what it may cost. */
  readonly laid: Map<number, Laid | undefined>;
  /** Nothing dearer would fill it either. */
  never: boolean;
}

const shelf = new Map<string, Known>();
const MOST_KEPT = 6000;

export class RoomToFill {
  private readonly known: Known;

  /** @param over joints in the back of the courses over and under it */
  constructor(
    private readonly main: SettingOut,
    private readonly room: Room,
    private readonly box: Area,
    private readonly over: readonly number[],
  ) {
    this.known = knownOf(keyOf(main, room, box, over));
  }

  /** The best way for no more than that. */
  laidFor(cost: number): Opened | undefined {
    const { laid, never } = this.known;
    if (!laid.has(cost)) laid.set(cost, never ? undefined : this.filledFor(cost));
    const found = laid.get(cost);
    return found && atBox(found, this.room, this.box);
  }

  private filledFor(cost: number): Laid | undefined {
    const { main, room, box, over } = this;
    const judge = new Judge(main, room, box, over);
    const { ways, more } = fills(main, room, box, cost, (x) => judge.mayPart(x));
    const way = ways.find(({ pieces }) => judge.passes(pieces));
    if (!way && !more) this.known.never = true;
    return way && { cost: way.cost, pieces: way.pieces.map((p) => ({ ...p, x: p.x - box.x })) };
  }
}

function knownOf(key: string): Known {
  let known = shelf.get(key);
  if (known) return known;
  if (shelf.size >= MOST_KEPT) shelf.clear();
  shelf.set(key, (known = { laid: new Map(), never: false }));
  return known;
}

/** Joints over and under it that are looked at, from the wall that runs in on, in bricks. */
const REACH = 4;

function keyOf(
  main: SettingOut,
  { freed, kept, round }: Room,
  box: Area,
  over: readonly number[],
): string {
  const from = (x: number) => Math.round((x - box.x) * 100);
  const rects = (all: Room['freed']) =>
    all.map((p) => [from(p.x), p.y, p.along, p.across].map(Math.round));
  const { unit, joints, limits, bond } = main.spec;
  const reach = REACH * brickOf(main);
  const laps = over.filter((x) => x > box.x - reach && x < box.x + box.width + reach).map(from);
  const walls = [unit, joints.perpend, limits, bond.lap, box.width, box.height, main.thickness];
  return JSON.stringify([walls, rects(freed), rects(kept), rects(round), laps]);
}

function atBox({ pieces, cost }: Laid, { windows, kept }: Room, box: Area): Opened {
  return { windows, cost, pieces: [...kept, ...pieces.map((p) => ({ ...p, x: p.x + box.x }))] };
}
