/** What a preview is told of a drawing, and the lines that its parts come from. */
import { describe, expect, test } from 'vitest';
import { Paths } from '../../client/preview/page/paths';
import { spotOf, stepped } from '../../client/preview/page/rove';
import { lengthSaid, markedFor, stopSaid } from '../../client/preview/page/spoken';
import { type Stop, Stops } from '../../client/preview/page/stops';
import { Store } from '../../client/preview/page/store';
import { isHeld } from '../../server/documents/preview';
import type { Shown } from '../../shared/protocol/preview';
import { pageWordsOf } from '../../shared/protocol/preview-words';
import { lineOf, Previewing, WALL, type Wished } from './shown';

const north = lineOf(WALL, /^wall/);

interface Held {
  readonly shown: Shown;
  readonly store: Store;
  readonly stops: Stops;
}

const known = new Map<string, Held>();

/** Nothing changes it: each is worked out once. */
function held(text = WALL, wished: Wished = {}): Held {
  const key = JSON.stringify([text, wished]);
  const found = known.get(key) ?? anew(text, wished);
  known.set(key, found);
  return found;
}

function anew(text: string, wished: Wished): Held {
  const shown = new Previewing(text).shown({ line: north, ...wished });
  const store = new Store();
  store.take(shown.picture!);
  return { shown, store, stops: new Stops(store) };
}

const all = ({ stops }: Held): Stop[] => stops.groups.flatMap((group) => group.stops);

/** The line that the stops of some kind come from, as the text has it; each once. */
function linesOf(of: Held, which: (stop: Stop) => boolean, text = WALL): string[] {
  const lines = all(of)
    .filter(which)
    .map(({ from }) => text.split('\n')[of.shown.from[from]?.line ?? -1]?.trim() ?? 'none');
  return [...new Set(lines)];
}

const says = (words: string) => (stop: Stop) => stop.text === words;

describe('the lines that things come from', () => {
  const of = held();

  test.each([
    ['Garden gate', 'opening gate "Garden gate"'],
    ['Log hatch', 'opening hatch "Log hatch"'],
  ])('the name %s leads to its opening', (words, line) => {
    expect(linesOf(of, says(words))).toEqual([line]);
  });

  test.each([
    ['1010', ['width   1010 mm', 'from    right 1010 mm']],
    ['685', ['width   685 mm']],
    ['5390', ['length    5.39 m']],
    ['1347.5', ['from    left 1347.5 mm']],
    ['0', ['length    5.39 m', 'height    16 courses']],
    ['1200', ['height    16 courses']],
    ['1312.5', ['coping    brick-on-edge']],
    ['300', ['sill    4 courses']],
    ['750', ['height  6 courses']],
  ])('the figure %s', (words, lines) => {
    expect(linesOf(of, says(words)).sort()).toEqual([...lines].sort());
  });

  test('soldiers come from the head, bricks on edge from the coping', () => {
    expect(linesOf(of, ({ ink }) => ink === 'soldier')).toEqual(['head    soldier']);
    expect(linesOf(of, ({ ink }) => ink === 'on-edge')).toEqual(['coping    brick-on-edge']);
  });

  test('bricks come from the brick, the damp course, or the opening they stand at', () => {
    const bricks = linesOf(of, ({ ink, course }) => ink === 'stretcher' && course !== undefined);
    expect(bricks.sort()).toEqual([
      'brick     standard',
      'dpc       engineering 2 courses',
      'opening gate "Garden gate"',
      'opening hatch "Log hatch"',
    ]);
    const damp = ({ course }: Stop) => course !== undefined && course <= 2;
    const low = all(of).filter(damp);
    expect(low.length).toBeGreaterThan(30);
  });

  test('a cut comes from what puts an end of its stretch where it is', () => {
    const text = WALL.replace('5.39 m', '5.43 m');
    const cuts = linesOf(held(text), ({ ink }) => ink === 'cut', text);
    expect(cuts.length).toBeGreaterThan(0);
    for (const line of cuts) expect(line).toMatch(/^(from|length|brick|width)/);
  });

  test('a pier and its cap', () => {
    const pier = held(WALL, { line: lineOf(WALL, /^pier/) });
    expect(pier.shown.work).toBe('pier lone');
    expect(linesOf(pier, ({ ink }) => ink === 'cap')).toEqual(['cap       500 x 500 mm']);
    expect(linesOf(pier, says('440'))).toEqual(['size      2 x 2 bricks']);
  });

  test('from behind the same things come from the same lines', () => {
    const back = held(WALL, { show: 'back' });
    expect(linesOf(back, says('Log hatch'))).toEqual(['opening hatch "Log hatch"']);
    expect(linesOf(back, says('685'))).toEqual(['width   685 mm']);
    expect(linesOf(back, says('1010')).sort()).toEqual([
      'from    right 1010 mm',
      'width   1010 mm',
    ]);
    const [front, behind] = [of, back].map((each) => each.store);
    expect(behind!.width).toBeCloseTo(front!.width);
  });

  test.each(['plan', 'top', 'rod'])('a %s has lines too', (show) => {
    const set = held(WALL, { show });
    const lines = linesOf(set, () => true);
    expect(lines.length).toBeGreaterThan(show === 'top' ? 0 : 1);
    expect(lines).not.toContain('none');
  });
});

