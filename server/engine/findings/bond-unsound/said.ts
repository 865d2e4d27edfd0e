/** What is wrong with a bond, in words. */
import { later, phrase, spoken } from '../../../../shared/phrase';
import type { LayoutFault } from '../../setting-out';

/** What is wrong with a bond of so many courses, as the end of a sentence. */
export function saidOf({ kind, course, measured, wanted }: LayoutFault, cycle: number): string {
  if (kind === 'untied')
    return phrase`no brick goes through from ${spoken(LEAVES[Math.round(measured / HALF) - 1]!)} half brick of its thickness into the next in any course, so that it stands in leaves side by side.`;
  const upper = (course % cycle) + 1;
  const lower = ((course + cycle - 1) % cycle) + 1;
  const over = upper === lower ? phrase`each course` : phrase`course ${upper}`;
  const under = upper === lower ? phrase`the one below` : phrase`course ${lower}`;
  if (kind === 'aligned') return phrase`perpends of ${over} stand straight over those of ${under}.`;
  if (kind === 'lap-short')
    return phrase`${over} laps ${under} by only ${ofBrick(measured)} of a brick where it asks for ${ofBrick(wanted)}.`;
  if (kind === 'closer-at-end' || kind === 'closer-misplaced')
    return phrase`course ${upper} puts a closer elsewhere than beside its quoin header.`;
  if (kind === 'closer-missing')
    return phrase`${over} and ${under} want a closer or a three-quarter bat beside the quoin header.`;
  return phrase`course ${upper} cannot be closed.`;
}

/** Half a sample brick with its joint, mm. */
const HALF = 120;
const LEAVES = [later`the first`, later`the second`, later`the third`];

/** Sample bricks are 240 mm with their joint; nearest twelfth, which quarters and thirds both are. */
function ofBrick(mm: number): string {
  const twelfths = Math.round(mm / 20);
  const part = [12, 6, 4, 3, 2, 1].find((each) => twelfths % each === 0) ?? 1;
  return twelfths === 0 ? phrase`nothing` : `${twelfths / part}/${12 / part}`;
}

export function inBricks(halves: number): string {
  return halves === 2 ? phrase`1 brick` : phrase`${halves / 2} bricks`;
}

/** What mends it. */
export function mendedBy({ kind }: LayoutFault): string {
  if (kind !== 'untied') return phrase`Let a course begin elsewhere, or ask for less lap.`;
  return phrase`Lay headers in one of its courses; two leaves that ties hold together are a wall with a backing.`;
}
