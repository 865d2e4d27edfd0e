/** Things of a workspace by a few letters of their names, as an editor’s search has it. */
import type { Glimpse } from './glance';

/**
 * How well letters fit a name: all of them must stand in it in their order, whatever stands between them. The beginning
 * of a word counts most, then letters next to each other; nothing for what does not fit.
 */
export function fitOf(query: string, name: string): number | undefined {
  const letters = [...query.toLowerCase()].filter((c) => c.trim());
  const text = name.toLowerCase();
  let fit = 0;
  let last = -1;
  for (const letter of letters) {
    const at = text.indexOf(letter, last + 1);
    if (at < 0) return undefined;
    fit += at === last + 1 ? 2 : 0;
    fit += at === 0 || /[\s\-_/"]/.test(text[at - 1]!) ? 3 : 0;
    last = at;
  }
  return letters.length ? fit - text.length / 100 : 0;
}

export interface Match {
  readonly thing: Glimpse;
  readonly fit: number;
}

/** By its name with the word before it, or by its title: `wall north` is found by `wn`, `north` and `boundary`. */
export function matchOf(query: string, thing: Glimpse): Match | undefined {
  const { kind, name, title } = thing;
  const fits = [`${kind} ${name}`.trim(), name, title]
    .filter(Boolean)
    .map((text) => fitOf(query, text));
  const found = fits.filter((fit) => fit !== undefined);
  return found.length ? { thing, fit: Math.max(...found) } : undefined;
}
