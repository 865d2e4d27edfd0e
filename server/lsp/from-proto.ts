/** The protocol’s shapes into plain data for the engine, clamped to what is there. */
import {
  type ClientCapabilities,
  type CompletionItem,
  type InitializeParams,
  InsertTextMode,
  type Position,
  type Range,
  type TextDocumentContentChangeEvent,
} from 'vscode-languageserver';
import type { StartOptions, Words } from '../../shared/protocol/files';
import type { ActionRange } from '../engine/ide/actions';
import type { Chosen } from '../engine/ide/completion';
import type * as ide from '../engine/ide/types';
import type { SourceFile, TextChange } from '../engine/workspace/source';
import { chosen as chosenOf, type Encoding } from './encoding';
import { ITEM_KINDS } from './to-proto/completion';

export function position({ line, character }: Position): ide.Position {
  return { line, column: character };
}

/** Lines that a range touches; one that ends before the first character of a line does not touch it. */
export function lineRange({ start, end }: Range): ide.LineRange {
  const last = end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
  return { first: start.line, last };
}

export function actionRange({ start, end }: Range): ActionRange {
  return {
    startLine: start.line,
    startColumn: start.character,
    endLine: end.line,
    endColumn: end.character,
  };
}

/** A change of part of a file, or the whole text instead. A place beyond the end is taken for the end. */
export function change(
  event: TextDocumentContentChangeEvent,
  file: SourceFile,
): TextChange | string {
  if (!('range' in event) || !event.range) return event.text;
  const one = clamped(event.range.start, file);
  const other = clamped(event.range.end, file);
  // Some clients tell a selection from where it was begun.
  const forward = one[0] < other[0] || (one[0] === other[0] && one[1] <= other[1]);
  const [[startLine, startColumn], [endLine, endColumn]] = forward ? [one, other] : [other, one];
  return { startLine, startColumn, endLine, endColumn, text: event.text };
}

function clamped({ line, character }: Position, { lines }: SourceFile): [number, number] {
  if (line >= lines.length) return [lines.length - 1, lines.at(-1)!.length];
  return [line, Math.min(character, lines[line]!.length)];
}

/** What the client can do, as far as it changes an answer. */
export interface Client {
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly refreshesHints: boolean;
  readonly watchesFiles: boolean;
  readonly hasConfiguration: boolean;
  readonly changesFolders: boolean;
  readonly fillsSnippets: boolean;
  readonly takesLinks: boolean;
  /** Takes edits that say which version of a file they are for. */
  readonly versionsEdits: boolean;
  readonly preparesRename: boolean;
  readonly nestsSymbols: boolean;
  /** Asks for the range of a symbol when a reader goes there. */
  readonly resolvesSymbols: boolean;
  /** Shows faded what changes nothing, and struck through what is old. */
  readonly tagsFindings: boolean;
  /** Leads from a finding to the other places that it speaks of. */
  readonly relatesFindings: boolean;
  /** The scheme by which it opens pages of help: `perpend-help`. */
  readonly helpScheme?: string;
  /** Asks for the edits of an action when it is taken. */
  readonly resolvesActions: boolean;
  /** Leads a reader through the places to fill in of an edit. */
  readonly fillsEdits: boolean;
  /** So many of a file, and no more. */
  readonly mostFolds: number;
  /** Shows a text of ours in place of folded lines. */
  readonly collapsesText: boolean;
  /** Asks where the parts of a hint lead when a reader looks at it. */
  readonly resolvesHints: boolean;
  readonly refreshesLenses: boolean;
  readonly listDefaults: ReadonlySet<string>;
  readonly replacesWords: boolean;
  readonly labelDetails: boolean;
  readonly commits: boolean;
  readonly adjustsIndents: boolean;
  readonly labelOffsets: boolean;
  readonly noActivePart: boolean;
  /** Its own commands that lenses, hovers and words may name. */
  readonly commands: ReadonlySet<string>;
}

/** @param options what a client of ours says of itself */
export function client(said: ClientCapabilities | null, options: StartOptions = {}): Client {
  const { workspace, textDocument } = said ?? {};
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport ?? false,
    refreshesHints: workspace?.inlayHint?.refreshSupport ?? false,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration ?? false,
    hasConfiguration: workspace?.configuration ?? false,
    changesFolders: workspace?.workspaceFolders ?? false,
    fillsSnippets: textDocument?.completion?.completionItem?.snippetSupport ?? false,
    takesLinks: textDocument?.definition?.linkSupport ?? false,
    ...ofNames({ workspace, textDocument }),
    ...ofWriting({ workspace, textDocument }),
    commands: new Set(Array.isArray(options.commands) ? options.commands : []),
    ...ofFindings({ workspace, textDocument }, options),
  };
}

