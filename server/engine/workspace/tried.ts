/** Ways out, each tried before it is offered: one that does not clear its finding, or leaves an error, is none. */

import type { Work } from '../brickwork/needs';
import type { Remark, RemarkWay } from '../findings/remark';
import { SourceBlock } from './source';

/**
 * More findings than this in one piece of work, or a longer one, and trying every way would take longer than anyone
 * waits: then they are offered untried.
 */
const MOST_TRIED = 30;
const LONGEST_TRIED = 300;

/**
 * Lines worked out again for one piece of work, all its ways together: half a second or two, as its lines take. Whoever
 * asks for one finding at a time never comes to it; a list of them all has the first tried and the rest as they are.
 */
const MOST_AGAIN = 4000;

/** All that is looked at of a piece of work in which a way out is tried. */
interface Told {
  readonly remarks: readonly Pick<Remark, 'code' | 'about' | 'severity'>[];
}
type Again = (block: SourceBlock) => Told | undefined;

interface Trials {
  readonly again: Again;
  /** Nothing more is worked out. */
  readonly spent: () => boolean;
}

/**
 * The same work, its remarks offering only ways that do what they say. They are tried when somebody asks for them:
 * the block is read with the edits in it, and worked out by `again`.
 */
export function tried(work: Work, again: Again): Work {
  const offering = work.remarks.filter((r) => r.ways).length;
  if (!offering || offering > MOST_TRIED || work.block.lines.length > LONGEST_TRIED) return work;
  const trials = onceEach(again);
  const remarks = work.remarks.map((remark) =>
    remark.ways ? { ...remark, ways: () => thatClear(remark, work, trials) } : remark,
  );
  return { ...work, remarks };
}

/** Several findings may offer the same edit: each text is worked out once. */
function onceEach(again: Again): Trials {
  const known = new Map<string, Told | undefined>();
  let lines = 0;
  const once: Again = (block) => {
    const text = block.lines.join('\n');
    if (!known.has(text)) {
      lines += block.lines.length;
      known.set(text, kept(again(block)));
    }
    return known.get(text);
  };
  return { again: once, spent: () => lines > MOST_AGAIN };
}

/** The rest of what was worked out is let go. */
function kept(told: Told | undefined): Told | undefined {
  return (
    told && {
      remarks: told.remarks.map(({ code, about, severity }) => ({ code, about, severity })),
    }
  );
}

function thatClear(remark: Remark, work: Work, { again, spent }: Trials): readonly RemarkWay[] {
  const ways = typeof remark.ways === 'function' ? remark.ways() : (remark.ways ?? []);
  if (spent()) return ways;
  const good = ways.flatMap((way) => {
    const left = leftBy(way, remark, work, again);
    return left === undefined ? [] : [{ way, worse: left > told(work) }];
  });
  // Those that bring up something new elsewhere come after those that do not.
  const place = (g: { way: RemarkWay; worse: boolean }) => (g.way.last ? 2 : g.worse ? 1 : 0);
  const ranked = [0, 1, 2].flatMap((at) => good.filter((g) => place(g) === at).map((g) => g.way));
  const first = ways[0]?.preferred ? ranked[0] : undefined;
  return ranked.map((way) =>
    way.preferred || way === first ? { ...way, preferred: way === first } : way,
  );
}

/** How much a way leaves to be told of the work; nothing when it does not do what it says. */
function leftBy(way: RemarkWay, remark: Remark, work: Work, again: Again): number | undefined {
  if (way.edits.some((e) => e.block !== work.block)) return told(work);
  const block = withEdits(work.block, way);
  const after = again(block);
  const stands = after && alike(after, remark) >= alike(work, remark);
  if (!after || stands || errors(after, block) > errors(work, work.block)) return undefined;
  return told(after) + 1;
}

function alike({ remarks }: Told, { code, about }: Remark): number {
  return remarks.filter((r) => r.code === code && r.about === about).length;
}

function told({ remarks }: Told): number {
  return remarks.filter((r) => r.severity === 'warning' || r.severity === 'error').length;
}

function errors(work: Told, block: SourceBlock): number {
  const faults = block.read.faults.filter((f) => f.severity === 'error').length;
  return faults + work.remarks.filter((r) => r.severity === 'error').length;
}

/** The block with the edits of a way in it, standing where it stood; the file does not know of it. */
function withEdits(block: SourceBlock, { edits }: RemarkWay): SourceBlock {
  const lines = [...block.lines];
  const lastFirst = [...edits].sort(
    (a, b) => b.span.line - a.span.line || b.span.start - a.span.start,
  );
  for (const { span, text } of lastFirst) {
    const line = lines[span.line] ?? '';
    const changed = line.slice(0, span.start) + text + line.slice(span.end);
    lines.splice(span.line, 1, ...changed.split('\n'));
  }
  return new SourceBlock(block.file, block.firstLine, lines);
}
