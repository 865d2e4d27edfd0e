/** The answers to the questions of a template: from --set, from whoever sits there, or what stands there already. */

import { phrase } from '../../../shared/phrase';
import { type Ask, answerNow, askable, asksOf } from '../../engine/life/template';
import { type Answered, answered } from '../../engine/life/template/answer';
import { SourceFile } from '../../engine/workspace/source';
import { WrongUse } from '../exits';
import type { Io } from '../io';
import { near } from '../near';

/** What is wrong with a line of a text, in words; nothing when nothing is. */
export type Judge = (text: string, line: number) => string | undefined;

export interface Answer {
  readonly ask: Ask;
  /** What holds; nothing where the template leaves the line out and nobody has said it. */
  readonly value?: string;
  readonly from: 'set' | 'asked' | 'template';
}

export interface Filled {
  readonly text: string;
  readonly answers: readonly Answer[];
}

/** @throws WrongUse for a --set that asks of nothing, or is wrong */
export function filled(text: string, sets: readonly string[], judge: Judge, io: Io): Filled {
  const asks = asksOf(text);
  const given = setsOf(sets, asks);
  let now = text;
  const answers: Answer[] = [];
  let listening = io.ask !== undefined;
  for (const ask of asks) {
    const set = given.get(ask);
    if (set !== undefined) now = taken(now, ask, set, judge);
    const said = set === undefined && listening ? askedFor(now, ask, judge, io) : undefined;
    if (said === 'over') listening = false;
    else if (said) now = said.text;
    const from = set !== undefined ? 'set' : said && said !== 'over' ? 'asked' : 'template';
    answers.push({ ask, value: answerNow(ask, askable(new SourceFile('', now).blocks)), from });
  }
  return { text: now, answers };
}

function setsOf(sets: readonly string[], asks: readonly Ask[]): Map<Ask, string> {
  const found = new Map<Ask, string>();
  for (const set of sets) {
    const [, what, word, value] = /^\s*(\S+)\s+([^\s=]+)\s*=\s*(.*\S)\s*$/su.exec(set) ?? [];
    if (value === undefined)
      throw new WrongUse(
        phrase`--set ${set} cannot be read. Write it like this: --set "north length=7.4 m".`,
      );
    const ask = asks.find((each) => each.what === what && each.word === word);
    if (!ask) throw new WrongUse(notAsked(`${what} ${word}`, asks));
    if (found.has(ask)) throw new WrongUse(phrase`--set gives ${what} ${word} twice.`);
    found.set(ask, value);
  }
  return found;
}

function notAsked(name: string, asks: readonly Ask[]): string {
  const known = asks.map(({ what, word }) => `${what} ${word}`);
  const [meant] = near(name, known);
  const hint = meant
    ? phrase`Did you mean ${meant}?`
    : phrase`It asks for ${known.join(', ') || phrase`nothing`}.`;
  return phrase`The template does not ask for ${name}. ${hint}`;
}

/** @throws WrongUse */
function taken(text: string, ask: Ask, value: string, judge: Judge): string {
  const done = answered(text, ask, value)!;
  const wrong = wrongWith(done, judge);
  if (wrong) throw new WrongUse(phrase`--set “${ask.what} ${ask.word}=${value}”: ${wrong}`);
  return done.text;
}

function wrongWith({ fault, text, line }: Answered, judge: Judge): string | undefined {
  return fault?.message ?? judge(text, line);
}

/** So often one is asked again before what stands there holds. */
const MOST_TRIES = 20;

/** Nothing for an empty answer; `over` when no more answers come. */
function askedFor(text: string, ask: Ask, judge: Judge, io: Io): Answered | 'over' | undefined {
  const now = answerNow(ask, askable(new SourceFile('', text).blocks));
  for (let i = 0; i < MOST_TRIES; i++) {
    const said = io.ask!(`${ask.question}${now === undefined ? '' : ` [${now}]`} `);
    if (said === undefined) return 'over';
    if (!said.trim()) return undefined;
    const done = answered(text, ask, said)!;
    const wrong = wrongWith(done, judge);
    if (!wrong) return done;
    io.out(`  ${wrong}\n`);
  }
  return undefined;
}
