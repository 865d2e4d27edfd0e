/** A snippet for each heading that has lines: its example with places to fill in, and the lines no default gives. */
import { HEADINGS, type LineKind } from './lines';
import { inColumns } from './print/columns';

interface Snippet {
  readonly prefix: string;
  readonly description: string;
  readonly body: readonly string[];
}

/** A block with more lines than this is a list to choose from, not a form to fill in. */
const MOST = 8;

export function snippets(): Readonly<Record<string, Snippet>> {
  const inner = HEADINGS.flatMap((heading) =>
    (heading.body ?? [])
      .filter((kind) => kind.body && !kind.inColumn)
      .map((kind) => inside(heading, kind)),
  );
  const top = HEADINGS.filter((heading) => heading.body).map(
    (heading) => [heading.key, snippet(heading)] as const,
  );
  return Object.fromEntries([...top, ...inner]);
}

function inside(heading: LineKind, kind: LineKind): readonly [string, Snippet] {
  return [`${kind.key} in ${heading.key}`, snippet(kind)];
}

function snippet(kind: LineKind): Snippet {
  const asked = (kind.body ?? []).filter(isAsked);
  const lines = asked.length > MOST ? [] : asked;
  const rows = lines.map((line, i) => ({
    source: i,
    indent: kind.top ? 2 : 4,
    key: line.key,
    text: field(i + 2, after(line)),
  }));
  const rest = inColumns(rows).map((line) => (kind.top ? line : line.slice(2)));
  return {
    prefix: kind.key,
    description: kind.means,
    body: [head(kind), ...rest, '  $0'],
  };
}

/** What a block cannot do without: no default stands for it. */
function isAsked(kind: LineKind): boolean {
  const more = kind.many || kind.body || kind.later || kind.open;
  return !more && kind.unless === undefined && kind.takes.length > 0;
}

function head(kind: LineKind): string {
  const value = after(kind);
  return value ? `${kind.key} ${field(1, value)}` : kind.key;
}

/** The example without its first word. */
function after(kind: LineKind): string {
  return kind.example.slice(kind.key.length).trim();
}

function field(number: number, example: string): string {
  return `\${${number}:${example.replace(/[\\$}]/g, '\\$&')}}`;
}
