/**
 * What the server asks of a client about files that are on no disk of its own: folders of a repository in a browser,
 * of another machine, in memory. A client that answers says so by {@link StartOptions.readsFiles}.
 */

/** Asks for a file: {@link ReadParams} in, {@link FileRead} out. */
export const READ = 'perpend/read';

/** Asks which files in the notation stand under a folder: {@link FindParams} in, their addresses out. */
export const FIND = 'perpend/find';

/** Asks for a file of our own beside the server: {@link PartParams} in, {@link FileRead} out. */
export const PART = 'perpend/part';

export interface PartParams {
  /** As it is called in `dist`. */
  readonly name: string;
}

export interface ReadParams {
  readonly uri: string;
  /** The file has to stand in this folder, with no link on the way to it. */
  readonly within: string;
  /** A file of more bytes is not read. */
  readonly most: number;
}

/** Its bytes, or why there are none. Links and whatever else is no ordinary file are not there. */
export type FileRead = { readonly base64: string } | { readonly none: 'missing' | 'large' };

export interface FindParams {
  readonly folder: string;
  /** So many are enough. */
  readonly most: number;
}

/** English phrases to the same in another language; what is put in is `{0}`, `{1}` in both. */
export type Words = Readonly<Record<string, string>>;

/** What a client of ours says at the start, as `initializationOptions`. All of it may be left out. */
export interface StartOptions {
  /** It answers {@link READ}, {@link FIND} and {@link PART}. */
  readonly readsFiles?: boolean;
  /** The address of the folder where our files are, such as `dist`: in a browser nobody else knows it. */
  readonly home?: string;
  /** The scheme of addresses under which it shows pages of help: `perpend-help`. Without it findings lead to none. */
  readonly help?: string;
  /** A folder that is not open, whose files may be read like those of one that is: examples are copied there. */
  readonly scratch?: string;
  /** Its own commands that the server may name: over headings, in hovers, behind a word that is put in. */
  readonly commands?: readonly string[];
  /** What the server says is said in these words, where they have it. Without them it is English. */
  readonly words?: Words;
}
