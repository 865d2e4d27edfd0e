/** Lets one waiting message be handled. Node and workers of a browser have different ways of it. */
export function turn(): Promise<void> {
  return new Promise((resolve) => soon(resolve));
}

declare const setImmediate: ((work: () => void) => void) | undefined;

/** After what waits now. In a browser a timer would be held back to 4 ms; a message to oneself is not. */
export function soon(work: () => void): void {
  if (typeof setImmediate === 'function') {
    setImmediate(work);
    return;
  }
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    port1.close();
    work();
  };
  port2.postMessage(undefined);
}
