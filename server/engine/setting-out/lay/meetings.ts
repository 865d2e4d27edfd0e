import type { Clear, ClearBand } from './bands';

/** Where two stretches lie on one another. */
export interface Meeting {
  /** The other stretch, by {@link keyOf}. */
  readonly key: string;
  /** Course of the bond's cycle that each has there. */
  readonly mine: number;
  readonly theirs: number;
  /** The upper of the two courses, the first time that they meet so. */
  readonly course: number;
  /** Whether that upper course is this stretch's own. */
  readonly upper: boolean;
}

/** What each stretch lies on and bears. */
export type Meetings = ReadonlyMap<string, readonly Meeting[]>;

/** Stretches alike in this are one stretch, in whatever band. */
export const keyOf = ({ from, to, left, right }: Clear) => `${from} ${to} ${left} ${right}`;

/** Every place where stretches of a band lie on others of the band below, of a bond of `cycle` courses. */
export function meetingsOf(bands: readonly ClearBand[], cycle: number): Meetings {
  const found = new Map<string, Map<string, Meeting>>();
  for (const [i, { from: course, clear }] of bands.entries()) {
    const lower = (course + cycle - 1) % cycle;
    const upper = course % cycle;
    for (const [under, over] of pairs(bands[i - 1]?.clear ?? [], clear)) {
      const [below, above] = [keyOf(under), keyOf(over)];
      if (below === above) continue;
      add(found, below, { key: above, mine: lower, theirs: upper, course, upper: false });
      add(found, above, { key: below, mine: upper, theirs: lower, course, upper: true });
    }
  }
  return new Map([...found].map(([key, meetings]) => [key, [...meetings.values()]]));
}

function add(found: Map<string, Map<string, Meeting>>, key: string, meeting: Meeting): void {
  let mine = found.get(key);
  if (!mine) {
    mine = new Map();
    found.set(key, mine);
  }
  const alike = `${meeting.key} ${meeting.mine} ${meeting.theirs}`;
  if (!mine.has(alike)) mine.set(alike, meeting);
}

/** Stretches over one another that are not one and the same, both lists in order. */
function* pairs(below: readonly Clear[], above: readonly Clear[]): Generator<[Clear, Clear]> {
  for (let i = 0, j = 0; i < below.length && j < above.length; ) {
    const [a, b] = [below[i]!, above[j]!];
    if (a !== b && a.from < b.to && b.from < a.to) yield [a, b];
    if (a.to < b.to) i++;
    else j++;
  }
}
