/** A wall of two skins, by hand: ten blocks of 440 mm and their joints are 4490 mm, three courses of brick one of block. */
import { describe, expect, test } from 'vitest';
import { behindOf } from '../../server/documents/work-meets';
import { wallPlans } from '../../server/engine/drawing';
import { placeCourse, tally } from '../../server/engine/setting-out';
import { FIRM } from '../findings/tells';
import { jobOf } from './world';

const job = (more = '', backing = 'block-100 cavity 75 mm') =>
  jobOf(
    `perpend 1\nuse "firm.perp"\nwall shed\n  brick red\n  stands held\n  length 4490 mm\n  height 18 courses\n  backing ${backing}\n${more}`,
    { 'firm.perp': FIRM },
  );

const workOf = (made: ReturnType<typeof job>) => made.works[0]!;
const figure = (made: ReturnType<typeof job>, key: string) =>
  workOf(made)
    .figures.find((f) => f.key === key)!
    .term.value.toNumber();

describe('a backing of blocks', () => {
  test('is laid in its own gauge and half lap: six courses of ten', () => {
    expect(figure(job(), 'backing')).toBe(60);
  });

  test('is tied every 900 by 450 mm (NHBC Standards 2020, 6.1.18 table 10)', () => {
    expect((4490 * 1350) / (900 * 450)).toBeCloseTo(14.967, 3);
    expect(figure(job(), 'ties')).toBe(15);
  });

  test('and every 300 mm up both reveals of an opening', () => {
    const door = '  opening door\n    from left 1350 mm\n    width 910 mm\n';
    const made = job(door);
    // Over the face (4490 - 910) x 1350, and 1350 / 300 = 4.5, so 5 a reveal.
    expect(Math.ceil(((4490 - 910) * 1350) / (900 * 450))).toBe(12);
    expect(figure(made, 'ties')).toBe(12 + 10);
  });

  test('takes its own mortar: joints and thickness of the blocks', () => {
    const litres = (of: ReturnType<typeof job>) => figure(of, 'mortar');
    const bare = jobOf(
      'perpend 1\nuse "firm.perp"\nwall shed\n  brick red\n  stands held\n  length 4490 mm\n  height 18 courses\n',
      { 'firm.perp': FIRM },
    );
    const blocks = 60 * 440 * 100 * 215;
    // A half block is 215 mm, so a course of nine and two halves has as much block and one joint more.
    const gross = 4490 * 1350 * 100;
    const halvesLost = 3 * (440 - 2 * 215) * 100 * 215;
    const behind = (gross - (blocks - halvesLost)) / 1e6;
    expect(litres(job()) - litres(bare)).toBeCloseTo(behind, 6);
  });

  test('is bought, timed by the area, said to the client, and its skins are kept for drawings', () => {
    const work = workOf(job());
    expect(work.needs.bricks.map((b) => b.brick)).toEqual(['red', 'block-100']);
    expect(work.needs.pieces.map((p) => p.material)).toEqual(['wall-tie']);
    const hours = work.needs.tasks.find((t) => t.task === 'blockwork')!.hours.value.toNumber();
    expect(hours).toBeCloseTo((4.49 * 1.35) / 1.2, 6);
    expect(work.facts.says.at(-1)).toBe(
      'Build a backing of Dense block, 100 mm behind it, tied to it across a cavity of 75 mm.',
    );
    expect(work.facts.backing!.behind).toBe(75);
    expect(work.facts.backing!.settingOut.thickness).toBe(100);
  });

  test('of a block that no file gives is a gap, and the rest stands', () => {
    const made = job('', 'nothing-such');
    expect(made.findings.some((f) => f.code === 'name-unknown')).toBe(true);
    expect(figure(made, 'courses')).toBe(18);
  });
});

describe('ties in every library', () => {
  const ties = (use: string, brick: string, lines: string) => {
    const made = jobOf(
      `perpend 1\nuse ${use}\nwall shed\n  brick ${brick}\n  stands held\n${lines}`,
    );
    const { needs } = workOf(made);
    const told = made.findings.filter((f) => f.code === 'name-unknown' || f.code === 'value-wrong');
    expect(told).toEqual([]);
    return needs.pieces.map((p) => [p.material, p.count.value.toNumber()]);
  };

  test('of the United States: 36 by 18 in, 4 1/2 ft2 to a tie (BIA Technical Note 44B, from memory)', () => {
    expect((36 * 18) / 144).toBe(4.5);
    // 16 ft less a joint of 3/8 in, by 12 courses of three to 8 in: 191 5/8 x 32 in are 9.46 rectangles.
    expect((191.625 * 32) / (36 * 18)).toBeCloseTo(9.463, 3);
    const lines = '  length 191 5/8 in\n  height 12 courses\n  backing modular cavity 2 in\n';
    expect(ties('us', 'modular', lines)).toEqual([['wall-tie', 10]]);
    // And up both reveals of a door every 36 in: 32 in are one.
    const door = '  opening door\n    from left 63 5/8 in\n    width 32 3/8 in\n';
    const face = ((191.625 - 32.375) * 32) / (36 * 18);
    expect(ties('us', 'modular', lines + door)).toEqual([['wall-tie', Math.ceil(face) + 2]]);
  });

  test('of Germany: 7 to the square metre, 500 mm apart in height (DIN EN 1996-2/NA, from memory)', () => {
    expect(1e6 / (285 * 500)).toBeCloseTo(7.018, 3);
    // 4.99 m by 16 courses of 83.3 mm (twelve to the metre): 1.333 m.
    const face = (4990 * 16 * (1000 / 12)) / (285 * 500);
    expect(face).toBeCloseTo(46.69, 2);
    const lines = '  length 4990 mm\n  height 16 courses\n  backing nf cavity 60 mm\n';
    expect(ties('de', 'nf', lines)).toEqual([['luftschichtanker', 47]]);
  });
});

