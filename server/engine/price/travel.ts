/** Getting there: driving, and what is paid on the way. */
import { phrase } from '../../../shared/phrase';
import { unitNamed } from '../../../shared/units';
import { inUnit } from '../brickwork/lengths';
import type { Env, LineFacts } from '../resolve/env';
import { perVisit } from '../resolve/per';
import { cents, product, type Term } from '../working/term';
import { facts, perNothing } from './settings';

export function travelOf(days: Term, env: Env): Term[] {
  const runs = facts(env.book.settings('travel', 'run'), env);
  const charges = facts(env.book.settings('travel', 'charge'), env);
  return [
    ...runs.map((line) => runOf(line, days, env)),
    ...charges.map((c) => chargeOf(c, days, env)),
  ];
}

function runOf(line: LineFacts, days: Term, env: Env): Term {
  const unit = unitNamed(line.word('unit'));
  if (unit?.dimension !== 'length') return perNothing(phrase`driving`, line, env);
  const far = inUnit(line.term('distance', phrase`distance`), unit.name);
  const parts = [line.term('runs', phrase`runs a day`), far, line.term('rate', phrase`rate`), days];
  return cents(phrase`Driving`, product(phrase`driving`, env.money.code, parts), env.money.digits);
}

function chargeOf(line: LineFacts, days: Term, env: Env): Term {
  const title = line.word('title');
  const money = line.term('money', title);
  const per = perVisit(line.word('unit'));
  if (!per) return perNothing(title, line, env);
  const all = per === 'job' ? money : product(title, env.money.code, [money, days]);
  return cents(title, all, env.money.digits);
}
