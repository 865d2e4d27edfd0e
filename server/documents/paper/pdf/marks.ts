/** A drawing from its marks, as paths with the looks that it has in SVG. */
import type { Ink, Sheet } from '../../../engine/drawing';
import { type Drawn, runsOf, type TextMark } from '../../runs';
import { LOOKS } from '../../svg-looks';
import type { Document } from './document';
import { hatch } from './hatch';
import type { Type } from './type';

/** Draws a sheet; the document's unit is a mm of the sheet then, its upper left corner the origin. */
export function drawSheet(sheet: Sheet, doc: Document, type: Type): void {
  for (const run of runsOf(sheet.marks)) {
    if (run.text) words(run.text, doc, type);
    else strokes(run.ink, run.marks, sheet, doc);
  }
}

function strokes(ink: Ink, marks: readonly Drawn[], sheet: Sheet, doc: Document): void {
  const look = LOOKS[ink];
  const filled = marks[0]!.kind !== 'line' && look.fill !== 'none';
  if (look.dash) doc.dash(look.dash.split(' ').map(Number));
  else doc.undash();
  doc.lineWidth(look.weight).strokeColor(look.line).lineCap('butt');
  path(marks, doc);
  if (filled) doc.fillColor(look.fill).fillAndStroke();
  else doc.stroke();
  if (!look.hatch || marks[0]!.kind === 'line') return;
  doc.save();
  path(marks, doc);
  doc.clip();
  hatch(look.hatch, boundsOf(marks, sheet), doc);
  doc.restore();
}

function path(marks: readonly Drawn[], doc: Document): void {
  for (const mark of marks) {
    if (mark.kind === 'box') doc.rect(mark.x, mark.y, mark.width, mark.height);
    else if (mark.kind === 'line') doc.moveTo(mark.x1, mark.y1).lineTo(mark.x2, mark.y2);
    else {
      for (const [i, { x, y }] of mark.points.entries()) i ? doc.lineTo(x, y) : doc.moveTo(x, y);
      doc.closePath();
    }
  }
}

export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** No wider than the sheet: what stands outside it is not seen. */
function boundsOf(marks: readonly Drawn[], { width, height }: Sheet): Bounds {
  let [left, top, right, bottom] = [width, height, 0, 0];
  const take = (x: number, y: number) => {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x);
    bottom = Math.max(bottom, y);
  };
  for (const mark of marks) {
    if (mark.kind === 'box') {
      take(mark.x, mark.y);
      take(mark.x + mark.width, mark.y + mark.height);
    } else if (mark.kind === 'shape') for (const { x, y } of mark.points) take(x, y);
  }
  return {
    left: Math.max(0, left),
    top: Math.max(0, top),
    right: Math.min(width, right),
    bottom: Math.min(height, bottom),
  };
}

/** Letters of the plain faces that drawings are made for are a little narrower than those of the paper's font. */
const NARROWER = 0.93;

function words(mark: TextMark, doc: Document, type: Type): void {
  const style = { size: mark.size * NARROWER, bold: mark.bold };
  const width = type.width(mark.text, style);
  const back = mark.align === 'start' ? 0 : mark.align === 'end' ? width : width / 2;
  doc.save();
  doc.translate(mark.x, mark.y);
  if (mark.turned) doc.rotate(-90);
  if (mark.backed) {
    doc
      .lineWidth(Math.min(0.7, mark.size * 0.3))
      .strokeColor('#fff')
      .lineJoin('round')
      .undash();
    type.outline(mark.text, -back, 0, style);
  }
  doc.fillColor('#000');
  type.draw(mark.text, -back, 0, style);
  doc.restore();
}
