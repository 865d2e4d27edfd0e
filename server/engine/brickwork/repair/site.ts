/** What stands where a repair is: a wall of the file, a pier, or what the repair’s own lines say. */

import { phrase } from '../../../../shared/phrase';
import { kindSaid } from '../../kinds-said';
import { wordOf } from '../../resolve/book';
import { BlockFacts, type Env } from '../../resolve/env';
import type { Thickness, WallSpec } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { type Brick, brickOf } from '../goods';
import { type Masonry, masonryOf } from '../masonry';
import { halvesSetOut } from '../wall/bond';
import { heightIn } from '../wall/height';
import { wallAlone } from '../wall/meet/alone';
import { ownPier, type PierSite, pierIn, pierOf } from './pier-site';

export interface Site {
  /** The repair’s own lines. */
  readonly facts: BlockFacts;
  readonly env: Env;
  /** Its lines, then those of the wall or pier it is in. */
  readonly stands: BlockFacts;
  readonly masonry: Masonry;
  /** What is bought. */
  readonly match: Brick;
  /** Half bricks through a wall. */
  readonly thickness?: Thickness;
  readonly pier?: PierSite;
  /** It is a pier, whether or not that can be laid. */
  readonly isPier: boolean;
  /** Of the wall or pier it is in: how long it is, mm, and how many courses high. */
  readonly size: { readonly length?: number; readonly courses?: number };
  /** The wall it is in, as it is laid by itself, where that has openings. */
  readonly withOpenings?: WallSpec;
  /** What a reader calls what it is in: “the wall north”, where the file has it. */
  readonly called?: string;
}

/** `block` is the wall or pier that stands there, or the wall that has the pier. */
export function siteOf(facts: BlockFacts, env: Env, block: SourceBlock | undefined): Site {
  const stands = new BlockFacts(facts.block, facts.heading, env, block ? [block] : []);
  const masonry = masonryOf(stands, env);
  const match = facts.line('match');
  const named = pierNamed(facts, block);
  const isPier = block?.kind === 'pier' || named !== undefined || facts.line('size') !== undefined;
  const pier = isPier ? pierAt(masonry, block, named) : undefined;
  return {
    facts,
    env,
    stands,
    masonry,
    match: match ? brickOf(match, env, match.origin) : masonry.brick,
    thickness: halvesSetOut(stands.orDefault('thick')?.number('thick')),
    pier,
    isPier,
    size: pier ? { courses: pier.high } : wallSize(stands, masonry),
    withOpenings: block && !isPier ? openedIn(block, env) : undefined,
    called: block && calledIn(block, pier),
  };
}

function pierAt(
  masonry: Masonry,
  block: SourceBlock | undefined,
  name: string | undefined,
): PierSite | undefined {
  if (block?.kind === 'pier') return pierOf(masonry);
  return block && name ? pierIn(block, name, masonry) : ownPier(masonry);
}

/** The pier of a wall that an `in` line names: after its wall, or alone. */
function pierNamed(facts: BlockFacts, block: SourceBlock | undefined): string | undefined {
  const line = facts.line('in');
  const name = line?.word('wall');
  if (!line || !block) return undefined;
  return line.word('pier') || (name === block.name ? undefined : name);
}

function wallSize(stands: BlockFacts, masonry: Masonry): Site['size'] {
  const courses = stands.line('height') && heightIn(masonry, stands, [])?.courses;
  return { length: stands.line('length')?.number('length'), courses };
}

function openedIn(block: SourceBlock, env: Env): WallSpec | undefined {
  const spec = block.kind === 'wall' ? wallAlone(block, env).laid?.plan.spec : undefined;
  return spec?.openings.length ? spec : undefined;
}

function calledIn(block: SourceBlock, pier: PierSite | undefined): string {
  // A pier of the file is planned from the lines of the repair, and so goes by its name.
  const of = block.kind === 'pier' ? undefined : pier?.name;
  const name = of ?? wordOf(block.read.heading?.values.name);
  return phrase`the ${kindSaid(pier ? 'pier' : (block.kind ?? ''))} ${name}`;
}
