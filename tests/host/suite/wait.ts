const PAUSE_MS = 100;

/** Long enough for a slow machine: nothing here measures speed. */
export const WAIT_MS = 30_000;
/** For the first answer of all, which waits for the extension and its server to start. */
export const FIRST_WAIT_MS = 60_000;

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
}

/**
 * Asks again and again until the answer is there.
 * @param what named in the error, with the last answer
 * @throws Error when `done` has not held within `limitMs`
 */
export async function until<T>(
  what: string,
  ask: () => T | PromiseLike<T>,
  done: (answer: T) => boolean,
  limitMs = WAIT_MS,
): Promise<T> {
  const limit = Date.now() + limitMs;
  for (;;) {
    const answer = await ask();
    if (done(answer)) return answer;
    if (Date.now() > limit)
      throw new Error(`waited ${limitMs} ms for ${what}; last: ${JSON.stringify(answer)}`);
    await pause();
  }
}
