const PAUSE_MS = 100;

/** Long enough for a slow machine: nothing here measures speed. */
export const WAIT_MS = 120_000;
/** For the first answer of all, which waits for the extension and its server to start. */
export const FIRST_WAIT_MS = 240_000;

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
}

/**
 * Asks again and again until the answer is there. A question that was refused, since a text changed before it could be
 * answered, is asked again too.
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
    const [answer, refused] = await answered(ask);
    if (!refused && done(answer as T)) return answer as T;
    if (Date.now() > limit)
      throw new Error(`waited ${limitMs} ms for ${what}; last: ${refused ?? shown(answer)}`);
    await pause();
  }
}

async function answered<T>(ask: () => T | PromiseLike<T>): Promise<[T?, string?]> {
  try {
    return [await ask()];
  } catch (error) {
    return [undefined, String(error)];
  }
}

function shown(answer: unknown): string {
  return (JSON.stringify(answer) ?? 'nothing').slice(0, 4000);
}
