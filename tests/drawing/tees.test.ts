/** Tees and corners on plan: both walls' pieces, each where it lies, none in another. */
import { describe, expect, test } from 'vitest';
import { behindOf, quoinsOf, teesOf } from '../../server/documents/work-meets';
import { wallPlans } from '../../server/engine/drawing';
import { jobOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import { worstOverlap } from '../setting-out/on-plan';

const wall = (name: string, length: number, more: string) =>
  `wall ${name}\n  brick red\n  stands held\n  length ${length} mm\n  height 12 courses\n${more}`;

function plansOf(text: string, name: string) {
  const { works } = jobOf(`perpend 1\nuse "firm.perp"\n${text}`, { 'firm.perp': FIRM });
  const work = works.find((w) => w.name === name)!;
  const out = work.facts.laid ?? work.facts.settingOut!;
  return wallPlans(out, {
    title: name,
    behind: behindOf(work, out),
    quoins: quoinsOf(work, works),
    tees: teesOf(work, works, 'millimetres'),
  });
}

const boxesIn = (set: ReturnType<typeof plansOf>, title: string) =>
  set.groups
    .filter((group) => group.title === title)
    .map(({ drawings }) =>
      drawings[0]!.boxes.map(({ x, y, width, height }) => {
        return { x, y, right: x + width, top: y + height };
      }),
    );

describe('a tee on plan', () => {
  const tee = (how: string, end = 'left') =>
    `${wall('long', 4490, '')}${wall('inner', 2250, `  ${end} tee long 1181.25 mm${how}\n`)}`;

  test.each(['left', 'right'])('bonded by its %s end, is there in both walls’ plans', (end) => {
    const own = boxesIn(plansOf(tee(' bonded', end), 'inner'), 'Tee into long');
    expect(own).toHaveLength(2);
    expect(boxesIn(plansOf(tee(' bonded', end), 'long'), 'inner runs into it')).toEqual(own);
  });

  test('runs through to the front in one of two courses, and stops at the back in the other', () => {
    const courses = boxesIn(plansOf(tee(' bonded'), 'inner'), 'Tee into long');
    for (const boxes of courses) expect(worstOverlap(boxes)).toBeLessThan(1e-6);
    // Between 1181.25 and 1283.75 mm along; as deep as half a brick, and a joint behind it.
    const across = courses.map((boxes) =>
      boxes.filter((b) => Math.abs(b.x - 1181.25) < 0.01 && Math.abs(b.right - 1283.75) < 0.01),
    );
    const lowest = across.map((boxes) => Math.min(...boxes.map((b) => b.y)));
    expect(lowest.sort((a, b) => a - b)).toEqual([0, 112.5]);
  });

  test('tied, stands a joint before the face in both courses', () => {
    const courses = boxesIn(plansOf(tee(''), 'inner'), 'Tee into long');
    const lowest = courses.map((boxes) =>
      Math.min(...boxes.filter((b) => b.top > 110).map((b) => b.y)),
    );
    expect(lowest).toEqual([112.5, 112.5]);
  });

  test('of a wall with a backing, stands a joint behind that, bonded or not, and the face is whole', () => {
    const backed = (how: string) =>
      tee(how).replace('12 courses\n', '12 courses\n  backing block-100 cavity 75 mm\n');
    const courses = [' bonded', ''].map((how) =>
      boxesIn(plansOf(backed(how), 'long'), 'inner runs into it'),
    );
    expect(courses[0]).toEqual(courses[1]);
    for (const boxes of courses[0]!) {
      expect(worstOverlap(boxes)).toBeLessThan(1e-6);
      // 102.5 of face, 75 of cavity, 100 of block.
      expect(Math.min(...boxes.filter((b) => b.top > 280).map((b) => b.y))).toBe(287.5);
      const face = boxes.filter((b) => b.y < 1).sort((a, b) => a.x - b.x);
      for (const [i, b] of face.slice(1).entries()) expect(b.x - face[i]!.right).toBeCloseTo(10, 6);
    }
  });

  test('has no plain end drawn where it meets the other wall', () => {
    const titles = plansOf(tee(''), 'inner').groups.map((group) => group.title);
    expect(titles).not.toContain('Left end');
    expect(titles).toContain('Right end');
  });
});

test.each(['', ' inside'])(
  'a corner of two skins%s shows all four of them, and none in another',
  (side) => {
    const backing = '  backing block-100 cavity 75 mm\n';
    const text = `${wall('a', 4490, `  right quoin b${side}\n${backing}`)}${wall('b', 3815, `  left quoin a${side}\n${backing}`)}`;
    for (const name of ['a', 'b']) {
      const set = plansOf(text, name);
      const courses = boxesIn(set, `Quoin with ${name === 'a' ? 'b' : 'a'}`);
      expect(courses).toHaveLength(2);
      for (const boxes of courses) expect(worstOverlap(boxes)).toBeLessThan(1e-6);
      const drawing = set.groups[0]!.drawings[0]!;
      const turned = drawing.boxes.filter((b) => b.style === 'block' || b.style === 'cut');
      const ways = new Set(turned.map((b) => b.height > b.width));
      expect(ways.size).toBe(2);
      for (const b of drawing.boxes) expect(b.x).toBeGreaterThanOrEqual(drawing.extent.left - 0.01);
    }
  },
);
