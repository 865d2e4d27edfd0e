/** What stands round the drawing in a DXF file of the year 2000 (AC1015): its header, tables, blocks and objects. */
import type { Extent } from './extent';
import type { Layer } from './layers';
import type { Tag } from './tags';

/** Handles of the things that the file itself needs, all below those of entities. */
const H = {
  viewports: '1',
  lineTypes: '2',
  layers: '3',
  styles: '4',
  views: '5',
  planes: '6',
  programs: '7',
  dimensions: '8',
  blocks: '9',
  root: 'C',
  groups: 'D',
  layouts: 'E',
  model: '20',
  paper: '30',
  modelLayout: '2A',
  paperLayout: '3A',
} as const;

/** A part of a table's own numbers: `from` and what comes after it, up to 20 each. */
const nth = (from: number, i: number) => (from + i).toString(16).toUpperCase();

/** Dashes of the damp-proof course and the gaps between them, mm on paper. */
const DASH = { line: 2.2, gap: 0.9 };

export function header({ low, high }: Extent, seed: string): Tag[] {
  return [
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1015'],
    [9, '$DWGCODEPAGE'],
    [3, 'ANSI_1252'],
    [9, '$INSBASE'],
    ...point(10, 0, 0),
    [9, '$EXTMIN'],
    ...point(10, low.x, low.y),
    [9, '$EXTMAX'],
    ...point(10, high.x, high.y),
    [9, '$INSUNITS'],
    [70, 4], // millimetres
    [9, '$MEASUREMENT'],
    [70, 1], // metric line types and hatches
    [9, '$LWDISPLAY'],
    [290, 1],
    [9, '$HANDSEED'],
    [5, seed],
    [0, 'ENDSEC'],
  ];
}

export function tables(extent: Extent, known: readonly Layer[], scale: number): Tag[] {
  return [
    [0, 'SECTION'],
    [2, 'TABLES'],
    ...table('VPORT', H.viewports, [viewport(extent)]),
    ...table('LTYPE', H.lineTypes, lineTypes(scale)),
    ...table('LAYER', H.layers, [layer(NOUGHT, 0), ...known.map((l, i) => layer(l, i + 1))]),
    ...table('STYLE', H.styles, [style()]),
    ...table('VIEW', H.views, []),
    ...table('UCS', H.planes, []),
    ...table('APPID', H.programs, [record('APPID', '18', H.programs, 'RegApp', 'ACAD')]),
    ...dimensionStyles(),
    ...table('BLOCK_RECORD', H.blocks, [
      [...record('BLOCK_RECORD', H.model, H.blocks, 'Block', '*Model_Space'), [340, H.modelLayout]],
      [...record('BLOCK_RECORD', H.paper, H.blocks, 'Block', '*Paper_Space'), [340, H.paperLayout]],
    ]),
    [0, 'ENDSEC'],
  ];
}

function point(code: number, x: number, y: number, z = 0): Tag[] {
  return [
    [code, x],
    [code + 10, y],
    [code + 20, z],
  ];
}

function table(name: string, handle: string, records: readonly (readonly Tag[])[]): Tag[] {
  return [
    [0, 'TABLE'],
    [2, name],
    [5, handle],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, records.length],
    ...records.flat(),
    [0, 'ENDTAB'],
  ];
}

function record(kind: string, handle: string, owner: string, marker: string, name: string): Tag[] {
  return [
    [0, kind],
    [5, handle],
    [330, owner],
    [100, 'AcDbSymbolTableRecord'],
    [100, `AcDb${marker}TableRecord`],
    [2, name],
    ...(kind === 'BLOCK_RECORD' ? [] : [[70, 0] as const]),
  ];
}

/** The window that a program opens the drawing in: all of it. */
function viewport({ low, high }: Extent): Tag[] {
  const [width, height] = [high.x - low.x, high.y - low.y];
  const wide = 1.4;
  return [
    ...record('VPORT', '10', H.viewports, 'Viewport', '*Active'),
    ...pair(10, 0, 0),
    ...pair(11, 1, 1),
    ...pair(12, low.x + width / 2, low.y + height / 2),
    ...pair(13, 0, 0),
    ...pair(14, 10, 10),
    ...pair(15, 10, 10),
    ...point(16, 0, 0, 1),
    ...point(17, 0, 0),
    [40, Math.max(height, width / wide, 1) * 1.05],
    [41, wide],
    [42, 50],
    [43, 0],
    [44, 0],
    [50, 0],
    [51, 0],
    [71, 0],
    [72, 1000],
    [73, 1],
    [74, 3],
    [75, 0],
    [76, 0],
    [77, 0],
    [78, 0],
  ];
}

function pair(code: number, x: number, y: number): Tag[] {
  return [
    [code, x],
    [code + 10, y],
  ];
}

