/** A corner that one wall says it makes, and the other does not. */
import { phrase } from '../../../../shared/phrase';
import { claimsOf, otherSide, SIDES } from '../../brickwork/wall/meet/ends';
import type { LineFacts } from '../../resolve/env';
import type { Side } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { headOrigin, lineAfter, type Remark, type RemarkWay, rewrite } from '../remark';

/** @param other the wall that the line names; nothing where no wall has that name, which another finding tells */
export function quoinUnanswered(
  line: LineFacts,
  side: Side,
  other: SourceBlock | undefined,
): Remark | undefined {
  if (!other) return undefined;
  const name = line.word('wall');
  const own = other === line.block;
  const why = own
    ? phrase`A wall makes no corner with itself.`
    : phrase`The wall ${name} does not say that one of its ends meets this one, or says it of an end that meets another. Until it does, both are laid with free ends, and the corner is counted twice.`;
  return {
    code: 'quoin-unanswered',
    about: side,
    severity: 'warning',
    origin: line.at('wall'),
    message: why,
    related: own ? [] : [{ origin: headOrigin(other), message: phrase`The wall ${name}` }],
    ways: () => [...(own ? [] : answers(line, side, other)), freeEnd(line, side)],
  };
}

/** The line that lets an end meet no wall. */
export function freeEnd({ block, line }: LineFacts, side: Side): RemarkWay {
  const text = `${side} stopped`;
  return {
    title: phrase`It meets no wall there: ${text}`,
    edits: [rewrite({ block, span: line.syntax.span }, text)],
    last: true,
  };
}

/** The line that answers, at the end of the other wall that is not taken: first the one on the other hand. */
function answers(line: LineFacts, side: Side, other: SourceBlock): RemarkWay[] {
  const taken = new Set(
    claimsOf(other)
      .filter((c) => c.wall !== line.block.name)
      .map((c) => c.side),
  );
  return [otherSide(side), side]
    .filter((end) => !taken.has(end))
    .slice(0, 1)
    .map((end) => answerAt(line, side, other, end));
}

function answerAt(line: LineFacts, side: Side, other: SourceBlock, end: Side): RemarkWay {
  const inside = (line.word('faces') === 'inside') === (end !== side);
  const text = `${end} quoin ${line.block.name}${inside ? ' inside' : ''}`;
  const at = other.read.heading!.body.find((l) => l.kind.key === end);
  const edit = at
    ? rewrite({ block: other, span: at.syntax.span }, text)
    : lineAfter(other, lastLine(other), `  ${text}`);
  return { title: phrase`Write ${text} in the wall ${other.name}`, edits: [edit], preferred: true };
}

/** Under the line of its other end, else under its heading. */
function lastLine(block: SourceBlock): number {
  const heading = block.read.heading!;
  const ends = heading.body.filter((l) => (SIDES as readonly string[]).includes(l.kind.key));
  return (ends.at(-1) ?? heading).syntax.span.line;
}
