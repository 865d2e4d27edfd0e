/** Does one thing at a time. What is asked for while it is at it is done once more, once: only the last counts. */
export class Latest {
  private busy = false;
  private again = false;

  constructor(private readonly work: () => Promise<void>) {}

  async ask(): Promise<void> {
    this.again = true;
    if (this.busy) return;
    this.busy = true;
    try {
      while (this.again) {
        this.again = false;
        await this.work();
      }
    } finally {
      this.busy = false;
    }
  }
}
