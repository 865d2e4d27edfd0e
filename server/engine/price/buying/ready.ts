/** Mortar bought ready, dry in bags or wet: whole packs by what each makes. */
import { phrase, spoken } from '../../../../shared/phrase';
import { inUnit } from '../../brickwork/lengths';
import type { MixBatch } from '../../mortar/batch';
import type { Env } from '../../resolve/env';
import { named } from '../../working/term';
import { buyPacked, differing, type Pack } from './packs';
import { noPrice, type Purchase } from './purchase';

export function buyReady(mix: MixBatch, env: Env): Purchase {
  const { name, title, wet } = mix;
  const needed = named(title, wet);
  const lines = mix.facts?.lines('ready') ?? [];
  const packs: Pack[] = lines.map((line) => {
    const unit = line.word('pack');
    const content = inUnit(
      line.term('yield', phrase`a ${spoken(unit)} of ${title} makes`),
      wet.unit,
    );
    const said = line.values.price ? line.term('price', phrase`price`) : undefined;
    return { unit, content, price: said ?? noPrice(title, env, line.origin) };
  });
  const priced = packs.filter((p) => !p.price.gaps.length && p.content.value.gt(0));
  const offers = priced.length ? differing(priced) : packs.slice(0, 1);
  return { kind: 'material', name, title, needed, ...buyPacked(title, needed, offers, env) };
}
