/** Precast lengths of coping: how many are bought, whole ones and those that are cut. */
import { phrase } from '../../../../shared/phrase';
import { sideEndsOf } from '../../resolve/ends';
import { bricksNeeded, sumTallies, type Tally } from '../../setting-out';
import { counted, type Term } from '../../working/term';
import { kerfOf, kerfTerm, type Masonry } from '../masonry';
import type { PieceNeed } from '../needs';
import type { CopingLaid } from './coping';

export interface Precast {
  readonly need: PieceNeed;
  /** Its mortar alone. */
  readonly mortar: readonly Tally[];
}

/** Two cuts come from one length where they and the saw leave room. `inputs` are the facts the wall is laid from. */
export function countPrecast(
  laid: readonly CopingLaid[],
  masonry: Masonry,
  inputs: readonly Term[],
): Precast | undefined {
  const [first] = laid;
  const line = masonry.facts.line('coping');
  if (!first || !line) return undefined;
  const { env } = masonry;
  const wholes = laid.reduce((sum, each) => sum + each.wholes, 0);
  const cuts = laid.map(({ cut }) => cut).filter(({ count }) => count > 0);
  const length = first.run.made.along;
  const all = { ...sumTallies([]), wholes, cuts };
  const { total } = bricksNeeded(all, { length, width: length, height: length }, 0, kerfOf(env));
  const material = line.word('material') || 'coping';
  const detail = () => laid.map((each) => each.detail);
  const args = cuts.length ? [...inputs, kerfTerm(env)] : inputs;
  const count = counted(phrase`Lengths of coping`, total, 'pieces', { detail, args });
  const origin = line.values.material ? line.at('material') : line.origin;
  const size = line.sides('size');
  const ends = sideEndsOf(line, 'size');
  return { need: { material, count, origin, size, ends }, mortar: laid.map((each) => each.tally) };
}
