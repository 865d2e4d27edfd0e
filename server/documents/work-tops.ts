/** What stands on a piece of work, as its drawings take it. */
import type { TopRun } from '../engine/brickwork/faces';
import type { Work } from '../engine/brickwork/work';
import type { Topping } from '../engine/drawing';
import { wordOf } from '../engine/resolve/book';

/** A coping that no line gives a thickness is drawn this thick, mm, and a note says so. */
const UNSAID = 50;

/** What stands on top lies on a bed of mortar like any course. */
export function toppingsOn({ facts }: Work, gauge: number, bed: number): Topping[] {
  return (facts.tops ?? []).flatMap((top) =>
    topping(top, top.on * gauge + (top.over ?? 0) + bed, top.faces ?? facesUnder(facts, top)),
  );
}

function topping(top: TopRun, at: number, faces: Topping['faces']): Topping[] {
  const { from, to, height, joint, deep } = top;
  if (top.kind === 'cap') return [{ kind: 'cap', name: 'cap', from, to, at, height, deep, faces }];
  const { kind, pieces, rows, between } = top;
  const whole = pieces.find(({ cut }) => !cut) ?? pieces[0];
  if (!whole) return [];
  const run = {
    kind,
    from,
    to,
    at,
    piece: whole.length,
    wholes: 0,
    joint,
    pieces,
    rows,
    between,
  } as const;
  return [{ ...run, height: height || UNSAID, unsaid: !height, deep, faces }];
}

/** A top in the middle of a pier stands on that pier, whose faces are not the wall's. */
function facesUnder(facts: Work['facts'], { from, to, on }: TopRun): Topping['faces'] {
  if (facts.pier) return { front: 0, back: facts.pier.plan.depth };
  const middle = (from + to) / 2;
  const under = facts.piers?.find(
    (p) => p.base + p.courses === on && middle > p.from && middle < p.from + p.width,
  );
  return under && { front: under.y, back: under.y + under.depth };
}

/** How many courses the damp-proof course takes up, from the ground. */
export function dpcCourses(work: Work): number | undefined {
  const line = work.block.read.heading?.body.find((l) => l.kind.key === 'dpc');
  const courses = line?.values.courses;
  return courses?.kind === 'quantity' ? courses.low.toNumber() : undefined;
}

/** What a reader calls a line of the work: its title; without one its name, as words. */
export function calledIn(work: Work, kind: string, name: string): string {
  const line = work.block.read.heading?.body.find(
    (l) => l.kind.key === kind && wordOf(l.values.name) === name,
  );
  return wordOf(line?.values.title) || name.replaceAll('-', ' ') || kind;
}
