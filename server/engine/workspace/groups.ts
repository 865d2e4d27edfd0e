/** What is made of the items of a long list, kept group by group: after an edit, only the group that holds it is made again. */

/** Few enough that one is soon made again, many enough that there are few of them. */
export const GROUP = 32;

interface Group<T, R> {
  readonly of: readonly T[];
  readonly made: R;
}

export class Groups<T, R> {
  private known: readonly Group<T, R>[] = [];

  /** `make` is given the items of a group and the place of the first; it must ask nothing but these. */
  constructor(private readonly make: (of: readonly T[], at: number) => R) {}

  /** In order. A group stands as long as its items are the same objects: nothing of them is even looked at. */
  of(items: readonly T[]): R[] {
    const groups: Group<T, R>[] = [];
    for (let at = 0; at < items.length; at += GROUP) {
      const known = this.known[groups.length];
      groups.push(known && same(known.of, items, at) ? known : this.anew(items, at));
    }
    this.known = groups;
    return groups.map((group) => group.made);
  }

  private anew(items: readonly T[], at: number): Group<T, R> {
    const of = items.slice(at, at + GROUP);
    return { of, made: this.make(of, at) };
  }
}

function same<T>(group: readonly T[], all: readonly T[], at: number): boolean {
  if (group.length !== Math.min(GROUP, all.length - at)) return false;
  for (let i = 0; i < group.length; i++) if (group[i] !== all[at + i]) return false;
  return true;
}

/** Lists put one behind the other. `flat` walks through them; this copies, and is asked at every keystroke. */
export function joined<T>(lists: readonly (readonly T[])[]): T[] {
  return ([] as T[]).concat(...lists);
}
