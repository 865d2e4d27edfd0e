/** Lines of a head that do nothing, or are still to be measured. */
import { describe, test } from 'vitest';
import { tells } from '../tells';
import { windowWith } from './window';

describe('line-idle', () => {
  test('is told of a lintel under an arch, a bearing and a centre of nothing', () => {
    tells(
      windowWith(`    head     segmental rise 115 mm
    lintel   100 x 65 mm slab
    ^^^^^^^^^^^^^^^^^^^^^^^^^ line-idle: the lintel is left out
    bearing  100 mm
    ^^^^^^^^^^^^^^^ line-idle: no lintel here
`),
    );
    tells(
      windowWith(`    bearing  150 mm
    lintel   100 x 65 mm slab
    centre   slab
    ^^^^^^^^^^^^^ line-idle: no arch here
`),
    );
  });
});

describe('incomplete', () => {
  test('is told of a rise and a bearing that are still to be measured', () => {
    tells(
      windowWith(`    head    segmental rise ? rings 2
                           ^ incomplete: the rise of the opening window is still to be measured
`),
    );
    tells(
      windowWith(`    lintel   100 x 65 mm slab
    bearing  ?
             ^ incomplete: the bearing of the opening window is still to be measured
`),
    );
  });
});
