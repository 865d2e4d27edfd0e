/** How long a gang takes over a task: what one who lays does in an hour, and what one who serves keeps going. */
import { phrase } from '../../../shared/phrase';
import { unitNamed } from '../../../shared/units';
import { inUnit } from '../brickwork/lengths';
import { type Env, LineFacts } from '../resolve/env';
import { perTime } from '../resolve/per';
import { missing, most, named, quotient, type Term } from '../working/term';
import { type Gang, perNothing } from './gang';

/** The same work measured in other ways, such as the area and the volume that bricks make: an output may be in either. */
export type Otherwise = () => readonly Term[];

/** How much is done of a task, and by whom. */
export interface Doing {
  readonly task: string;
  readonly amount: Term;
  readonly env: Env;
  readonly gang: Gang;
  readonly otherwise?: Otherwise;
}

/**
 * The gang’s hours for an amount of a task: the amount, by what one bricklayer does in an hour, by how many lay. Where
 * others serve them and a `serving` line says how much one of those keeps going, the slower of the two (common practice).
 */
export function taskHours(
  task: string,
  label: string,
  amount: Term,
  env: Env,
  gang: Gang,
  otherwise?: Otherwise,
): Term {
  const doing: Doing = { task, amount, env, gang, otherwise };
  const laid = shared('output', phrase`${label}, one bricklayer`, doing);
  if (!laid) return missing(label, 'h', phrase`no output is given for ${task}`, amount.origin);
  const laying = label === laid.label ? laid : named(label, laid);
  if (!gang.serving) return laying;
  const served = shared('serving', phrase`${label}, one who serves`, doing);
  return served ? most(label, 'h', laid, served, phrase`the slower of laying and serving`) : laying;
}

/** By all who do it. Nothing where no line says how much one does. */
function shared(kind: 'output' | 'serving', label: string, doing: Doing): Term | undefined {
  const alone = byOne(kind, label, doing);
  const { gang } = doing;
  const hands = kind === 'output' ? gang.laying : gang.serving!;
  if (!alone || hands.value.eq(1)) return alone;
  return quotient(kind === 'output' ? phrase`laying` : phrase`serving`, 'h', alone, hands);
}

/** By one alone; nothing where no line says how much that is. */
export function byOne(
  kind: 'output' | 'serving',
  label: string,
  { task, amount, env, gang, otherwise = () => [] }: Doing,
): Term | undefined {
  const from = gang.by ?? env;
  const setting = from.book.setting(kind, task);
  if (!setting) return undefined;
  const line = new LineFacts(setting.block, setting.line, from);
  const said = line.term(
    'amount',
    kind === 'output' ? phrase`${task}, one bricklayer` : phrase`${task}, served by one`,
  );
  const per = perTime(line.word('unit'));
  if (!per)
    return perNothing(
      kind === 'output' ? phrase`the output of ${task}` : phrase`the serving of ${task}`,
      line,
      'h',
    );
  const reckoned = alike(said, amount) ? amount : otherwise().find((other) => alike(said, other));
  if (!reckoned)
    return missing(
      label,
      'h',
      kind === 'output'
        ? phrase`the output of ${task} is in ${said.unit}, but ${task} is reckoned in ${amount.unit}`
        : phrase`the serving of ${task} is in ${said.unit}, but ${task} is reckoned in ${amount.unit}`,
      line.at('amount'),
    );
  const output =
    per === 'day' ? quotient(phrase`${task}, an hour`, said.unit, said, gang.day) : said;
  return quotient(label, 'h', reckoned, anHour(output, reckoned.unit));
}

/** An output in the unit of what is laid, said as what it is: so much in an hour. */
function anHour(output: Term, unit: string): Term {
  const hourly = (term: Term, of: string) => (of ? { ...term, unit: `${of}/h` } : term);
  const converted = inUnit(output, unit);
  if (converted === output) return hourly(output, unit);
  return { ...hourly(converted, unit), args: [hourly(output, output.unit)] };
}

/** Whether one can be divided by the other: an output in square metres says nothing of bricks. */
function alike(a: Term, b: Term): boolean {
  return !a.unit || !b.unit || unitNamed(a.unit)?.dimension === unitNamed(b.unit)?.dimension;
}
