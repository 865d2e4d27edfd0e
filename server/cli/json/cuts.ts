/** What perpend cuts --json prints. Its shape is promised in shared/json-schema. Lengths are plain numbers, mm. */
import type { CutPart } from '../../engine/brickwork/cuts/sheet';
import type { Work } from '../../engine/brickwork/work';
import { type BrickCut, type CutPlace, piecesAt } from '../../engine/setting-out';
import type { Opened } from '../session';
import { VERSION } from '../version';

export function cutsDocument(works: readonly Work[], { shown }: Opened): string {
  const document = {
    $schema: 'perpend-1.schema.json',
    format: 'perpend-cuts',
    version: 1,
    tool: { name: 'perpend', version: VERSION },
    file: shown,
    blocks: works.map(({ kind, name, title, facts }) => {
      return { kind, name, title, parts: (facts.cuts?.() ?? []).map(partJson) };
    }),
  };
  return `${JSON.stringify(document)}\n`;
}

function partJson({ label, brick, needed, places, alike, onEdge }: CutPart) {
  const { wholes, cut, cuttings, bats } = needed;
  return {
    label,
    brick,
    alike,
    wholes,
    cut,
    onEdge,
    places: places.map(placeJson),
    cuttings: cuttings.map(cuttingJson),
    batsLeft: bats.map(({ length, count }) => ({ length: mm(length), count })),
  };
}

/** Courses count from 1, as on screen. */
function placeJson(place: CutPlace) {
  const { piece, length, high, from, to, every, each, at } = place;
  const times = Math.ceil((to - from) / every);
  return {
    piece,
    length: mm(length),
    ...(high === undefined ? {} : { high: mm(high) }),
    courses: { first: from + 1, last: from + (times - 1) * every + 1, every },
    each,
    count: piecesAt(place),
    at: at.map((s) => ({ from: mm(s.from), by: mm(s.by), count: s.count })),
  };
}

function cuttingJson({ bat, times, pieces }: BrickCut) {
  const from = bat === undefined ? {} : { bat: mm(bat) };
  return { ...from, times, pieces: pieces.map((p) => ({ ...p, length: mm(p.length) })) };
}

function mm(length: number): number {
  return Number(length.toFixed(2)) + 0;
}
