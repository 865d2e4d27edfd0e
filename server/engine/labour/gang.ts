/** Hours and what they cost: the gang together, and the days it comes. */
import { phrase } from '../../../shared/phrase';
import { type Env, LineFacts } from '../resolve/env';
import { envBy, type Partner } from '../resolve/partners';
import { perTime } from '../resolve/per';
import { counted, missing, type Origin, product, quotient, sum, type Term } from '../working/term';
import { dayOf } from './day';

export interface Gang {
  /** What an hour of all of them costs. */
  readonly rate: Term;
  /** How many lay bricks: those of the trade named first. */
  readonly laying: Term;
  /** How many serve those who lay: all others. Nothing when nobody does. */
  readonly serving?: Term;
  readonly day: Term;
  /** Where its outputs are looked up: of a partner’s gang, its own. */
  readonly by?: Env;
}

/** Each trade's hourly rate times how many of it there are. */
export function gangOf(env: Env): Gang {
  const setting = env.book.setting('labour', 'gang');
  const day = dayOf(env);
  if (!setting) {
    const rate = missing(
      phrase`gang`,
      env.money.code,
      phrase`no gang is given: a labour block names who works and what an hour costs`,
    );
    return {
      rate,
      laying: counted(phrase`bricklayers`, 1, '', { note: phrase`one, as no gang is given` }),
      day,
    };
  }
  const people = peopleOf(new LineFacts(setting.block, setting.line, env)).map((p) => ({
    ...p,
    rate: rateOf(p.trade, env, p.origin, day),
  }));
  const rates = people.map(({ trade, count, rate }) =>
    product(phrase`${trade}, an hour`, env.money.code, [count, rate]),
  );
  const laying = layingOf(people);
  return {
    rate: sum(phrase`the gang, an hour`, env.money.code, rates),
    laying: { ...laying.count, note: phrase`the trade with the highest rate lays` },
    serving: servingOf(people.filter((p) => p !== laying)),
    day,
  };
}

/** The gang of a partner firm, by its own file. */
export function gangBy(partner: Partner, env: Env): Gang {
  const by = envBy(partner, env);
  return { ...gangOf(by), by };
}

/**
 * Those who lay: of the trade with the highest rate, whatever the order they are named in (common practice: the
 * skilled trade costs most). Of two as dear, the first.
 */
function layingOf<P extends { count: Term; rate: Term }>(people: readonly P[]): P {
  return people.reduce((a, b) => (b.rate.value.gt(a.rate.value) ? b : a));
}

function servingOf(others: readonly { count: Term }[]): Term | undefined {
  const hands = sum(
    phrase`who serve`,
    '',
    others.map((p) => p.count),
  );
  return hands.value.isZero() ? undefined : hands;
}

function peopleOf(line: LineFacts) {
  const list = line.values.gang;
  const of = list?.kind === 'list' ? list.of : [];
  return of.map(({ count, countOf }) => {
    const trade = countOf && 'text' in countOf ? countOf.text : '';
    const origin: Origin = { block: line.block, span: count!.span };
    return { trade, origin, count: line.termOf(count, trade, '') };
  });
}

function rateOf(trade: string, env: Env, origin: Origin, day: Term): Term {
  const known = env.book
    .all('labour', 'trade')
    .find((s) => isTrade(s.line.syntax.key!.text, trade));
  if (!known)
    return missing(
      phrase`rate of ${trade}`,
      env.money.code,
      phrase`no labour line gives the rate of a ${trade}`,
      origin,
    );
  const line = new LineFacts(known.block, known.line, env);
  const rate = line.term('rate', phrase`rate of a ${trade}`);
  const per = perTime(line.word('unit'));
  if (per === 'day') return quotient(phrase`rate of a ${trade}`, env.money.code, rate, day);
  return per ? rate : perNothing(phrase`the rate of a ${trade}`, line, env.money.code);
}

/** A rate per a word that is neither an hour nor a day. */
export function perNothing(what: string, line: LineFacts, unit: string): Term {
  return missing(what, unit, phrase`${what} is neither per h nor per day`, line.at('unit'));
}

/** `2 bricklayers` names the trade `bricklayer`. */
export function isTrade(trade: string, said: string): boolean {
  return trade === said || `${trade}s` === said;
}
