/** Mortar that comes ready, and mixes by the bag, bring up the cautions of what is in them. */
import { expect, test } from 'vitest';
import { findingsIn } from '../tells';

const codes = (mix: string) =>
  findingsIn(
    `perpend 1\nuse "firm.perp"\nmix own\n${mix}  joint 10 mm\nwall a\n  brick red\n  mix own\n  length 2240 mm\n  height 4 courses\n`,
  ).map((f) => f.code);

test('a dry mortar in bags', () => {
  expect(codes('  ready 25 kg bag makes 12.5 l at £6\n')).toContain('caution-cement');
});

test('a mix by the bag', () => {
  expect(codes('  batch 1 bag sand, 6 trowels cement\n')).toContain('caution-cement');
});
