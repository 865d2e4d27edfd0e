/**
 * Papers and pages of a job: which can be made of it, each as a page to be read, and each as a file. The server works
 * them out; the client shows and saves them. Where something cannot be done, a {@link Refused} says why, in words.
 */
import type { FileParams } from '../protocol';

/** Asks which papers and pages there are of a job: {@link FileParams} in, {@link PageItem}s out. Null for a file that is not open. */
export const PAGES = 'perpend/pages';

/** Asks for one of them to be read: {@link PageParams} in, {@link PageShown} or {@link Refused} out. */
export const PAGE = 'perpend/page';

/** Asks for one of them, or a drawing, as a file: {@link ExportParams} in, {@link Exported} or {@link Refused} out. */
export const EXPORT = 'perpend/export';

/** Papers go to somebody; pages are for whoever does the job. */
export const PAPER_KINDS = ['quote', 'invoice', 'buying', 'site', 'changes', 'result'] as const;
export const PAGE_KINDS = [
  ...PAPER_KINDS,
  'price',
  'measure',
  'cuts',
  'day',
  'match',
  'mortar',
  'record',
] as const;
export type PageKind = (typeof PAGE_KINDS)[number];

const FORMS = ['pdf', 'html', 'md', 'csv', 'xlsx', 'xml', 'svg', 'dxf', 'json'] as const;
export type Form = (typeof FORMS)[number];

/** Who may read it: the client and whoever is on site are told no costs. */
export type Reader = 'client' | 'site' | 'firm';

export interface PageItem {
  readonly kind: PageKind | 'drawing';
  /** In the language of the editor: "Quote". */
  readonly title: string;
  /** One sentence: what it holds. */
  readonly about: string;
  readonly reader: Reader;
  /** What it can be saved as, the usual one first. */
  readonly forms: readonly Form[];
  /** Of `cuts` and `match`: the pieces of work that it can be of alone; of a drawing, those that can be drawn. */
  readonly works: readonly { readonly name: string; readonly title: string }[];
  /** Why there is none of this file; nothing where there is one. */
  readonly why?: string;
}

/** All of it may be left out. What a page does not know it passes by. */
export interface PageOptions {
  /** Of an invoice: its number. */
  readonly number?: string;
  /** Of an invoice: its day, `2026-03-12`. */
  readonly date?: string;
  /** Of an invoice: a stage by its title or its place from 1. */
  readonly stage?: string;
  /** Of an invoice: for so much, tax in it, in plain digits: `362.50`. */
  readonly amount?: string;
  /** Of a buying list: with what the firm pays. */
  readonly prices?: boolean;
  /** Of CSV: begin with the mark by which spreadsheets know UTF-8. */
  readonly bom?: boolean;
  /** Of a timetable: when days begin, `08:00`. */
  readonly start?: string;
  /** Of cuts, bricks that match, a drawing: only this piece of work, by its name. */
  readonly work?: string;
  /** Of a price: with these options of the job taken. */
  readonly with?: readonly string[];
  /** Of a note of changes: what it is put beside; without it, what the record keeps of what was sent. */
  readonly before?: Before;
  /** Of a drawing. */
  readonly view?: 'front' | 'back' | 'plan' | 'top' | 'rod' | 'all';
  /** Of a plan: the lower of its two courses, from 1. */
  readonly course?: number;
}

export interface PageParams extends FileParams {
  readonly page: PageKind;
  readonly options?: PageOptions;
}

export interface PageShown {
  readonly kind: PageKind | 'compare' | 'jobs';
  readonly title: string;
  /** BCP 47. */
  readonly lang: string;
  /** What stands in a body: no scripts, no addresses but data, everything escaped. */
  readonly html: string;
  readonly markdown: string;
  /** What the firm should know beside it, and the reader of the paper is not told. */
  readonly asides: readonly string[];
}

export interface ExportParams extends FileParams {
  readonly page: PageKind | 'drawing';
  readonly form: Form;
  readonly options?: PageOptions;
}

export interface Exported {
  /** A name for the file: `Quote 26-041.pdf`. It holds nothing that a file's name may not have. */
  readonly name: string;
  /** `application/pdf`. */
  readonly type: string;
  readonly base64: string;
  readonly asides: readonly string[];
}

/** Why there is nothing, in a sentence for the reader. */
export interface Refused {
  readonly refused: string;
}

/** What a job is put beside. */
export type Before =
  /** Another file, open or reached by the server. */
  | { readonly file: string }
  /** The same file as it stood before. */
  | OldText
  /** What was sent last, as the record says: in the first of these that holds that line, the newest first. */
  | { readonly sent: readonly OldText[] };

export interface OldText {
  readonly text: string;
  /** What to call it: "last commit", "4f2c1aa". */
  readonly label?: string;
  /** Of files that it uses, as they stood then, by their addresses; the others are taken as they are. */
  readonly files?: Readonly<Record<string, string>>;
}

export function isRefused(answer: object): answer is Refused {
  return typeof (answer as Partial<Refused>).refused === 'string';
}
