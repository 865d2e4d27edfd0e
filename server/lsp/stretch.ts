/**
 * Work over many files, a few milliseconds at a time: so that no key waits for it, and so that it ends when nobody wants
 * its answer any more. Whoever has such work writes it as a generator that yields where it may stop for others:
 *
 *     const found = await stretch.through(filesUnder(folder, host));
 */
import type { CancellationToken } from 'vscode-languageserver';
import { turn } from './turn';

/** Of a stretch of work between two looks whether a message has come. */
export const STRETCH_MS = 8;

/** Thrown out of the work: it was cancelled, or what it looks at has changed meanwhile. */
export class Stopped extends Error {
  constructor(readonly why: 'cancelled' | 'modified') {
    super(why);
  }
}

export class Stretch {
  private began = performance.now();
  private readonly first: number;

  /** @param edition changes with everything that would make the answer a stale one */
  constructor(
    private readonly token: Pick<CancellationToken, 'isCancellationRequested'>,
    private readonly edition: () => number = () => 0,
  ) {
    this.first = edition();
  }

  /** Whether it is time for others. */
  get due(): boolean {
    return performance.now() - this.began >= STRETCH_MS;
  }

  /**
   * Lets waiting messages be handled.
   * @throws Stopped when the work is not wanted any more
   */
  async rest(): Promise<void> {
    await turn();
    this.check();
    this.began = performance.now();
  }

  /** @throws Stopped as `rest` does */
  check(): void {
    if (this.token.isCancellationRequested) throw new Stopped('cancelled');
    if (this.edition() !== this.first) throw new Stopped('modified');
  }

  /** All steps of the work, and what it returns. */
  async through<T>(steps: Generator<unknown, T>): Promise<T> {
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (this.due) await this.rest();
    }
  }
}
