/** Edits that the server answers with: it writes nothing itself, the client applies and saves them. */

/** The shape of a `WorkspaceEdit` of the Language Server Protocol: of one open file, at the version that it is for. */
export interface Edits {
  readonly documentChanges: readonly {
    readonly textDocument: { readonly uri: string; readonly version: number };
    readonly edits: readonly { readonly range: Range; readonly newText: string }[];
  }[];
}

export interface Range {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}
