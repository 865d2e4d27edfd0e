// A window that is to run a suite. An editor gives up its extensions, for good and without a word, when they take more than
// a minute to start: such a window is opened once more, since nothing was tried in it yet.
import { setTimeout as sleep } from 'node:timers/promises';

/** What a suite says first. */
export const BEGINS = 'PERPEND-BEGINS';
/** So long a window may take until its suite begins, on a machine that is slow and busy. */
const BEGIN_LIMIT_MS = 300_000;

/** @param begun whether the suite has begun, or the window has ended */
export async function openSuite(page, address, begun) {
  await page.goto(address);
  const limit = Date.now() + BEGIN_LIMIT_MS;
  while (!begun() && Date.now() < limit) await sleep(200);
  if (begun()) return;
  console.log('perpend: the suite has not begun in the window, which is opened once more');
  await page.goto(address);
}
