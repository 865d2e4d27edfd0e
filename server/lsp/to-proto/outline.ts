/** How a file is built. */
import {
  type DocumentSymbol,
  type FoldingRange,
  type SelectionRange,
  type SymbolInformation,
  SymbolKind,
  type WorkspaceSymbol,
} from 'vscode-languageserver';
import type { Glimpse } from '../../engine/ide/glance';
import type { Stretch } from '../../engine/ide/selection';
import type * as ide from '../../engine/ide/types';
import { position, range } from './places';

const SYMBOL_KINDS: Readonly<Record<string, SymbolKind>> = {
  job: SymbolKind.Package,
  wall: SymbolKind.Class,
  pier: SymbolKind.Class,
  repair: SymbolKind.Class,
  opening: SymbolKind.Interface,
  brick: SymbolKind.Constant,
  mix: SymbolKind.Constant,
  material: SymbolKind.Constant,
  bond: SymbolKind.Constant,
  limit: SymbolKind.Constant,
  cost: SymbolKind.Number,
  option: SymbolKind.Enum,
  zone: SymbolKind.EnumMember,
  trade: SymbolKind.EnumMember,
  measure: SymbolKind.EnumMember,
  record: SymbolKind.Event,
};

export function documentSymbol(symbol: ide.OutlineItem): DocumentSymbol {
  const { lines, select, children } = symbol;
  return {
    name: symbol.name,
    detail: symbol.detail,
    kind: SYMBOL_KINDS[symbol.kind] ?? SymbolKind.Property,
    range: {
      start: { line: lines.first, character: 0 },
      end: { line: lines.last, character: symbol.end },
    },
    selectionRange: range(select),
    children: children.map(documentSymbol),
  };
}

/** For a client that knows no nesting. */
export function flatSymbols(
  symbol: ide.OutlineItem,
  uri: string,
  containerName?: string,
): SymbolInformation[] {
  const { name, kind, range: whole } = documentSymbol({ ...symbol, children: [] });
  const own = { name, kind, containerName, location: { uri, range: whole } };
  const inner = symbol.children.flatMap((each) => flatSymbols(each, uri, name));
  return [own, ...inner];
}

/** From the end of its first line on, so that the line itself is still read. */
export function foldingRange({ first, last, kind }: ide.Fold, total?: string): FoldingRange {
  return {
    startLine: first,
    endLine: last,
    kind: kind === 'block' ? undefined : kind,
    collapsedText: total && `… ${total}`,
  };
}

/** Each within the next. */
export function selectionRange(stretches: readonly Stretch[]): SelectionRange {
  const [first, ...more] = stretches;
  const { start, end } = first!;
  return {
    range: { start: position(start), end: position(end) },
    parent: more.length ? selectionRange(more) : undefined,
  };
}

export interface SymbolPlace {
  readonly file: string;
  readonly uri: string;
  readonly thing: Glimpse;
}

/** As it is called in a list of all. */
export function symbolName({ kind, name, title }: Glimpse): string {
  return [kind, name, title && `“${title}”`].filter(Boolean).join(' ');
}

/** `text`: its line, for a client that does not ask for it later. */
export function workspaceSymbol({ uri, file, thing }: SymbolPlace, text?: string): WorkspaceSymbol {
  const { kind, line, within } = thing;
  const symbol: WorkspaceSymbol = {
    name: symbolName(thing),
    kind: SYMBOL_KINDS[kind] ?? SymbolKind.Property,
    containerName: [within, file.split(/[\\/]/).at(-1)].filter(Boolean).join(', '),
    location: { uri },
    data: { line },
  };
  return text === undefined ? symbol : atLine(symbol, line, text);
}

/** With where it stands in its file: its line without the indent. */
export function atLine(symbol: WorkspaceSymbol, line: number, text: string): WorkspaceSymbol {
  const start = { line, character: text.length - text.trimStart().length };
  const end = { line, character: text.trimEnd().length };
  return { ...symbol, location: { uri: symbol.location.uri, range: { start, end } } };
}
