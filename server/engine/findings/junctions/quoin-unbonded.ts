/** A corner round which the bonds of the two walls do not lap without cutting. */
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import type { Side } from '../../setting-out';
import type { SourceBlock } from '../../workspace/source';
import { headOrigin, lineAfter, type Remark, type RemarkWay, rewrite } from '../remark';

/** A bond line that both walls could have. */
export interface OtherBond {
  readonly title: string;
  /** `english-garden-wall 3` */
  readonly text: string;
}

/** @param bonds those of which both walls could be built so that the corner bonds; found when somebody asks */
export function quoinUnbonded(
  line: LineFacts,
  side: Side,
  other: SourceBlock,
  bonds: () => readonly OtherBond[],
): Remark {
  const name = line.word('wall');
  const message = phrase`The corner with ${name} does not bond: where the face of one wall comes, the other has no upright joint in every second course. It is laid one course over the other all the same, with bricks cut to fit behind the face. Take a bond that starts its courses in turn with a stretcher and with a header or half bat, or a plain joint with ties.`;
  return {
    code: 'quoin-unbonded',
    about: side,
    severity: 'warning',
    origin: line.origin,
    message,
    related: [{ origin: headOrigin(other), message: phrase`The wall ${name}` }],
    ways: () => bonds().map((bond) => wayTo(bond, [line.block, other])),
  };
}

function wayTo({ title, text }: OtherBond, walls: readonly SourceBlock[]): RemarkWay {
  return {
    title: phrase`Build both walls in ${title}`,
    edits: walls.map((wall) => bondIn(wall, text)),
  };
}

function bondIn(block: SourceBlock, text: string) {
  const heading = block.read.heading!;
  const line = heading.body.find((l) => l.kind.key === 'bond');
  return line
    ? rewrite({ block, span: line.syntax.span }, `bond ${text}`)
    : lineAfter(block, heading.syntax.span.line, `  bond ${text}`);
}
