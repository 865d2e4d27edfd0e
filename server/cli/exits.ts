/** The exit codes of every command. They are promised in `perpend --help`, and do not change. */

/** Nothing wrong was found. Warnings, notes and hints are not wrong. */
export const CLEAN = 0;
/** A file has a finding of severity error; for `format --check`: a file would change. */
export const ERRORS = 1;
/** Wrong use of the command, a file that cannot be read or written, or a fault of the program itself. */
export const FAILED = 2;

/** The code of several files together is the worst of them. */
export function worst(codes: readonly number[]): number {
  return Math.max(CLEAN, ...codes);
}

/** Wrong use of the command line; the message says what to do. */
export class WrongUse extends Error {}

/** A file that cannot be read, or written; the message says which and why. */
export class FileTrouble extends Error {}
