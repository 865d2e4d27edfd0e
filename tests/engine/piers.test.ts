/** Cores and attached piers from the text to the figures, each sum done again by hand. */
import { describe, expect, test } from 'vitest';
import type { Work } from '../../server/engine/brickwork/work';
import type { Term } from '../../server/engine/working/term';
import { FIRM } from '../findings/tells';
import { took } from '../harness/took';
import { jobOf } from './world';

const work = (text: string): Work =>
  jobOf(`perpend 1\nuse "firm.perp"\n${text}`, { 'firm.perp': FIRM }).works[0]!;

const figure = (of: Work, key: string) =>
  of.figures.find((f) => f.key === key)?.term.value.toNumber();

const WHOLE = (215 * 102.5 * 65) / 1e6;
const HALF_BAT = (102.5 * 102.5 * 65) / 1e6;
const CLOSER = (46.25 * 215 * 65) / 1e6;

/** Every line of the workings under a term. */
function details(term: Term): readonly string[] {
  return [...(term.detail?.() ?? []), ...term.args.flatMap(details)];
}

describe('the core of a pier, two and a half bricks square and 20 courses high', () => {
  const pier = (core: string) =>
    work(`pier g\n  brick red\n  size 2.5 x 2.5 bricks\n  height 20 courses\n${core}`);
  // Eight bricks round nine half bricks; 552.5 mm over the faces.
  const gross = (552.5 * 552.5 * 75 * 20) / 1e6;

  test('of halves takes half a brick for each, cut from whole ones', () => {
    const of = pier('  core halves\n');
    expect(figure(of, 'bricks')).toBe(20 * (8 + 9 / 2));
    expect(figure(of, 'mortar')).toBeCloseTo(gross - 20 * (8 * WHOLE + 9 * HALF_BAT), 6);
    expect(of.facts.pier!.coreHalves).toBe(20 * 9);
    expect(of.facts.does.has('cutting')).toBe(true);
    expect(details(of.figures[0]!.term)).toContain(
      'No face shows 9 half bats of each course: halves go there first, up to 9 in each course',
    );
  });

  test('of bats takes none, but the room they fill is not mortar', () => {
    const of = pier('  core bats\n');
    expect(figure(of, 'bricks')).toBe(20 * 8);
    expect(figure(of, 'mortar')).toBe(figure(pier('  core halves\n'), 'mortar'));
    expect(of.facts.does.has('cutting')).toBe(false);
  });

  test('of concrete is so many litres of the mix of footings, or of another', () => {
    const of = pier('  core concrete\n');
    const side = 552.5 - 2 * 102.5;
    const core = (side * side * 75 * 20) / 1e6;
    expect(figure(of, 'bricks')).toBe(20 * 8);
    expect(figure(of, 'core')).toBeCloseTo(core, 6);
    expect(figure(of, 'mortar')).toBeCloseTo(gross - core - 20 * 8 * WHOLE, 6);
    expect(of.needs.mixes.map((m) => m.mix)).toEqual(['general', 'concrete']);
    expect(pier('  core concrete strong\n').needs.mixes.map((m) => m.mix)).toEqual([
      'general',
      'strong',
    ]);
    const task = of.needs.tasks.find((t) => t.task === 'core')!;
    // The library: half a cubic metre an hour.
    expect(task.hours.value.toNumber()).toBeCloseTo(core / 500, 9);
  });

  test('left hollow takes nothing at all', () => {
    const of = pier('  core hollow\n');
    expect(of.needs.mixes).toHaveLength(1);
    expect(figure(of, 'bricks')).toBe(20 * 8);
    expect(figure(of, 'mortar')).toBe(figure(pier('  core concrete\n'), 'mortar'));
  });

  test('is bonded through where no line tells of it: ten wholes, four closers and a half', () => {
    const of = pier('');
    expect(figure(of, 'bricks')).toBe(20 * (10 + 4 / 2) + 20 / 2);
    expect(of.facts.pier!.coreHalves).toBe(20);
    expect(of.facts.pier!.placed!.map((c) => c.pieces.length)).toEqual([15, 15]);
  });

  test('of several piers alike, and with a footing in the same mix', () => {
    const of = pier('  number 3\n  core concrete\n  footing 800 x 800 x 300 mm\n');
    const side = 552.5 - 2 * 102.5;
    expect(figure(of, 'core')).toBeCloseTo((3 * side * side * 1500) / 1e6, 6);
    expect(figure(of, 'concrete')).toBeCloseTo(3 * 0.8 * 0.8 * 0.3 * 1000, 6);
    expect(of.needs.mixes.map((m) => m.mix)).toEqual(['general', 'concrete', 'concrete']);
  });

  test('of a pier in a wall too', () => {
    const wall = (core: string) =>
      work(
        `wall n\n  brick red\n  stands held\n  length 2015 mm\n  height 8 courses\n  pier p\n    at left\n    size 2 x 2 bricks\n${core}`,
      );
    const of = wall('    core concrete\n');
    expect(figure(of, 'core')).toBeCloseTo((235 * 235 * 75 * 8) / 1e6, 6);
    // Six bricks to a course round the core, where eight bricks’ worth is bonded through.
    expect(figure(wall(''), 'bricks')! - figure(of, 'bricks')!).toBe(8 * (6 + 4 / 2 - 6));
    expect(of.facts.piers).toMatchObject([{ name: 'p', attached: false, coreHalves: 8 * 4 }]);
  });
});

