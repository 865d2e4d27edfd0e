/** What carries the courses over an opening. */
import { describe, expect, test } from 'vitest';
import { silent, tells } from '../tells';
import { windowWith } from './window';

describe('head-missing', () => {
  test('is told of an opening with courses over it and nothing that carries them', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  2240 mm
        height  14 courses
        opening window
        ^^^^^^^^^^^^^^ head-missing: what carries the 8 courses over the opening window
          from    left 665 mm
          width   910 mm
          sill    2 courses
          height  4 courses
    `);
    expect(found!.severity).toBe('information');
  });

  test('is not told where a line says it, or there is nothing to carry', () => {
    silent(windowWith('    lintel 100 x 65 mm slab\n'), 'head-missing');
    silent(windowWith('    head soldier\n'), 'head-missing');
    silent(windowWith('').replace('    height  4 courses\n', ''), 'head-missing');
  });
});

describe('head-unsupported', () => {
  test('is told of soldiers with nothing under them', () => {
    const [found] = tells(
      windowWith(`    head    soldier
    ^^^^^^^^^^^^^^^ head-unsupported: Soldiers carry nothing
`),
      { ways: ['Carry them on a steel angle'] },
    );
    expect(found!.severity).toBe('warning');
  });

  test('is not told over an angle or a lintel', () => {
    silent(windowWith('    head soldier\n    lintel angle slab\n'), 'head-unsupported');
    silent(windowWith('    head soldier\n    lintel 100 x 65 mm slab\n'), 'head-unsupported');
  });
});

describe('head-span', () => {
  test('is told of an opening wider than anyone takes without advice', () => {
    const [found] = tells(`
      perpend 1
      use "firm.perp"
      wall north
        brick   red
        stands  held
        length  3252.5 mm
        height  9 courses
        opening bay
          from    left 665 mm
          width   1922.5 mm
          height  4 courses
          lintel  100 x 65 mm slab
          ^^^^^^^^^^^^^^^^^^^^^^^^ head-span: is 1922.5 mm wide. Over 1800 mm have what spans it
    `);
    expect(found!.message).toContain('structural engineer');
    expect(found!.severity).toBe('warning');
  });

  test('is not told up to there, nor where nothing is said to span it', () => {
    silent(windowWith('    lintel 100 x 65 mm slab\n'), 'head-span');
  });
});
