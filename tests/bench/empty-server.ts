/** The yardstick: a language server that keeps the text as the stock library does and answers one hint that says nothing. */
import {
  createConnection,
  ProposedFeatures,
  TextDocumentSyncKind,
  TextDocuments,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';

const connection = createConnection(ProposedFeatures.all, process.stdin, process.stdout);
const documents = new TextDocuments(TextDocument);

connection.onInitialize(() => ({
  capabilities: {
    textDocumentSync: TextDocumentSyncKind.Incremental,
    inlayHintProvider: true,
    diagnosticProvider: { interFileDependencies: false, workspaceDiagnostics: false },
  },
}));
connection.languages.inlayHint.on(({ textDocument, range }) => {
  const version = documents.get(textDocument.uri)?.version ?? 0;
  return [{ position: range.start, label: `v${version}` }];
});
connection.languages.diagnostics.on(() => ({ kind: 'full', items: [] }));
documents.listen(connection);
connection.listen();
