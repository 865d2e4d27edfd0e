/** A length of wall with no movement joint in it that is longer than the trade lets it be. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import { lineAfter, type Remark, type RemarkWay, rewrite } from '../remark';

/** A length of wall between free ends, movement joints and gaps to the top. All mm. */
export interface WallLength {
  readonly from: number;
  readonly to: number;
  /** The most it may be, and why that and no other: `that stands free`. */
  readonly most: number;
  readonly why: string;
}

/** @param limit the library's line; @param part a place for one joint in the middle, in whole bricks */
export function movementMissing(
  facts: BlockFacts,
  { from, to, most, why }: WallLength,
  limit: LineFacts,
  part: () => number | undefined,
): Remark {
  const { env } = facts;
  const source = sourceOf(limit);
  const message = phrase`${lengthText(env, to - from)} of wall stand without a movement joint, and ${lengthText(env, most)} is as much as clay brickwork ${why} is built without one (${source}). Bricks swell and shrink; a longer wall may crack or push its ends.`;
  return {
    code: 'movement-missing',
    about: lengthText(env, from),
    severity: 'warning',
    origin: facts.line('length')!.origin,
    message,
    related: [{ origin: limit.origin, message: phrase`The limit: ${source}` }],
    ways: () => [...evenly(facts, most), ...inTheMiddle(facts, part())],
  };
}

/** What the line itself says of it; else the source of its block. */
function sourceOf({ block, line: limit }: LineFacts): string {
  const remark = limit.syntax.comment?.text.replace(/^#\s*/, '').trim();
  if (remark) return remark;
  const line = block.read.heading!.body.find((l) => l.kind.key === 'source');
  const text = line?.values.text;
  return text && 'text' in text ? text.text : phrase`the library`;
}

/** As many as it takes along the whole wall. */
function evenly(facts: BlockFacts, most: number): RemarkWay[] {
  const text = `movement-joint every ${lengthText(facts.env, most)}`;
  const [own, ...others] = facts.lines('movement-joint');
  if (others.length) return [];
  const at = facts.line('length')!.line.syntax.span.line;
  const edit = own ? rewrite(own.origin, text) : lineAfter(facts.block, at, `  ${text}`);
  return [{ title: phrase`Write ${text}`, edits: [edit] }];
}

function inTheMiddle(facts: BlockFacts, left: number | undefined): RemarkWay[] {
  if (left === undefined) return [];
  const text = `movement-joint left ${lengthText(facts.env, left)}`;
  const at = (facts.lines('movement-joint').at(-1) ?? facts.line('length')!).line.syntax.span.line;
  const edits = [lineAfter(facts.block, at, `  ${text}`)];
  return [{ title: phrase`Write ${text}`, edits }];
}
