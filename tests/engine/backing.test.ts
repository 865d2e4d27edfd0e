/** A wall of two skins, by hand: ten blocks of 440 mm and their joints are 4490 mm, three courses of brick one of block. */
import { describe, expect, test } from 'vitest';
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
