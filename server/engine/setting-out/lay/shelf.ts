/**
 * Answers kept by all that they hang on, in words: of trials of one wall with one line changed most stretches are as they
 * were, and each way of mending it begins with the same ones.
 */
import type { Craft } from './craft';

/** Letters of keys kept for one craft; then its shelf is cleared. */
const MOST_LETTERS = 4_000_000;

interface Shelf {
  readonly by: Map<string, unknown>;
  letters: number;
}

const emptied = (): Shelf => ({ by: new Map(), letters: 0 });

/** Keeps answers of one kind; like craft, like key, like answer. */
export class Answers<T> {
  private readonly shelves = new WeakMap<Craft, Shelf>();

  of(craft: Craft, key: string, work: () => T): T {
    const shelf = this.shelfOf(craft);
    if (shelf.by.has(key)) return shelf.by.get(key) as T;
    const answer = work();
    shelf.by.set(key, answer);
    shelf.letters += key.length;
    return answer;
  }

  private shelfOf(craft: Craft): Shelf {
    const known = this.shelves.get(craft);
    if (known && known.letters < MOST_LETTERS) return known;
    const shelf = emptied();
    this.shelves.set(craft, shelf);
    return shelf;
  }
}

/** More than a wall with a great many openings has; then names are given anew. */
const MOST_NAMED = 5000;
const numbers = new WeakMap<object, number>();
const byWords = new Map<string, number>();
let given = 0;

/** A number for something that never changes, the same for another that reads the same; never given to two unlike. */
export function nameOf(value: object): number {
  let name = numbers.get(value);
  if (name === undefined) {
    const words = JSON.stringify(value);
    name = byWords.get(words) ?? newName(words);
    numbers.set(value, name);
  }
  return name;
}

function newName(words: string): number {
  if (byWords.size >= MOST_NAMED) byWords.clear();
  given += 1;
  byWords.set(words, given);
  return given;
}