describe('which piece of work is shown', () => {
  const of = new Previewing(WALL);
  test('the one that the cursor is in; else the one that was shown; else the first', () => {
    const pier = lineOf(WALL, /12 courses/);
    expect(of.shown({ line: pier }).work).toBe('pier lone');
    expect(of.shown({ line: 0, work: 'pier lone' }).work).toBe('pier lone');
    expect(of.shown({ line: 0 }).work).toBe('wall north');
    expect(of.shown({ line: pier, work: 'wall north', pinned: true }).work).toBe('wall north');
    expect(of.shown({ line: pier, work: 'gone', pinned: true }).work).toBe('pier lone');
  });

  test('work of one name is told apart', () => {
    const twice = new Previewing(`${WALL}\npier lone\n  size 1 x 1 bricks\n  height 4 courses\n`);
    expect(twice.shown().works.map(({ key }) => key)).toEqual([
      'wall north',
      'pier lone',
      'pier lone 2',
    ]);
  });

  test('a file without work says so', () => {
    const shown = new Previewing('perpend 1\n').shown();
    expect(shown.nothing).toMatch(/no wall, no pier/);
    expect(shown.picture).toBeUndefined();
  });

  test('every choice can be shown, or says why not', () => {
    for (const { id } of of.shown().choices) {
      const shown = of.shown({ show: id, line: north });
      expect(Boolean(shown.picture ?? shown.paper ?? shown.nothing), id).toBe(true);
      expect(shown.show).toBe(id);
    }
  });

  test('what there is not is the front', () => {
    expect(of.shown({ show: '__proto__' }).show).toBe('front');
  });
});

