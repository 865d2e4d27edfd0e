/**
 * The yardstick: a language server that keeps the text as the stock library does, and answers with one hint that
 * tells how long the asked part of the text is. It reads that part, as any server must, and knows nothing of it.
 */
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
  const document = documents.get(textDocument.uri);
  const text = document?.getText(range) ?? '';
  return [{ position: range.start, label: `v${document?.version} ${text.length}` }];
});
connection.languages.diagnostics.on(() => ({ kind: 'full', items: [] }));
documents.listen(connection);
connection.listen();
