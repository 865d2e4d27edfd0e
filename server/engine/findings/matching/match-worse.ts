/** The brick that is chosen keeps the gauge less well than another that was compared with it. */
import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { gaugeScore } from '../../brickwork/matching/rank';
import type { Candidate, Matching } from '../../brickwork/matching/types';
import type { BlockFacts, Env } from '../../resolve/env';
import { decisionFor } from '../fit/decision';
import { type Remark, type RemarkWay, rewrite } from '../remark';

const MOST_OFFERED = 3;

/** Nothing where a `fit gauge` line decides it, or where its bed joint is one that anyone would accept. */
export function matchWorse(
  facts: BlockFacts,
  matching: Matching | undefined,
  env: Env,
): Remark | undefined {
  const line = facts.line('match');
  const chosen = matching?.candidates.find((one) => one.chosen);
  if (!line || !matching || !chosen?.bed || decisionFor(facts, 'gauge')) return undefined;
  const least = Math.min(...matching.candidates.map((one) => gaugeScore(one, matching.stood)));
  if (gaugeScore(chosen, matching.stood) <= least) return undefined;
  const better = matching.candidates.filter((one) => gaugeScore(one, matching.stood) === least);
  const [best] = better as [Candidate];
  const { beds } = matching.stood;
  const message = phrase`${chosen.brick.title} ${needs(chosen, env)} to keep the gauge, and ${best.brick.title} ${needs(best, env)}; ${lengthText(env, beds.least)} to ${lengthText(env, beds.most)} is what anyone would accept. Take it, or keep to this one and tell the client that courses will not keep level as well.`;
  const ways = better.slice(0, MOST_OFFERED).map((one, i): RemarkWay => {
    const edits = [rewrite(line.at('brick'), one.brick.name)];
    return { title: phrase`Buy ${one.brick.title}`, edits, preferred: i === 0 };
  });
  return { code: 'match-worse', severity: 'information', origin: line.at('brick'), message, ways };
}

function needs({ bed }: Candidate, env: Env): string {
  const mm = bed!.joint.value.toNumber();
  return mm > 0
    ? phrase`needs a bed joint of ${lengthText(env, mm)}`
    : phrase`is too high for any joint`;
}
