/** Ways out that more than one finding of the price offers. */

import { writeNumber } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import type { Env, LineFacts } from '../../resolve/env';
import type { Term } from '../../working/term';
import type { RemarkWay } from '../remark';

export function takenOut({ block, line }: LineFacts, title = phrase`Take the line out`): RemarkWay {
  const at = line.syntax.span.line;
  const span = { line: at, start: 0, end: block.lines[at]!.length };
  return { title, edits: [{ block, span, text: '' }] };
}

/** Money as a file has it, so that it is read back the same. */
export function written({ value }: Term, { money: { sign, code, digits } }: Env): string {
  const number = value.isInteger() || digits !== 2 ? writeNumber(value) : value.toFixed(digits);
  return /^\p{Sc}$/u.test(sign) ? `${sign}${number}` : `${number} ${code}`;
}
