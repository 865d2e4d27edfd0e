/** Attached piers that do not stand out of their wall, or that no plan bonds into it. */

import { later, phrase, spoken } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { BlockFacts, Env } from '../../resolve/env';
import { coursesText, coursesTold } from '../courses';
import { lineAfter, type Remark, type RemarkWay, rewrite } from '../remark';

/** `wall` half bricks through the wall, `along` the pier’s along it. */
export function pierFlush(facts: BlockFacts, wall: number, along: number, side: string): Remark {
  const line = facts.line('projects')!;
  const least = wall + (side === 'both' ? 2 : 1);
  const text = `${along / 2} x ${least / 2} bricks`;
  const way: RemarkWay = {
    title: phrase`Make it ${text}`,
    edits: [{ ...facts.line('size')!.at('size'), text }],
  };
  const both = side === 'both' ? phrase` as far on one side as on the other` : '';
  const message = phrase`The pier ${facts.name} does not stand out of its wall${both}: its second size counts the wall’s own thickness in, which is ${bricks(wall)}. It is counted in the line of the wall.`;
  return { code: 'pier-flush', severity: 'warning', origin: line.origin, message, ways: [way] };
}

function bricks(halves: number): string {
  return halves === 1
    ? phrase`1/2 brick`
    : halves === 2
      ? phrase`1 brick`
      : phrase`${halves / 2} bricks`;
}

/** `half` is half a brick with its joint, mm: a pier whose left side is so many of them from an end is on the wall’s joints. */
export function pierUnbonded(facts: BlockFacts, half: number, env: Env): Remark {
  const message = phrase`No plan was found that bonds the pier ${facts.name} into its wall with every face lapped: walls of half a brick and one brick are looked at. It is counted by itself, the wall butting against it. Try another place or width, or tie it with wall ties to an engineer’s design.`;
  return {
    code: 'pier-unbonded',
    about: facts.name,
    severity: 'warning',
    origin: facts.line('projects')!.origin,
    message,
    ways: onJoints(facts, half, env),
  };
}

/** A pier in the line of its wall, deeper than that where `deeper` says so: the wall ends at it. */
export function pierButted(facts: BlockFacts, deeper: boolean): Remark {
  const message = phrase`The wall butts against the pier ${facts.name}: a straight joint runs up between them from foot to top, and nothing bonds the two. It is counted so. Where it is to strengthen the wall, or carry a gate, bond it in with \`projects\`, or tie it with wall ties to an engineer’s design.`;
  return {
    code: 'pier-unbonded',
    about: facts.name,
    severity: 'information',
    origin: headingName(facts),
    message,
    ways: deeper ? SIDES.map((side) => projecting(facts, side)) : [],
  };
}

/** The first that clears it stands for the others: a wall has a weather side, and piers as a rule stand behind it. */
const SIDES = ['back', 'front'] as const;
const BOND_IN = {
  back: later`Bond it into the wall, standing out at the back`,
  front: later`Bond it into the wall, standing out at the front`,
} as const;

function projecting(facts: BlockFacts, side: (typeof SIDES)[number]): RemarkWay {
  const size = facts.line('size')!.origin.span;
  const indent = ' '.repeat(size.start);
  const edits = [lineAfter(facts.block, size.line, `${indent}projects ${side}`)];
  return { title: spoken(BOND_IN[side]), edits };
}

function headingName({ block, heading }: BlockFacts) {
  const name = heading.values.name;
  return { block, span: name?.span ?? heading.syntax.span };
}

/** One plan is for all courses of a pier: above the lower side of its wall there is nothing to bond with on that side. `courses` are those of the pier up to there. */
export function pierAtStep(facts: BlockFacts, courses: number): Remark {
  const text = coursesText(courses);
  const message = phrase`The top of the wall steps down at the pier ${facts.name}: above ${coursesTold(courses)} there is wall on one side of it only, and no one plan bonds it into both. It is counted by itself, the wall butting against it. Build it ${coursesTold(courses)} high, or put the step further from it.`;
  const height = facts.line('height');
  const edit = height
    ? rewrite(height.origin, `height ${text}`)
    : lineAfter(facts.block, facts.line('projects')!.origin.span.line, `    height ${text}`);
  return {
    code: 'pier-unbonded',
    about: facts.name,
    severity: 'warning',
    origin: facts.line('projects')!.origin,
    message,
    ways:
      courses < 1 ? [] : [{ title: phrase`Build it ${coursesTold(courses)} high`, edits: [edit] }],
  };
}

/** The places nearest to where it stands that are on the wall’s joints. */
function onJoints(facts: BlockFacts, half: number, env: Env): RemarkWay[] {
  const at = facts.line('at');
  const distance = at?.number('distance');
  if (!at || distance === undefined) return [];
  const below = Math.floor(distance / half);
  const places = [below, below + 1].map((n) => n * half);
  const near = places.sort((a, b) => Math.abs(a - distance) - Math.abs(b - distance));
  return near
    .filter((mm) => mm > 0 && Math.abs(mm - distance) > 0.5)
    .map((mm) => {
      const text = lengthText(env, mm);
      const title =
        at.word('end') === 'left'
          ? phrase`Move it to ${text} from the left`
          : phrase`Move it to ${text} from the right`;
      return { title, edits: [{ ...at.at('distance'), text }] };
    });
}
