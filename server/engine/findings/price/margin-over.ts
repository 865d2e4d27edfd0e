/** A margin of all of the price or more: nothing would be left to pay the cost with, and no price is high enough. */
import { phrase } from '../../../../shared/phrase';
import { profitLine } from '../../price/marked';
import type { Env } from '../../resolve/env';
import { type Remark, rewrite } from '../remark';

export function marginOver(env: Env): Remark[] {
  const line = profitLine(env);
  const share = line?.line.kind.key === 'margin' ? line.values.share : undefined;
  if (share?.kind !== 'quantity' || (share.high ?? share.low).lt(100)) return [];
  const told = `${(share.high ?? share.low).toFixed()}%`;
  const message = phrase`A margin is a part of the price, and one of ${told} leaves nothing to pay the cost with. Write less than 100%, or \`profit ${told}\` where it is a mark-up on cost.`;
  const origin = line!.at('share');
  const word = line!.line.syntax.key!.span;
  const edits = [rewrite({ block: line!.block, span: word }, 'profit')];
  const ways = [{ title: phrase`Make it a mark-up on cost`, edits }];
  return [{ code: 'margin-over', severity: 'error', origin, message, ways }];
}
