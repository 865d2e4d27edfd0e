/** What a client keeps back and pays as the firm’s tax: it is shown, and changes no price. */

import { ZERO } from '../../../shared/exact';
import { phrase } from '../../../shared/phrase';
import type { Setting } from '../resolve/book';
import { type Env, LineFacts } from '../resolve/env';
import { cents, counted, difference, most, share, sum, type Term } from '../working/term';
import { allOfPrice } from './settings';

export interface Deduction {
  readonly title: string;
  readonly line: LineFacts;
  readonly of: 'labour' | 'price' | 'total';
  readonly rate: Term;
  /** What it is a part of. */
  readonly base: Term;
  readonly amount: Term;
}

interface Bases {
  /** Before tax. */
  readonly net: Term;
  readonly total: Term;
  readonly materials: Term;
  readonly others: Term;
}

export function deductionsFrom(bases: Bases, env: Env): Deduction[] {
  return allOfPrice(env, 'deducted').flatMap((line) => {
    const said = line.values.scheme ? schemeOf(line, env) : line;
    return said ? [deduction(line, said, bases, env)] : [];
  });
}

/** The nearest line of that scheme in any defaults. */
function schemeOf(line: LineFacts, env: Env): LineFacts | undefined {
  const word = line.word('scheme');
  const found = schemes(env).find((s) => schemeWord(s) === word);
  return found && new LineFacts(found.block, found.line, env);
}

export function schemes(env: Env): readonly Setting[] {
  return env.book.all('defaults', 'deduction');
}

export function schemeWord({ line }: Setting): string {
  const value = line.values.scheme;
  return value && 'text' in value ? value.text : '';
}

function deduction(line: LineFacts, said: LineFacts, bases: Bases, env: Env): Deduction {
  const { code, digits } = env.money;
  const title = said.word('title');
  const of = said.word('of') as Deduction['of'];
  const rate = said.term('share', title);
  const base = baseOf(of, bases, env);
  return {
    title,
    line,
    of,
    rate,
    base,
    amount: cents(title, share(title, code, rate, base), digits),
  };
}

function baseOf(of: Deduction['of'], { net, total, materials, others }: Bases, env: Env): Term {
  if (of === 'total') return total;
  if (of === 'price') return net;
  const { code } = env.money;
  const bought = sum(phrase`materials and other costs`, code, [materials, others]);
  const labour = difference(phrase`price before tax, without them`, code, net, bought);
  const none = counted(phrase`none`, ZERO, code, { note: phrase`there is no less than none` });
  return most(phrase`Labour in the price`, code, labour, none);
}
