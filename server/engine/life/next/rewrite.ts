/** Lines of a text kept, left out, or said otherwise. */

export const SAME = Symbol('as it is');

/** By the number of a line: its new text (or texts), nothing to leave it out, {@link SAME} to keep it. */
export type Rewrite = (line: number) => string | undefined | typeof SAME;

export function rewritten(lines: readonly string[], rewrite: Rewrite): string {
  return lines
    .flatMap((text, i) => {
      const to = rewrite(i);
      if (to === SAME) return [text];
      return to === undefined ? [] : [to];
    })
    .join('\n');
}
