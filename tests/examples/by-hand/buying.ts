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

/** All that is bought. */
export function spentOn(bought: Readonly<Record<string, number>>): number {
  const costs = Object.entries(bought).filter(([key]) => key.startsWith('cost.'));
  return cents(sum(...costs.map(([, cost]) => cost)));
}

/** The mixes and what goes into them: what it weighs in all the mixes together, in whole packs; and how it is mixed. */
export function materialsOf(
  mixes: Readonly<Record<string, Mix>>,
  sold: Readonly<Record<string, Sold>>,
  uses: Readonly<Record<string, Use>>,
): Record<string, number> {
  const volumes = Object.values(mixes).map(loose);
  const figures = mixed(mixes);
  const left: Record<string, number> = {};
  for (const [name, { weighs, pack, price }] of Object.entries(sold)) {
    const weight = sum(...volumes.map((volume) => volume[name] ?? 0)) * weighs;
    const packs = up(weight / pack);
    left[name] = packs * pack - weight;
    Object.assign(figures, purchase(name, weight, packs, packs * price));
    figures[`left.${name}`] = left[name];
  }
  for (const [name, mix] of Object.entries(mixes))
    Object.assign(
      figures,
      inBatches(name, mix, uses[name]!),
      fromLeft(name, mix, uses[name]!, left, sold),
    );
  return figures;
}

/** How a mix is used up. Volumes are all litres, or all cubic feet. */
export interface Use {
  readonly mixer: number;
  /** Hours in which it is laid, those that it can be worked, and bricks laid in it; concrete goes by the mixer alone. */
  readonly hours?: number;
  readonly life?: number;
  /** Work that goes at several paces, in its order: litres of each as laid, and its hours. */
  readonly paces?: readonly (readonly [number, number])[];
  readonly bricks?: number;
  /** A square metre or foot of face pointed, with what is lost. */
  readonly pointing?: number;
  /** Metres or feet of joint to it. */
  readonly joints?: number;
}

/** `batches.`, `batch.`, `last.`, `over.`: no more at once than the mixer takes, or than is laid while it can be worked. */
function inBatches(name: string, mix: Mix, use: Use): Record<string, number> {
  const { size, count, last } = use.paces ? byTheClock(mix, use) : alike(mix, use);
  const figures: Record<string, number> = {
    [`batches.${name}`]: count,
    [`batch.${name}`]: size,
    [`last.${name}`]: last,
    [`over.${name}`]: size - last,
  };
  for (const [part, volume] of Object.entries(loose(mix)))
    figures[`batch.${name}.${part}`] = (volume * size) / mix.wet;
  return figures;
}

function alike({ wet }: Mix, { mixer, hours, life }: Use) {
  const size = Math.min(mixer, hours ? (wet / hours) * life! : mixer);
  const count = up(wet / size);
  return { size, count, last: wet - (count - 1) * size };
}

/** Batch after batch: laid until the tub is empty, the mortar too old, or the work done. */
function byTheClock({ wet }: Mix, { mixer, life, paces }: Use) {
  const all = sum(...paces!.map(([litres]) => litres));
  const left = paces!.map(([litres, hours]) => ({ litres: (litres * wet) / all, hours }));
  const sizes: number[] = [];
  while (left.length) {
    let [size, time] = [0, life!];
    while (left[0] && time > 1e-9 && mixer - size > 1e-9) {
      const { litres, hours } = left[0];
      const part = Math.min(1, (mixer - size) / litres, time / hours);
      size += part * litres;
      time -= part * hours;
      left[0] = { litres: litres * (1 - part), hours: hours * (1 - part) };
      if (left[0].litres < 1e-9) left.shift();
    }
    sizes.push(size);
  }
  return { size: Math.max(...sizes), count: sizes.length, last: sizes.at(-1)! };
}

/** `lays.`: as much mortar as the scarcest of its materials makes, and what that would lay. */
function fromLeft(
  name: string,
  mix: Mix,
  { bricks, pointing, joints }: Use,
  left: Readonly<Record<string, number>>,
  sold: Readonly<Record<string, Sold>>,
): Record<string, number> {
  const makes = Object.entries(loose(mix)).map(
    ([part, volume]) => (left[part]! / (volume * sold[part]!.weighs)) * mix.wet,
  );
  const mortar = Math.min(...makes);
  return {
    [`lays.${name}`]: mortar,
    ...(bricks ? { [`lays.${name}.bricks`]: Math.floor((mortar * bricks) / mix.wet + 1e-9) } : {}),
    ...(pointing
      ? {
          [`lays.${name}.pointing`]: mortar / pointing,
          [`lays.${name}.joints`]: (mortar / pointing) * joints!,
        }
      : {}),
  };
}

/** Pointing of one unit of area of a stretcher face, raked two joints deep: lengths in one unit, and so is the answer. */
export function pointed(length: number, height: number, joint: number, bed: number): number {
  return (1 - (length * height) / ((length + joint) * (height + bed))) * 2 * bed;
}

/** Joint to one unit of area of a stretcher face, all in one unit: under each brick its length and a joint, beside it its height. */
export function jointed(length: number, height: number, joint: number, bed: number): number {
  return (length + joint + height) / ((length + joint) * (height + bed));
}
