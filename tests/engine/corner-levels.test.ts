/** A corner on ground that steps: its courses are those that are level there, whatever each wall counts them from. */
import { describe, expect, test } from 'vitest';
import { quoinsOf } from '../../server/documents/work-meets';
import { wallPlans } from '../../server/engine/drawing';
import { type SettingOut, tally } from '../../server/engine/setting-out';
import { courseOnGround, openArea, worstOverlap } from '../setting-out/on-plan';
import { jobOf } from './world';

const wall = (name: string, length: number, more: string) =>
  `wall ${name}\n  stands held\n  length ${length} mm\n  height 12 courses\n${more}`;

/** The second wall’s left end stands on its course `by`: it steps down from there. */
const corner = (by: number, bond: string) => {
  const lines = bond === 'stretcher' ? '' : `  thick 1 brick\n  bond ${bond}\n`;
  const ground = by ? `  ground steps at 1350 mm down ${by} courses\n` : '';
  return jobOf(
    `perpend 1\nuse uk\n${wall('a', 4490, `  right quoin b\n${lines}`)}${wall('b', 3365, `  left quoin a\n${ground}${lines}`)}`,
  );
};

const laidOf = (works: ReturnType<typeof corner>['works'], name: string): SettingOut => {
  const { facts } = works.find((w) => w.name === name)!;
  return facts.laid ?? facts.settingOut!;
};

describe.each([0, 1, 2, 3])('a wall that stands on its course %i at a corner', (by) => {
  test.each(['stretcher', 'english', 'flemish'])(
    'in %s bond nothing overlaps or is left open',
    (bond) => {
      const { works } = corner(by, bond);
      const [a, b] = [laidOf(works, 'a'), laidOf(works, 'b')];
      const thick = a.thickness;
      for (let course = 0; course < 12; course++) {
        const boxes = [
          ...courseOnGround([{ out: a, at: { x: 0, y: 0, way: 0 } }], course),
          ...courseOnGround([{ out: b, at: { x: 4490, y: 0, way: 1 } }], course + by),
        ];
        expect(worstOverlap(boxes)).toBeLessThan(1e-6);
        const open = { x: 4490 - thick - 300, y: 0, right: 4490, top: thick };
        expect(openArea(open, boxes, 10)).toBeLessThan(1e-3);
      }
    },
  );

  test('and a course higher or lower of one of them would lie in the other', () => {
    const { works } = corner(by, 'stretcher');
    const boxes = [
      ...courseOnGround([{ out: laidOf(works, 'a'), at: { x: 0, y: 0, way: 0 } }], 4),
      ...courseOnGround([{ out: laidOf(works, 'b'), at: { x: 4490, y: 0, way: 1 } }], 5 + by),
    ];
    const open = { x: 4490 - 102.5, y: 0, right: 4490, top: 102.5 };
    expect(worstOverlap(boxes) > 50 || openArea(open, boxes, 10) > 1000).toBe(true);
  });

  test('bonds, and is counted once', () => {
    const { works, findings } = corner(by, 'stretcher');
    expect(findings.map((f) => f.code)).not.toContain('quoin-unbonded');
    const gross = ['a', 'b'].reduce((sum, n) => sum + tally(laidOf(works, n)).grossVolume, 0);
    // Twelve courses at the corner; right of the step of the second wall so many more.
    const face = (4490 + 3365 - 102.5) * 900 + (3365 - 1350) * by * 75;
    // Half of a joint between the two, where a wall ends with it, is in one or the other.
    expect(gross / 102.5 / face).toBeCloseTo(1, 2);
  });

  test('is drawn in courses that are level', () => {
    const { works } = corner(by, 'stretcher');
    for (const name of ['a', 'b']) {
      const work = works.find((w) => w.name === name)!;
      const set = wallPlans(laidOf(works, name), { title: name, quoins: quoinsOf(work, works) });
      const quoins = set.groups.filter((g) => g.title.startsWith('Quoin'));
      expect(quoins).toHaveLength(2);
      for (const { drawings } of quoins) {
        const boxes = drawings[0]!.boxes.map(({ x, y, width, height }) => {
          return { x, y, right: x + width, top: y + height };
        });
        expect(worstOverlap(boxes)).toBeLessThan(1e-6);
        expect(boxes.length).toBeGreaterThan(4);
      }
    }
  });
});
