/** From mixes to weights, packs and money, in plain arithmetic. Nothing here comes from the engine. */
import { cents, sum, up } from './arithmetic';

/** A mix as it is ordered. Volumes are all litres, or all cubic feet. */
export interface Mix {
  /** Wet, with what is lost. */
  readonly wet: number;
  /** All its parts loose. */
  readonly dry: number;
  readonly parts: Readonly<Record<string, number>>;
}

/** How a material is sold. Weights are all kg, or all lb. */
export interface Sold {
  /** One loose litre or cubic foot of it. */
  readonly weighs: number;
  readonly pack: number;
  readonly price: number;
}

/** Of each part of a mix its share of the loose volume. */
function loose({ dry, parts }: Mix): Record<string, number> {
  const all = sum(...Object.values(parts));
  return Object.fromEntries(
    Object.entries(parts).map(([name, part]) => [name, (dry * part) / all]),
  );
}

/** `mix.`: each mix wet, and each of its parts loose. */
function mixed(mixes: Readonly<Record<string, Mix>>): Record<string, number> {
  const figures: Record<string, number> = {};
  for (const [name, mix] of Object.entries(mixes)) {
    figures[`mix.${name}`] = mix.wet;
    for (const [part, volume] of Object.entries(loose(mix)))
      figures[`mix.${name}.${part}`] = volume;
  }
  return figures;
}

/** `need.`, `buy.` and `cost.` of one thing. */
export function purchase(name: string, needed: number, bought: number, cost: number) {
  return { [`need.${name}`]: needed, [`buy.${name}`]: bought, [`cost.${name}`]: cents(cost) };
}

/** The mixes and what goes into them: what it weighs in all the mixes together, in whole packs. */
export function materialsOf(
  mixes: Readonly<Record<string, Mix>>,
  sold: Readonly<Record<string, Sold>>,
): Record<string, number> {
  const volumes = Object.values(mixes).map(loose);
  const figures = mixed(mixes);
  for (const [name, { weighs, pack, price }] of Object.entries(sold)) {
    const weight = sum(...volumes.map((volume) => volume[name] ?? 0)) * weighs;
    const packs = up(weight / pack);
    Object.assign(figures, purchase(name, weight, packs, packs * price));
  }
  return figures;
}
