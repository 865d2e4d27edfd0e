/** From all that the work takes to what the client pays. Each step is a term, so each can show its working. */

import { exact, roundTo } from '../../../shared/exact';
import { unitNamed } from '../../../shared/units';
import { inUnit } from '../brickwork/lengths';
import type { Figure, Needs, WasteNeed } from '../brickwork/needs';
import { type Around, aroundOf, daysOf, paidHours, visitsOf } from '../labour/day';
import { type Gang, gangOf } from '../labour/gang';
import { loadingOut } from '../labour/load-out';
import { batch, type MixBatch } from '../mortar/batch';
import type { Setting } from '../resolve/book';
import { defaultTerm, type Env, LineFacts } from '../resolve/env';
import { perTime, perVisit } from '../resolve/per';
import {
  cents,
  counted,
  difference,
  type Gap,
  missing,
  most,
  named,
  nearest,
  product,
  share,
  sum,
  type Term,
  withGaps,
} from '../working/term';
import { buyBricks, buyMaterial, buyPieces, buyReady, type Purchase, pooled } from './buying';

import { jobWaste, wasteCost, wasteIn } from './waste';

export interface Stage {
  readonly title: string;
  readonly line: LineFacts;
  readonly amount: Term;
}

export interface JobPrice {
  readonly purchases: readonly Purchase[];
  readonly batches: readonly MixBatch[];
  readonly gang: Gang;
  /** What of every day goes on other things than the work. */
  readonly around: Around;
  /** Bricks unloaded and stacked out; nothing where the firm does not reckon it. */
  readonly loading?: Term;
  /** Of the work itself, all of the gang together. */
  readonly hours: Term;
  readonly days: Term;
  /** Those hours, and what of each day goes on other things. */
  readonly paid: Term;
  readonly labour: Term;
  readonly materials: Term;
  readonly cost: Term;
  readonly price: Term;
  readonly tax: Term;
  readonly taxName: string;
  readonly total: Term;
  readonly stages: readonly Stage[];
  /** In the order a reader wants them. */
  readonly figures: readonly Figure[];
}

/** `lost`: what the files say and could not be taken in, so that the price lacks it. */
export function priceOf(needs: readonly Needs[], env: Env, lost: readonly Gap[] = []): JobPrice {
  const code = env.money.code;
  const { purchases, batches } = bought(needs, env);
  const gang = gangOf(env);
  const around = aroundOf(env);
  const loading = loadingOut(purchases, gang, env);
  const hours = sum('Hours of the gang', 'h', [
    ...needs.flatMap((n) => n.tasks.map((t) => t.hours)),
    ...(loading ? [loading] : []),
  ]);
  const days = atLeastFor(needs, daysOf(hours, gang.day, around, env));
  const visits = visitsOf(days);
  const paid = paidHours(hours, visits, around);
  const materials = sum(
    'Materials',
    code,
    purchases.map((p) => p.cost),
  );
  const labour = cents('Labour', product('labour', code, [paid, gang.rate]), env.money.digits);
  const travel = sum('Travel', code, travelOf(visits, env));
  const waste = wasteIn(needs);
  const others = sum('Other costs', code, otherCosts(days, waste, env));
  const cost = withGaps(sum('Cost', code, [materials, labour, travel, others]), lost);
  const top = marked(cost, env);
  const bricks = sum(
    'Bricks to buy',
    'bricks',
    purchases.filter((p) => p.kind === 'brick').map((p) => p.bought),
  );
  const figures: Figure[] = [
    { key: 'bricks', term: bricks },
    { key: 'hours', term: named('Hours', hours) },
    { key: 'days', term: named('Days on site', days) },
    ...(paid === hours ? [] : [{ key: 'paid', term: paid }]),
    ...(loading ? [{ key: 'load-out', term: loading }] : []),
    ...jobWaste(waste),
    { key: 'materials', term: materials },
    { key: 'labour', term: labour },
    { key: 'travel', term: travel },
    { key: 'others', term: others },
    { key: 'cost', term: cost },
    { key: 'time', term: timeShare(labour, cost) },
    ...top.figures,
  ];
  return {
    purchases,
    batches,
    gang,
    around,
    loading,
    hours,
    days,
    paid,
    labour,
    materials,
    cost,
    ...top,
    stages: stagesOf(top.total, env),
    figures,
  };
}

