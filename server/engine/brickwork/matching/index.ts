/** Bricks that might be bought for a repair, each compared with what stands there, ranked, and what is honest to say of it. */
import { phrase } from '../../../../shared/phrase';
import { originOf, wordOf } from '../../resolve/book';
import type { LineFacts } from '../../resolve/env';
import type { Term } from '../../working/term';
import { type Brick, brickNamed } from '../goods';
import { inRule } from '../lengths';
import type { Figure } from '../needs';
import type { Site } from '../repair/site';
import { type Beside, comparedWith } from './compare';
import { orderIn, ranked, whyBefore } from './rank';
import { honestOf, quotedOf } from './says';
import { stoodIn } from './stood';
import type { Candidate, Matching } from './types';

export type { Candidate, Matching } from './types';

/** More candidates than these are not looked at. */
const MOST_CANDIDATES = 20;

/**
 * `short` is what is bought. Nothing where no brick is bought, where neither line names one, and in the runs of a
 * sample, which ask for amounts alone.
 */
export function matchingIn(site: Site, short: Term | undefined): Matching | undefined {
  const { env, masonry } = site;
  const bricks = short && isBought(short) && env.pick === 'middle' ? bricksIn(site) : [];
  if (!short || !bricks.length) return undefined;
  const stood = stoodIn(site);
  const order = orderIn(env);
  const beside: Beside = { stood, mix: masonry.mix, short, env };
  const chosen = site.facts.line('match') && site.match.name;
  const all = bricks.map((brick) => comparedWith(brick, brick.name === chosen, beside));
  const candidates = ranked(all, stood, order).map((one, i, sorted): Candidate => {
    const next = sorted[i + 1];
    const why = next && whyBefore(one, next, stood, order, env);
    return { ...one, rank: i + 1, why, honest: honestOf(one, stood, env) };
  });
  return { stood, order, candidates };
}

/** None is, where all that comes down is laid again. What is still to be measured may be. */
function isBought(short: Term): boolean {
  return short.value.gt(0) || short.gaps.length > 0;
}

/** Those of the list and the one that is chosen, each once, as far as any file knows them. */
function bricksIn({ facts, match }: Site): Brick[] {
  const line = facts.line('candidates');
  const named = line ? namedIn(line) : [];
  const all = facts.line('match') ? [...named, match] : named;
  const known = all.filter((brick) => brick.facts);
  return known.filter((brick, i) => known.findIndex((b) => b.name === brick.name) === i);
}

function namedIn(line: LineFacts): Brick[] {
  const value = line.values.bricks;
  if (value?.kind !== 'list') return [];
  return value.of.slice(0, MOST_CANDIDATES).map(({ brick }) => {
    const at = brick ? originOf(line.block, brick) : line.origin;
    return brickNamed(wordOf(brick), line.env, at);
  });
}

/** What a reader may ask for of each candidate; the one brick of a `match` line has figures of the repair itself. */
export function matchingFigures(site: Site, matching: Matching | undefined): Figure[] {
  if (!matching || !site.facts.line('candidates')) return [];
  return matching.candidates.flatMap(({ brick, bed, buy }) => {
    const figure = (key: string, label: string, term: Term | undefined): Figure[] =>
      term ? [{ key: `match.${brick.name}.${key}`, term: labelled(term, label, brick) }] : [];
    return [
      ...figure('joint', phrase`bed joint`, bed && inRule(site.env, bed.joint)),
      ...figure('drift', phrase`drift`, bed?.drift && inRule(site.env, bed.drift.term)),
      ...figure('cost', phrase`cost`, buy.cost),
      ...figure('left', phrase`left over`, buy.left),
    ];
  });
}

/** None of them is in the price, but what is bought: a reader has to see that they are compared. */
function labelled(term: Term, label: string, { title }: Brick): Term {
  return { ...term, label: phrase`Matched by ${title}, ${label}` };
}

/** Of the brick that is bought, where it is another than what stands; a `fit gauge cut` line has it cut to a height. */
export function matchingSays(site: Site, matching: Matching | undefined, cut: boolean): string[] {
  const one = matching?.candidates.find(({ chosen }) => chosen);
  if (!matching || !one || one.brick.name === site.masonry.brick.name) return [];
  return quotedOf(one, matching.stood, cut, site.env);
}
