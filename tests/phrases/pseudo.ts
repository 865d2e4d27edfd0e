/**
 * A language that nobody speaks: every phrase accented, in brackets and a third longer. Whatever a reader is shown in
 * plain letters then is no phrase, and has to be the text of a file, the notation or a unit.
 */
import type { Bundle } from '../../shared/phrase';
import { readJson } from '../tree';

const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const ACCENTED = 'äƀćďëƒğħïĵķľṁñöþɋřšťüṽŵẋÿžÄƁĆĎËƑĞĦÏĴĶĽṀÑÖÞɊŘŠŤÜṼŴẊŸŽ';
/** The files of a job in another alphabet, so that they are known where they are shown. */
const VEILED = 'αβγδεζηθικλμνξοπρστυφχψωϑϕΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩϴϒ';

const by = (letters: string) => {
  const own = [...letters];
  return (text: string) =>
    text.replace(/[A-Za-z]/g, (letter) => own[PLAIN.indexOf(letter)] ?? letter);
};

export const accented = by(ACCENTED);
export const veiled = by(VEILED);

/** `{0} courses` as `⟦{0} ćöüřšëš~~~⟧`; the places for values stay. */
export function pseudo(phrase: string): string {
  const text = phrase.replace(
    /(\{\d+\})|([^{]+|\{)/g,
    (_, place, words) => place ?? accented(words),
  );
  const [, before, words, after] = /^(\s*)([\s\S]*?)(\s*)$/.exec(text)!;
  return `${before}⟦${words}${'~'.repeat(Math.ceil(phrase.length / 3))}⟧${after}`;
}

export function pseudoOf(file: string): Bundle {
  const english = Object.keys(readJson<Record<string, unknown>>(file));
  return Object.fromEntries(english.map((phrase) => [phrase, pseudo(phrase)]));
}

/** A file in the notation with its texts and comments veiled; text that is no text of a reader stays: a file’s name, a form. */
export function veil(perp: string): string {
  return perp
    .split('\n')
    .map((line) => (KEPT.test(line) ? line : line.replace(/"[^"]*"|“[^”]*”|#.*$/g, veiled)))
    .join('\n');
}

const KEPT = /^\s*(use|file|logo|figures|email|country)\b/;
