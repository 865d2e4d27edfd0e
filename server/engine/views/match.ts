/** A comparison of bricks in a reader’s words: one line a candidate, and the lines under it. */

import { later, phrase, spoken } from '../../../shared/phrase';
import { lengthText, sizeText } from '../brickwork/lengths';
import type { Candidate, Matching } from '../brickwork/matching';
import { criteriaSaid } from '../brickwork/matching/rank';
import { SIDES } from '../brickwork/matching/types';
import type { Env } from '../resolve/env';
import type { Term } from '../working/term';
import type { Job } from '../workspace/job';
import { showTerm } from './show';

const SIDE = { length: later`length`, width: later`width`, height: later`height` } as const;

/** What is compared with, and how it is known. */
export function stoodText({ stood }: Matching, env: Env): string {
  const { size, course } = stood;
  if (!size) return phrase`what stands is not known: a brick line says it, or a measured line`;
  const sides = sizeText(
    env,
    SIDES.map((side) => size[side].value.toNumber()),
  );
  const how = stood.measured ? measuredText(stood.sample) : phrase`${stood.title}, its work size`;
  const gauge = stood.gauged ? phrase`measured` : phrase`not measured, at its usual joint`;
  const high = course && phrase`courses of ${lengthText(env, course.value.toNumber())}, ${gauge}`;
  return [`${sides} (${how})`, ...(high ? [high] : [])].join('; ');
}

function measuredText(sample: Term | undefined): string {
  if (!sample || sample.value.isZero()) return phrase`measured`;
  const count = sample.value.toFixed();
  return phrase`measured, the mean of ${count === '1' ? phrase`one brick` : phrase`${count} bricks`}`;
}

/** “+1, +0.5, −1 mm”. */
function largerText({ larger }: Candidate, env: Env): string {
  if (!larger) return phrase`not known`;
  const off = (mm: number) => {
    const text = lengthText(env, Math.abs(mm));
    const bare = text.slice(0, text.lastIndexOf(' '));
    return bare === '0' ? bare : `${mm < 0 ? '−' : '+'}${bare}`;
  };
  const sides = SIDES.map((side) => off(larger[side].value.toNumber()));
  return `${sides.join(', ')} ${env.imperial ? 'in' : 'mm'}`;
}

/** “within T2”, “out of T1: length by 8 mm”. */
export function nearText({ near }: Candidate, env: Env): string {
  if (!near) return phrase`no class known`;
  if (!near.out) return phrase`within ${near.title}`;
  const by = lengthText(env, Math.abs(near.out.term.value.toNumber()));
  return phrase`out of ${near.title}: ${spoken(SIDE[near.out.side])} by ${by}`;
}

function bedText({ bed }: Candidate, env: Env): string {
  if (!bed) return phrase`not known`;
  const mm = bed.joint.value.toNumber();
  if (mm <= 0) return phrase`none, too high`;
  return `${lengthText(env, mm)}${bed.accepted ? '' : phrase`, not accepted`}`;
}

function driftText({ bed }: Candidate, env: Env): string {
  const mm = bed?.drift?.term.value.toNumber();
  if (mm === undefined) return '';
  return `${mm < 0 ? '−' : ''}${lengthText(env, Math.abs(mm))}`;
}

function costText({ buy }: Candidate, env: Env): string {
  return buy.cost.gaps.length ? phrase`not known` : showTerm(buy.cost, env);
}

/** By what it differs, its bed joint, the drift of its courses, and its cost: each in a column of its own. */
export function columnTexts(one: Candidate, env: Env): string[] {
  return [largerText, bedText, driftText, costText].map((text) => text(one, env));
}

/** What stands in no column: upright joints, the ends of the tolerance, what is bought and left. */
export function moreTexts(one: Candidate, env: Env): string[] {
  const { perpend, bed, buy, brick, waste } = one;
  const mm = (term: Term) => lengthText(env, Math.max(0, term.value.toNumber()));
  const within = bed?.within;
  const upright = perpend && phrase`upright joints of ${mm(perpend.joint)} keep the bond`;
  const wide =
    perpend && !perpend.accepted
      ? phrase`no upright joint that anyone would accept keeps the bond`
      : upright;
  return [
    ...(wide ? [`${wide}${creepText(perpend?.creep, env)}`] : []),
    ...(within
      ? [
          phrase`bed joints of ${mm(within.least)} to ${mm(within.most)} within its tolerance (${within.tolerance.name})`,
        ]
      : []),
    phrase`${showTerm(buy.bought, env)} to buy, ${showTerm(buy.left, env)} left over; frog ${showTerm(brick.frog, env)}, waste ${showTerm(waste, env)}`,
  ];
}

function creepText(creep: Term | undefined, env: Env): string {
  const mm = creep?.value.toNumber() ?? 0;
  const by = lengthText(env, Math.abs(mm));
  return by.startsWith('0 ')
    ? ''
    : phrase`; at its usual joint it runs ${by} ${mm > 0 ? phrase`long` : phrase`short`} over its length`;
}

/** Over the name of a brick: how it compares in each repair that it might be bought for. */
export function comparedIn(name: string, job: Job): string[] {
  return job.works.flatMap((work) => {
    const { matching } = work.facts;
    const one = matching?.candidates.find(({ brick }) => brick.name === name);
    return one && matching ? [oneLine(one, matching, work.name, job.env)] : [];
  });
}

function oneLine(one: Candidate, { candidates, order }: Matching, where: string, env: Env): string {
  const parts = [
    `${largerText(one, env)} (${nearText(one, env)})`,
    phrase`bed joints ${bedText(one, env)}`,
    ...(driftText(one, env) ? [phrase`drift ${driftText(one, env)} at its usual bed`] : []),
    phrase`cost ${costText(one, env)}`,
  ];
  const rank = phrase`${one.rank} of ${candidates.length} by ${criteriaSaid(order).join(', ')}`;
  return `${phrase`In ${where} ${rank}: ${parts.join(' · ')}.`} ${one.why ?? ''}`.trim();
}
