/** What a repair says too little of, or for nothing. */
import { describe, test } from 'vitest';
import { read } from '../../tree';
import { FIRM, silent, tells } from '../tells';
import { repairWith } from './repair';

describe('repair-nothing', () => {
  test('is told of a repair that does not say what is done', () => {
    tells(`
        perpend 1
        use "firm.perp"
        repair frost
               ^^^^^ repair-nothing: It takes one of rebuild
          brick  red
      `);
  });

  test('is not told of one that does, nor of one without a line yet', () => {
    silent(repairWith('make-good 1 m2 "Render"'), 'repair-nothing');
    silent('perpend 1\nuse "firm.perp"\nrepair frost\n', 'repair-nothing');
  });
});

describe('rake-shallow', () => {
  test('is told of joints raked less than twice their width', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        repair north
          brick    red
          repoint  2 m2 raked 12 mm
                              ^^^^^ rake-shallow: Joints 10 mm wide are raked 2 times as deep, 20 mm
      `,
      { ways: ['Rake 20 mm'] },
    );
  });

  test('is not told of deep enough, nor of a depth that is left to the defaults', () => {
    silent(
      repairWith('repoint 2 m2 raked 20 mm\nrepoint 35 m raked 25 mm\nrepoint 1 m2'),
      'rake-shallow',
    );
  });
});

describe('stitch-bars', () => {
  /** The British library, but for that one line. */
  const BARE = read('server/library/uk.perp').replace(/^ {2}crack-stitch .*\n/m, '');
  const OWN = FIRM.replace('use uk', 'use "bare.perp"');
  const NO_BARS = 'perpend 1\nuse "own.perp"\nuse world\nrepair frost\n  brick red\n  stitch 2 m\n';

  test('is told where no defaults say with what a crack is stitched', () => {
    const marked = NO_BARS.replace(
      '  stitch 2 m\n',
      '  stitch 2 m\n  ^^^^^^^^^^ stitch-bars: No defaults give a crack-stitch\n',
    );
    tells(marked, { files: { 'bare.perp': BARE, 'own.perp': OWN } });
  });

  test('is not told where a library does', () => {
    silent(repairWith('stitch 2 m'), 'stitch-bars');
  });
});

describe('line-idle', () => {
  test('is told of halves where nothing comes down', () => {
    tells(`
        perpend 1
        use "firm.perp"
        repair frost
          brick    red
          cut-out  3 bricks
          halves   3
          ^^^^^^^^^^ line-idle: Nothing comes down here, so no halves are kept
      `);
  });

  test('is not told of a brick that runs into indents', () => {
    silent(repairWith('tooth-in 9 courses\nmatch red'), 'line-idle');
  });
});
