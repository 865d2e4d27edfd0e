/** "Did you mean": the few known words nearest to one that is not known. */
import { lettersApart } from '../../shared/nearest';

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
  return lettersApart(asked, candidate);
}