function ofFindings({ workspace, textDocument }: ClientCapabilities, { help }: StartOptions) {
  const { codeAction, diagnostic, publishDiagnostics } = textDocument ?? {};
  const { snippetEditSupport, documentChanges } = workspace?.workspaceEdit ?? {};
  const told = diagnostic ?? publishDiagnostics;
  const resolves =
    codeAction?.dataSupport && codeAction.resolveSupport?.properties?.includes('edit');
  return {
    tagsFindings: (told?.tagSupport ?? publishDiagnostics?.tagSupport) !== undefined,
    relatesFindings: told?.relatedInformation ?? publishDiagnostics?.relatedInformation ?? false,
    helpScheme: /^[a-z][a-z0-9+.-]*$/.test(String(help)) ? help : undefined,
    resolvesActions: resolves ?? false,
    fillsEdits: (snippetEditSupport ?? false) && (documentChanges ?? false),
  };
}

function ofNames({ workspace, textDocument }: ClientCapabilities) {
  const { rename, documentSymbol, foldingRange } = textDocument ?? {};
  const resolves = workspace?.symbol?.resolveSupport?.properties ?? [];
  return {
    versionsEdits: workspace?.workspaceEdit?.documentChanges ?? false,
    preparesRename: rename?.prepareSupport ?? false,
    nestsSymbols: documentSymbol?.hierarchicalDocumentSymbolSupport ?? false,
    resolvesSymbols: resolves.includes('location.range'),
    mostFolds: foldingRange?.rangeLimit ?? Number.POSITIVE_INFINITY,
    collapsesText: foldingRange?.foldingRange?.collapsedText ?? false,
  };
}

function ofWriting({ workspace, textDocument }: ClientCapabilities) {
  const { completion, inlayHint, signatureHelp } = textDocument ?? {};
  const { completionItem, completionList } = completion ?? {};
  const signature = signatureHelp?.signatureInformation;
  return {
    resolvesHints: inlayHint?.resolveSupport?.properties?.includes('label.location') ?? false,
    refreshesLenses: workspace?.codeLens?.refreshSupport ?? false,
    listDefaults: new Set(completionList?.itemDefaults ?? []),
    replacesWords: completionItem?.insertReplaceSupport ?? false,
    labelDetails: completionItem?.labelDetailsSupport ?? false,
    commits: completionItem?.commitCharactersSupport ?? false,
    adjustsIndents:
      completionItem?.insertTextModeSupport?.valueSet?.includes(InsertTextMode.adjustIndentation) ??
      false,
    labelOffsets: signature?.parameterInformation?.labelOffsetSupport ?? false,
    noActivePart: signature?.noActiveParameterSupport ?? false,
  };
}

/** What a client of ours says of itself; others say nothing, or something else. */
export function startOptions({ initializationOptions: given }: InitializeParams): StartOptions {
  return typeof given === 'object' && given !== null ? given : {};
}

export function scratch({ scratch: given }: StartOptions): string | undefined {
  return typeof given === 'string' ? given : undefined;
}

/** In which words the server speaks; nothing for English. What is no text is left out. */
export function words(params: InitializeParams): Words | undefined {
  const { words: given } = startOptions(params);
  if (typeof given !== 'object' || given === null) return undefined;
  return Object.fromEntries(Object.entries(given).filter(([, text]) => typeof text === 'string'));
}

/** How columns are counted from now on. */
export function encoding({ capabilities }: InitializeParams): Encoding {
  return chosenOf(capabilities?.general?.positionEncodings ?? undefined);
}

/** Addresses of the folders that are open. */
export function folders({ workspaceFolders, rootUri }: InitializeParams): string[] {
  if (workspaceFolders?.length) return workspaceFolders.map((folder) => folder.uri);
  return rootUri ? [rootUri] : [];
}

/** Which of the words that we offered it is; nothing for one that is not ours. */
export function chosen({
  label,
  kind,
  data,
}: CompletionItem): (Chosen & { uri: string }) | undefined {
  const { uri, line, column, kind: own } = (data ?? {}) as Readonly<Record<string, unknown>>;
  if (typeof uri !== 'string' || typeof line !== 'number' || typeof column !== 'number')
    return undefined;
  const known = KINDS.find((each) =>
    own === undefined ? ITEM_KINDS[each] === kind : each === own,
  );
  return known && { uri, line, column, label, kind: known };
}

const KINDS = Object.keys(ITEM_KINDS) as ide.CompletionKind[];
