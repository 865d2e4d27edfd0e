/** A comparison as plain data, one way round or the other: what is new the one way is gone the other way. */
import type { Comparison, FigureChange, LineChange, MoneyPart } from '../../server/engine/compare';

type Way = 'on' | 'back';

const FLIPPED: Readonly<Record<string, string>> = { new: 'gone', gone: 'new' };

export function plainOf(found: Comparison, way: Way = 'on') {
  const flip = (change: string) => (way === 'on' ? change : (FLIPPED[change] ?? change));
  const [old, now] = way === 'on' ? (['before', 'after'] as const) : (['after', 'before'] as const);
  const line = (each: LineChange) =>
    [flip(each.change), each[old]?.meansAll, each[now]?.meansAll].join(' | ');
  // A difference of two units is told in that of the later.
  const by = ({ before, after, difference }: FigureChange) =>
    before && after && before.unit !== after.unit ? 'units' : amount(difference, way);
  const figure = (each: FigureChange) =>
    [each[old]?.value.toFixed(), each[now]?.value.toFixed(), by(each)].join(' ');
  const part = (each: MoneyPart) => [each.key, amount(each.difference, way)].join(' ');
  const { cautions, findings } = found;
  return {
    nothing: found.nothing,
    reordered: found.reordered,
    idle: found.idle,
    work: found.work
      .map((each) => ({
        change: flip(each.change),
        names: [each[old]?.name, each[now]?.name],
        lines: each.lines.map(line).sort(),
        figures: each.figures.map(figure).sort(),
      }))
      .sort(byText),
    facts: found.facts
      .map((each) => [
        flip(each.change),
        each[old]?.meansAll,
        each[now]?.meansAll,
        ...each.lines.map(line).sort(),
      ])
      .sort(byText),
    figures: found.figures.map(figure).sort(),
    parts: found.money?.parts.map(part).sort(),
    works: found.money?.works.map((each) => amount(each.difference, way)).sort(),
    cautions: [cautions, cautions].map((of, i) =>
      (i === (way === 'on' ? 0 : 1) ? of.new : of.gone).map(({ caution }) => caution.code).sort(),
    ),
    findings: [findings, findings].map((of, i) =>
      (i === (way === 'on' ? 0 : 1) ? of.new : of.gone).map(({ code }) => code).sort(),
    ),
  };
}

function amount(value: MoneyPart['difference'] | undefined, way: Way): string | undefined {
  return value && (way === 'on' ? value : value.neg()).add(0).toDecimalPlaces(12).toFixed();
}

function byText(a: unknown, b: unknown): number {
  const [x, y] = [JSON.stringify(a), JSON.stringify(b)];
  return x < y ? -1 : x > y ? 1 : 0;
}