describe('changes of a drawing', () => {
  /** Every edit of this job, and what a page holds after changes is what it would hold from the start. */
  test('a page that takes changes has what one has that takes the whole', () => {
    const of = new Previewing(WALL);
    const page = new Store();
    page.take(of.shown({ line: north }).picture!);
    const edits: [string, string][] = [
      ['16 courses', '19 courses'],
      ['5.39 m', '6.515 m'],
      ['flemish', 'english'],
      ['right 1010 mm', 'right 1460 mm'],
      ['dpc       engineering 2 courses\n', '\n'],
      ['sill    4 courses', 'sill    7 courses'],
      ['"Garden gate"', '"Side gate"'],
    ];
    let text = WALL;
    for (const [was, is] of edits) {
      text = text.replace(was, is);
      of.edit(text);
      const change = of.shown({ line: north, have: page.is }).picture!;
      expect(change.since).toBe(page.is);
      expect(page.take(change)).toBeDefined();
      const whole = new Store();
      whole.take(of.shown({ line: north }).picture!);
      expect(page.order).toEqual(whole.order);
      expect([...page.parts].sort()).toEqual([...whole.parts].sort());
    }
  });

  test('an edit that moves lines and nothing else sends no bricks', () => {
    const of = new Previewing(WALL);
    const have = of.shown({ line: north }).picture!.is;
    of.edit(WALL.replace('\nwall', '\n# a remark\n\nwall'));
    const next = of.shown({ line: north + 2, have });
    expect(next.picture!.parts).toEqual({});
    expect(next.from[0]!.line).toBe(north + 2);
  });

  test('a state that is not known any more is answered with the whole', () => {
    const { picture } = new Previewing(WALL).shown({ line: north, have: '99' });
    expect(picture!.since).toBeUndefined();
    expect(picture!.order?.length).toBeGreaterThan(10);
  });

  test('courses alike are told once', () => {
    const { store } = held();
    const parts = [...store.parts.values()];
    const rows = parts.filter(({ kind }) => kind === 'row').length;
    const patterns = parts.filter(({ kind }) => kind === 'pattern').length;
    expect(patterns).toBeLessThan(rows);
  });

  test('a drawing that is none is not taken', () => {
    const { picture } = held().shown;
    const bad = (parts: object) => new Store().take({ ...picture!, parts: parts as never });
    expect(bad({ a: { kind: 'toString' } })).toBeUndefined();
    expect(bad({ a: null })).toBeUndefined();
    expect(bad({ a: { kind: 'pattern', pieces: [0, 1, 2] } })).toBeUndefined();
    expect(bad({ a: { kind: 'frame', x: 0, y: 0, scale: 0, title: '' } })).toBeUndefined();
    expect(
      bad({
        a: { kind: 'marks', of: 'work', lines: [{ ink: 99, at: [] }], shapes: [], texts: [] },
      }),
    ).toBeUndefined();
  });
});

describe('pointing', () => {
  test('the middle of everything that can be pointed at is found to be it, or what lies over it', () => {
    const of = held();
    for (const stop of all(of)) {
      const found = of.stops.at(stop.x + stop.width / 2, stop.y + stop.height / 2);
      expect(found).toBeDefined();
      if (found !== stop) expect(spotOf(of.stops.groups, found!)).toBeDefined();
    }
    const bricks = all(of).filter(({ course }) => course !== undefined);
    const own = bricks.filter(
      (brick) => of.stops.at(brick.x + brick.width / 2, brick.y + brick.height / 2) === brick,
    );
    expect(own.length / bricks.length).toBeGreaterThan(0.9);
  });

  test('beside the drawing there is nothing', () => {
    expect(held().stops.at(-5, -5)).toBeUndefined();
  });

  test('paths lie where pointing finds their bricks', () => {
    const { store, stops } = held();
    const paths = new Paths(store);
    const course = stops.groups.find((group) => group.course === 3)!;
    const [first] = course.stops;
    const part = store.parts.get(first!.key);
    const row = part?.kind === 'row' ? paths.row(part) : undefined;
    expect(row!.y).toBeCloseTo(first!.y, 5);
    const [x] = /^M([\d.-]+) /.exec(row!.paths.find(({ ink }) => ink === first!.ink)!.d)!.slice(1);
    expect(row!.x + Number(x)).toBeCloseTo(first!.x, 2);
  });
});

