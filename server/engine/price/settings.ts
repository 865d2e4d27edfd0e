/** Lines of the price block and their defaults. */
import { phrase } from '../../../shared/phrase';
import type { Setting } from '../resolve/book';
import { defaultLine, defaultTerm, type Env, LineFacts } from '../resolve/env';
import { counted, missing, type Term } from '../working/term';

export function facts(settings: readonly Setting[], env: Env): LineFacts[] {
  return settings.map((s) => new LineFacts(s.block, s.line, env));
}

/** The nearest line of the price block of any file. */
export function ofPrice(env: Env, key: string): LineFacts | undefined {
  const setting = env.book.setting('price', key);
  return setting && new LineFacts(setting.block, setting.line, env);
}

/** All such lines of the nearest file that has any. */
export function allOfPrice(env: Env, key: string): LineFacts[] {
  return facts(env.book.settings('price', key), env);
}

/** A line of the price block, else the default of the same word. */
export function step(env: Env, key: string, value: string, label: string): Term {
  const own = ofPrice(env, key);
  if (own) return own.term(value, label);
  if (inOtherMoney(env, key, value))
    return counted(label, 0, env.money.code, {
      note: phrase`the library’s is in another currency`,
    });
  return defaultTerm(env, key, value, label);
}

/** A library that ships rounds to its own country’s money: that says nothing of a job in another. */
function inOtherMoney(env: Env, key: string, value: string): boolean {
  const line = defaultLine(env, key);
  const money = line?.values[value];
  if (!line?.block.file.shipped || money?.kind !== 'money') return false;
  return money.currency !== env.money.code && money.currency !== env.money.sign;
}

/** A rate per a word that cannot be reckoned by. */
export function perNothing(what: string, line: LineFacts, env: Env, key = 'unit'): Term {
  const why = phrase`${what} is per “${line.word(key)}”, which cannot be reckoned by`;
  return missing(what, env.money.code, why, line.at(key));
}
