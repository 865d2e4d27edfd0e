/** A sheet of a paper as a preview shows it. */
import type { Picture } from '../../../shared/protocol/preview';
import type { Box, Sheet } from '../../engine/drawing';
import type { Asked } from './asked';
import { NOWHERE } from './lines';
import { Gathered, hundredths, Marks } from './picture';
import { addRows } from './rows';

const FRAME = 'f0';

/** On a paper a drawing is of the work that it stands under, all of it. */
const UNASKED: Asked = {
  pieces: () => () => NOWHERE,
  course: () => undefined,
  stroke: () => NOWHERE,
  shape: () => NOWHERE,
  label: () => NOWHERE,
  chain: () => NOWHERE,
  rod: () => NOWHERE,
};

export function pictureOf(sheet: Sheet): Picture {
  const { scale, origin, width, height } = sheet;
  const gathered = new Gathered();
  const at = { x: hundredths(origin.x), y: hundredths(origin.y) };
  gathered.add(FRAME, { kind: 'frame', ...at, scale, title: '' });
  addRows(boxesOf(sheet), FRAME, UNASKED, gathered);
  const marks = new Marks('work');
  for (const mark of sheet.marks) {
    if (mark.kind === 'line') marks.line(mark.ink, NOWHERE, [mark.x1, mark.y1, mark.x2, mark.y2]);
    else if (mark.kind === 'text') marks.text(mark, NOWHERE);
    else if (mark.kind === 'shape')
      marks.shape(
        mark.ink,
        NOWHERE,
        mark.points.flatMap(({ x, y }) => [x, y]),
      );
  }
  gathered.add('marks', marks.part);
  return { width, height, order: gathered.order, parts: gathered.parts };
}

/** Boxes of the sheet as they lie in the work. */
function boxesOf({ marks, scale, origin }: Sheet): Box[] {
  return marks.flatMap((mark): Box[] => {
    if (mark.kind !== 'box') return [];
    const { ink: style, x, y, width, height } = mark;
    return [
      {
        style,
        x: (x - origin.x) * scale,
        y: (origin.y - y - height) * scale,
        width: width * scale,
        height: height * scale,
      },
    ];
  });
}
