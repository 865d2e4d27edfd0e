/** Cautions of the libraries and of the firm, each where the job calls for it. */

import { listed } from '../../../grammar/read/numbers';
import { phrase } from '../../../shared/phrase';
import { counted } from '../../../shared/show';
import { cautionsOf, type Told } from '../cautions';
import type { Rule } from '../cautions/rules';
import type { Env } from '../resolve/env';
import type { Job } from '../workspace/job';
import { limeMixes } from './mortar/softer';
import { headOrigin, type Remark } from './remark';

type Asked = Pick<Job, 'works' | 'env' | 'wallOf'>;

/** What a job’s work brings up. */
export function cautionsIn(job: Asked): Told[] {
  return cautionsOf(job.works, job.env, (work) => job.wallOf(work.block));
}

/** A caution of this very work is told of so many pieces of work; the last of them says how many more there are. */
const MOST_TOLD = 10;

/** One remark a caution, at the first line that brings it up; what is of this very work, in each piece of work. */
export function cautions(job: Asked): Remark[] {
  const told = cautionsIn(job);
  const seen = new Map<Rule, number>();
  const first = told.filter(({ rule }) => {
    const times = (seen.get(rule) ?? 0) + 1;
    seen.set(rule, times);
    return times <= MOST_TOLD;
  });
  const times = new Map<Rule, number>();
  return first.map((each) => {
    const time = (times.get(each.rule) ?? 0) + 1;
    times.set(each.rule, time);
    const more = time === MOST_TOLD ? seen.get(each.rule)! - MOST_TOLD : 0;
    const remark = keptRemark(each, job.env);
    return more > 0 ? andMore(remark, more) : remark;
  });
}

function andMore(remark: Remark, more: number): Remark {
  const others = phrase`The same holds for ${counted(more, phrase`piece of work`, phrase`pieces of work`)} further down.`;
  return { ...remark, message: `${remark.message} ${others}` };
}

function keptRemark(told: Told, env: Env): Remark {
  const remark = remarks.get(told) ?? remarkOf(told, env);
  remarks.set(told, remark);
  return remark;
}

/** What is told of a piece of work stays the same as long as it does. */
const remarks = new WeakMap<Told, Remark>();

/** More places than these are not looked up one by one. */
const MOST_PLACES = 10;

function remarkOf({ rule, at, why, work }: Told, env: Env): Remark {
  const [first, ...others] = at;
  const here = why.length ? ` (${shortened(why)})` : '';
  const from = rule.source.length ? ` (${listed(rule.source, 'and')})` : '';
  const message = `${rule.title}${here}: ${[...rule.say, ...rule.ask].join(' ')}${from}`;
  const also = others
    .slice(0, MOST_PLACES)
    .map(({ origin, why: reason }) => ({ origin, message: reason?.() ?? phrase`Here too` }));
  const library = { origin: headOrigin(rule.block), message: phrase`The caution in the library` };
  return {
    code: `caution-${rule.name}`,
    severity: 'information',
    origin: first!.origin,
    message,
    related: [...also, library],
    ways: () => limeMixes(work, rule, env),
  };
}

function shortened(why: readonly string[]): string {
  const more = why.length - MOST_PLACES;
  const told = why.slice(0, MOST_PLACES).join('; ');
  return more > 0 ? phrase`${told}; and ${more} more` : told;
}