/** What part of all that the job costs is the time of those who do it. */
function timeShare(labour: Term, cost: Term): Term {
  const percent = cost.value.isZero() ? exact(0) : labour.value.div(cost.value).mul(100);
  return counted('Time, of the cost', roundTo(percent, 1), '%', {
    args: [labour, cost],
    note: 'labour in a hundred of the cost, to a tenth',
    again: ([of, all]) => (all ? (100 * of!) / all : 0),
  });
}

/** However few the hours, green work goes up no faster than a lift a day. */
function atLeastFor(needs: readonly Needs[], days: Term): Term {
  const least = needs.flatMap((n) => n.leastDays ?? []);
  const longest = least.reduce<Term | undefined>(
    (a, b) => (a?.value.gte(b.value) ? a : b),
    undefined,
  );
  // Where either hangs on a range, which is more may turn within it.
  const ranged = longest && (longest.ranged || days.ranged);
  return ranged || longest?.value.gt(days.value) ? most('days', 'days', days, longest!) : days;
}

function bought(needs: readonly Needs[], env: Env): { purchases: Purchase[]; batches: MixBatch[] } {
  const bricks = pooled(
    needs.flatMap((n) => n.bricks),
    (n) => n.brick,
  );
  const mixes = pooled(
    needs.flatMap((n) => n.mixes),
    (n) => n.mix,
  );
  const pieces = pooled(
    needs.flatMap((n) => n.pieces),
    (n) => n.material,
  );
  const batches = [...mixes].map(([name, of]) => batch(name, of, env));
  const materials = pooled(
    batches.flatMap((b) => b.parts),
    (p) => p.material,
  );
  const purchases = [
    ...[...bricks].map(([name, of]) => buyBricks(name, of, env)),
    ...[...materials].map(([name, of]) =>
      buyMaterial(
        name,
        of.map((p) => p.volume),
        env,
        of[0]!.origin,
      ),
    ),
    ...batches.filter((b) => b.ready).map((b) => buyReady(b, env)),
    ...[...pieces].map(([name, of]) => buyPieces(name, of, env)),
  ];
  return { purchases, batches };
}

function facts(settings: readonly Setting[], env: Env): LineFacts[] {
  return settings.map((s) => new LineFacts(s.block, s.line, env));
}

function travelOf(days: Term, env: Env): Term[] {
  const code = env.money.code;
  const runs = facts(env.book.settings('travel', 'run'), env).map((line) => {
    const unit = unitNamed(line.word('unit'));
    if (unit?.dimension !== 'length') return perNothing('driving', line, env);
    const far = inUnit(line.term('distance', 'distance'), unit.name);
    const parts = [line.term('runs', 'runs a day'), far, line.term('rate', 'rate'), days];
    return cents('Driving', product('driving', code, parts), env.money.digits);
  });
  const charges = facts(env.book.settings('travel', 'charge'), env).map((line) => {
    const title = line.word('title');
    const money = line.term('money', title);
    const per = perVisit(line.word('unit'));
    if (!per) return perNothing(title, line, env);
    const all = per === 'job' ? money : product(title, code, [money, days]);
    return cents(title, all, env.money.digits);
  });
  return [...runs, ...charges];
}

/** A rate per a word that cannot be reckoned by. */
function perNothing(what: string, line: LineFacts, env: Env, key = 'unit'): Term {
  const why = `${what} is per “${line.word(key)}”, which cannot be reckoned by`;
  return missing(what, env.money.code, why, line.at(key));
}

