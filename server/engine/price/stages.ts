/** When the price is paid, and what of it is held back until later. */
import { phrase } from '../../../shared/phrase';
import type { Env, LineFacts } from '../resolve/env';
import { cents, difference, share, sum, type Term } from '../working/term';
import { allOfPrice, ofPrice } from './settings';

export interface Stage {
  readonly title: string;
  readonly line: LineFacts;
  /** Of the price with tax; all of them add up to it. */
  readonly amount: Term;
  /** Of that, what is held back; nothing where nothing is. */
  readonly held?: Term;
  /** What is paid when the stage is reached: all of them and what is held back add up to the price. */
  readonly due: Term;
}

export interface Retention {
  readonly line: LineFacts;
  readonly rate: Term;
  /** After the work is done; nothing where the line does not say. */
  readonly days?: Term;
  /** Held back of all stages, and paid when it is released. */
  readonly amount: Term;
}

export interface Staged {
  readonly stages: readonly Stage[];
  /** Nothing where there are no stages to hold it back of. */
  readonly retention?: Retention;
}

export function stagedOf(total: Term, env: Env): Staged {
  const line = ofPrice(env, 'retention');
  const rate = line?.term('share', phrase`held back`);
  const stages = amountsOf(total, env).map((stage) => heldOf(stage, rate, env));
  const held = stages.flatMap((s) => s.held ?? []);
  if (!line || !rate || !held.length) return { stages };
  const days = line.values.days && line.term('days', phrase`held back for`);
  return {
    stages,
    retention: { line, rate, days, amount: sum(phrase`Held back`, env.money.code, held) },
  };
}

function heldOf(stage: Omit<Stage, 'due'>, rate: Term | undefined, env: Env): Stage {
  const { title, amount } = stage;
  if (!rate) return { ...stage, due: amount };
  const { code, digits } = env.money;
  const held = cents(
    phrase`Held back of ${title}`,
    share(phrase`held back`, code, rate, amount),
    digits,
  );
  return { ...stage, held, due: difference(title, code, amount, held) };
}

/** `rest` takes what the others leave, so that they add up to the penny. */
function amountsOf(total: Term, env: Env): Omit<Stage, 'due'>[] {
  const { code } = env.money;
  const lines = allOfPrice(env, 'stage');
  const amounts = lines.map((line) => amountOf(line, total, env));
  const said = amounts.filter((a): a is Term => a !== undefined);
  const rest = difference(phrase`the rest`, code, total, sum(phrase`other stages`, code, said));
  return lines.map((line, i) => ({ title: line.word('title'), line, amount: amounts[i] ?? rest }));
}

function amountOf(line: LineFacts, total: Term, env: Env): Term | undefined {
  const { code, digits } = env.money;
  const title = line.word('title');
  if (line.values.share)
    return cents(title, share('', code, line.term('share', phrase`share`), total), digits);
  return line.values.amount ? cents(title, line.term('amount', title), digits) : undefined;
}
