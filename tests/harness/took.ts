/**
 * Time that work takes of the processor, in ms. What the machine does for others meanwhile does not count, as it would by
 * the clock; so a limit is about the work alone.
 * @param tries the least of so many: what is compiled or collected meanwhile does not count either
 */
export function took(work: () => unknown, tries = 1): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < tries; i++) {
    const before = process.cpuUsage();
    work();
    least = Math.min(least, process.cpuUsage(before).user / 1000);
  }
  return least;
}