describe('going through with the keys', () => {
  const of = held();
  const { groups } = of.stops;

  test('begins at the first brick of the lowest course', () => {
    const spot = stepped(groups, undefined, 'up')!;
    expect(groups[spot.group]!.course).toBe(1);
    expect(spot.stop).toBe(0);
  });

  test('up and down go to what lies over and under; along stays in the course', () => {
    const start = stepped(groups, undefined, 'up')!;
    const middle = stepped(groups, stepped(groups, start, 'right'), 'right')!;
    const above = stepped(groups, middle, 'up')!;
    expect(groups[above.group]!.course).toBe(2);
    const [a, b] = [middle, above].map(({ group, stop }) => groups[group]!.stops[stop]!);
    expect(Math.abs(a!.x + a!.width / 2 - b!.x - b!.width / 2)).toBeLessThan(a!.width);
    expect(stepped(groups, start, 'left')).toEqual(start);
    const end = stepped(groups, start, 'last')!;
    expect(stepped(groups, end, 'right')).toEqual(end);
  });

  test('going down reaches every group', () => {
    let spot = stepped(groups, undefined, 'down')!;
    for (let i = 0; i < groups.length; i++) spot = stepped(groups, spot, 'up')!;
    const seen = new Set([spot.group]);
    for (let i = 0; i < groups.length; i++) seen.add((spot = stepped(groups, spot, 'down')!).group);
    expect(seen.size).toBe(groups.length);
  });

  test('there is nothing to go through where there is nothing', () => {
    expect(stepped([], undefined, 'down')).toBeUndefined();
  });

  test('is told in words', () => {
    const words = {
      ...pageWordsOf({}),
      course: 'course {0}',
      piece: 'brick {0} of {1}',
      millimetres: '{0} mm',
      line: '{0}, line {1}',
    };
    const start = stepped(groups, undefined, 'up')!;
    const said = stopSaid(groups, start, of.shown.from, 'millimetres', words);
    const count = groups[start.group]!.stops.length;
    expect(said).toBe(
      `course 1, brick 1 of ${count}, stretcher, 215 mm, dpc, line ${lineOf(WALL, /dpc/) + 1}`,
    );
  });

  test('lengths in feet go to a sixteenth of an inch', () => {
    const words = { ...pageWordsOf({}), millimetres: '{0} mm' };
    // 25.4 mm to the inch, exactly (international yard and pound agreement, 1959).
    expect(lengthSaid(193.675, 'feet', words)).toBe('7 5/8"');
    expect(lengthSaid(304.8, 'feet', words)).toBe(`1'-0"`);
    expect(lengthSaid(102.46, 'millimetres', words)).toBe('102.5 mm');
  });
});

describe('what belongs to the cursor’s line', () => {
  const { shown } = held();
  const marked = (pattern: RegExp) =>
    [...markedFor(shown.from, lineOf(WALL, pattern))].map((at) => shown.from[at]!.label);

  test('an opening’s heading: all of the opening', () => {
    expect(marked(/opening hatch/)).toEqual([
      'opening Log hatch',
      'from',
      'width',
      'sill',
      'height',
      'head',
    ]);
  });

  test('a line within it: that line', () => {
    expect(marked(/sill/)).toEqual(['sill']);
  });

  test('a heading or a line that is most of the drawing: nothing', () => {
    expect(marked(/^wall/)).toEqual([]);
    expect(marked(/brick {5}standard/)).toEqual([]);
    expect(marked(/^perpend/)).toEqual([]);
  });
});

test('an outline that is hollow is hit where it is, and not in its hollow', () => {
  const at = [0, 0, 3000, 0, 3000, 3000, 2000, 3000, 2000, 1000, 1000, 1000, 1000, 3000, 0, 3000];
  const store = Store.of({
    width: 30,
    height: 30,
    order: ['m'],
    parts: {
      m: { kind: 'marks', of: 'work', lines: [], texts: [], shapes: [{ ink: 0, from: 0, at }] },
    },
  })!;
  const stops = new Stops(store);
  const hits = [
    [5, 20],
    [15, 5],
    [25, 20],
    [15, 20],
    [35, 5],
  ].map(([x, y]) => Boolean(stops.at(x!, y!)));
  expect(hits).toEqual([true, true, true, false, false]);
});

describe('while a line is being written', () => {
  const line = lineOf(WALL, /16 courses/);
  const written = (text: string) => new Previewing(WALL.replace('height    16 courses', text)).job;
  const of = { line, show: 'front', work: 'wall north' };

  test.each(['height', 'height 1', 'height x', ''])(
    '“%s”: the wall that is drawn stays',
    (text) => {
      expect(isHeld(written(text), of)).toBe(true);
      expect(isHeld(written(text), { ...of, line: 0, pinned: true })).toBe(true);
    },
  );

  test('not once it can be drawn, on a paper, or elsewhere', () => {
    expect(isHeld(written('height 17 courses'), of)).toBe(false);
    expect(isHeld(written('height'), { ...of, show: 'quote' })).toBe(false);
    expect(isHeld(written('height'), { ...of, line: 0 })).toBe(false);
    expect(isHeld(written('height'), { ...of, work: 'wall other' })).toBe(false);
  });
});
