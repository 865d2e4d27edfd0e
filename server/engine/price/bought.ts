/** All that is bought for the work: bricks, the materials of its mixes, ready-mixed mortar, pieces. */
import type { Needs } from '../brickwork/needs';
import { batch, type MixBatch } from '../mortar/batch';
import type { Env } from '../resolve/env';
import { buyBricks, buyMaterial, buyPieces, buyReady, type Purchase, pooled } from './buying';

export interface Bought {
  readonly purchases: readonly Purchase[];
  readonly batches: readonly MixBatch[];
}

export function bought(needs: readonly Needs[], env: Env): Bought {
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
  const purchases = [
    ...[...bricks].map(([name, of]) => buyBricks(name, of, env)),
    ...materialsOf(batches, env),
    ...batches.filter((b) => b.ready).map((b) => buyReady(b, env)),
    ...[...pieces].map(([name, of]) => buyPieces(name, of, env)),
  ];
  return { purchases, batches };
}

function materialsOf(batches: readonly MixBatch[], env: Env): Purchase[] {
  const materials = pooled(
    batches.flatMap((b) => b.parts),
    (p) => p.material,
  );
  return [...materials].map(([name, of]) => {
    const volumes = of.map((p) => p.volume);
    return buyMaterial(name, volumes, env, of[0]!.origin);
  });
}
