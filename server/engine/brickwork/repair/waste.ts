/**
 * Waste to take away: broken bricks, all the old mortar that comes off, copings and caps that are replaced. Its
 * volume loose, as it lies in a barrow or a skip; its mass, which a tip charges for.
 */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { defaultTerm } from '../../resolve/env';
import {
  counted,
  difference,
  fact,
  product,
  raised,
  share,
  sum,
  type Term,
} from '../../working/term';
import { brickTerms } from '../count';
import { inUnit, unitNames } from '../lengths';
import type { Figure } from '../needs';
import { massOf } from './capping';
import type { Mending } from './mending';
import { volumeOf } from './mortar';
import type { Salvage } from './salvage';
import type { Site } from './site';

export interface Waste {
  /** Loose. */
  readonly volume: Term;
  readonly mass: Term;
}

/** Nothing where nothing is taken away. */
export function wasteOf(
  site: Site,
  mendings: readonly Mending[],
  salvage: Salvage,
): Waste | undefined {
  const bricks = bricksGone(mendings, salvage);
  const old = mendings.flatMap((m) => m.old ?? []);
  const blocks = mendings.flatMap((m) => m.blocks ?? []);
  if (!bricks && !old.length && !blocks.length) return undefined;
  const { volume } = unitNames(site.env);
  const mortar = old.length ? [sum(phrase`old mortar`, volume, old)] : [];
  const broken = bricks ? [solidOf(bricks, site)] : [];
  const stood = sum(phrase`as it stood`, volume, [
    ...broken,
    ...mortar,
    ...blocks.map((b) => b.volume),
  ]);
  const bulking = defaultTerm(site.env, 'waste-bulking', 'share', phrase`more room when loose`);
  const masses = [
    ...(bricks ? [bricksMass(bricks, site)] : []),
    ...mortar.map((term) => mortarMass(term, site)),
    ...blocks.map((b) => b.mass),
  ];
  return {
    volume: inUnit(
      raised(phrase`Waste, loose`, volume, stood, bulking),
      site.env.imperial ? 'yd3' : 'm3',
    ),
    mass: sum(phrase`Mass of the waste`, unitNames(site.env).mass, masses),
  };
}

/** Those that are broken or cut out, and what is left of those that leave a half, halves with no place too. */
function bricksGone(
  mendings: readonly Mending[],
  { broken, halves, saved }: Salvage,
): Term | undefined {
  const rest =
    halves &&
    saved &&
    difference(phrase`halves gone`, 'bricks', halves, saved, phrase`in whole bricks`);
  const all = [broken, rest, ...mendings.map((m) => m.cut)].filter((term) => term !== undefined);
  return all.length ? sum(phrase`Bricks to take away`, 'bricks', all) : undefined;
}

/** Without their frogs, which are full of mortar. */
function solidOf(bricks: Term, { masonry, env }: Site): Term {
  const { volume } = unitNames(env);
  const outside = outsideOf(bricks, { masonry, env });
  const { frog } = masonry.brick;
  if (frog.value.isZero() && !frog.gaps.length) return outside;
  return difference(
    phrase`broken bricks`,
    volume,
    outside,
    share(phrase`their frogs`, volume, frog, outside),
  );
}

function outsideOf(bricks: Term, { masonry, env }: Pick<Site, 'masonry' | 'env'>): Term {
  const { size } = masonry.brick;
  const { volume } = unitNames(env);
  if (!size) return fact(phrase`broken bricks`, 0, volume);
  const litres = exact((volumeOf(size) / 1e6).toFixed(12));
  const each = counted(phrase`volume of a brick`, litres, 'l', {
    args: brickTerms(masonry).slice(0, 3),
  });
  return product(phrase`broken bricks`, volume, [bricks, inUnit(each, volume)]);
}

/** By what one weighs, where its maker says it, else by its density over its outside. */
function bricksMass(bricks: Term, site: Site): Term {
  const { facts } = site.masonry.brick;
  const one = facts?.line('mass');
  const { mass } = unitNames(site.env);
  if (one)
    return product(phrase`broken bricks`, mass, [
      bricks,
      inUnit(one.term('mass', phrase`one brick`), mass),
    ]);
  const density =
    facts?.line('density')?.term('density', phrase`density of the brick`) ??
    defaultTerm(site.env, 'brick-density', 'density', phrase`density of the brick`);
  return massOf(phrase`broken bricks`, outsideOf(bricks, site), density, site);
}

function mortarMass(mortar: Term, site: Site): Term {
  const density = defaultTerm(site.env, 'mortar-density', 'density', phrase`density of old mortar`);
  return massOf(phrase`old mortar`, mortar, density, site);
}

export function wasteFigures(waste: Waste | undefined): Figure[] {
  return waste
    ? [
        { key: 'waste', term: waste.volume },
        { key: 'waste-mass', term: waste.mass },
      ]
    : [];
}
