/** Queen closers: one stands beside the quoin header, never at the end (common practice). */
import type { Bay } from './bays';
import type { FaultKind } from './types';

export function closerFaults(
  { outline, pieces }: Bay,
  tell: (kind: FaultKind, at: number, measured: number, wanted: number) => void,
): void {
  const last = pieces.length - 1;
  for (const [i, { piece, from, to }] of pieces.entries()) {
    if (piece !== 'closer') continue;
    const atEnd =
      (i === 0 && outline.left !== 'toothed') || (i === last && outline.right !== 'toothed');
    const beside =
      (i === 1 && pieces[0]!.piece === 'header') ||
      (i === last - 1 && pieces[last]!.piece === 'header');
    if (atEnd) tell('closer-at-end', from, to - from, 0);
    else if (!beside) tell('closer-misplaced', from, to - from, 0);
  }
}
