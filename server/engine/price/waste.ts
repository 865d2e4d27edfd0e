/** Waste of the whole job, and what is paid by its weight, by its volume, or by the skip. */
import { phrase } from '../../../shared/phrase';
import { unitNamed } from '../../../shared/units';
import { inUnit } from '../brickwork/lengths';
import type { Figure, Needs, WasteNeed } from '../brickwork/needs';
import type { Env, LineFacts } from '../resolve/env';
import { counted, named, product, quotient, sum, type Term, up } from '../working/term';

/** Nothing where none of the work takes anything away. */
export function wasteIn(needs: readonly Needs[]): WasteNeed | undefined {
  const all = needs.flatMap((n) => n.waste ?? []);
  const [first] = all;
  if (!first) return undefined;
  const total = (label: string, of: (w: WasteNeed) => Term) =>
    all.length > 1 ? sum(label, of(first).unit, all.map(of)) : named(label, of(first));
  return {
    volume: total(phrase`Waste, loose`, (w) => w.volume),
    mass: total(phrase`Mass of the waste`, (w) => w.mass),
  };
}

export function jobWaste(waste: WasteNeed | undefined): Figure[] {
  if (!waste) return [];
  return [
    { key: 'waste', term: waste.volume },
    { key: 'waste-mass', term: waste.mass },
  ];
}

/** So much a tonne or a cubic metre; by a skip that holds so much, whole ones. Nothing for a unit of neither. */
export function wasteCost(
  title: string,
  line: LineFacts,
  waste: WasteNeed | undefined,
  env: Env,
): Term | undefined {
  const each = line.term('each', phrase`${title}, each`);
  if (line.values.content) {
    const content = line.term('content', phrase`holds`);
    const amount = amountIn(content.unit, waste);
    return amount && product(title, env.money.code, [loads(title, amount, content), each]);
  }
  const amount = amountIn(line.word('unit'), waste);
  return amount && product(title, env.money.code, [amount, each]);
}

function loads(title: string, amount: Term, content: Term): Term {
  return up(title, '', quotient(phrase`loads`, '', amount, content), phrase`whole ones`);
}

function amountIn(name: string, waste: WasteNeed | undefined): Term | undefined {
  const unit = unitNamed(name);
  const { dimension } = unit ?? {};
  if (!unit || (dimension !== 'mass' && dimension !== 'volume')) return undefined;
  const of = dimension === 'mass' ? waste?.mass : waste?.volume;
  return of
    ? inUnit(of, unit.name)
    : counted(phrase`waste taken away`, 0, unit.name, { note: phrase`nothing is taken away` });
}
