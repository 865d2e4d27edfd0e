/** A joint that lets a wall move is marked in its face, keyed and dimensioned: it is no perpend. */
import { describe, expect, test } from 'vitest';
import { elevation, wallPlans } from '../../server/engine/drawing';
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

  test('on plan is a line through the wall, in both courses, and in the key', () => {
    const { groups } = wallPlans(moving, { title: 'w' });
    const { drawings } = groups.find((group) => group.title === 'Movement joint')!;
    expect(drawings).toHaveLength(2);
    for (const { strokes, keys } of drawings) {
      const [line, ...more] = strokes.filter(({ style }) => style === 'movement');
      expect([line!.from.x, line!.to.x]).toEqual([joint.from + 5, joint.from + 5]);
      expect([line!.from.y, line!.to.y]).toEqual([0, 102.5]);
      expect(more).toEqual([]);
      expect(keys.map(({ text }) => text)).toContain('movement joint');
    }
    const end = groups.find((group) => group.title === 'Left end')!.drawings[0]!;
    expect(end.strokes.some(({ style }) => style === 'movement')).toBe(false);
  });
});
