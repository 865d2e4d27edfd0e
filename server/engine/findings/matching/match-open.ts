/** Bricks are compared, and none is chosen: the brick of the wall is what the price has in it. */

import { phrase } from '../../../../shared/phrase';
import { criteriaSaid } from '../../brickwork/matching/rank';
import type { Matching } from '../../brickwork/matching/types';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import { lineAfter, type Remark, type RemarkWay } from '../remark';

const MOST_OFFERED = 3;

export function matchOpen(facts: BlockFacts, matching: Matching | undefined): Remark | undefined {
  const line = facts.line('candidates');
  if (!line || !matching || facts.line('match')) return undefined;
  const [best] = matching.candidates;
  const message = phrase`None of these is chosen, so that the price has the brick of the wall in it. ${best!.brick.title} ranks first (${criteriaSaid(matching.order).join(', ')}). A match line says which is bought.`;
  const ways = matching.candidates.slice(0, MOST_OFFERED).map(({ brick, rank }): RemarkWay => {
    const title = phrase`Buy ${brick.title}`;
    return { title, edits: [underneath(line, `match ${brick.name}`)], preferred: rank === 1 };
  });
  return { code: 'match-open', severity: 'information', origin: line.origin, message, ways };
}

/** Under the line, as deep in as it is. */
function underneath({ block, line }: LineFacts, text: string) {
  const { syntax } = line;
  return lineAfter(block, syntax.span.line, `${' '.repeat(syntax.indent)}${text}`);
}