describe('a movement joint through both skins', () => {
  // At 2240 mm are ten bricks and five blocks of the 20 and 10 of the wall: 10 x 225 - 10 and 5 x 450 - 10.
  const parted = (more = '') => job(`  movement-joint left 2240 mm\n${more}`);
  const skins = (made: ReturnType<typeof job>) => {
    const { settingOut, backing } = workOf(made).facts;
    return [settingOut!, backing!.settingOut];
  };

  test('stands at one place in both, and each is laid up to it on either side', () => {
    for (const out of skins(parted()))
      for (const { segments } of out.bands)
        expect(segments.map(({ from, to }) => [from, to])).toEqual([
          [0, 2240],
          [2250, 4490],
        ]);
  });

  test('no block lies across it, in any course', () => {
    const [, behind] = skins(parted());
    for (let course = 0; course < behind!.spec.courses; course++) {
      const pieces = placeCourse(behind!, course);
      expect(pieces.filter((p) => p.x < 2250 - 0.01 && p.x + p.along > 2240 + 0.01)).toEqual([]);
    }
  });

  /*
   * By hand. Each side is five blocks long: 5 x 450 - 10 = 2240 mm. Courses of five blocks, and courses of a half, four and a half:
   * in the whole wall such a course has two halves, here four. 3 x 10 + 3 x 8 blocks and 3 x 4 halves; two halves of 215 mm are sawn from a
   * block of 440 mm only if the cut takes no more than 10 mm: 12 halves are six blocks, and all are 30 + 24 + 6 = 60.
   */
  test('its blocks by hand: as many as before, with twice the halves', () => {
    const [, behind] = skins(parted());
    expect(tally(behind!)).toMatchObject({ wholes: 54, halves: 12 });
    expect(figure(parted(), 'backing')).toBe(60);
  });

  test('its ties by hand: over the face, and every 300 mm up both its edges', () => {
    // (4490 - 10) x 1350 / (900 x 450) = 14.93, so 15; 1350 / 300 = 4.5, so 5 up each of two edges.
    expect(figure(parted(), 'ties')).toBe(15 + 2 * 5);
  });

  test('takes filler and sliding ties in both skins', () => {
    const needs = (made: ReturnType<typeof job>, material: string) =>
      workOf(made)
        .needs.pieces.filter((p) => p.material === material)
        .map((p) => p.count.value.toNumber());
    // In the face 18 courses, a tie on every fourth: at 4, 8, 12 and 16. In six courses of block one on each but the top.
    expect(needs(parted(), 'movement-tie')).toEqual([4, 5]);
    const bare = jobOf(
      'perpend 1\nuse "firm.perp"\nwall shed\n  brick red\n  stands held\n  length 4490 mm\n  height 18 courses\n  movement-joint left 2240 mm\n',
      { 'firm.perp': FIRM },
    );
    const [one] = needs(bare, 'joint-filler');
    const [both] = needs(parted(), 'joint-filler');
    // Strips of 1 m: 1350 mm of joint are two of them, twice that three.
    expect([one, both]).toEqual([2, 3]);
    expect(workOf(parted()).facts.says.join(' ')).toContain('wide through both its skins');
  });

  test('goes with a corner: the skin behind is parted at the same place from the wall’s own end', () => {
    const text = `perpend 1\nuse "firm.perp"\nwall a\n  brick red\n  stands held\n  length 4490 mm\n  height 18 courses\n  backing block-100 cavity 75 mm\n  movement-joint left 2240 mm\n  right quoin b\nwall b\n  brick red\n  stands held\n  length 4490 mm\n  height 18 courses\n  backing block-100 cavity 75 mm\n  left quoin a\n`;
    const made = jobOf(text, { 'firm.perp': FIRM });
    const behind = workOf(made).facts.backing!.settingOut;
    for (const { segments } of behind.bands) {
      expect(segments[0]!.to).toBeCloseTo(2240, 6);
      expect(segments[1]!.from).toBeCloseTo(2250, 6);
    }
  });

  test('is drawn on plan, both skins parted in both courses', () => {
    const work = workOf(parted());
    const out = work.facts.settingOut!;
    const { groups } = wallPlans(out, { title: 'shed', behind: behindOf(work, out) });
    const group = groups.find((g) => g.title === 'Movement joint')!;
    expect(group.drawings).toHaveLength(2);
    for (const { boxes } of group.drawings) {
      expect(boxes.some((b) => b.style === 'block')).toBe(true);
      expect(boxes.filter((b) => b.x < 2249 && b.x + b.width > 2241)).toEqual([]);
    }
  });
});
