/** Bricks beside a measured one: sides, joints, drift, price, each worked out by hand beside its check. */
import { describe, expect, test } from 'vitest';
import { jobView } from '../../../server/engine/views/job-view';
import type { Term } from '../../../server/engine/working/term';
import { agree, allTerms, evaluated } from '../evaluate';
import { figuresOf, repaired } from '../repairs/repairing';
import { BRICKS, candidatesOf, matchingOf } from './compared';

const WALL = `brick plain
mix general
gauge 4 courses 310 mm
rebuild 1.35 m x 9 courses
measured 214 x 102 x 66 mm of 10 bricks
candidates even, tall, inch`;

const mm = (term: Term | undefined) => term!.value.toNumber();

describe('beside bricks of 214 x 102 x 66 mm, 4 courses 310 mm', () => {
  const of = candidatesOf(WALL);

  test('how much larger each is', () => {
    const sides = (name: string) => {
      const { length, width, height } = of(name).larger!;
      return [length, width, height].map(mm);
    };
    expect(sides('even')).toEqual([215 - 214, 102.5 - 102, 65 - 66]);
    expect(sides('tall')).toEqual([1, 0.5, 1]);
    expect(sides('inch')).toEqual([14, 6, 2]);
  });

  test('the bed joint that keeps the gauge, and whether anyone would accept it', () => {
    // A course is 310 / 4 = 77.5 mm; 8 to 13 mm is accepted.
    expect(mm(of('even').bed!.joint)).toBe(77.5 - 65);
    expect(mm(of('tall').bed!.joint)).toBe(77.5 - 67);
    expect(mm(of('inch').bed!.joint)).toBe(77.5 - 68);
    for (const name of ['even', 'tall', 'inch']) expect(of(name).bed!.accepted).toBe(true);
  });

  test('how far nine courses drift at the usual 10 mm', () => {
    expect(mm(of('even').bed!.drift!.term)).toBe(9 * (65 + 10 - 77.5));
    expect(mm(of('tall').bed!.drift!.term)).toBe(9 * (67 + 10 - 77.5));
    expect(mm(of('inch').bed!.drift!.term)).toBe(9 * (68 + 10 - 77.5));
  });

  test('the upright joint that keeps the bond, and how far 1.35 m creeps at the usual 10 mm', () => {
    // A brick and a joint of what stands are 214 + 10 = 224 mm.
    expect(mm(of('even').perpend!.joint)).toBe(224 - 215);
    expect(of('even').perpend!.accepted).toBe(true);
    expect(mm(of('even').perpend!.creep)).toBeCloseTo((215 + 10 - 224) * (1350 / 224), 9);
    // 228 mm leaves no joint at all.
    expect(mm(of('inch').perpend!.joint)).toBe(-4);
    expect(of('inch').perpend!.accepted).toBe(false);
    expect(mm(of('inch').perpend!.creep)).toBeCloseTo(14 * (1350 / 224), 9);
  });

  test('every figure is the sum that its working reads out', () => {
    const terms = ['even', 'tall', 'inch'].flatMap((name) => {
      const { larger, near, bed, perpend, buy } = of(name);
      const own = [larger!.length, larger!.width, larger!.height, near?.out?.term, bed!.joint];
      const more = [
        bed!.drift!.term,
        perpend!.joint,
        perpend!.creep,
        buy.bought,
        buy.cost,
        buy.left,
      ];
      return [...own, ...more].filter((term) => term !== undefined);
    });
    expect(terms.length).toBeGreaterThan(30);
    for (const term of terms) {
      expect(agree(term.value, evaluated(term))).toBe(true);
      expect([...allTerms(term)].some(({ origin }) => origin)).toBe(true);
    }
  });
});

describe('what 40 bricks that are short cost', () => {
  const of = candidatesOf(
    'brick plain\nmix general\nrebuild 100 bricks\nsalvage 60 bricks\ncandidates even, tall, inch',
  );

  test('singly, with their breakage', () => {
    // 40 and 5% are 42 at £1.
    expect([of('even').buy.bought, of('even').buy.cost, of('even').buy.left].map(mm)).toEqual([
      42, 42, 0,
    ]);
    // 42 at £1500 a thousand.
    expect(mm(of('inch').buy.cost)).toBe(63);
  });

  test('in whole packs, and what is left over', () => {
    // 40 and 8% are 43.2, so 44 are used; a pack is 80.
    expect([of('tall').buy.bought, of('tall').buy.cost, of('tall').buy.left].map(mm)).toEqual([
      80, 124, 36,
    ]);
  });

  test('so many bricks anywhere have no drift and no creep', () => {
    expect(of('even').bed!.drift).toBeUndefined();
    expect(of('even').perpend!.creep).toBeUndefined();
  });
});

