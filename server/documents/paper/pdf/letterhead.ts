/** The firm's name, address and sign at the head of the first page. */
import type { StructElement } from 'pdfkit';
import type { Letterhead } from '../model';
import { MM } from './document';
import type { Hold, Piece } from './flow';
import type { Ready } from './picture';
import { linePieces, marked, rule, type Setting } from './sheet';

/** The most room that a sign takes, points. */
const LOGO = { width: 50 * MM, height: 22 * MM } as const;

/** Address and contact on a line each; the sign stands at the right, beside them. */
export function headPieces(
  head: Letterhead,
  picture: Ready | undefined,
  parent: StructElement,
  set: Setting,
): Piece[] {
  const logo = picture && logoOf(picture, head.logo!.words, parent, set);
  const width = set.width - (logo ? logo.width + 6 * MM : 0);
  const how = { at: set.left, width, hold: 2 as Hold };
  const under = [head.address.join(', '), head.contact.join(' · ')].filter(Boolean);
  const lines = [
    ...(head.name ? p(head.name, { ...how, size: 15, bold: true, gap: 0 }, parent, set) : []),
    ...under.flatMap((text, i) => p(text, { ...how, size: 9.5, gap: i ? 0 : MM }, parent, set)),
  ];
  const high = lines.reduce((sum, { height, gap }) => sum + height + gap, 0);
  const low = Math.max(0, (logo?.height ?? 0) - high) + 3 * MM;
  const end: Piece = {
    height: low + 6 * MM,
    gap: 0,
    hold: 0,
    draw: (y) => rule(set.doc, set.left, y + low, set.width, 1.5),
  };
  return [...(logo ? [logo.piece] : []), ...lines, end];
}

function p(
  text: string,
  how: Parameters<typeof linePieces>[1],
  parent: StructElement,
  set: Setting,
): Piece[] {
  const element = set.doc.struct('P');
  parent.add(element);
  return linePieces(text, how, element, 'P', set).map((piece) => ({ ...piece, hold: 2 }));
}

interface Logo {
  readonly width: number;
  readonly height: number;
  readonly piece: Piece;
}

/** Takes no room of its own: the lines of the address stand beside it. */
function logoOf(ready: Ready, alt: string, parent: StructElement, set: Setting): Logo {
  const { doc, left } = set;
  const scale = Math.min(LOGO.width / ready.width, LOGO.height / ready.height);
  const [width, height] = [ready.width * scale, ready.height * scale];
  const figure = doc.struct('Figure', { alt });
  parent.add(figure);
  const x = left + set.width - width;
  const draw = (y: number) => {
    const bottom = doc.page.height - y - height;
    const box = [x, bottom, x + width, bottom + height];
    figure.dictionary.data.A = { O: 'Layout', Placement: 'Block', BBox: box };
    marked(doc, figure, 'Figure', () => ready.draw(doc, x, y, width, height));
  };
  return { width, height, piece: { height: 0, gap: 0, hold: 2, draw } };
}
