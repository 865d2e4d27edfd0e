/** A length that is taken down and built again: laid as the wall is, between toothed ends, in its bond. */
import type { BlockFacts, LineFacts } from '../../resolve/env';
import {
  type BondPattern,
  rowOf,
  type SettingOut,
  setOut,
  sizeOf,
  tally,
  type WallSpec,
} from '../../setting-out';
import { counted, fact, type Term, withGaps } from '../../working/term';
import { type Counted, countBricks, laidFrom } from '../count';
import { jointsIn, limitsOf, type Masonry } from '../masonry';
import { bondNamedIn, halvesSetOut } from '../wall/bond';

/** `stands` are the lines of the brickwork: the repair’s own, then the wall’s. Nothing when it cannot be laid. */
export function layRebuilt(
  line: LineFacts,
  masonry: Masonry,
  stands: BlockFacts,
): (Counted & { readonly from: readonly Term[]; readonly out: SettingOut }) | undefined {
  const spec = specOf(line, masonry, stands);
  if (!spec) return undefined;
  const out = setOut(spec);
  const inputs = [line.term('length', 'length rebuilt'), ...highTerms(line)];
  const counted = countBricks('Bricks down', [tally(out)], masonry, inputs);
  return { ...counted, out, from: laidFrom(masonry, inputs) };
}

function highTerms(line: LineFacts): Term[] {
  const key = line.values.courses ? 'courses' : 'height';
  return line.values[key] ? [line.term(key, `${key} rebuilt`)] : [];
}

/** No bricks, and why: what is not known of the brickwork itself comes first. */
export function notLaid(line: LineFacts, masonry: Masonry): Term {
  const { gaps } = masonry;
  const why = [{ what: whyNotLaid(line, masonry), origin: line.origin }];
  return withGaps(fact('Bricks down', 0, 'bricks', line.origin), gaps.length ? gaps : why);
}

function whyNotLaid(line: LineFacts, masonry: Masonry): string {
  const name = masonry.facts.name || 'this repair';
  const high = line.number('courses') ?? line.number('height');
  if (!line.number('length') || !high) return `how much of ${name} is rebuilt is not known`;
  if (!jointsIn(masonry)) return `the joints of ${name} are not known, or no joints at all`;
  return `the bond of ${name} is not known, or its thickness is not set out yet`;
}

function specOf(line: LineFacts, masonry: Masonry, stands: BlockFacts): WallSpec | undefined {
  const unit = masonry.brick.size;
  const joints = jointsIn(masonry);
  const length = line.number('length');
  const thickness = halvesSetOut(stands.orDefault('thick')?.number('thick'));
  const bond = thickness && bondNamedIn(stands, thickness);
  if (!unit || !joints || !length || !bond) return undefined;
  const courses = coursesIn(line, unit.height + joints.bed);
  if (courses < 1) return undefined;
  const limits = limitsOf(masonry.env, 'joints-accepted', masonry.jointTerms.perpend);
  const ends = { left: 'toothed', right: 'toothed' } as const;
  const halves = Math.round((2 * length) / (unit.length + joints.perpend));
  const row = rowOf(unit, joints.perpend, ends, limits);
  const size = sizeOf(row, Math.max(1, halves - runOn(bond)));
  const none = { openings: [], piers: [] };
  return { unit, joints, bond, thickness, length: size, courses, ...ends, ...none, limits };
}

function coursesIn(line: LineFacts, gauge: number): number {
  const said = line.number('courses');
  return said === undefined ? Math.round((line.number('height') ?? 0) / gauge) : Math.floor(said);
}

/**
 * Between two toothed ends every second course of a half-lapped bond runs on half a brick at each. Set out one
 * half brick shorter, the courses are on average as long as what is taken down.
 */
function runOn({ lap }: BondPattern): number {
  return lap === 0.5 ? 1 : 0;
}

/** Courses that are built again, beside the standing ones of a measured gauge. */
export function coursesRebuilt(facts: BlockFacts, gauge: LineFacts | undefined): Term | undefined {
  const line = facts.line('rebuild');
  if (!line || !gauge) return undefined;
  if (line.values.courses) return line.term('courses', 'courses rebuilt');
  const course = (gauge.number('height') ?? 0) / (gauge.number('courses') ?? 0);
  const courses = Math.round((line.number('height') ?? 0) / course);
  if (!Number.isFinite(courses) || courses < 1) return undefined;
  const args = [line.term('height', 'height rebuilt')];
  return counted('courses rebuilt', courses, 'courses', { args });
}
