/** A repair whose size is a range, among more ranges than a laid piece of work has points of its own for. */
import { expect, test } from 'vitest';
import { repaired } from '../repairs/repairing';

const LINES = `thick 1 brick
bond english
rebuild 1..3 m x 8 courses
gauge 4 courses 299..301 mm
salvage 60..65%
cut-out 3..4 bricks
repoint 2..2.2 m2 raked 20..21 mm
tooth-in 6..7 courses
stitch 1..1.1 m
make-good 0.5..0.6 m2 15..16 mm thick "Render"
recope 1..1.1 m
leans 10..20 mm
boundary 4..5 m
road 3..4 m`;

test('the biggest comes first, and what cannot move the price is left out', () => {
  const { ranges } = repaired(LINES).spread!;
  const words = ranges.map((r) => r.line.kind.key);
  expect(words[0]).toBe('rebuild');
  // Two metres of 89 to the metre: all others together come to a tenth of that.
  expect(ranges[0]!.share).toBeGreaterThan(0.85);
  for (const word of ['leans', 'boundary', 'road']) expect(words).not.toContain(word);
});
