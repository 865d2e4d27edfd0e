/** New work on old lime: the caution offers the mixes without cement that the firm has prices for. */
import { describe, expect, test } from 'vitest';
import { afterWay, findingsIn, findingsOf } from './tells';

const job = (lines: string) => `perpend 1
use "firm.perp"
repair r
  brick   red
  cut-out 10 bricks
${lines}`;
const told = (text: string) => findingsOf('caution-old-lime', text);

describe('caution-old-lime', () => {
  // NPS Preservation Brief 2: mortar softer than the brick; The Structural Engineer, 2016: only lime in older masonry.
  test('offers lime mortars, and each clears it', () => {
    const text = job('  mix general\n  stands-in lime\n');
    const [found] = told(text);
    expect(found!.ways.map((way) => way.title)).toEqual([
      'Lay it in Lime mortar 1 : 3',
      'Lay it in Lime mortar 1 : 2, for copings and exposed work',
    ]);
    for (const way of found!.ways) {
      const after = afterWay(text, way.edits);
      expect(told(after)).toEqual([]);
      expect(findingsIn(after).filter((f) => f.severity === 'error')).toEqual([]);
    }
  });

  test('where the mix is the library’s own, under the heading', () => {
    const text = job('  stands-in lime\n');
    const [way] = told(text)[0]!.ways;
    const after = afterWay(text, way!.edits);
    expect(after).toContain('repair r\n  mix lime-soft\n');
    expect(told(after)).toEqual([]);
  });

  test('offers none that no price is known for, nor where no cement is', () => {
    const unpriced = job('  mix general\n  stands-in lime\n').replace(
      'use "firm.perp"',
      'use uk\nbrick red\n  size 215 x 102.5 x 65 mm',
    );
    expect(told(unpriced)[0]!.ways).toEqual([]);
    expect(told(job('  mix lime-soft\n  stands-in lime\n'))).toEqual([]);
  });

  test('other cautions have no way out by a mix', () => {
    const others = findingsIn(job('  mix general\n')).filter((f) =>
      /caution-(cement|bags)/.test(f.code),
    );
    expect(others.length).toBeGreaterThan(0);
    for (const each of others) expect(each.ways).toEqual([]);
  });
});
