/** Two skins round a corner, on the ground: the inner skins meet inside it, lap round it, and are counted once. */
import { describe, expect, test } from 'vitest';
import { placeCourse, type SettingOut, tally } from '../../server/engine/setting-out';
import { FIRM } from '../findings/tells';
import { type Box, onGround, openArea, type Standing, worstOverlap } from '../setting-out/on-plan';
import { jobOf } from './world';

const wall = (name: string, length: number, more: string, backing = 'block-100 cavity 75 mm') =>
  `wall ${name}\n  brick red\n  stands held\n  length ${length} mm\n  height 18 courses\n${backing ? `  backing ${backing}\n` : ''}${more}`;

const jobIn = (text: string) =>
  jobOf(`perpend 1\nuse "firm.perp"\n${text}`, { 'firm.perp': FIRM }).works;

type Works = ReturnType<typeof jobIn>;

const workOf = (works: Works, name: string) => works.find((w) => w.name === name)!;
const skinOf = (works: Works, name: string) => workOf(works, name).facts.backing!.settingOut;
const figure = (works: Works, name: string, key: string) =>
  workOf(works, name)
    .figures.find((f) => f.key === key)!
    .term.value.toNumber();

/** The face and the cavity before an inner skin, mm. */
const BEFORE = 102.5 + 75;

function onPlan(out: SettingOut, course: number, at: Standing, before = BEFORE): Box[] {
  return placeCourse(out, course).map((p) => onGround({ ...p, y: p.y + before }, at));
}

const reachOf = (out: SettingOut, course: number) => {
  const pieces = placeCourse(out, course);
  return [
    Math.min(...pieces.map((p) => p.x)),
    Math.max(...pieces.map((p) => p.x + p.along)),
  ] as const;
};

const CORNER = `${wall('a', 4490, '  right quoin b\n')}${wall('b', 3815, '  left quoin a\n')}`;

describe('the inner skins of a corner', () => {
  const works = jobIn(CORNER);
  const [a, b] = [skinOf(works, 'a'), skinOf(works, 'b')];
  const stood = (course: number) => [
    ...onPlan(a, course, { x: 0, y: 0, way: 0 }),
    ...onPlan(b, course, { x: 4490, y: 0, way: 1 }),
  ];

  test.each([0, 1, 2, 3, 4, 5])('in course %i nothing overlaps and nothing is left open', (at) => {
    const boxes = stood(at);
    expect(worstOverlap(boxes)).toBeLessThan(1e-6);
    const right = 4490 - BEFORE;
    const inCorner = { x: right - 600, y: BEFORE, right, top: BEFORE + 100 };
    expect(openArea(inCorner, boxes, 10)).toBeLessThan(1e-3);
    const up = { x: right - 100, y: BEFORE, right, top: BEFORE + 600 };
    expect(openArea(up, boxes, 10)).toBeLessThan(1e-3);
  });

  test('run through in turn: to the other’s cavity, and to the back of its block', () => {
    const ends = [0, 1, 2, 3].map((course) => reachOf(a, course)[1]);
    const through = 4490 - BEFORE;
    const stopped = through - 100 - 10;
    const turns = ends[0]! > ends[1]! ? [through, stopped] : [stopped, through];
    for (const [course, end] of ends.entries()) expect(end).toBeCloseTo(turns[course % 2]!, 6);
    const starts = [0, 1].map((course) => reachOf(b, course)[0]);
    expect([...starts].sort((x, y) => x - y)).toEqual([BEFORE, BEFORE + 110]);
    // Where one runs through the other stops behind it.
    expect(ends[0]! > ends[1]!).toBe(starts[0]! > starts[1]!);
  });

  test('both are as much wall as their middle lines are long, and one corner of it', () => {
    const high = 6 * 225;
    // Cavity side 4490 - 177.5 and 3815 - 177.5 long; 100 mm of one of them in each course are the other’s.
    const long = 4490 - BEFORE + (3815 - BEFORE) - 100;
    const gross = tally(a).grossVolume + tally(b).grossVolume;
    expect(gross).toBeCloseTo(long * 100 * high, 3);
  });

  test('ties go with the face of the cavity, which is there once', () => {
    const overFace = (length: number) => Math.ceil(((length - BEFORE) * 1350) / (900 * 450));
    expect(figure(works, 'a', 'ties')).toBe(overFace(4490));
    expect(figure(works, 'b', 'ties')).toBe(overFace(3815));
  });

  test('hours go with what is laid, the corner once', () => {
    const hours = ['a', 'b'].map((name) =>
      workOf(works, name)
        .needs.tasks.find((t) => t.task === 'blockwork')!
        .hours.value.toNumber(),
    );
    const area = ((4490 + 3815 - 2 * BEFORE - 100) / 1000) * 1.35;
    expect(hours[0]! + hours[1]!).toBeCloseTo(area / 1.2, 6);
  });

  test('the pieces counted are the pieces placed', () => {
    for (const out of [a, b]) {
      const placed = [0, 1, 2, 3, 4, 5].flatMap((course) => placeCourse(out, course));
      const area = placed.reduce((sum, p) => sum + p.along * p.across, 0);
      expect(tally(out).brickVolume / 215).toBeCloseTo(area, 3);
    }
  });
});

