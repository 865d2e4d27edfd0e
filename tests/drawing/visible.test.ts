/** The visible part of a long wall is drawn without making the rest: work is counted, not timed. */
import { describe, expect, test } from 'vitest';
import { elevation, wallPlans } from '../../server/engine/drawing';
import {
  placeCourse,
  type SettingOut,
  setOut,
  type WallSpec,
} from '../../server/engine/setting-out';
import { BONDS, overAll, wall } from '../setting-out/fixtures';

/** 10 km and 20 m in English bond: half bricks that its pattern closes on, so that no length has to give way. */
const LONG = overAll(88_890);
const SHORT = overAll(178);

const spec = (length: number, more: Partial<WallSpec> = {}) =>
  wall({ length, bond: BONDS.english, thickness: 2, courses: 40, ...more });

/** The same setting out, which counts every look at any part of it. */
function watched(out: SettingOut): { out: SettingOut; looks: () => number } {
  let count = 0;
  const known = new WeakMap<object, object>();
  const watch = <T extends object>(thing: T): T => {
    const proxy = new Proxy(thing, {
      get(target, key, self) {
        count++;
        const value = Reflect.get(target, key, self);
        if (typeof value !== 'object' || value === null) return value;
        const seen = known.get(value) ?? watch(value);
        known.set(value, seen);
        return seen;
      },
    });
    return proxy as T;
  };
  return { out: watch(out), looks: () => count };
}

function cost(length: number, draw: (out: SettingOut) => unknown, more: Partial<WallSpec> = {}) {
  const { out, looks } = watched(setOut(spec(length, more)));
  draw(out);
  return looks();
}

const window = (from: number) => ({ from, to: from + 4000, courses: { from: 10, to: 30 } });

describe('of 10 km of wall', () => {
  test('a window of 4 m is drawn at the cost of the same window of 20 m, wherever it stands', () => {
    const view = (from: number) => (out: SettingOut) =>
      elevation(out, { title: 'part', visible: window(from) });
    const short = cost(SHORT, view(8000));
    // Within a fifth: how many bricks are cut by the window's edges differs.
    for (const from of [8000, 5e6, 9.99e6])
      expect(cost(LONG, view(from)) / short).toBeLessThan(1.2);
  });

  test('the window has its bricks and no more', () => {
    const { boxes } = elevation(setOut(spec(LONG)), { title: 'part', visible: window(5e6) });
    // 4 m of 20 courses, 10 of stretchers 225 mm apart and 10 of headers 112.5 mm, and those at the edges.
    expect(boxes.length).toBeGreaterThan(10 * (4000 / 225) + 10 * (4000 / 112.5) - 20);
    expect(boxes.length).toBeLessThan(10 * (4000 / 225 + 2) + 10 * (4000 / 112.5 + 2));
    for (const { x, width } of boxes) {
      expect(x).toBeGreaterThanOrEqual(5e6);
      expect(x + width).toBeLessThanOrEqual(5e6 + 4000 + 1e-6);
    }
  });

  test('the back, mirrored, costs the same too', () => {
    const view = (from: number) => (out: SettingOut) =>
      elevation(out, { title: 'part', face: 'back', visible: window(from) });
    expect(cost(LONG, view(5e6)) / cost(SHORT, view(8000))).toBeLessThan(1.2);
  });

  test('plans of its ends cost those of a short one', () => {
    const plans = (out: SettingOut) => wallPlans(out, { title: 'plans' });
    expect(cost(LONG, plans) / cost(SHORT, plans)).toBeLessThan(1.2);
  });

  test('a course on plan is placed between two points for what lies between them', () => {
    const place = (from: number) => (out: SettingOut) => placeCourse(out, 11, from, from + 1000);
    expect(cost(LONG, place(5e6)) / cost(SHORT, place(8000))).toBeLessThan(1.2);
    expect(placeCourse(setOut(spec(LONG)), 11, 5e6, 5e6 + 1000).length).toBeLessThan(12);
  });

  test('the whole of it is drawn as areas, at the cost of a short one’s', () => {
    const whole = (out: SettingOut) => elevation(out, { title: 'all', mostBricks: 100 });
    expect(cost(LONG, whole) / cost(SHORT, whole)).toBeLessThan(1.2);
  });

  test('the count can tell: the whole drawn brick by brick costs hundreds of times as much', () => {
    const all = (out: SettingOut) => placeCourse(out, 11);
    const part = (out: SettingOut) => placeCourse(out, 11, 5e6, 5e6 + 1000);
    expect(placeCourse(setOut(spec(LONG)), 11).length).toBeGreaterThan(80_000);
    // Pieces are repeats of one group: looks grow with them, not with the bricks of one look.
    expect(cost(LONG, all)).toBeGreaterThan(100 * cost(LONG, part));
  });
});
