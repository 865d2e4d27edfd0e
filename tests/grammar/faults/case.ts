/** A fault in a small marked text, and what its ways out leave. */
export interface Case {
  readonly says: string;
  readonly marked: string;
  /** The way out to take, by its title, and the text it leaves. It must then read without this fault. */
  readonly way?: string;
  readonly leaves?: string;
  /** Of all ways, when there are more than the one taken. */
  readonly ways?: readonly string[];
}
