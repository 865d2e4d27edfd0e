/** A core told of a pier that has none. */
import type { LineFacts } from '../resolve/env';
import type { Remark } from './remark';

export function coreIdle(line: LineFacts, along: number, across: number): Remark {
  const at = line.origin.span.line;
  const span = { line: at, start: 0, end: line.block.lines[at]!.length };
  const message = `A pier of ${along} x ${across} bricks has no core: every brick of it shows. This line changes nothing.`;
  return {
    code: 'core-idle',
    severity: 'warning',
    origin: line.origin,
    message,
    ways: [{ title: 'Take the line out', edits: [{ block: line.block, span, text: '' }] }],
  };
}
