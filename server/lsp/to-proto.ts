/** Plain data of the engine into the protocol’s shapes. With `from-proto`, the only file that knows them. */
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  type Diagnostic,
  DiagnosticSeverity,
  type DocumentHighlight,
  DocumentHighlightKind,
  type DocumentSymbol,
  type FoldingRange,
  type Hover,
  type InlayHint,
  InsertTextFormat,
  type Location,
  type LocationLink,
  MarkupKind,
  type Range,
  SymbolKind,
  type TextEdit,
} from 'vscode-languageserver';
import type { TextEdit as EngineEdit, Finding, Severity } from '../../shared/finding';
import type { Place, Span } from '../../shared/span';
import type { FormatEdit } from '../engine/ide/format';
import type * as ide from '../engine/ide/types';

/** The address of a file by the engine’s name for it. */
export type UriOf = (name: string) => string;

export function range(span: Span): Range {
  const { line, start, end } = span;
  return { start: { line, character: start }, end: { line, character: end } };
}

export function location(place: Place, uriOf: UriOf): Location {
  return { uri: uriOf(place.file), range: range(place) };
}

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
  hint: DiagnosticSeverity.Hint,
};

export const SOURCE = 'perpend';

/** Ways out are worked out when they are asked for, by the finding’s code and place. */
export function diagnostic(finding: Finding, uriOf: UriOf): Diagnostic {
  return {
    range: range(finding.place),
    severity: SEVERITIES[finding.severity],
    code: finding.code,
    source: SOURCE,
    message: finding.message,
    relatedInformation: finding.related.map((r) => ({
      location: location(r.place, uriOf),
      message: r.message,
    })),
  };
}

export function hover({ span, markdown }: ide.Hover): Hover {
  return { range: range(span), contents: { kind: MarkupKind.Markdown, value: markdown } };
}

export function inlayHint({ line, column, text }: ide.Hint): InlayHint {
  return { position: { line, character: column }, label: text, paddingLeft: true };
}

const ITEM_KINDS: Readonly<Record<ide.CompletionKind, CompletionItemKind>> = {
  heading: CompletionItemKind.Keyword,
  block: CompletionItemKind.Snippet,
  key: CompletionItemKind.Property,
  name: CompletionItemKind.Reference,
  unit: CompletionItemKind.Unit,
  choice: CompletionItemKind.EnumMember,
  word: CompletionItemKind.Keyword,
};

/** In the engine’s order. Snippets only for a client that can fill them in. */
export function completionList(
  found: ide.Completions | undefined,
  snippets: boolean,
): CompletionList {
  const items = (found?.items ?? []).filter((item) => snippets || !item.isSnippet);
  return {
    isIncomplete: false,
    items: items.map((item, i) => completionItem(item, i, found!.span)),
  };
}

function completionItem(item: ide.Completion, order: number, span: Span): CompletionItem {
  return {
    label: item.label,
    kind: ITEM_KINDS[item.kind],
    labelDetails: item.detail ? { description: item.detail } : undefined,
    documentation: item.explains && { kind: MarkupKind.Markdown, value: item.explains },
    sortText: String(order).padStart(4, '0'),
    filterText: item.label,
    insertTextFormat: item.isSnippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    textEdit: { range: range(span), newText: item.insert },
  };
}

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

export function foldingRange({ first, last, kind }: ide.Fold): FoldingRange {
  return { startLine: first, endLine: last, kind: kind === 'comment' ? 'comment' : undefined };
}

/** Links where the client takes them: they say which word leads there. */
export function definition(
  found: ide.Definition | undefined,
  uriOf: UriOf,
  links: boolean,
): LocationLink[] | Location[] | null {
  if (!found) return null;
  if (!links) return found.targets.map((t) => location(t.place, uriOf));
  return found.targets.map(({ place, lines }) => ({
    originSelectionRange: range(found.span),
    targetUri: uriOf(place.file),
    targetRange: wholeLines(lines, place),
    targetSelectionRange: range(place),
  }));
}

/** From the first line’s beginning to the place’s end, or to the beginning of the line after the last. */
function wholeLines(lines: ide.LineRange, place: Place): Range {
  const end =
    lines.last > place.line
      ? { line: lines.last + 1, character: 0 }
      : { line: place.line, character: place.end };
  return { start: { line: lines.first, character: 0 }, end };
}

export function highlight(found: ide.Highlight): DocumentHighlight {
  const kind = found.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read;
  return { range: range(found), kind };
}

/** A line’s end is written as the document has it. */
export function textEdit(edit: FormatEdit, eol: string): TextEdit {
  return {
    range: {
      start: { line: edit.startLine, character: edit.startColumn },
      end: { line: edit.endLine, character: edit.endColumn },
    },
    newText: ended(edit.text, eol),
  };
}

function ended(text: string, eol: string): string {
  return eol === '\n' ? text : text.replace(/\r?\n/g, eol);
}

/** What a code action needs to know of the files it edits. */
export interface Files {
  readonly uriOf: UriOf;
  readonly eolOf: (name: string) => string;
}

export function codeAction(action: ide.Action, params: CodeActionParams, files: Files): CodeAction {
  const { finding } = action;
  const told = params.context.diagnostics.filter(
    (d) =>
      d.code === finding.code &&
      d.range.start.line === finding.place.line &&
      d.range.start.character === finding.place.start,
  );
  return {
    title: action.title,
    kind: CodeActionKind.QuickFix,
    diagnostics: told,
    isPreferred: action.preferred || undefined,
    edit: { changes: changes(action.edits, files) },
  };
}

function changes(
  edits: readonly EngineEdit[],
  { uriOf, eolOf }: Files,
): Record<string, TextEdit[]> {
  const byUri: Record<string, TextEdit[]> = {};
  for (const { place, text } of edits) {
    const list = (byUri[uriOf(place.file)] ??= []);
    list.push({ range: range(place), newText: ended(text, eolOf(place.file)) });
  }
  return byUri;
}
