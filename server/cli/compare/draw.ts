/** The faces that changed, as they were and as they are, on sheets. */
import { phrase } from '../../../shared/phrase';
import { faceChanges } from '../../documents/compared';
import { sheetsToDxf } from '../../documents/dxf';
import { sheetsToSvg } from '../../documents/svg';
import type { Comparison } from '../../engine/compare';
import { FileTrouble, WrongUse } from '../exits';
import { deliver } from '../files/deliver';
import type { Io } from '../io';

/** @throws WrongUse for a piece of work that is in neither; FileTrouble where no face changed */
export function drawChanges(
  found: Comparison,
  block: string | undefined,
  out: string | undefined,
  io: Io,
): void {
  const names = found.pairs.flatMap(({ before, after }) => [before?.name, after?.name]);
  if (block !== undefined && !names.includes(block))
    throw new WrongUse(phrase`Neither has a piece of work called ${block}.`);
  const sheets = faceChanges(found, block).flatMap((face) => face.sheets());
  if (!sheets.length)
    throw new FileTrouble(phrase`There is nothing to draw: every piece lies where it lay.`);
  deliver(/\.dxf$/i.test(out ?? '') ? sheetsToDxf(sheets) : sheetsToSvg(sheets), out, io);
}
