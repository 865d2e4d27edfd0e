/** "Did you mean": the few known words nearest to one that is not known. */

const MOST = 3;

/** At most three, none nearer than another. A word that holds the one asked for (`bricks` in `north.bricks`) is near. */
export function near(word: string, known: readonly string[]): string[] {
  const asked = word.toLowerCase();
  const furthest = Math.max(1, Math.floor(asked.length / 3));
  const steps = known.map((candidate) => apart(asked, candidate.toLowerCase()));
  const least = Math.min(furthest, ...steps);
  return known.filter((_, i) => steps[i] === least).slice(0, MOST);
}

function apart(asked: string, candidate: string): number {
  if (asked.length > 2 && candidate.split('.').includes(asked)) return 0;
  return letters(asked, candidate);
}

/** Letters put in, taken out, changed, or swapped with their neighbour, between two words. */
function letters(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next[j] = Math.min(row[j]! + 1, next[j - 1]! + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        next[j] = Math.min(next[j]!, before[j - 2]! + 1);
    }
    before = row;
    row = next;
  }
  return row[b.length]!;
}
