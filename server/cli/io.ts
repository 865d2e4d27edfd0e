/** The outside of a command: where it prints, what it reads from, whether it may colour. Tests give their own. */

export interface Io {
  /** The folder that file names count from. */
  readonly cwd: string;
  readonly colour: boolean;
  /** What is printed is read by a person, not by another program. */
  readonly terminal?: boolean;
  /** Asks whoever sits at a terminal and waits for a line; nothing when no more comes. Left out where nobody does. */
  ask?(question: string): string | undefined;
  /** Text for a reader: control characters that could move a terminal are taken out. */
  out(text: string): void;
  /** A document or data: passed on as it is. */
  raw(content: string | Uint8Array): void;
  /** What is said beside the result. */
  err(text: string): void;
}

/**
 * Everything that could move the cursor, and the marks that turn the direction of writing: a job is someone
 * else's text, and a terminal obeys text. Colours of our own are put back by the painter.
 */
// biome-ignore lint/complexity/useRegexLiterals: written as text so that no invisible character stands in the source
const UNSAFE = new RegExp(
  '[\\u0000-\\u0009\\u000b-\\u001f\\u007f-\\u009f\\u202a-\\u202e\\u2066-\\u2069]',
  'g',
);

/** Text that is safe to print. A space that may not break is a space. */
export function plain(text: string): string {
  return text
    .replace(/\u00a0/g, ' ')
    .replace(/\t/g, ' ')
    .replace(UNSAFE, '\ufffd');
}

const PAINT = { bold: '1', dim: '2', red: '31', yellow: '33' } as const;
const ESCAPE = String.fromCharCode(27);
/** A mark of colour as the cleaner leaves it. A job's text could colour itself with one, and do no more. */
const MARK = /\ufffd\[(0|1|2|31|33)m/g;

export type Colour = keyof typeof PAINT;

export function paint(io: { colour: boolean }, colour: Colour, text: string): string {
  return io.colour ? `${ESCAPE}[${PAINT[colour]}m${text}${ESCAPE}[0m` : text;
}

/** Cleans a text, and lets our colours through. */
export function printable(text: string, colour: boolean): string {
  const clean = plain(text);
  return colour ? clean.replace(MARK, `${ESCAPE}[$1m`) : clean;
}

/** Colour is for a terminal, and never where NO_COLOR is set to anything (no-color.org). */
export function wantsColour(env: Readonly<Record<string, string | undefined>>, terminal: boolean) {
  return terminal && !env.NO_COLOR && env.TERM !== 'dumb';
}
