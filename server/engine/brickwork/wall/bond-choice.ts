/** How a length on which the bond does not come out alike at both ends was laid, and why so: as a good bricklayer chooses. */
import { phrase } from '../../../../shared/phrase';
import type { BrokenBond, FacePiece, LaidRun, Segment } from '../../setting-out';
import { lengthText } from '../lengths';
import type { Masonry } from '../masonry';
import { pieceNamed } from '../pieces';

/**
 * Reverse bond first: one pattern runs from end to end, and only the ends of a course differ. Where that does not lap at the far
 * end the bond is broken: under an opening, whose reveals part the perpends above anyway, else in the middle, farthest from both ends.
 */
export function bondChoice(segment: Segment, masonry: Masonry): string[] {
  const plumb = segment.plumb && segment.broken.length ? [plumbText(segment, masonry)] : [];
  const broken = segment.broken.filter((b) => b.why === 'bond');
  if (broken.length || plumb.length)
    return [...plumb, ...broken.map((b) => brokenText(b, masonry))];
  const reversed = segment.runs.find((run) => reversedIn(segment, run));
  return reversed ? [reverseText(reversed)] : [];
}

/** What a stretch laid by itself would have come to: its own perpends near others at a sill or a head. */
function plumbText({ from, to, broken }: Segment, { env }: Masonry): string {
  const ends = broken.filter(({ at, why }) => why === 'cut' && (at === from || at === to));
  const places = ends.map(({ at }) => lengthText(env, at)).join(phrase` and `);
  const cut = !places
    ? ''
    : ends.length > 1
      ? phrase`, cut at the reveals (${places} from the left end of the wall)`
      : phrase`, cut at the reveal (${places} from the left end of the wall)`;
  return phrase`Its perpends are kept plumb with the courses above and below, as if the wall ran on through its openings${cut}. Set out by itself, perpends of it would all but stand over others at a sill or a head.`;
}

function brokenText({ at, where, opening }: BrokenBond, { env }: Masonry): string {
  const place =
    where === 'opening' ? phrase`under or over the opening ${opening}` : phrase`in the middle`;
  return phrase`Broken bond ${lengthText(env, at)} from the left end of the wall, ${place}. ${whyBroken(where)}`;
}

export function whyBroken(where: BrokenBond['where']): string {
  const place =
    where === 'opening'
      ? phrase`there the reveals part the perpends anyway`
      : phrase`there it is farthest from both ends`;
  return phrase`Reverse bond comes first, but laid on from one end this pattern does not lap at the other; so each side is set out from its own end and the odd half brick let in between: ${place}.`;
}

/** Only between free ends: a course that is toothed or butted stops where the other work lets it. */
function reversedIn({ left, right, halves, fits }: Segment, run: LaidRun): boolean {
  if (left !== 'stopped' || right !== 'stopped' || !fits || halves % 2 === 0) return false;
  const [first, last] = endsOf(run);
  return first !== undefined && first !== last;
}

function endsOf({ groups }: LaidRun): [FacePiece?, FacePiece?] {
  return [groups[0]?.pieces[0]?.piece, groups.at(-1)?.pieces.at(-1)?.piece];
}

function reverseText(run: LaidRun): string {
  const [first, last] = endsOf(run);
  const [a, b] = [pieceNamed(first!, 1), pieceNamed(last!, 1)];
  return phrase`Reverse bond: on an odd half brick one end of a course is a ${a} where the other is a ${b}, turn and turn about, so that the bond runs through and nothing is cut between.`;
}
