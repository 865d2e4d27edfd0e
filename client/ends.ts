/** What is done when the language server ends by itself: it is begun again, unless it ends again and again. */
import {
  CloseAction,
  type CloseHandlerResult,
  ErrorAction,
  type ErrorHandler,
  type ErrorHandlerResult,
  type Message,
} from 'vscode-languageclient';

/** So often within this time: then it is no chance, and each time costs the reader a second. */
const MOST = 4;
const SPAN_MS = 3 * 60 * 1000;
/** So many messages that cannot be written may come one after the other. */
const MOST_ERRORS = 3;

export class Ends implements ErrorHandler {
  private readonly times: number[] = [];

  /** Whoever ends it says so before: then it is no accident, and nothing is begun again. */
  meant = false;

  /** @param givenUp is told when it is not begun again */
  constructor(private readonly givenUp: () => void) {}

  error(_: Error, __: Message | undefined, count: number | undefined): ErrorHandlerResult {
    const go = count !== undefined && count <= MOST_ERRORS;
    return { action: go ? ErrorAction.Continue : ErrorAction.Shutdown, handled: true };
  }

  /** The log has it; a message of the library’s own would say the same in English. */
  closed(): CloseHandlerResult {
    if (this.meant) return { action: CloseAction.DoNotRestart, handled: true };
    const now = Date.now();
    this.times.push(now);
    const lately = this.times.filter((time) => now - time < SPAN_MS).length;
    if (lately <= MOST) return { action: CloseAction.Restart, handled: true };
    this.givenUp();
    return { action: CloseAction.DoNotRestart, handled: true };
  }
}