describe('an attached pier', () => {
  const lines = (pier: string) =>
    `wall n\n  brick red\n  bond english\n  thick 1 brick\n  stands held\n  length 6065 mm\n  height 20 courses\n${pier}`;
  const PIER = '  pier p\n    at left 2475 mm\n    size 2 x 1.5 bricks\n    projects back\n';
  const plain = work(lines(''));
  const of = work(lines(PIER));

  test('takes what its wall takes, and two bricks a course for what stands out', () => {
    expect(figure(of, 'bricks')).toBe(figure(plain, 'bricks')! + 20 * 2);
    // By hand: 54 half bricks of wall, so 27 pairs of stretchers, and 53 headers with two closers.
    expect(figure(plain, 'bricks')).toBe(10 * 54 + 10 * (53 + 2 / 2));
  });

  test('has the mortar of the wall and of what stands out, a joint between them', () => {
    const gross = (6065 * 215 + 440 * 112.5) * 75 * 20 * 1e-6;
    const bricks = 10 * (54 + 2) + 10 * (53 + 2);
    expect(figure(of, 'mortar')).toBeCloseTo(gross - bricks * WHOLE - 20 * CLOSER, 6);
  });

  test('counts the same from either end and on either side', () => {
    // 54 half bricks: 22 before the pier, 4 of it, 28 behind.
    for (const other of [
      PIER.replace('left 2475 mm', `right ${28 * 112.5} mm`),
      PIER.replace('back', 'front'),
    ])
      expect(figure(work(lines(other)), 'bricks')).toBe(figure(of, 'bricks'));
  });

  test('tells where its pieces lie', () => {
    const [face] = of.facts.piers!;
    expect(face).toMatchObject({
      name: 'p',
      from: 2475,
      y: 0,
      width: 440,
      depth: 327.5,
      attached: true,
    });
    expect(work(lines(PIER.replace('back', 'front'))).facts.piers![0]!.y).toBe(-112.5);
    expect(of.facts.settingOut!.spec.piers[0]!.from).toBe(2475);
    expect(details(of.figures[0]!.term)).toContain('Pier p, with what it reaches into the wall:');
  });

  test('shorter than its wall leaves the wall whole above it', () => {
    const low = work(lines(`${PIER}    height 12 courses\n`));
    expect(figure(low, 'bricks')).toBe(figure(plain, 'bricks')! + 12 * 2);
  });

  test('between the ends without projecting stands in the line of the wall, which butts against it', () => {
    const inLine = work(lines(PIER.replace('    projects back\n', '')));
    expect(inLine.facts.piers![0]).toMatchObject({ attached: false, from: 2475 });
    expect(figure(inLine, 'bricks')).toBeGreaterThan(figure(plain, 'bricks')!);
  });
});

describe('piers that nobody would build', () => {
  test('are told of, and nothing breaks', () => {
    for (const size of [
      '0 x 0 bricks',
      '1e9 x 1 bricks',
      '99999999 x 1 bricks',
      '2 x 900 bricks',
      '1 x -1 bricks',
    ])
      for (const projects of ['', '    projects both\n'])
        for (const at of ['left 0 mm', 'left 99999999 m', 'right 1 mm']) {
          const text = `wall n\n  brick red\n  length 2015 mm\n  height 8 courses\n  pier p\n    at ${at}\n    size ${size}\n${projects}    core halves\n`;
          expect(figure(work(text), 'bricks')).toBeGreaterThan(0);
        }
  });

  test('a hundred different ones in a wall take no longer than anyone waits', () => {
    const piers = [...Array(100).keys()].map(
      (i) =>
        `  pier p${i}\n    at left ${(i * 8 + 2) * 112.5} mm\n    size ${1 + (i % 4) / 2} x ${1.5 + (i % 2) / 2} bricks\n    projects ${['front', 'back', 'both'][i % 3]}\n`,
    );
    const walls = () =>
      work(
        `wall n\n  brick red\n  stands held\n  bond english\n  thick 1 brick\n  length 100 m\n  height 8 courses\n${piers.join('')}`,
      );
    const of = walls();
    expect(of.facts.piers).toHaveLength(100);
    expect(of.facts.piers!.filter((p) => p.attached).length).toBeGreaterThan(50);
    // Far above what it takes: a search that grew with the number of piers would take minutes.
    expect(took(walls)).toBeLessThan(30_000);
  });
});
