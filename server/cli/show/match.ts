/** The comparison of a repair’s bricks: a ranked table, and under it what it has no room for. */

import { later, phrase, spoken } from '../../../shared/phrase';
import type { Candidate, Matching } from '../../engine/brickwork/matching';
import { criteriaSaid } from '../../engine/brickwork/matching/rank';
import type { Work } from '../../engine/brickwork/work';
import type { Env } from '../../engine/resolve/env';
import { columnTexts, moreTexts, nearText, stoodText } from '../../engine/views/match';
import { type Io, paint } from '../io';
import { table } from './table';
import { wrapped } from './width';

const WIDTH = 80;
const HEAD = ['', later`differs by`, later`bed joint`, later`drift`, later`cost`];

/** Lines of the report, without a newline after the last. */
export function matchReport(work: Work, env: Env, io: Io): string {
  const matching = work.facts.matching!;
  const rows = matching.candidates.map((one) => rowOf(one, env));
  return [
    `${paint(io, 'bold', work.title)} (${work.kind} ${work.name})`,
    ...folded(phrase`beside ${stoodText(matching, env)}`, 2),
    ...folded(readAs(matching), 2),
    ...table([HEAD.map(spoken), ...rows], ['left', 'left', 'left', 'right', 'right']),
    ...matching.candidates.flatMap((one) => ['', ...underOf(one, env, io)]),
  ].join('\n');
}

/** By what they are ranked, and what each column says. */
function readAs({ order, candidates }: Matching): string {
  const chosen = candidates.some((one) => one.chosen) ? phrase` * is the one that is bought.` : '';
  return phrase`Ranked by ${criteriaSaid(order).join(', ')}. Differs by: its length, width and height, more (+) or less (−) than what stands. Bed joint: the one that keeps the gauge. Drift: how far its courses come out too high, or too low (−), at its usual joint. Cost: of all that is short, before overhead, profit and tax.${chosen}`;
}

function rowOf(one: Candidate, env: Env): string[] {
  const name = `${one.rank} ${one.brick.name}${one.chosen ? ' *' : ''}`;
  return [name, ...columnTexts(one, env)];
}

function underOf(one: Candidate, env: Env, io: Io): string[] {
  const bought = one.chosen ? phrase` (* this one is bought)` : '';
  return [
    `${paint(io, 'bold', `${one.rank} ${one.brick.title}`)}${bought}`,
    ...(one.why ? folded(one.why, 2) : []),
    ...[phrase`size ${nearText(one, env)}`, ...moreTexts(one, env)].flatMap((text) =>
      folded(text, 2),
    ),
    phrase`  To the client:`,
    ...one.honest.flatMap((said) => folded(said, 4)),
  ];
}

function folded(text: string, indent: number): string[] {
  return wrapped(text, WIDTH - indent).map((line) => `${' '.repeat(indent)}${line}`);
}
