import type { Ends } from './craft';
import { mod } from './grid';
import type { LaidStretch } from './stretch';
import type { Tiling } from './tiling';

/** A pattern moved `by` steps along. */
export interface Moved {
  readonly tilings: readonly Tiling[];
  readonly by: number;
}

/** What the laying of a stretch hangs on. */
export interface Like {
  /** Mm. */
  readonly length: number;
  readonly ends: Ends;
  /** The wall's own pattern, in the stretch's steps. */
  readonly master: Moved;
  /** The one pattern of all the stretches beside it; null for a stretch that runs past none. */
  readonly past: Moved | null;
}

/** Where a pattern stands in its repeat, course by course. */
type Phases = readonly { cells: Tiling['cells']; phase: number }[];

interface Kept {
  readonly ends: Ends;
  readonly master: Phases;
  readonly past: Phases | null;
  readonly laid: LaidStretch;
}

const phaseOf = ({ origin, period }: Tiling, by: number) => mod(origin + by, period);

const phasesOf = ({ tilings, by }: Moved): Phases =>
  tilings.map((tiling) => ({ cells: tiling.cells, phase: phaseOf(tiling, by) }));

function samePhases(kept: Phases | null, now: Moved | null): boolean {
  if (kept === null || now === null) return kept === now;
  for (let i = 0; i < kept.length; i++) {
    const { cells, phase } = kept[i]!;
    const tiling = now.tilings[i]!;
    if (tiling.cells !== cells || phaseOf(tiling, now.by) !== phase) return false;
  }
  return true;
}

/** Lengths nearer than this are one length, mm. */
const SAME_LENGTH = 1e-6;

/** Stretches of one wall already laid: a like one is not laid again. Numbers throughout, since a large wall asks for thousands. */
export class Alike {
  private readonly byLength = new Map<number, Kept[]>();

  find({ length, ends, master, past }: Like): LaidStretch | undefined {
    const here = this.byLength.get(Math.round(length / SAME_LENGTH));
    if (!here) return undefined;
    for (const kept of here) {
      const { left, right } = kept.ends;
      const sameEnds = left === ends.left && right === ends.right;
      if (sameEnds && samePhases(kept.master, master) && samePhases(kept.past, past))
        return kept.laid;
    }
    return undefined;
  }

  keep({ length, ends, master, past }: Like, laid: LaidStretch): void {
    const key = Math.round(length / SAME_LENGTH);
    const kept = { ends, master: phasesOf(master), past: past && phasesOf(past), laid };
    const here = this.byLength.get(key);
    if (here) here.push(kept);
    else this.byLength.set(key, [kept]);
  }
}
