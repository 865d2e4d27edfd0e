/** Faces of a wall that another is bonded into: the bricks as they lie on plan, with what shows of the other. */
import { describe, expect, test } from 'vitest';
import { drawingOf } from '../../server/documents/work-drawing';
import { placeCourse } from '../../server/engine/setting-out';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import { JOB, wallText } from '../harness/walls';

const files = { 'firm.perp': FIRM };
const GAUGE = 75;
const LENGTH = 4490;

function facesOf(arm: string, thick = '', armThick = thick) {
  const one = { height: '12 courses' };
  const text = `${JOB}${wallText({ ...one, name: 'w', facts: thick })}${wallText({ ...one, name: 'arm', facts: armThick, length: '2240 mm' }, `  ${arm}\n`)}`;
  const { works, env } = jobOf(text, files);
  const work = works.find((w) => w.name === 'w')!;
  const laid = work.facts.laid ?? work.facts.settingOut!;
  const faceIn = (face: 'front' | 'back') => {
    const drawing = drawingOf(work, env, { face })!;
    return (course: number) =>
      drawing.boxes
        .filter((b) => Math.floor(b.y / GAUGE) === course && b.height === 65)
        .map(({ x, width, style }) => {
          const from = face === 'front' ? x : LENGTH - x - width;
          return { from, to: from + width, style };
        })
        .sort((a, b) => a.from - b.from);
  };
  return { laid, front: faceIn('front'), back: faceIn('back') };
}

describe('a half-brick wall that another runs through', () => {
  // 4490 mm are 20 bricks; 2587.5 is 11 1/2 bricks, a joint of 10 mm after the half that the courses with room have there.
  const { front, back } = facesOf('left tee w 2587.5 mm bonded');

  test.each([0, 2, 10])(
    'course %i: a half bat, the end of its stretcher, and the rest of the wall',
    (c) => {
      for (const face of [front, back]) {
        const near = face(c).filter((b) => b.to > 2400 && b.from < 2900);
        expect(near).toEqual([
          { from: 2250, to: 2465, style: 'stretcher' },
          { from: 2475, to: 2577.5, style: 'half' },
          { from: 2587.5, to: 2690, style: 'header' },
          { from: 2700, to: 2915, style: 'stretcher' },
        ]);
      }
    },
  );

  // A perpend at 2582.5 would stand over that beside the wall that runs through: bats in the place of two stretchers lap it.
  test('between them the wall goes on, in bats that lap the joints on either side of it', () => {
    const near = front(1).filter((b) => b.to > 2400 && b.from < 2800);
    expect(near).toEqual([
      { from: 2362.5, to: 2521.25, style: 'three-quarter' },
      { from: 2531.25, to: 2633.75, style: 'half' },
      { from: 2643.75, to: 2802.5, style: 'three-quarter' },
    ]);
  });
});

describe.each(['left', 'right'])('by its %s end', (end) => {
  test.each([
    ['half a brick', '', 2587.5],
    ['a brick, English', '  bond english\n  thick 1 brick\n', 2137.5],
    ['a brick, Flemish', '  bond flemish\n  thick 1 brick\n', 2137.5],
  ])('%s: no two bricks of a face lie in one another, and none is left out', (_, thick, at) => {
    const { front, back, laid } = facesOf(`${end} tee w ${at} mm bonded`, thick);
    for (const face of [front, back])
      for (let course = 0; course < 12; course++) {
        const bricks = face(course);
        const joints = bricks.slice(1).map((b, i) => b.from - bricks[i]!.to);
        expect([bricks[0]!.from, bricks.at(-1)!.to]).toEqual([0, LENGTH]);
        for (const joint of joints) expect(joint).toBeCloseTo(10, 6);
      }
    // What lies in the front on plan is what is drawn in it.
    for (let course = 0; course < 12; course++) {
      const own = placeCourse(laid, course).filter((p) => p.y < 1);
      const drawn = front(course).map((b) => b.from);
      for (const { x } of own) expect(drawn.some((from) => Math.abs(from - x) < 0.01)).toBe(true);
    }
  });
});

test('tied, it leaves the face as it is', () => {
  const tied = facesOf('left tee w 2587.5 mm tied');
  expect(tied.front(0).every((b) => b.style === 'stretcher')).toBe(true);
});
