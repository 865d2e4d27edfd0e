/** Filling pages from top to bottom with pieces that are never cut. */

/** How strongly a piece holds to the next: not at all, as long as both go on a page, always. */
export type Hold = 0 | 1 | 2;

/** A line of words, a drawing, a row of a table: what stands on one page and no other. */
export interface Piece {
  /** Points. */
  readonly height: number;
  /** Room before it, left out at the top of a page. */
  readonly gap: number;
  readonly hold: Hold;
  /** Drawn again at the top of a page that this one begins: the headings of its table. */
  readonly head?: readonly Piece[];
  /** `y` is its upper edge, counted from the top of the page. */
  draw(y: number): void;
}

/** A page to fill. */
export interface Pages {
  readonly top: number;
  readonly bottom: number;
  next(): void;
}

export const NEW_PAGE = Symbol('new page');

export function fill(pieces: readonly (Piece | typeof NEW_PAGE)[], pages: Pages): void {
  const filler = new Filler(pages);
  let row: Piece[] = [];
  for (const piece of pieces) {
    if (piece !== NEW_PAGE) {
      row.push(piece);
      continue;
    }
    filler.all(row, 1);
    filler.turn();
    row = [];
  }
  filler.all(row, 1);
}

class Filler {
  private y: number;
  private fresh = true;

  constructor(private readonly pages: Pages) {
    this.y = pages.top;
    pages.next();
  }

  /** `hold`: pieces that hold to each other by at least so much stay on one page, where they go on one. */
  all(pieces: readonly Piece[], hold: Hold): void {
    for (const chunk of chunks(pieces, hold)) this.chunk(chunk, hold);
  }

  turn(): void {
    if (this.fresh) return;
    this.pages.next();
    this.y = this.pages.top;
    this.fresh = true;
  }

  private chunk(chunk: readonly Piece[], hold: Hold): void {
    const whole = heightOf(chunk, true) + heightOf(chunk[0]!.head ?? [], true);
    const tooHigh = whole > this.pages.bottom - this.pages.top;
    if (tooHigh && chunk.length > 1) {
      const less = hold === 1 ? 2 : hold;
      for (const part of less === hold ? chunk.map((piece) => [piece]) : chunks(chunk, 2))
        this.chunk(part, less);
      return;
    }
    if (this.y + heightOf(chunk, this.fresh) > this.pages.bottom && !this.fresh)
      this.anew(chunk[0]!);
    for (const piece of chunk) this.put(piece);
  }

  private anew(first: Piece): void {
    this.turn();
    for (const piece of first.head ?? []) this.put(piece);
  }

  private put(piece: Piece): void {
    this.y += this.fresh ? 0 : piece.gap;
    this.fresh = false;
    piece.draw(this.y);
    this.y += piece.height;
  }
}

function heightOf(pieces: readonly Piece[], fresh: boolean): number {
  return pieces.reduce((sum, { height, gap }, i) => sum + height + (fresh && i === 0 ? 0 : gap), 0);
}

function chunks(pieces: readonly Piece[], hold: Hold): Piece[][] {
  const found: Piece[][] = [];
  let now: Piece[] = [];
  for (const piece of pieces) {
    now.push(piece);
    if (piece.hold >= hold) continue;
    found.push(now);
    now = [];
  }
  if (now.length) found.push(now);
  return found;
}
