/**
 * What becomes of the bricks that come down. Each is laid again whole, leaves a half worth keeping, or is broken;
 * halves go where no face shows, and two of them save a brick.
 */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { defaultTerm, type LineFacts } from '../../resolve/env';
import {
  difference,
  down,
  fact,
  least,
  named,
  product,
  quotient,
  share,
  sum,
  type Term,
  up,
} from '../../working/term';
import type { Mending } from './mending';
import type { Site } from './site';

export interface Salvage {
  /** All that comes down, the bricks of copings too. */
  readonly down?: Term;
  readonly wanted?: Term;
  /** Laid again whole; as many more are cleaned as break at it. */
  readonly reused?: Term;
  readonly cleaned?: Term;
  readonly broken?: Term;
  /** Bricks that leave a half, one each. */
  readonly halves?: Term;
  /** Halves that are laid, and the bricks that they save. */
  readonly used?: Term;
  readonly saved?: Term;
  /** Places for halves. */
  readonly places?: Term;
  readonly where: string;
  /** To be bought. */
  readonly short?: Term;
}

/** Two, as far as the line of the halves is concerned. */
function toABrick({ origin }: Term): Term {
  return fact(phrase`halves to a brick`, exact(2), '', origin);
}

/** What comes down, shared out: laid again, broken, kept as halves; and what is short. */
export function salvageOf(site: Site, mendings: readonly Mending[]): Salvage {
  const { facts } = site;
  const all = total(phrase`Bricks down`, mendings, (m) => m.down);
  const wanted = total(phrase`Bricks wanted`, mendings, (m) => m.wanted);
  const reused = all && reusedOf(facts.line('salvage'), all);
  const halves = all && halvesOf(facts.line('halves'), all, reused);
  const found = mendings.find((m) => m.places)?.places;
  const places = found?.halves ?? fact(phrase`places`, 0, '', facts.line('halves')?.origin);
  const saved = halves && savedBy(halves, places);
  return {
    down: all,
    wanted,
    reused,
    cleaned: reused && cleanedFor(reused, all, halves, site),
    broken: all && left(phrase`Bricks broken`, all, [reused, halves]),
    halves,
    saved,
    used:
      saved &&
      product(phrase`Halves laid${found ? ` ${found.where}` : ''}`, '', [saved, toABrick(halves!)]),
    places,
    where: found?.where ?? '',
    short: wanted && left(phrase`Bricks short`, wanted, [reused, saved]),
  };
}

function total(
  label: string,
  mendings: readonly Mending[],
  of: (m: Mending) => Term | undefined,
): Term | undefined {
  const terms = mendings.flatMap((m) => of(m) ?? []);
  return terms.length ? sum(label, 'bricks', terms) : undefined;
}

/** Whole bricks only, and no more than come down. */
function reusedOf(line: LineFacts | undefined, all: Term): Term | undefined {
  if (!line) return undefined;
  if (line.values.bricks)
    return least(
      phrase`Bricks reused`,
      'bricks',
      line.term('bricks', phrase`salvage`, 'bricks'),
      all,
    );
  const part = share(
    phrase`bricks that clean up`,
    'bricks',
    line.term('share', phrase`salvage`, '%'),
    all,
  );
  return down(phrase`Bricks reused`, 'bricks', part);
}

/** Of what comes down and is not laid again whole. */
function halvesOf(line: LineFacts | undefined, all: Term, reused: Term | undefined) {
  if (!line) return undefined;
  const said = line.values.count
    ? line.term('count', phrase`halves`, '')
    : down(
        phrase`halves`,
        '',
        share(phrase`halves`, '', line.term('share', phrase`halves`, '%'), all),
      );
  const rest = reused ? difference(phrase`bricks not laid again`, '', all, reused) : all;
  return { ...least(phrase`Halves worth keeping`, '', said, rest), origin: line.origin };
}

/** In pairs: a brick is bought for an odd half all the same. */
function savedBy(halves: Term, places: Term): Term {
  const laid = least(phrase`halves with a place`, '', halves, places);
  return down(
    phrase`Bricks saved by halves`,
    'bricks',
    quotient(phrase`pairs`, '', laid, toABrick(halves)),
  );
}

/** So many more than are laid again as break at it, as long as there are any. */
function cleanedFor(reused: Term, all: Term, halves: Term | undefined, { env }: Site): Term {
  const loss = defaultTerm(env, 'cleaning-loss', 'share', phrase`lost in cleaning`);
  const whole = fact(phrase`all`, exact(100), '%', loss.origin);
  const kept = difference(phrase`come out of it`, '%', whole, loss);
  const tried = quotient(
    phrase`bricks to clean`,
    'bricks',
    product('', 'bricks', [reused, whole]),
    kept,
  );
  const most = halves ? difference(phrase`all but halves`, 'bricks', all, halves) : all;
  return least(
    phrase`Bricks cleaned`,
    'bricks',
    up(phrase`bricks to clean`, 'bricks', tried),
    most,
  );
}

function left(label: string, all: Term, less: readonly (Term | undefined)[]): Term {
  const terms = less.filter((term) => term !== undefined);
  const [only] = terms;
  if (!only) return named(label, all);
  const gone = terms.length > 1 ? sum(phrase`laid again`, 'bricks', terms) : only;
  return difference(label, 'bricks', all, gone);
}
