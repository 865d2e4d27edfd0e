/**
 * What changes a job or makes a new one. The server writes nothing: it answers with edits or a text, and the client
 * applies and saves them. Why something cannot be done is a {@link Refused}.
 */
import type { FileParams } from '../protocol';
import type { Before, PageShown, Refused } from './pages';

export type { Refused } from './pages';

/** The shape of a `WorkspaceEdit` of the Language Server Protocol: of one open file, at the version that it is for. */
export interface Edits {
  readonly documentChanges: readonly {
    readonly textDocument: { readonly uri: string; readonly version: number };
    readonly edits: readonly { readonly range: Range; readonly newText: string }[];
  }[];
}

export interface Range {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

// What has happened

/** Asks what a record can hold: {@link FileParams} in, {@link RecordKind}s out. */
export const RECORD_KINDS = 'perpend/recordKinds';

/** Asks for lines of the record: {@link RecordParams} in, {@link RecordEdits} or {@link Refused} out. */
export const RECORD = 'perpend/record';

export interface RecordKind {
  /** `worked` */
  readonly what: string;
  /** What the line means. */
  readonly about: string;
  /** The words after the date, as an example: `2 people 7.5 h facework 410 bricks`. */
  readonly example: string;
  /** It can be left without words: `sent` takes the price that the job comes to. */
  readonly alone: boolean;
  /** Options of this job that it can name: of `accepted`. */
  readonly options: readonly { readonly name: string; readonly title: string }[];
}

export interface RecordParams extends FileParams {
  /** One of {@link RecordKind.what}. */
  readonly what: string;
  /** The day it happened, `2026-03-02`. */
  readonly date: string;
  /** As they would be written; a text of several words in quotation marks, or a word by itself. */
  readonly words?: readonly string[];
}

export interface RecordEdits {
  readonly edit: Edits;
  /** Where the first line stands then, from 0. */
  readonly line: number;
  /** As they stand there. */
  readonly lines: readonly string[];
  /** What the firm should know about it. */
  readonly asides: readonly string[];
}

// A job from a past one, and from a template

/** Asks for a job from a past one: {@link NextParams} in, {@link NextMade} or {@link Refused} out. */
export const NEXT = 'perpend/next';

export interface NextParams extends FileParams {
  /** The address of the new file: what it uses is named as it reaches it. Without it, as a file beside. */
  readonly to?: string;
  readonly title?: string;
  readonly client?: string;
  readonly site?: string;
  readonly ref?: string;
  /** `2026-03-02` */
  readonly date?: string;
}

export interface NextMade {
  readonly text: string;
  /** Lines that were the past client’s. */
  readonly cleared: readonly string[];
  /** Rates that were brought up: what, from, to. */
  readonly rates: readonly { readonly what: string; readonly was: string; readonly now: string }[];
  /** What the past job comes to today, and what the next one does. */
  readonly before: string;
  readonly after: string;
}

/** Asks for the templates that ship, and the questions of each: nothing in, {@link TemplateItem}s out. */
export const TEMPLATES = 'perpend/templates';

/** Asks for a job from a template: {@link NewParams} in, {@link NewMade} or {@link Refused} out. May be asked after every answer. */
export const NEW = 'perpend/new';

export interface TemplateItem {
  /** `garden-wall`; of a file of the firm its address. */
  readonly name: string;
  readonly title: string;
  readonly asks: readonly AskItem[];
}

export interface AskItem {
  /** A name of the template, or `job`. */
  readonly what: string;
  /** The word of the line. */
  readonly line: string;
  readonly question: string;
  /** What holds without an answer; nothing where the line is left out then. */
  readonly value?: string;
}

export interface TemplatesParams {
  /** A template of the firm, an open file: its questions are asked for too, before those that ship. */
  readonly uri?: string;
}

export interface NewParams {
  /** {@link TemplateItem.name} */
  readonly template: string;
  /** The address of the new file: the nearest firm.perp in or above its folder is used where the template uses none. */
  readonly to?: string;
  readonly answers: readonly {
    readonly what: string;
    readonly line: string;
    readonly answer: string;
  }[];
}

export interface NewMade {
  readonly text: string;
  /** Of answers that are none, what is wrong: they are not in the text. */
  readonly wrong: readonly {
    readonly what: string;
    readonly line: string;
    readonly message: string;
  }[];
  /** The firm’s file, as the new one reaches it. */
  readonly firm?: string;
  readonly price: string;
  /** What the price still lacks. */
  readonly missing: readonly string[];
}

// Partners

/** Asks for a copy for a partner firm: {@link ShareParams} in, {@link SharedMade} or {@link Refused} out. */
export const SHARE = 'perpend/share';

export interface ShareParams extends FileParams {
  /** Said at its head. */
  readonly whom: string;
  readonly without: 'costs' | 'money' | 'nothing';
  /** Whether client, site and reference go with it. */
  readonly client: boolean;
}

export interface SharedMade {
  readonly text: string;
  /** A name for its file, which does not tell whose job it is. */
  readonly name: string;
  /** What is not in it, and how many of each. */
  readonly left: readonly { readonly what: string; readonly count: number }[];
  /** Texts out of which something was taken. */
  readonly replaced: readonly { readonly before: string; readonly after: string }[];
  /** What it says that the client pays. */
  readonly price?: string;
  /** What is left to the reader’s own judgement. */
  readonly asides: readonly string[];
}

/** Asks what a partner’s file says otherwise: {@link TakeParams} in, {@link TakeEdits} or {@link Refused} out. */
export const TAKE = 'perpend/take';

export interface TakeParams extends FileParams {
  /** The text that came back. */
  readonly theirs: string;
  /** Blocks by their names; without it, all. */
  readonly names?: readonly string[];
  /** Their prices, labour, outputs, travel and costs too. */
  readonly rates?: boolean;
}

export interface TakeEdits {
  readonly edit: Edits;
  readonly taken: readonly {
    /** `wall north` */
    readonly block: string;
    readonly under: readonly string[];
    readonly change: 'new' | 'changed';
    readonly before?: string;
    readonly after: string;
  }[];
  /** Lines of theirs that are not taken. */
  readonly refused: number;
  /** Lines of ours that theirs does not have, which stay. */
  readonly ours: readonly string[];
  /** Blocks that could be taken. */
  readonly offered: readonly string[];
}

// Beside what was

/** Asks what changed, by meaning: {@link CompareParams} in, {@link Compared} or {@link Refused} out. */
export const COMPARE = 'perpend/compare';

export interface CompareParams extends FileParams {
  readonly before: Before;
}

export interface Compared {
  /** Nothing that counts has changed. */
  readonly nothing: boolean;
  /** Which of the texts that were offered it is, by its place; of what was sent. */
  readonly took?: number;
  /** What each is called: "Orchard wall, last commit". */
  readonly labels: { readonly left: string; readonly right: string };
  /** The job by its work, what is bought, hours and money: lines that stand beside each other. */
  readonly left: string;
  readonly right: string;
  /** All of it, and what moved the price. */
  readonly page: PageShown;
}

/** Asks for files that a job uses and that are no libraries, to fetch each as it stood: {@link FileParams} in, addresses out. */
export const USED = 'perpend/used';

// Many jobs

/** Asks for the jobs of the open folders: {@link JobsParams} in, {@link JobsMade} out. Tells of its progress, and can be cancelled. */
export const JOBS = 'perpend/jobs';

export interface JobsParams {
  /** As of that day, `2026-03-02`. */
  readonly day: string;
  /** Only jobs in it; without it, of all open folders. */
  readonly folder?: string;
  /** Every job, and not the first few of each list. */
  readonly all?: boolean;
  /** Progress is told under it. */
  readonly workDoneToken?: string | number;
}

export interface JobsMade {
  readonly page: PageShown;
  readonly jobs: readonly JobItem[];
}

export interface JobItem {
  readonly uri: string;
  readonly ref: string;
  readonly title: string;
  readonly client: string;
  /** `not-sent`, `out`, `lost`, `in-hand`, `done`, `paid`; and in words. */
  readonly state: string;
  readonly standing: string;
  /** The day since when it stands so; empty where no line says. */
  readonly since: string;
  readonly price?: string;
  readonly owed: string;
}

// Tools for language models: they read, and change nothing

/** Asks for the findings of one file or of all jobs: {@link CheckParams} in, {@link Told} or {@link Refused} out. */
export const CHECK = 'perpend/check';

/** Asks for the figures of a job: {@link ToldParams} in, {@link Told} or {@link Refused} out. */
export const PRICE = 'perpend/price';

/** Asks how a figure came about: {@link ExplainParams} in, {@link Told} or {@link Refused} out. */
export const EXPLAIN = 'perpend/explain';

export interface CheckParams {
  /** Without it, every file in the notation in the open folders. */
  readonly uri?: string;
  readonly workDoneToken?: string | number;
}

export type ToldParams = FileParams;

export interface ExplainParams extends FileParams {
  /** An id such as `job.price`, or words of its name; without it the ids are listed. */
  readonly figure?: string;
}

/** For a reader that is a program: compact Markdown, and the same as data. */
export interface Told {
  readonly markdown: string;
  readonly json: string;
}

/** Names what a request gives, for a client that keeps them in one place. */
export interface Deeds {
  readonly [RECORD_KINDS]: [FileParams, readonly RecordKind[] | null];
  readonly [RECORD]: [RecordParams, RecordEdits | Refused | null];
  readonly [NEXT]: [NextParams, NextMade | Refused | null];
  readonly [TEMPLATES]: [TemplatesParams, readonly TemplateItem[] | null];
  readonly [NEW]: [NewParams, NewMade | Refused | null];
  readonly [SHARE]: [ShareParams, SharedMade | Refused | null];
  readonly [TAKE]: [TakeParams, TakeEdits | Refused | null];
  readonly [COMPARE]: [CompareParams, Compared | Refused | null];
  readonly [USED]: [FileParams, readonly string[] | null];
  readonly [JOBS]: [JobsParams, JobsMade | null];
  readonly [CHECK]: [CheckParams, Told | Refused | null];
  readonly [PRICE]: [ToldParams, Told | Refused | null];
  readonly [EXPLAIN]: [ExplainParams, Told | Refused | null];
}
