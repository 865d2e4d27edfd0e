/**
 * Words for a reader that can be said in another language. A phrase is written in English where it is used, as
 * a tagged text; a bundle of another language gives each phrase by its English one, with `{0}`, `{1}` for what
 * is put in. Without a bundle, or where a bundle has not the phrase, it is English.
 */

/** English phrase to the same in another language: `"{0} courses"` to `"{0} Schichten"`. */
export type Bundle = Readonly<Record<string, string>>;

let bundle: Bundle | undefined;

/** Sets the language of every phrase made from now on; nothing for English. To be called before a job is worked out. */
export function speak(words: Bundle | undefined): void {
  bundle = words;
}

/** A text in the language that is spoken. */
export function phrase(texts: TemplateStringsArray, ...values: readonly unknown[]): string {
  const known = bundle && own(bundle, keyOf(texts));
  return known === undefined ? joined(texts, values) : filled(known, values);
}

/** What a bundle calls the phrase. */
export function keyOf(texts: readonly string[]): string {
  return texts.reduce((key, text, i) => `${key}{${i - 1}}${text}`);
}

function own(words: Bundle, key: string): string | undefined {
  return Object.hasOwn(words, key) ? words[key] : undefined;
}

function joined(texts: readonly string[], values: readonly unknown[]): string {
  return texts.reduce((said, text, i) => `${said}${values[i - 1]}${text}`);
}

function filled(text: string, values: readonly unknown[]): string {
  return text.replace(/\{(\d+)\}/g, (whole, place) =>
    Number(place) < values.length ? String(values[Number(place)]) : whole,
  );
}
