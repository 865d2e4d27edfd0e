import { describe, expect, test } from 'vitest';
import { findingsOf } from './tells';

const gates = (count: number) =>
  `perpend 1\nuse "firm.perp"\nwall north\n  brick red\n  stands held\n  length 9000 m\n  height 4 courses\n${Array.from({ length: count }, (_, i) => `  opening g${i}\n    from left ${i * 2250 + 215} mm\n    width 910 mm\n`).join('')}`;

const told = (count: number) => findingsOf('too-many', gates(count));

describe('too-many', () => {
  test('more than a thousand openings in a wall are refused, whatever the file', () => {
    const [found] = told(1001);
    expect(found?.message).toContain('No wall has more than 1000 openings');
    expect(found?.severity).toBe('error');
  });

  test('a thousand are not', () => expect(told(1000)).toEqual([]));
});
