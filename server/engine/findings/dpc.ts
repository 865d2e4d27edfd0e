/** A damp course that is not what its line says. */

import { phrase } from '../../../shared/phrase';
import type { Brick } from '../brickwork/goods';
import type { LineFacts } from '../resolve/env';
import type { UnitSize } from '../setting-out';
import type { Remark } from './remark';

/** Bricks of one size differ by less, mm (EN 771-1, T2 of a length: 4 mm). */
const SAME_SIZE = 4;

/** `courses` of the wall or pier it is in, whose brick is `unit`. */
export function dpcOff(line: LineFacts, brick: Brick, unit: UnitSize, courses: number): Remark[] {
  const remarks: Remark[] = [];
  const said = line.number('courses') ?? 0;
  if (said > courses) {
    const message = phrase`The damp course has more courses than the ${courses} there are; all of them are counted in its brick.`;
    remarks.push({ code: 'dpc-off', severity: 'warning', origin: line.at('courses'), message });
  }
  if (brick.size && differs(brick.size, unit)) {
    const message = phrase`${brick.title} is of another size than the brick above it. Its courses are counted as so many of that brick, and the height does not change: say how it really goes before it is bought.`;
    remarks.push({ code: 'dpc-off', severity: 'warning', origin: line.at('brick'), message });
  }
  return remarks;
}

/** Whether two bricks cannot lie in one wall course for course. */
export function differs(a: UnitSize, b: UnitSize): boolean {
  return [a.length - b.length, a.width - b.width, a.height - b.height].some(
    (by) => Math.abs(by) > SAME_SIZE,
  );
}