test('four walls of a store: nothing overlaps round its four inner corners', () => {
  const names = ['a', 'b', 'c', 'd'];
  const text = names
    .map((name, i) => {
      const [before, after] = [names[(i + 3) % 4], names[(i + 1) % 4]];
      return wall(name, i % 2 ? 3815 : 4490, `  left quoin ${before}\n  right quoin ${after}\n`);
    })
    .join('');
  const works = jobIn(text);
  const at: Standing[] = [
    { x: 0, y: 0, way: 0 },
    { x: 4490, y: 0, way: 1 },
    { x: 4490, y: 3815, way: 2 },
    { x: 0, y: 3815, way: 3 },
  ];
  for (const course of [0, 1, 2]) {
    const boxes = names.flatMap((name, i) => onPlan(skinOf(works, name), course, at[i]!));
    expect(worstOverlap(boxes)).toBeLessThan(1e-6);
    const top = BEFORE + 100;
    expect(openArea({ x: BEFORE, y: BEFORE, right: 4490 - BEFORE, top }, boxes, 10)).toBe(0);
  }
});

test('with their fronts on the inner side the skins go round the outside', () => {
  const text = `${wall('a', 4490, '  right quoin b inside\n')}${wall('b', 3815, '  left quoin a inside\n')}`;
  const works = jobIn(text);
  const reach = [0, 1].map((course) => reachOf(skinOf(works, 'a'), course)[1]);
  expect(reach.sort((x, y) => x - y)).toEqual([4490 + 75 - 10, 4490 + 75 + 100]);
});

test('against a wall without a backing a skin is butted', () => {
  const text = `${wall('a', 4490, '  right quoin b\n')}${wall('b', 3815, '  left quoin a\n', '')}`;
  const a = skinOf(jobIn(text), 'a');
  for (const course of [0, 1]) expect(reachOf(a, course)[1]).toBeCloseTo(4490 - 102.5 - 10, 6);
});

test('skins whose courses are not level are not bonded: one runs through', () => {
  const text = `${wall('a', 4490, '  right quoin b\n')}${wall('b', 3815, '  left quoin a\n', 'red cavity 75 mm')}`;
  const works = jobIn(text);
  const [a, b] = [skinOf(works, 'a'), skinOf(works, 'b')];
  const [ends, starts] = [
    [0, 1].map((course) => reachOf(a, course)[1]),
    [0, 1, 2, 3].map((course) => reachOf(b, course)[0]),
  ];
  expect(new Set(ends).size).toBe(1);
  expect(new Set(starts).size).toBe(1);
  const through = ends[0] === 4490 - BEFORE;
  expect(starts[0]).toBeCloseTo(through ? BEFORE + 100 + 10 : BEFORE, 6);
  if (!through) expect(ends[0]).toBeCloseTo(4490 - BEFORE - 102.5 - 10, 6);
});

test.each(['1 mm', '177 mm', '300 mm', '355 mm', '1e9 mm'])(
  'a wall %s long between two corners throws nothing',
  (length) => {
    const text = `${wall('a', 4490, '  right quoin b\n')}${wall('b', 1, '  left quoin a\n  right quoin c\n').replace('1 mm', length)}${wall('c', 4490, '  left quoin b\n')}`;
    const works = jobIn(text);
    expect(figure(works, 'a', 'backing')).toBeGreaterThan(0);
  },
);

describe('on ground that steps at the corner', () => {
  const skins = (courses: number) => {
    const step = `  left quoin a\n  ground steps at 1350 mm down ${courses} courses\n`;
    const works = jobIn(`${wall('a', 4490, '  right quoin b\n')}${wall('b', 3815, step)}`);
    return [skinOf(works, 'a'), skinOf(works, 'b')] as const;
  };

  test('three courses of brick are one of blocks: the skins lap where they are level', () => {
    const [a, b] = skins(3);
    for (const course of [0, 1, 2, 3, 4, 5]) {
      const boxes = [
        ...onPlan(a, course, { x: 0, y: 0, way: 0 }),
        ...onPlan(b, course + 1, { x: 4490, y: 0, way: 1 }),
      ];
      expect(worstOverlap(boxes)).toBeLessThan(1e-6);
      const right = 4490 - BEFORE;
      const open = { x: right - 300, y: BEFORE, right, top: BEFORE + 100 };
      expect(openArea(open, boxes, 10)).toBeLessThan(1e-3);
    }
  });

  test('one course of brick is no course of blocks: one skin runs through', () => {
    const [a] = skins(1);
    expect(reachOf(a, 1)[1]).toBeCloseTo(reachOf(a, 2)[1], 6);
  });
});
