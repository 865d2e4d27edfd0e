/** Hatches as lines over an area that is clipped to what they fill: the same pictures as the patterns of SVG. */
import type { Document } from './document';
import type { Bounds } from './marks';

interface Hatch {
  /** `level` and `upright` lines lie at `first` and then every `pitch`; slanting ones meet the left edge every `pitch`. mm of paper. */
  readonly lines: readonly ('level' | 'upright' | 'up' | 'down')[];
  readonly pitch: number;
  readonly first?: number;
  /** Lines are rows of dots of this width. */
  readonly dots?: number;
}

/** By the names that looks give them; pitches and places are those of `HATCHES` in svg-looks. */
const HATCHES: Readonly<Record<string, Hatch>> = {
  'hatch-up': { lines: ['up'], pitch: 0.9 },
  'hatch-down': { lines: ['down'], pitch: 0.9 },
  'hatch-cross': { lines: ['up', 'down'], pitch: 0.8 },
  'hatch-level': { lines: ['level'], pitch: 0.75, first: 0.4 },
  'hatch-upright': { lines: ['upright'], pitch: 0.75, first: 0.4 },
  'hatch-dots': { lines: ['level'], pitch: 1.2, first: 0.6, dots: 0.28 },
};

/** A dash as short as pdfkit takes one: with round ends it is a dot. */
const SPOT = 0.001;

export const hatchesDrawn: readonly string[] = Object.keys(HATCHES);

export function hatch(name: string, area: Bounds, doc: Document): void {
  const found = HATCHES[name]!;
  doc.lineWidth(found.dots ?? 0.12).strokeColor(found.dots ? '#333' : '#4a2418');
  if (found.dots) doc.lineCap('round').dash([SPOT, found.pitch - SPOT]);
  else doc.undash();
  for (const line of found.lines) RULED[line](found, area, doc);
  doc.stroke();
}

type Ruled = (hatch: Hatch, area: Bounds, doc: Document) => void;

/** The place of the first line at or after `from`. */
function firstAfter(from: number, { pitch, first = 0 }: Hatch): number {
  return first + Math.ceil((from - first) / pitch) * pitch;
}

const RULED: Readonly<Record<Hatch['lines'][number], Ruled>> = {
  level: (hatch, { left, right, top, bottom }, doc) => {
    const start = hatch.dots ? firstAfter(left - hatch.pitch, hatch) : left;
    for (let y = firstAfter(top, hatch); y <= bottom; y += hatch.pitch)
      doc.moveTo(start, y).lineTo(right, y);
  },
  upright: (hatch, { left, right, top, bottom }, doc) => {
    for (let x = firstAfter(left, hatch); x <= right; x += hatch.pitch)
      doc.moveTo(x, top).lineTo(x, bottom);
  },
  up: (hatch, { left, right, top, bottom }, doc) => {
    for (let sum = firstAfter(left + top, hatch); sum <= right + bottom; sum += hatch.pitch)
      doc.moveTo(sum - bottom, bottom).lineTo(sum - top, top);
  },
  down: (hatch, { left, right, top, bottom }, doc) => {
    for (let off = firstAfter(left - bottom, hatch); off <= right - top; off += hatch.pitch)
      doc.moveTo(off + top, top).lineTo(off + bottom, bottom);
  },
};
