/** Copings and caps that are lifted or replaced: how large one is, what it is bedded in, what it weighs. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { defaultTerm, factsNamed, type LineFacts } from '../../resolve/env';
import { counted, fact, missing, product, type Term } from '../../working/term';
import { inUnit, unitNames } from '../lengths';
import { thicknessOf } from '../masonry';
import type { Block } from './mending';
import { slot } from './mortar';
import type { Site } from './site';

/** Sides of one, mm; how high it is is not always known. */
export interface PieceSize {
  readonly length: number;
  readonly width: number;
  readonly height?: number;
  readonly origin: Term['origin'];
}

/** By its material, else by the coping or cap of what stands. */
export function sizeOfPiece(line: LineFacts, site: Site): PieceSize | undefined {
  const own = factsNamed(site.env, 'material', line.word('material'))?.line('size');
  const top = site.pier ? site.pier.facts.line('cap') : site.stands.line('coping');
  for (const from of [own, line.values.material ? undefined : top]) {
    const [length, width, height] = from?.sides('size') ?? [];
    if (from && length && width) return { length, width, height, origin: from.at('size') };
  }
  return undefined;
}

/** How long one is, mm. */
export function lengthOf({ length, origin }: PieceSize): Term {
  return fact(phrase`length`, length, 'mm', origin);
}

/** What it lies on, mm: as much of it as the work under it is wide, and of a pier as long. */
function bedOf({ length, width }: PieceSize, site: Site): number | undefined {
  const { pier } = site;
  if (pier) return Math.min(length, pier.spec.width) * Math.min(width, pier.spec.depth);
  const through = throughOf(site);
  return through && length * Math.min(width, through);
}

/** Mm through the wall. */
function throughOf({ masonry, thickness }: Site): number | undefined {
  const unit = masonry.brick.size;
  const joint = masonry.jointTerms.perpend.value.toNumber();
  return unit && thickness && thicknessOf(thickness, unit, joint);
}

/** Each on its bed; along a wall with a joint beside it, as far as its height is known. */
export function beddingPieces(pieces: Term, size: PieceSize | undefined, site: Site): Term {
  const name = unitNames(site.env).volume;
  const bed = size && bedOf(size, site);
  const unknown = phrase`how large a piece is, or what it lies on, is not known`;
  if (!size || !bed) return missing(phrase`bedding`, name, unknown, pieces.origin);
  const { bed: under, perpend } = site.masonry.jointTerms;
  const beside = site.pier ? 0 : size.width * (size.height ?? 0);
  const mm3 = bed * under.value.toNumber() + beside * perpend.value.toNumber();
  const wider = size.length * size.width > bed;
  const note = phrase`its bed${wider ? phrase`, no larger than what it lies on` : ''}${beside ? phrase`, and a joint beside it` : ''}`;
  const side = (label: string, mm: number) => fact(label, mm, 'mm', size.origin);
  const sides = [
    lengthOf(size),
    side('width', size.width),
    ...(beside ? [side('height', size.height ?? 0)] : []),
  ];
  const each = counted(phrase`mortar to one`, exact((mm3 / 1e6).toFixed(12)), 'l', {
    note,
    args: [...sides, under, ...(beside ? [perpend] : [])],
  });
  return product(phrase`bedding`, name, [pieces, inUnit(each, name)]);
}

/** Under a length of which it is not known in how many pieces it is. */
export function beddingLength(length: Term, site: Site): Term {
  const through = throughOf(site);
  if (!through)
    return missing(
      phrase`bedding`,
      unitNames(site.env).volume,
      phrase`how thick the wall is is not known`,
      length.origin,
    );
  const wide = fact(
    phrase`thickness of the wall`,
    exact(through.toFixed(12)),
    'mm',
    site.stands.orDefault('thick')?.origin,
  );
  return slot('bedding', [length, wide, site.masonry.jointTerms.bed], site);
}

/** Old ones that go, as large as those that take their place. */
export function blocksGone(
  pieces: Term,
  size: PieceSize | undefined,
  line: LineFacts,
  site: Site,
): Block {
  const names = unitNames(site.env);
  if (!size?.height) {
    const why = phrase`how large ${line.word('material') || phrase`a piece`} is is not known`;
    const at = line.at('material');
    return {
      volume: missing(phrase`old ones`, names.volume, why, at),
      mass: missing(phrase`old ones`, names.mass, why, at),
    };
  }
  const litres = (size.length * size.width * size.height) / 1e6;
  const each = counted(phrase`volume of one`, exact(litres.toFixed(12)), 'l', {
    args: [fact(phrase`height`, size.height, 'mm', size.origin)],
  });
  const volume = product(phrase`old ones`, names.volume, [pieces, inUnit(each, names.volume)]);
  const own = factsNamed(site.env, 'material', line.word('material'))?.line('density');
  const density =
    own?.term('density', phrase`density`) ??
    defaultTerm(site.env, 'precast-density', 'density', phrase`density`);
  return { volume, mass: massOf(phrase`old ones`, volume, density, site) };
}

/** A volume of something by its density, in kg or lb. */
export function massOf(label: string, volume: Term, density: Term, { env }: Site): Term {
  const imperial = env.imperial;
  const cubic = inUnit(volume, imperial ? 'ft3' : 'm3');
  return product(label, imperial ? 'lb' : 'kg', [
    cubic,
    inUnit(density, imperial ? 'lb/ft3' : 'kg/m3'),
  ]);
}
