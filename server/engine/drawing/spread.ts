/**
 * Where words go beside rising marks that may be nearer together than the words are high: as near to their marks as may
 * be, and no two nearer than `gap`. Those that would touch are moved apart about their middle (least squares, by
 * pooling neighbours).
 */
export function spread(wanted: readonly number[], gap: number): number[] {
  const pools: { sum: number; count: number }[] = [];
  const mean = (pool: { sum: number; count: number }) => pool.sum / pool.count;
  for (const [i, at] of wanted.entries()) {
    let pool = { sum: at - i * gap, count: 1 };
    for (let last = pools.at(-1); last && mean(last) > mean(pool); last = pools.at(-1)) {
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
      pools.pop();
    }
    pools.push(pool);
  }
  const bases = pools.flatMap((pool) => Array<number>(pool.count).fill(mean(pool)));
  return bases.map((base, i) => base + i * gap);
}
