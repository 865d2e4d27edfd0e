/** What a client is promised of a repair. */
import { describe, expect, test } from 'vitest';
import { GATE, NORTH, OWN, repaired } from './repairing';

const said = (lines: string, before = '') =>
  repaired(lines, before).works.find((work) => work.name === 'r')!.facts.says;

describe('a repair says', () => {
  test.each([
    [
      'rebuild 1.35 m x 9 courses\nsalvage 60%',
      'Take down a part of the wall 1.35 m long and 9 courses high, and build it again, reusing the bricks that clean up.',
    ],
    ['rebuild 9 courses', 'Take down a part of the wall 9 courses high, and build it again.'],
    ['rebuild 120 bricks', 'Take down 120 bricks of the wall, and build it again.'],
    ['cut-out 1 brick', 'Cut out and replace 1 damaged brick.'],
    [
      'repoint 30..40 m raked 25 mm',
      'Rake out perished joints 25 mm deep and repoint them, 30 m to 40 m of them.',
    ],
    ['rebed 2.4 m', 'Lift 2.4 m of the coping, clean it and bed it again.'],
    ['rebed 1 piece', 'Lift a length of the coping, clean it and bed it again.'],
    ['rebed 3 pieces', 'Lift 3 pieces of the coping, clean them and bed them again.'],
    ['replace 2 pieces slab', 'Take off the old pieces and bed 2 new: Slab.'],
    [
      'tooth-in 9 courses',
      'Cut indents in the standing work for every second of 9 courses, and tooth the new work into them.',
    ],
    [
      'stitch 1.8 m',
      'Stitch 1.8 m of crack with bars 1 m long, set in raked bed joints 450 mm apart.',
    ],
    ['make-good 0.5 m2 "Render to the reveal."', 'Make good 0.5 m²: Render to the reveal.'],
  ])('%s', (lines, sentence) => {
    expect(said(`${OWN}${lines}`, NORTH)).toContain(sentence);
  });

  test.each([
    ['rebuild 14 courses', 'Take down the topmost 14 courses of the pier, and build it again.'],
    ['rebuild 0.6 m', 'Take down the topmost 0.6 m of the pier, and build it again.'],
    ['rebed 1 piece', 'Lift the cap, clean it and bed it again.'],
  ])('of a pier: %s', (lines, sentence) => {
    expect(said(`in gate\n${lines}`, GATE)).toContain(sentence);
  });
});
