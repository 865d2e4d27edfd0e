/** Text and preview beside each other: who leads, and who follows. Knows nothing of the editor. */

/** A place that a preview shows or has led to. */
export interface At {
  readonly uri: string;
  readonly line: number;
}

/**
 * A reader who clicks a brick is led to its line, and the cursor’s move there is no reason to move the drawing under
 * the pointer: such a move is quiet. Any other move of the cursor is followed.
 */
export class Follow {
  private led: At | undefined;

  /** The page has led to a line. */
  leads(to: At): void {
    this.led = to;
  }

  /** The cursor has moved. @returns whether the page itself has moved it */
  moved(to: At): boolean {
    const own = this.led?.uri === to.uri && this.led.line === to.line;
    this.led = undefined;
    return own;
  }

  /** Whether a file that has come to the front was brought there by the page: what is shown stays. */
  brought(uri: string): boolean {
    return this.led?.uri === uri;
  }
}
