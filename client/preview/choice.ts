/** What a preview is to show, and which drawing its page has. */
import type { Uri } from 'vscode';
import type { Shown } from '../../shared/protocol/preview';
import type { FromPage } from '../../shared/protocol/preview-page';

export interface Chosen {
  readonly uri: Uri;
  readonly show: string;
  readonly work: string | undefined;
  readonly pinned: boolean;
  /** The drawing that the page has: what comes next is told as a change of it. */
  readonly have: string | undefined;
}

/**
 * What was chosen last. The server is asked for it, and says what it took in its place where that is not to be had (a
 * wall that is gone, say). A reader who chooses something else before the answer is there must not have that set back:
 * such an answer is nobody’s any more.
 */
export class Choice {
  constructor(private chosen: Chosen) {}

  get now(): Chosen {
    return this.chosen;
  }

  /** A choice of nothing new leaves an answer that is on its way what it is. */
  choose(other: Partial<Chosen>): void {
    if (Object.keys(other).length > 0) this.chosen = { ...this.chosen, ...other };
  }

  /**
   * @param asked what `now` was when the server was asked
   * @returns whether the answer is to what is still chosen: only then is it taken, and to be shown
   */
  took({ picture, work, show }: Shown, asked: Chosen): boolean {
    if (this.chosen !== asked) return false;
    this.chosen = {
      ...asked,
      show,
      work: work ?? asked.work,
      have: picture ? picture.is : asked.have,
    };
    return true;
  }
}

/** What a message of the page chooses: nothing, where it only tells how much room there is. */
export function chosenBy(said: FromPage): Partial<Chosen> {
  switch (said.say) {
    case 'ready':
      return { have: said.have };
    case 'again':
      return { have: undefined };
    case 'show':
      return { show: said.show };
    case 'work':
      // Work that is chosen stays, wherever the cursor is: it is no other work’s.
      return { work: said.work, pinned: true };
    case 'pin':
      return { pinned: said.pinned };
    default:
      return {};
  }
}
