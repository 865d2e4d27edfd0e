/** A mark-up and a margin in one price block: they are not the same, and only one can hold. */
import { phrase } from '../../../../shared/phrase';
import { profitLine } from '../../price/marked';
import { type Env, LineFacts } from '../../resolve/env';
import { type Remark, takenOut } from '../remark';

export function profitAndMargin(env: Env): Remark[] {
  const holds = profitLine(env);
  const block = holds?.block;
  if (block?.kind !== 'price') return [];
  const word = holds!.line.kind.key;
  const other = word === 'profit' ? 'margin' : 'profit';
  const line = block.read.heading!.body.find((l) => l.kind.key === other);
  if (!line) return [];
  const idle = new LineFacts(block, line, env);
  const message = phrase`Profit is said twice: as a mark-up (\`profit\`, of the cost) and as a margin (\`margin\`, of the price). The ${said(word)} comes first and holds. Take one of them out.`;
  const ways = [
    takenOut(idle, phrase`Keep the ${said(word)}`),
    takenOut(holds!, phrase`Keep the ${said(other)}`),
  ];
  return [{ code: 'profit-and-margin', severity: 'error', origin: idle.origin, message, ways }];
}

function said(word: string): string {
  return word === 'margin' ? phrase`margin` : phrase`mark-up`;
}
