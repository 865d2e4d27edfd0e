/** A `fit` line that decides for a run there is not, or for one that works by itself. */

import { listed } from '../../../../grammar/read/numbers';
import { phrase } from '../../../../shared/phrase';
import type { BlockFacts, LineFacts } from '../../resolve/env';
import { thereAre } from '../names';
import { type Remark, takenOut } from '../remark';

/** A run that a `fit` line of a heading may decide for. */
export interface Decidable {
  readonly name: string;
  /** Whether there is anything to decide: it does not work, or its bond is broken. */
  readonly open: boolean;
}

export function idleFits(home: BlockFacts, runs: readonly Decidable[]): Remark[] {
  return home.lines('fit').flatMap((line) => {
    const run = runs.find((r) => r.name === line.word('run'));
    if (!run) return [nowhere(line, runs)];
    return run.open ? [] : [needless(line)];
  });
}

function nowhere(line: LineFacts, runs: readonly Decidable[]): Remark {
  const names = runs.map((r) => r.name);
  const there = names.length
    ? thereAre(names.length, listed(names, 'and')).trim()
    : phrase`There is none to decide for.`;
  const message = phrase`No run here is called “${line.word('run')}”, so this line changes nothing. ${there}`;
  return {
    code: 'fit-idle',
    severity: 'warning',
    origin: line.origin,
    message,
    ways: [takenOut(line)],
  };
}

function needless(line: LineFacts): Remark {
  const message = phrase`“${line.word('run')}” works without a decision, so this line changes nothing.`;
  return {
    code: 'fit-idle',
    severity: 'hint',
    origin: line.origin,
    message,
    ways: [takenOut(line)],
  };
}