describe('what stands', () => {
  test('without a measured one it is the work size of the brick of the wall, at its usual course', () => {
    const { stood, candidates } = matchingOf(
      'brick plain\nmix general\nrebuild 100 bricks\ncandidates tall',
    );
    expect(stood.measured).toBe(false);
    expect(stood.gauged).toBe(false);
    expect(mm(stood.course)).toBe(65 + 10);
    expect(mm(candidates[0]!.bed!.joint)).toBe(65 + 10 - 67);
  });

  test('of a repair in a wall its gauge and its brick are that wall’s', () => {
    const { stood } = matchingOf(
      'in n\nrebuild 100 bricks\ncandidates tall',
      'wall n\n  brick even\n  mix general\n  gauge 4 courses 320 mm\n  length 4490 mm\n  height 12 courses\n  stands held\n',
    );
    expect(stood.title).toBe('Even red');
    expect(stood.gauged).toBe(true);
    expect(mm(stood.course)).toBe(80);
  });

  test('a brick that no line names is no measure of anything', () => {
    const { stood, candidates } = matchingOf(
      'rebuild 100 bricks\nthick 1/2 brick\ncandidates tall',
    );
    expect(stood.size).toBeUndefined();
    expect(candidates[0]!.larger).toBeUndefined();
    expect(candidates[0]!.bed).toBeUndefined();
  });

  test('the brick that is chosen is compared even where no list has it', () => {
    const { candidates } = matchingOf(
      'brick plain\nmix general\nrebuild 100 bricks\nmatch inch\ncandidates tall',
    );
    expect(candidates.map(({ brick, chosen }) => [brick.name, chosen])).toEqual([
      ['tall', false],
      ['inch', true],
    ]);
  });
});

test('figures can be asked for by the name of each, beside those of the repair', () => {
  const figures = figuresOf(`${WALL}\nmatch tall`, BRICKS);
  expect(figures('match.even.joint')).toBe(12.5);
  expect(figures('match.even.drift')).toBe(-22.5);
  expect(figures('match.tall.joint')).toBe(figures('joint-needed'));
  expect(figures('match.tall.drift')).toBe(figures('drift'));
});

test('in inches where the job is in inches', () => {
  const lines = WALL.replace('4 courses 310 mm', '3 courses 8 in');
  const job = repaired(`${lines}\nmatch tall`, `defaults\n  units imperial\n${BRICKS}`);
  const term = (key: string) => job.works.at(-1)!.figures.find((f) => f.key === key)!.term;
  // A course is 8/3 in; 67 mm are 67 / 25.4 in. Nine courses at the usual 10 mm.
  for (const key of ['joint-needed', 'match.tall.joint'])
    expect(term(key).value.toNumber()).toBeCloseTo(8 / 3 - 67 / 25.4, 9);
  for (const key of ['drift', 'match.tall.drift'])
    expect(term(key).value.toNumber()).toBeCloseTo(9 * (77 / 25.4 - 8 / 3), 9);
  for (const key of ['joint-needed', 'drift', 'match.tall.joint', 'match.tall.drift'])
    expect(term(key).unit).toBe('in');
});

test('numbers past all sense bring nothing down', () => {
  for (const size of ['1e300 x 1 x 1 mm', '0 x 0 x 0 mm', '0.0001 x 0.0001 x 0.0001 mm'])
    for (const rebuild of ['1.35 m x 9 courses', '100000 km x 900000 courses', '? x 9 courses'])
      for (const brick of ['999999999 x 999999999 x 999999999 mm', '0 x 0 x 0 mm', '?']) {
        const job = repaired(
          `brick plain\nmix general\nrebuild ${rebuild}\nmeasured ${size} of 1 brick\ngauge 4 courses 0 mm\ncandidates odd, odd, even`,
          `${BRICKS}brick odd\n  size ${brick}\n  price £9999999999999 per pack\n  pack 1\n`,
        );
        const text = JSON.stringify([
          jobView(job),
          job.works[0]!.facts.matching?.candidates.length,
        ]);
        expect(text).not.toMatch(/NaN|Infinity/);
      }
});

test('where it is still to be measured how much is short, sizes and joints are compared all the same', () => {
  const of = candidatesOf('brick plain\nmix general\nrebuild ? x 9 courses\ncandidates even, tall');
  expect(mm(of('tall').bed!.joint)).toBe(75 - 67);
  expect(of('tall').buy.cost.gaps).not.toEqual([]);
});
