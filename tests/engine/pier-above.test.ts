/** An attached pier higher than its wall: bonded into it as far up as that goes, and standing free above. */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { sheetsOf } from '../../server/documents/work-sheets';
import type { Work } from '../../server/engine/brickwork/work';
import { piecesAt } from '../../server/engine/setting-out';
import type { Term } from '../../server/engine/working/term';
import type { Job } from '../../server/engine/workspace/job';
import { jobOf } from './world';

const WALL =
  'perpend 1\nuse uk\nwall a\n  length 4490 mm\n  height 12 courses\n  thick 1 brick\n  bond flemish\n  coping brick-on-edge\n';

const job = (height: number, pier = ''): Job =>
  jobOf(
    `${WALL}  pier p\n    at left\n    size 2 x 1.5 bricks\n    projects back\n    height ${height} courses\n    cap 500 x 400 mm\n${pier}`,
  );

const work = (...of: Parameters<typeof job>): Work => job(...of).works[0]!;
const figure = (of: Work, key: string) =>
  of.figures.find((f) => f.key === key)?.term.value.toNumber();
/** Pieces cut for its piers. */
const cutIn = (of: Work) =>
  of.facts.cuts!()
    .filter(({ label }) => label === 'Bricks in its piers')
    .flatMap(({ places }) => places)
    .reduce((sum, place) => sum + piecesAt(place), 0);

describe('a pier of 2 x 1.5 bricks, 440 x 327.5 mm, at the end of a wall of 12 courses', () => {
  test('takes 6 bricks for each course above it: 440 x 327.5 are 12 half bricks', () => {
    const [low, high] = [figure(work(13), 'bricks')!, figure(work(73), 'bricks')!];
    expect(high - low).toBe(60 * 6);
  });

  test('takes the mortar of a course of six bricks in 450 x 337.5 less a joint each way', () => {
    const each = (440 * 327.5 * 75 - 6 * 215 * 102.5 * 65) / 1e6;
    const more = figure(work(73), 'mortar')! - figure(work(13), 'mortar')!;
    expect(more).toBeCloseTo(60 * each, 6);
  });

  test('is drawn above the wall with nothing beyond its faces, front and back', () => {
    const { works, env } = job(15);
    for (const face of ['front', 'back'] as const) {
      const { boxes } = drawingOf(works[0]!, env, { face })!;
      const above = boxes.filter(
        (box) =>
          box.y > 12 * 75 && ['header', 'stretcher', 'half', 'closer', 'cut'].includes(box.style),
      );
      const lefts = above.map((b) => b.x);
      const rights = above.map((b) => b.x + b.width);
      const [from, to] = face === 'front' ? [0, 440] : [4050, 4490];
      expect([Math.min(...lefts), Math.max(...rights)]).toEqual([from, to]);
      expect(above.every(({ style }) => style === 'header' || style === 'stretcher')).toBe(true);
      // Three courses, each of two stretchers or of two headers and a stretcher: 440 mm with its joints.
      for (const y of new Set(above.map((b) => b.y))) {
        const course = above.filter((b) => b.y === y);
        const wide = course.reduce((sum, b) => sum + b.width + 10, -10);
        expect(wide).toBeCloseTo(440, 6);
      }
      expect(new Set(above.map((b) => b.y)).size).toBe(3);
    }
  });

  test('laps the course it stands on, and itself: no joint of a face over another', () => {
    const [pier] = work(15).facts.piers!;
    const { placed, above } = pier!;
    const courses = [placed[11 % placed.length]!, above!.placed[0]!, above!.placed[1]!];
    const joints = courses.map((course) =>
      course.pieces.filter((p) => Math.abs(p.y) < 1 && p.x > 5 && p.x < 435).map((p) => p.x),
    );
    for (const [a, b] of [
      [joints[0]!, joints[1]!],
      [joints[1]!, joints[2]!],
    ] as const)
      for (const x of a) expect(b.every((other) => Math.abs(other - x) > 40)).toBe(true);
  });

  test('has a plan of its courses above the wall', () => {
    const { works, env } = job(15);
    const sheets = sheetsOf(works[0]!, env, 'plan', { works, paper: 'A4' } as never);
    expect(JSON.stringify(sheets)).toContain('above the wall');
    const level = sheetsOf(job(12).works[0]!, env, 'plan', { works, paper: 'A4' } as never);
    expect(JSON.stringify(level)).not.toContain('above the wall');
  });

  test('has no bat or closer cut for what stands free, and tells it in the working', () => {
    expect(cutIn(work(12))).toBeGreaterThan(0);
    expect(cutIn(work(72))).toBe(cutIn(work(12)));
    const told = (term: Term): readonly string[] => [
      ...(term.detail?.() ?? []),
      ...term.args.flatMap(told),
    ];
    const lines = told(work(15).figures[0]!.term);
    expect(lines).toContain('  Above the wall, 3 courses:');
    expect(lines).toContain('  Course A: 6 whole bricks');
  });

  test('of a size with a core: bricks or concrete in it are above the wall alone', () => {
    const cored = (height: number) => {
      const text = `${WALL}  pier p\n    at left\n    size 1.5 x 1.5 bricks\n    projects back\n    height ${height} courses\n    core concrete\n`;
      return jobOf(text).works[0]!;
    };
    // 327.5 less two bricks of 102.5 leaves 122.5 mm square; 75 mm a course.
    const each = (122.5 * 122.5 * 75) / 1e6;
    expect(figure(cored(12), 'core')).toBeUndefined();
    expect(figure(cored(32), 'core')).toBeCloseTo(20 * each, 6);
    expect(cored(12).remarks.map((r) => r.code)).toContain('core-idle');
    expect(cored(32).remarks.map((r) => r.code)).not.toContain('core-idle');
  });
});

describe('the face of a wall beside attached piers', () => {
  test('goes on to their sides: (4490 - 440 - 327.5) x 900', () => {
    const two =
      '  pier p\n    at left\n    size 2 x 1.5 bricks\n    projects back\n  pier q\n    at left 2250 mm\n    size 1.5 x 1.5 bricks\n    projects back\n';
    const of = jobOf(WALL + two).works[0]!;
    expect(of.facts.piers!.map((p) => [p.attached, p.width])).toEqual([
      [true, 440],
      [true, 327.5],
    ]);
    const area = ((4490 - 440 - 327.5) * 900) / 1e6;
    expect(figure(of, 'area')).toBeCloseTo(area, 6);
    // 60 to the square metre of half-brick wall, two leaves.
    expect(figure(of, 'rule')).toBeCloseTo(area * 60 * 2, 4);
  });
});