function otherCosts(days: Term, waste: WasteNeed | undefined, env: Env): Term[] {
  // A heading that could not be read says nothing here: that its line is lost is told already.
  const read = env.book.blocksOf('cost').filter((b) => b.read.heading?.values.each);
  return read.map((block) => {
    const line = new LineFacts(block, block.read.heading!, env);
    const title = line.word('title') || line.word('name');
    if (line.values.of) return wasteCosts(title, line, waste, env);
    const parts = [line.term('count', 'number'), line.term('each', `${title}, each`)];
    if (!line.values.per) return costOf(title, parts, env);
    if (perTime(line.word('per')) !== 'day') return perNothing(title, line, env, 'per');
    return costOf(title, [...parts, days], env);
  });
}

function wasteCosts(title: string, line: LineFacts, waste: WasteNeed | undefined, env: Env): Term {
  const cost = wasteCost(title, line, waste, env);
  return cost ? cents(title, cost, env.money.digits) : perNothing(title, line, env);
}

/** Rounded where it arises, like every cost: what is printed adds up. */
function costOf(title: string, parts: readonly Term[], env: Env): Term {
  return cents(title, product(title, env.money.code, parts), env.money.digits);
}

/** A line of the price block, else the default of the same word. */
function step(env: Env, key: string, value: string, label: string): Term {
  const setting = env.book.setting('price', key);
  return setting
    ? new LineFacts(setting.block, setting.line, env).term(value, label)
    : defaultTerm(env, key, value, label);
}

/** Overhead on cost; profit on both; not below the least price; rounded; then tax on what is left. */
function marked(cost: Term, env: Env) {
  const { code, digits } = env.money;
  const overhead = cents(
    'Overhead',
    share('overhead', code, step(env, 'overhead', 'share', 'overhead'), cost),
    digits,
  );
  const before = sum('Cost and overhead', code, [cost, overhead]);
  const profit = cents(
    'Profit',
    share('profit', code, step(env, 'profit', 'share', 'profit'), before),
    digits,
  );
  const worked = sum('Worked out', code, [before, profit]);
  const least = most(
    'Not below the least price',
    code,
    worked,
    step(env, 'least', 'least', 'least price'),
  );
  const rounded = nearest(
    'Price before tax',
    code,
    least,
    step(env, 'round', 'to', 'rounded to'),
    'half away from zero',
  );
  const price = cents('Price before tax', rounded, digits);
  const line = taxLine(env);
  const rate = line?.term('rate', 'tax') ?? counted('tax', 0, '%', { note: 'no tax line' });
  const tax = cents('Tax', share('tax', code, rate, price), digits, 'half away from zero');
  const total = sum('Price', code, [price, tax]);
  const figures: Figure[] = [
    { key: 'overhead', term: overhead },
    { key: 'profit', term: profit },
    { key: 'net', term: price },
    { key: 'tax', term: tax },
    { key: 'price', term: total },
  ];
  return { price, tax, taxName: line?.word('name') || 'Tax', total, figures };
}

function taxLine(env: Env): LineFacts | undefined {
  const setting = env.book.setting('job', 'tax') ?? env.book.setting('defaults', 'tax');
  return setting && new LineFacts(setting.block, setting.line, env);
}

/** Stages of the price; `rest` takes what the others leave, so that they add up to the penny. */
function stagesOf(total: Term, env: Env): Stage[] {
  const { code, digits } = env.money;
  const lines = facts(env.book.settings('price', 'stage'), env);
  const amounts = lines.map((line) => {
    if (line.values.share)
      return cents(line.word('title'), share('', code, line.term('share', 'share'), total), digits);
    return line.values.amount
      ? cents(line.word('title'), line.term('amount', line.word('title')), digits)
      : undefined;
  });
  const said = amounts.filter((a): a is Term => a !== undefined);
  const rest = difference('the rest', code, total, sum('other stages', code, said));
  return lines.map((line, i) => ({
    title: line.word('title'),
    line,
    amount: amounts[i] ?? rest,
  }));
}
