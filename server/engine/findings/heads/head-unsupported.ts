/** Soldiers or bricks on edge over an opening with nothing under them. */
import { phrase } from '../../../../shared/phrase';
import type { OpeningFacts } from '../../brickwork/wall/openings';
import type { LineFacts } from '../../resolve/env';
import { lastOwnLine } from '../fit/decision';
import { lineAfter, type Remark } from '../remark';

/** Barry: bricks on end or on edge over an opening give poor support, and are carried by an angle or a lintel. */
export function headUnsupported({ facts }: OpeningFacts, line: LineFacts, pieces: string): Remark {
  const called = pieces[0]!.toUpperCase() + pieces.slice(1);
  const message = phrase`${called} carry nothing over an opening, not even themselves once the frame shrinks. Say what carries them.`;
  const indent = ' '.repeat(facts.heading.syntax.indent + 2);
  const edits = [lineAfter(facts.block, lastOwnLine(facts), `${indent}lintel angle`)];
  return {
    code: 'head-unsupported',
    about: facts.name,
    severity: 'warning',
    origin: line.origin,
    message,
    ways: [{ title: phrase`Carry them on a steel angle`, preferred: true, edits }],
  };
}
