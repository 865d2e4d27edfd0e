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

/** What was set last: to be set again by who speaks another for a while. */
export function language(): Bundle | undefined {
  return bundle;
}

/** A text in the language that is spoken. */
export function phrase(texts: TemplateStringsArray, ...values: readonly unknown[]): string {
  const known = bundle && own(bundle, keyOf(texts));
  return known === undefined ? joined(texts, values) : filled(known, values);
}

/**
 * A phrase of a table that is made before anyone has said which language is spoken: it stays English until
 * `spoken` says it.
 */
export function later(texts: TemplateStringsArray): string {
  return texts[0]!;
}

/** A phrase known by its English text, as `later` keeps it, in the language that is spoken. */
export function spoken(english: string): string {
  return (bundle && own(bundle, english)) ?? english;
}

/** What a bundle calls the phrase. */
export function keyOf(texts: readonly string[]): string {
  return texts.reduce((key, text, i) => `${key}{${i - 1}}${text}`);
}

function own(words: Bundle, key: string): string | undefined {
  return Object.hasOwn(words, key) ? words[key] : undefined;
}

/** In one loop: thousands of them are made at every key that is pressed. */
function joined(texts: readonly string[], values: readonly unknown[]): string {
  let said = texts[0]!;
  for (let i = 0; i < values.length; i++) said += `${values[i]}${texts[i + 1]}`;
  return said;
}

function filled(text: string, values: readonly unknown[]): string {
  return text.replace(/\{(\d+)\}/g, (whole, place) =>
    Number(place) < values.length ? String(values[Number(place)]) : whole,
  );
}
