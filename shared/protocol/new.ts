/** A job from a past one, and from a template. */
import type { FileParams } from '../protocol';

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
