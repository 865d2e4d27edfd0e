/** What the tests use of phrases.mjs. */
export const FOLDER: string;
export const SERVER: string;
export const CLIENT: string;

type Phrases = Readonly<Record<string, unknown>>;

/** The phrases of one source file, as a bundle calls them. */
export function phrasesIn(source: string, file: string): string[];
/** @param lines the sentences of the table of lines */
export function serverPhrases(lines: readonly string[]): Promise<Phrases>;
export function clientPhrases(): Promise<Phrases>;
