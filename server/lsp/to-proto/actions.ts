/** Ways out and changes as code actions. */
import type {
  CodeAction,
  CodeActionParams,
  Diagnostic,
  SnippetTextEdit,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver';
import type * as ide from '../../engine/ide/types';
import { changes, type Files, textEdit, workspaceEdit } from './edits';

interface VersionedFiles extends Files {
  readonly versionOf: (name: string) => number | undefined;
}

interface Takes {
  readonly versionsEdits: boolean;
  readonly resolvesActions: boolean;
}

interface Of {
  readonly uri: string;
  readonly name: string;
  readonly version: number;
  readonly eol: string;
}

/** By what an action is found again when its edits are asked for. Nobody but us reads it. */
export interface ActionData {
  readonly uri: string;
  readonly version: number;
  readonly params: CodeActionParams;
}

/** `nth`: which its finding is of those of its code. */
export interface Offered {
  readonly action: ide.Action;
  readonly nth?: number;
}

/** Without its edits, where the client asks for them when the action is taken. */
export function codeAction(
  { action, nth }: Offered,
  params: CodeActionParams,
  file: Of,
  files: VersionedFiles,
  takes: Takes,
): CodeAction {
  const { uri, version } = file;
  return {
    title: action.title,
    kind: action.kind,
    ...(action.finding && { diagnostics: told(action.finding, nth, params) }),
    isPreferred: action.preferred || undefined,
    ...(takes.resolvesActions
      ? { data: { uri, version, params: narrowed(params) } satisfies ActionData }
      : { edit: actionEdit(action, file, files, takes) }),
  };
}

/** Only what an action is found by: messages need not go there and back. */
function narrowed({ textDocument, range, context }: CodeActionParams): CodeActionParams {
  const { only, diagnostics } = context;
  const found = diagnostics.map(({ range: at, source, data }) => ({
    range: at,
    source,
    data,
    message: '',
  }));
  return { textDocument, range, context: { ...(only && { only }), diagnostics: found } };
}

/** Of two at one place only the one that is meant; its place tells where a client keeps no data. */
function told(
  { code, place }: NonNullable<ide.Action['finding']>,
  nth: number | undefined,
  { context }: CodeActionParams,
): Diagnostic[] {
  return context.diagnostics.filter((d) => {
    if (d.code !== code) return false;
    const { start } = d.range;
    const said: unknown = d.data?.nth;
    return typeof said === 'number' && nth !== undefined
      ? said === nth
      : start.line === place.line && start.character === place.start;
  });
}

export function actionEdit(
  action: ide.Action,
  file: Of,
  files: VersionedFiles,
  { versionsEdits }: Pick<Takes, 'versionsEdits'>,
): WorkspaceEdit {
  if (action.later) return wholeFile(action.later(), file, versionsEdits);
  if (!action.fills) return workspaceEdit(action.edits, files, versionsEdits);
  return toFillIn(changes(action.edits, files), action, files);
}

function wholeFile(
  edits: ReturnType<NonNullable<ide.Action['later']>>,
  { uri, version, eol }: Of,
  versioned: boolean,
): WorkspaceEdit {
  const list = edits.map((edit) => textEdit(edit, eol));
  if (!versioned) return { changes: list.length ? { [uri]: list } : {} };
  return { documentChanges: list.length ? [{ textDocument: { uri, version }, edits: list }] : [] };
}

/** Only for a client that takes both versions and snippets. */
function toFillIn(
  byUri: Readonly<Record<string, readonly TextEdit[]>>,
  { edits }: ide.Action,
  files: VersionedFiles,
): WorkspaceEdit {
  const names = new Map(edits.map(({ place: { file } }) => [files.uriOf(file), file]));
  return {
    documentChanges: Object.entries(byUri).map(([uri, list]) => ({
      textDocument: { uri, version: files.versionOf(names.get(uri)!) ?? null },
      edits: list.map(
        ({ range, newText: value }): SnippetTextEdit => ({
          range,
          snippet: { kind: 'snippet', value },
        }),
      ),
    })),
  };
}
