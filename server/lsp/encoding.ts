/**
 * How the client counts the columns of a line: in UTF-16 units as we do, in bytes of UTF-8, or in whole characters. Every
 * question and answer passes through here, so that nothing else has to know.
 */
export type Encoding = 'utf-8' | 'utf-16' | 'utf-32';

const KNOWN: readonly string[] = ['utf-8', 'utf-16', 'utf-32'] satisfies Encoding[];

/** The first of the client’s that we speak. UTF-16 is what every client has to speak, asked or not. */
export function chosen(offered: readonly string[] = []): Encoding {
  return (offered.find((each) => KNOWN.includes(each)) as Encoding | undefined) ?? 'utf-16';
}

/** How long a character is, by its number in Unicode. */
const LENGTHS: Readonly<Record<Encoding, (character: number) => number>> = {
  'utf-8': (c) => (c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4),
  'utf-16': (c) => (c < 0x10000 ? 1 : 2),
  'utf-32': () => 1,
};

/** A column counted in UTF-16 units, as the client counts. One within a character is taken for its beginning. */
export function columnOut(text: string, column: number, encoding: Encoding): number {
  return moved(text, column, 'utf-16', encoding);
}

/** A column as the client counts it, in UTF-16 units. One beyond the line is taken for its end. */
export function columnIn(text: string, column: number, encoding: Encoding): number {
  return moved(text, column, encoding, 'utf-16');
}

function moved(text: string, column: number, from: Encoding, to: Encoding): number {
  let [left, right] = [0, 0];
  for (const character of text) {
    const code = character.codePointAt(0)!;
    left += LENGTHS[from](code);
    if (left > column) break;
    right += LENGTHS[to](code);
  }
  return right;
}

/** The text of a line of a file; nothing where nobody knows it. */
export type LineAt = (uri: string, line: number) => string | undefined;

interface PositionLike {
  readonly line: number;
  readonly character: number;
}

type Move = (position: PositionLike, uri: string) => PositionLike;

/** All positions of a message, each by the line of the file that it is of. */
export class Columns {
  encoding: Encoding = 'utf-16';

  constructor(private readonly lineAt: LineAt) {}

  /**
   * What came from the client. A column beyond its line is taken for the end of the line, however columns are counted.
   * @param uri the file it asks about
   */
  in<T>(message: T, uri = ''): T {
    const whole = walked(message, uri, wholeNumbers) as T;
    return this.encoding === 'utf-16' ? this.within(whole, uri) : this.all(whole, uri, columnIn);
  }

  /** Only of the file that is asked about: no other is read for it. */
  private within<T>(message: T, uri: string): T {
    const clamp: Move = ({ line, character }, file) => {
      const text = file === uri ? this.lineAt(file, line) : undefined;
      return { line, character: Math.min(character, text?.length ?? character) };
    };
    return uri ? (walked(message, uri, clamp) as T) : message;
  }

  /** What goes to the client. */
  out<T>(message: T, uri = ''): T {
    return this.all(message, uri, columnOut);
  }

  /** One column of a line that goes to the client. */
  column(uri: string, line: number, column: number): number {
    if (this.encoding === 'utf-16') return column;
    return this.out({ line, character: column }, uri).character;
  }

  private all<T>(message: T, uri: string, move: typeof columnIn): T {
    const { encoding } = this;
    if (encoding === 'utf-16') return message;
    const moveOne: Move = ({ line, character }, file) => {
      const text = this.lineAt(file, line);
      return { line, character: text === undefined ? character : move(text, character, encoding) };
    };
    return walked(message, uri, moveOne) as T;
  }
}

/** Nobody counts lines or columns otherwise; what does is taken for the nearest that there is. */
const wholeNumbers: Move = ({ line, character }) => ({
  line: Math.max(0, Math.floor(line)),
  character: Math.max(0, Math.floor(character)),
});

/** Keys under which nothing is touched: what we gave the client to give back, and numbers of coloured words. */
const OPAQUE: ReadonlySet<string> = new Set(['data']);
/** Keys under which things stand by the addresses of their files. */
const BY_FILE: ReadonlySet<string> = new Set(['changes', 'relatedDocuments']);
/** In a link, the place it leads from; all others of it are in the file that it leads to. */
const FROM = 'originSelectionRange';

function walked(value: unknown, uri: string, move: Move): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map((each) => walked(each, uri, move));
  if (value.constructor !== Object) return value;
  if (isPosition(value)) return move(value, uri);
  const own = fileOf(value) ?? uri;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, entry(key, each, { uri, own, move })]),
  );
}

interface Around {
  /** The file that what stands around is of. */
  readonly uri: string;
  readonly own: string;
  readonly move: Move;
}

function entry(key: string, value: unknown, { uri, own, move }: Around): unknown {
  if (OPAQUE.has(key)) return value;
  if (key === FROM) return walked(value, uri, move);
  if (!BY_FILE.has(key) || !isRecord(value)) return walked(value, own, move);
  return Object.fromEntries(
    Object.entries(value).map(([file, each]) => [file, walked(each, file, move)]),
  );
}

/** The file that the positions of a thing are of, where it says so. */
function fileOf(value: object): string | undefined {
  const { uri, targetUri, textDocument } = value as Readonly<Record<string, unknown>>;
  const said = uri ?? targetUri ?? (isRecord(textDocument) ? textDocument.uri : undefined);
  return typeof said === 'string' ? said : undefined;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isPosition(value: object): value is PositionLike {
  const { line, character } = value as Partial<PositionLike>;
  return typeof line === 'number' && typeof character === 'number';
}
