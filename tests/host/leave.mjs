// What a test leaves behind it: nothing, where that can be had. A folder that will not go is no reason for a test to fail.
import { rmSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';

/** A program that was told to end may still write for a while; ms. */
const PAUSE_MS = 250;
const TRIES = 20;

/** Removes a folder that others may still be writing in. */
export async function remove(folder) {
  for (let i = 1; ; i++)
    try {
      return rmSync(folder, { recursive: true, force: true });
    } catch (error) {
      if (i >= TRIES) return console.log(`perpend: ${folder} is left behind (${error.code})`);
      await sleep(PAUSE_MS);
    }
}
