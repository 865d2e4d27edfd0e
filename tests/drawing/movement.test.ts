/** A joint that lets a wall move is marked in its face, keyed and dimensioned: it is no perpend. */
import { describe, expect, test } from 'vitest';
import { elevation } from '../../server/engine/drawing';
import { setOut } from '../../server/engine/setting-out';
import { overAll, wall } from '../setting-out/fixtures';

const joint = { from: overAll(20), width: 10 };
const moving = setOut(wall({ length: overAll(40), movement: [joint] }));

describe('a movement joint', () => {
  test('is a line up its middle, from the ground to the top, on both faces', () => {
    for (const face of ['front', 'back'] as const) {
      const drawn = elevation(moving, { title: 'w', face }).strokes.filter(
        ({ style }) => style === 'movement',
      );
      const x = face === 'front' ? joint.from + 5 : overAll(40) - joint.from - 5;
      expect(drawn).toHaveLength(1);
      expect([drawn[0]!.from.x, drawn[0]!.to.x]).toEqual([x, x]);
      expect([drawn[0]!.from.y, drawn[0]!.to.y].sort((a, b) => a - b)).toEqual([0, 750]);
    }
  });

  test('is in the key and in the running dimensions; a wall without one has neither', () => {
    const drawing = elevation(moving, { title: 'w' });
    expect(drawing.keys.map(({ text }) => text)).toContain('movement joint');
    const running = drawing.chains.find((c) => c.side === 'below' && c.form === 'running')!;
    expect(running.stops).toEqual([0, joint.from, joint.from + 10, overAll(40)]);
    const plain = elevation(setOut(wall()), { title: 'w' });
    expect(plain.keys.map(({ text }) => text)).not.toContain('movement joint');
  });
});
