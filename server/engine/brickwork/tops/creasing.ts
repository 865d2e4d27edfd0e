/** Courses of creasing tiles under a coping: which tiles, how many courses, and how they lie through the wall. */
import { phrase } from '../../../../shared/phrase';
import { type BlockFacts, defaultLine, factsNamed, type LineFacts } from '../../resolve/env';
import { creasingLines, type TileLine } from '../../setting-out';
import type { Gap } from '../../working/term';
import { lengthText } from '../lengths';
import type { Masonry } from '../masonry';

export interface Creasing {
  readonly material: string;
  readonly facts?: BlockFacts;
  readonly line: LineFacts;
  readonly courses: number;
  /** Of a tile, mm; 0 when it is not known. */
  readonly thick: number;
  /** Tiles through the wall, from its front; none when no few cover it. */
  readonly lines: readonly TileLine[];
  readonly gaps: readonly Gap[];
}

/** More courses than anyone lays. */
const MOST_COURSES = 10;

/** What a `coping tiles` line asks for over a wall so many mm thick; the library says what it leaves out. */
export function creasingOf(line: LineFacts, wall: number, masonry: Masonry): Creasing {
  const usual = defaultLine(masonry.env, 'creasing');
  const named = line.values.material ? line : usual;
  const material = named?.word('material') || 'tile';
  const facts = factsNamed(masonry.env, 'material', material);
  const [length = 0, width = 0, thick = 0] = facts?.line('size')?.sides('size') ?? [];
  const out = usual?.number('out') ?? 0;
  const said = line.number('courses') ?? usual?.number('courses') ?? 1;
  const joint = masonry.jointTerms.perpend.value.toNumber();
  const known = length > 0 && width > 0 && thick > 0;
  const lines = known ? creasingLines(wall, out, { length, width }, joint) : [];
  const courses = Math.min(MOST_COURSES, Math.max(1, Math.floor(said)));
  const origin = named?.at('material') ?? line.origin;
  const gap = known
    ? phrase`${material} is too small to cover a wall ${lengthText(masonry.env, wall)} thick`
    : phrase`the size of the tile ${material} is not known`;
  const gaps = lines.length ? [] : [{ what: gap, origin }];
  return { material, facts, line, courses, thick, lines, gaps };
}

/** What it lifts the coping by, mm. */
export function creasingHeight({ courses, thick, lines }: Creasing, bed: number): number {
  return lines.length ? courses * (thick + bed) : 0;
}
