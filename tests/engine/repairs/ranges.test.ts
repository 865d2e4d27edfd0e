/** What is not known yet of a repair: its amounts say by themselves how they hang on every range. */
import { describe, expect, test } from 'vitest';
import type { Work } from '../../../server/engine/brickwork/work';
import { allFollowable } from '../../../server/engine/ranges/again';
import type { Term } from '../../../server/engine/working/term';
import { figure } from '../../examples/engine';
import { allTerms, evaluated } from '../evaluate';
import { GATE, OWN, repaired, THIN } from './repairing';

const RANGED: readonly (readonly [string, string])[] = [
  [`${OWN}rebuild 100..140 bricks\nrecope 1.2..1.5 m\nsalvage 60..75%`, ''],
  ['in gate\nrebuild 40..60 bricks\nsalvage 50..60%\nhalves 5..10%\nrebed 1..2 pieces', GATE],
  [`${THIN}cut-out 3..5 bricks\nrepoint 2..3 m2 raked 20 mm\nrepoint 30..40 m`, ''],
  [`${OWN}tooth-in 8..10 courses\nstitch 1.5..2 m\nmake-good 0.5..1 m2 "Render"`, ''],
  [`${OWN}rebed 2..3 m slab\nreplace 1..3 pieces slab`, ''],
];

/** What is counted by laying it is laid again for values of the range: nothing else says how its bricks hang on it. */
const LAID: readonly string[] = [
  `${OWN}rebuild 1.2..1.6 m x 7..9 courses\nsalvage 60..75%\nhalves 5..10%`,
  `${OWN}rebuild 1.35 m x 0.6..0.75 m\nsalvage 40..60 bricks\nhalves 4..8`,
];

/** A line of a file stands under every part of a working. */
function hasLine(term: Term): boolean {
  return [...allTerms(term)].some((part) => part.origin);
}

describe('ranges', () => {
  const wellSaid = ({ figures }: Work) => {
    for (const { term } of figures) {
      expect(evaluated(term).minus(term.value).abs().lessThan('1e-9')).toBe(true);
      expect(term.gaps).toEqual([]);
      expect([...allTerms(term)].filter((t) => !hasLine(t)).map((t) => t.label)).toEqual([]);
    }
  };

  test.each(RANGED)('%s', (lines, before) => {
    const work = repaired(lines, before).works.find(({ name }) => name === 'r')!;
    expect(allFollowable(work.needs)).toBe(true);
    expect(work.needs.opened).toBeUndefined();
    wellSaid(work);
  });

  test.each(LAID)('laid again: %s', (lines) => {
    const job = repaired(lines);
    const work = job.works.find(({ name }) => name === 'r')!;
    expect(work.needs.opened).toBe(true);
    wellSaid(work);
    const { low, high } = job.spread!;
    const least = lines.replace(/(\d[\d.]*)\.\.[\d.]+/g, '$1');
    const most = lines.replace(/[\d.]+?\.\.(\d)/g, '$1');
    expect(low.value.lessThan(high.value)).toBe(true);
    expect(low.value.toNumber()).toBeGreaterThanOrEqual(0.9 * figure(repaired(least), 'job.price'));
    expect(high.value.toNumber()).toBeLessThanOrEqual(1.1 * figure(repaired(most), 'job.price'));
  });

  test('the price lies between what both ends come to, and waste that is paid for moves it', () => {
    const tip = 'cost tip "Tipping" at £900 per t of waste\n';
    const at = (n: string) => repaired(`${OWN}rebuild ${n} bricks`, tip);
    const { low, high } = at('100..140').spread!;
    expect(low.value.toNumber()).toBeGreaterThanOrEqual(figure(at('100'), 'job.price'));
    expect(high.value.toNumber()).toBeLessThanOrEqual(figure(at('140'), 'job.price'));
    expect(high.value.toNumber()).toBeGreaterThan(low.value.toNumber() + 100);
  });
});
