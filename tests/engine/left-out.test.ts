/** What is left out of a price, with a finding that says so, leaves the price incomplete; the way out makes it whole. */
import { describe, expect, test } from 'vitest';
import { FIRM } from '../findings/tells';
import { jobOf } from './world';

const job = (text: string) => jobOf(`perpend 1\nuse "firm.perp"\n${text}`, { 'firm.perp': FIRM });
const wall = (lines: string) =>
  job(`wall w\n  brick red\n  stands held\n  length 4490 mm\n  height 12 courses\n${lines}`);
const pier = (lines: string) => job(`pier k\n  brick red\n  height 20 courses\n${lines}`);

const gapsOf = ({ price }: ReturnType<typeof job>) => price.total.gaps.map((gap) => gap.what);
const codes = (of: ReturnType<typeof job>) => of.findings.map((f) => f.code);

describe('a price is not complete', () => {
  test('without the bricks of a plinth that is no number of half bricks', () => {
    const of = wall('  plinth 3 courses project 30 mm both\n');
    expect(gapsOf(of)).toEqual(['the bricks of the plinth of w are not counted']);
    // Its own finding says it: there is no second one at the same line.
    expect(codes(of)).toContain('plinth-off');
    expect(codes(of)).not.toContain('incomplete');
    expect(gapsOf(wall('  plinth 3 courses project 1/4 brick both\n'))).toEqual([]);
  });

  test('where a top or the ground falls and no step is reckoned', () => {
    const of = wall('  top falls 70 m to right\n');
    expect(gapsOf(of)).toEqual(['the steps in which the top of w falls are not known']);
    const [found] = of.findings.filter((f) => f.code === 'falls');
    expect(found!.severity).toBe('warning');
    expect(found!.message).toContain('the price is not complete');
    expect(gapsOf(wall('  top falls 150 mm to right\n'))).toEqual([]);
    // Nothing falls by less than half a course: nothing is left out.
    expect(gapsOf(wall('  top falls 20 mm to right\n'))).toEqual([]);
  });

  test.each(['concrete', 'hollow', 'bats'])('where a core of %s is too large to reckon', (fill) => {
    const of = pier(`  size 3 x 3 bricks\n  core ${fill}\n`);
    expect(gapsOf(of)).toEqual(['the core of the pier k is not reckoned']);
    const messages = of.findings.map((f) => f.message);
    expect(messages.some((m) => m.includes('by area, as if it had no core'))).toBe(true);
    const [found] = of.findings.filter((f) => f.code === 'core-idle');
    expect(found!.message).toContain('up to 2.5 x 2.5 bricks');
    expect(found!.ways).toHaveLength(1);
    expect(gapsOf(pier(`  size 2.5 x 2.5 bricks\n  core ${fill}\n`))).toEqual([]);
  });

  test('without a core to leave out, by area, it is', () => {
    expect(gapsOf(pier('  size 3 x 3 bricks\n'))).toEqual([]);
    expect(gapsOf(pier('  size 3 x 3 bricks\n  core bricks\n'))).toEqual([]);
  });
});