function lineTypes(scale: number): Tag[][] {
  const plain = (name: string, i: number): Tag[] => [
    ...record('LTYPE', nth(0x11, i), H.lineTypes, 'Linetype', name),
    [3, ''],
    [72, 65],
    [73, 0],
    [40, 0],
  ];
  const [line, gap] = [DASH.line * scale, DASH.gap * scale];
  const dashed: Tag[] = [
    ...record('LTYPE', '14', H.lineTypes, 'Linetype', 'DASHED'),
    [3, '__ __ __'],
    [72, 65],
    [73, 2],
    [40, line + gap],
    [49, line],
    [74, 0],
    [49, -gap],
    [74, 0],
  ];
  return [...['ByBlock', 'ByLayer', 'Continuous'].map(plain), dashed];
}

const NOUGHT: Layer = { name: '0', colour: 0x222222, weight: 18, dashed: false };

/** Black or white, whichever shows, to a reader that knows no true colours. */
const EITHER = 7;

function layer({ name, colour, weight, dashed }: Layer, i: number): Tag[] {
  return [
    ...record('LAYER', nth(0x40, i), H.layers, 'Layer', name),
    [62, EITHER],
    [420, colour],
    [6, dashed ? 'DASHED' : 'Continuous'],
    [370, weight],
  ];
}

function style(): Tag[] {
  return [
    ...record('STYLE', '19', H.styles, 'TextStyle', 'Standard'),
    [40, 0],
    [41, 1],
    [50, 0],
    [71, 0],
    [42, 2.5],
    [3, 'arial.ttf'],
    [4, ''],
  ];
}

/** There is always one, though dimensions are drawn as lines and words, which every reader shows alike. */
function dimensionStyles(): Tag[] {
  return [
    [0, 'TABLE'],
    [2, 'DIMSTYLE'],
    [5, H.dimensions],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, 1],
    [100, 'AcDbDimStyleTable'],
    [0, 'DIMSTYLE'],
    [105, '1A'],
    [330, H.dimensions],
    [100, 'AcDbSymbolTableRecord'],
    [100, 'AcDbDimStyleTableRecord'],
    [2, 'Standard'],
    [70, 0],
    [0, 'ENDTAB'],
  ];
}

export function blocks(): Tag[] {
  const block = (name: string, record: string, first: string, last: string): Tag[] => [
    [0, 'BLOCK'],
    [5, first],
    [330, record],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockBegin'],
    [2, name],
    [70, 0],
    ...point(10, 0, 0),
    [3, name],
    [1, ''],
    [0, 'ENDBLK'],
    [5, last],
    [330, record],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockEnd'],
  ];
  return [
    [0, 'SECTION'],
    [2, 'BLOCKS'],
    ...block('*Model_Space', H.model, '21', '22'),
    ...block('*Paper_Space', H.paper, '31', '32'),
    [0, 'ENDSEC'],
  ];
}

export function objects(): Tag[] {
  return [
    [0, 'SECTION'],
    [2, 'OBJECTS'],
    ...dictionary(H.root, '0', [
      ['ACAD_GROUP', H.groups],
      ['ACAD_LAYOUT', H.layouts],
    ]),
    ...dictionary(H.groups, H.root, []),
    ...dictionary(H.layouts, H.root, [
      ['Model', H.modelLayout],
      ['Layout1', H.paperLayout],
    ]),
    ...layout('Model', H.modelLayout, H.model, 0),
    ...layout('Layout1', H.paperLayout, H.paper, 1),
    [0, 'ENDSEC'],
  ];
}

function dictionary(handle: string, owner: string, entries: readonly [string, string][]): Tag[] {
  const named = entries.flatMap(([name, to]): Tag[] => [
    [3, name],
    [350, to],
  ]);
  return [
    [0, 'DICTIONARY'],
    [5, handle],
    [330, owner],
    [100, 'AcDbDictionary'],
    [281, 1],
    ...named,
  ];
}

/** A page of A4 across, which nothing is laid on: the format asks for one beside the model. */
function layout(name: string, handle: string, block: string, order: number): Tag[] {
  return [
    [0, 'LAYOUT'],
    [5, handle],
    [330, H.layouts],
    [100, 'AcDbPlotSettings'],
    [1, ''],
    [4, 'A4'],
    [6, ''],
    [44, 297],
    [45, 210],
    [70, order === 0 ? 1024 : 0],
    [72, 1],
    [73, 0],
    [74, 5],
    [7, ''],
    [75, 16],
    [147, 1],
    [100, 'AcDbLayout'],
    [1, name],
    [70, 1],
    [71, order],
    ...pair(10, 0, 0),
    ...pair(11, 297, 210),
    ...point(12, 0, 0),
    ...point(14, 0, 0),
    ...point(15, 0, 0),
    [146, 0],
    ...point(13, 0, 0),
    ...point(16, 1, 0),
    ...point(17, 0, 1),
    [76, 0],
    [330, block],
  ];
}
