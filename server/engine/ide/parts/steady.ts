/** Ids of parts that are the same after an edit elsewhere. */

/** Ids made of what a part says, told apart where two say the same. */
export class Steady {
  private readonly times = new Map<string, number>();

  constructor(private readonly under: string) {}

  id(said: string): string {
    const before = this.times.get(said) ?? 0;
    this.times.set(said, before + 1);
    return `${this.under}/${said}${before ? `/${before + 1}` : ''}`;
  }
}
