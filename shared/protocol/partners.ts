/** A copy for a partner firm, and what comes back. */
import type { FileParams } from '../protocol';
import type { Edits } from './edits';

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
