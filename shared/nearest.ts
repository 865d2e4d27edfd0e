/** The nearest of some known words, for "did you mean": at most a third of the letters differ. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  const asked = word.toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.floor(asked.length / 3)) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - asked.length) >= least) continue;
    const steps = lettersApart(asked, candidate.toLowerCase());
    if (steps < least) {
      least = steps;
      best = candidate;
    }
  }
  return best;
}

/** Insertions, deletions, changes and swaps of neighbours between two words. */
export function lettersApart(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next[j] = Math.min(row[j]! + 1, next[j - 1]! + 1, change);
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        next[j] = Math.min(next[j]!, (before[j - 2] ?? 0) + 1);
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}
