/** The marks of a sheet as things of a DXF file, at full size: a millimetre of the work is one of the drawing. */
import type { Mark, Point, Sheet } from '../../engine/drawing';
import { LOOKS } from '../svg-looks';
import { hatchTags } from './hatches';
import { KEY_LAYER, layerAs, layerOf, TEXT_LAYER } from './layers';
import type { Handles, Tag } from './tags';
import { dxfText } from './words';

/** The block that all of the drawing is in, by its handle. */
const MODEL_SPACE = '20';

/** Letters are measured by their capitals here, and from the foot to the top of a line in SVG. */
const CAPITAL = 0.72;

/** From paper to the drawing's own plane, y up. */
interface Plane {
  readonly scale: number;
  at(x: number, y: number): Point;
}

/** `lower` puts the sheet that far down, mm of the drawing: one sheet under another. */
export function planeOf({ origin, scale }: Sheet, lower = 0): Plane {
  return {
    scale,
    at: (x, y) => ({ x: (x - origin.x) * scale, y: (origin.y - y) * scale - lower }),
  };
}

type Inked = Exclude<Mark, { kind: 'text' }>;

/** The tags that put a thing on a layer: in the key it looks as it would on its own. */
type On = readonly Tag[];

function on(mark: Inked): On {
  if (mark.kind === 'shape' || !mark.key) return [[8, layerOf(mark.ink)]];
  const { colour, weight, dashed } = layerAs(mark.ink);
  return [
    [8, KEY_LAYER],
    [6, dashed ? 'DASHED' : 'Continuous'],
    [370, weight],
    [420, colour],
  ];
}

/** What every entity begins with. */
function head(kind: string, layer: On, handles: Handles): Tag[] {
  return [[0, kind], [5, handles.next()], [330, MODEL_SPACE], [100, 'AcDbEntity'], ...layer];
}

function outline(points: readonly Point[], layer: On, handles: Handles): Tag[] {
  const corners = points.flatMap(({ x, y }): Tag[] => [
    [10, x],
    [20, y],
  ]);
  const closed: Tag[] = [
    [90, points.length],
    [70, 1],
    [43, 0],
  ];
  return [...head('LWPOLYLINE', layer, handles), [100, 'AcDbPolyline'], ...closed, ...corners];
}

/** Filled plain where `id` is left out, for a piece known by its tone alone. */
function hatch(points: readonly Point[], layer: On, scale: number, handles: Handles, id?: string) {
  const corners = points.flatMap(({ x, y }): Tag[] => [
    [10, x],
    [20, y],
  ]);
  const made = id === undefined ? { name: 'SOLID', lines: [] } : hatchTags(id, scale);
  const start: Tag[] = [
    [100, 'AcDbHatch'],
    [10, 0],
    [20, 0],
    [30, 0],
    [210, 0],
    [220, 0],
    [230, 1],
    [2, made.name],
    [70, id === undefined ? 1 : 0],
    [71, 0],
    [91, 1],
  ];
  const path: Tag[] = [[92, 3], [72, 0], [73, 1], [93, points.length], ...corners, [97, 0]];
  const end: Tag[] = [[75, 0], [76, id === undefined ? 1 : 0], ...made.lines, [98, 0]];
  return [...head('HATCH', layer, handles), ...start, ...path, ...end];
}

function filled(
  points: readonly Point[],
  mark: Extract<Mark, { ink: unknown }>,
  scale: number,
  handles: Handles,
) {
  const layer = on(mark);
  const { hatch: id, dark } = LOOKS[mark.ink];
  const inside = id || dark ? hatch(points, layer, scale, handles, id) : [];
  return [...inside, ...outline(points, layer, handles)];
}

type TextMark = Extract<Mark, { kind: 'text' }>;

const ALIGN = { start: 0, middle: 1, end: 2 } as const;

function words(mark: TextMark, { at, scale }: Plane, handles: Handles): Tag[] {
  const { x, y } = at(mark.x, mark.y);
  const second: Tag[] =
    mark.align === 'start'
      ? []
      : [
          [11, x],
          [21, y],
          [31, 0],
        ];
  return [
    ...head('TEXT', [[8, TEXT_LAYER]], handles),
    [100, 'AcDbText'],
    [10, x],
    [20, y],
    [30, 0],
    [40, mark.size * CAPITAL * scale],
    [1, dxfText(mark.text)],
    [50, mark.turned ? 90 : 0],
    [72, ALIGN[mark.align]],
    ...second,
    [100, 'AcDbText'],
  ];
}

function line(mark: Extract<Mark, { kind: 'line' }>, { at }: Plane, handles: Handles): Tag[] {
  const [from, to] = [at(mark.x1, mark.y1), at(mark.x2, mark.y2)];
  return [
    ...head('LINE', on(mark), handles),
    [100, 'AcDbLine'],
    [10, from.x],
    [20, from.y],
    [30, 0],
    [11, to.x],
    [21, to.y],
    [31, 0],
  ];
}

export function entityOf(mark: Mark, plane: Plane, handles: Handles): Tag[] {
  if (mark.kind === 'text') return words(mark, plane, handles);
  if (mark.kind === 'line') return line(mark, plane, handles);
  return filled(
    cornersOf(mark).map(({ x, y }) => plane.at(x, y)),
    mark,
    plane.scale,
    handles,
  );
}

/** Round a box or a shape, mm on paper. */
function cornersOf(mark: Exclude<Mark, { kind: 'text' | 'line' }>): readonly Point[] {
  if (mark.kind === 'shape') return mark.points;
  const { x, y, width, height } = mark;
  return [
    { x, y: y + height },
    { x: x + width, y: y + height },
    { x: x + width, y },
    { x, y },
  ];
}
