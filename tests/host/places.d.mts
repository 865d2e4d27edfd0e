/** The browser of this machine: its program, or nothing. */
export function findBrowser(): string | undefined;
