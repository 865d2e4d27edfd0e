/** Names of things where a line takes one: those that could stand there without being told off. */
import type { LineKind } from '../../../grammar/lines';
import type { NameSlot } from '../../../grammar/lines/slots';
import type { Item } from '../../../grammar/syntax';
import { brickNamed } from '../brickwork/goods';
import { bondsThrough } from '../findings/brick-shape';
import { wordOf } from '../resolve/book';
import { factsNamed, factsOf } from '../resolve/env';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { hoverThing } from './hover-name';
import { isInner, type Named, namedThings, shortName, titleOf } from './names';
import { type Completion, PLAIN } from './types';

/** Where something is to be put: behind which items of which line. */
export interface Place {
  readonly kind: LineKind;
  readonly items: readonly Item[];
  readonly block: SourceBlock | undefined;
  readonly job: Job;
}

/** @param by the sign that parts the things of a list, where it is one: no thing stands in it twice */
export function namesFor(slot: Omit<NameSlot, 'slot'>, place: Place, by?: string): Completion[] {
  const { block, job, items } = place;
  const said = new Set(by ? items.flatMap((item) => (item.kind === 'word' ? item.text : [])) : []);
  const things = namedThings(job, slot.of, block).filter(
    (thing) => (thing.block !== block || isInner(thing)) && !said.has(thing.name),
  );
  return inOrder(things, slot, place).map((thing) => ({
    label: thing.name,
    kind: 'name',
    detail: titleOf(thing) || undefined,
    from: thing.block.file === job.file ? undefined : shortName(thing.block.file),
    explains: () => hoverThing([thing], job, PLAIN),
    insert: thing.name,
    commits: by ? [by] : undefined,
  }));
}

function inOrder(
  things: readonly Named[],
  slot: Omit<NameSlot, 'slot'>,
  place: Place,
): readonly Named[] {
  if (slot.key === 'pier') return things.filter((thing) => isPierOf(thing, place));
  if (slot.by) return things.filter((thing) => isSo(thing, slot.by!, place));
  return slot.of.includes('brick') ? bricksFor(things, place) : things;
}

/** Behind the name of a wall: a pier of that wall. */
function isPierOf(thing: Named, { items }: Place): boolean {
  const [wall] = items;
  return isInner(thing) && wall?.kind === 'word' && thing.block.name === wall.text;
}

/** What has a bulk density is measured loose; what has none, and is no binder, comes by the piece. */
function isSo({ name }: Named, by: 'loose' | 'piece', { job }: Place): boolean {
  const facts = factsNamed(job.env, 'material', name);
  const loose = facts?.line('loose') !== undefined;
  return by === 'loose' ? loose : !loose && !facts?.line('is');
}

const WORK: ReadonlySet<string> = new Set(['wall', 'pier', 'repair']);

/**
 * In work of bricks, bricks: what cannot be bonded (a block) is left out where the work is more than half a brick thick or
 * in a brick that can, and stands last where the work may as well be of blocks. A backing may be of either.
 */
function bricksFor(things: readonly Named[], place: Place): readonly Named[] {
  const { kind, block, job } = place;
  if (!block || !WORK.has(block.kind ?? '') || kind.key === 'backing') return things;
  const bonded = things.filter(({ name }) => bonds(name, job));
  if (isOfBricks(place, block)) return bonded;
  return [...bonded, ...things.filter((thing) => !bonded.includes(thing))];
}

function isOfBricks({ kind, job }: Place, block: SourceBlock): boolean {
  if (block.kind === 'pier') return true;
  const facts = factsOf(block, job.env);
  const thick = facts?.orDefault('thick')?.number('thick');
  if (thick !== undefined && thick > 1 / 2) return true;
  return kind.key !== 'brick' && bonds(wordOf(facts?.orDefault('brick')?.values.brick), job);
}

/** One whose size nobody says may be anything. */
function bonds(name: string, { env }: Job): boolean {
  const facts = factsNamed(env, 'brick', name);
  const size = facts && brickNamed(name, env, facts.origin).size;
  const joint = facts?.line('joint')?.number('joint') ?? USUAL_JOINT;
  return !size || bondsThrough(size, joint, env);
}

/** In mm, where a brick says none: it decides nothing but whether a block is one. */
const USUAL_JOINT = 10;
