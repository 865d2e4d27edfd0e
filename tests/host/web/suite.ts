/** What is proved in a browser: the extension and its server as workers, files on no disk. Called by the editor. */
import * as vscode from 'vscode';
import { FIRST_WAIT_MS, until } from '../suite/wait';

const JOB = vscode.Uri.parse('memory:/jobs/garden-wall/job.perp');

function must(holds: unknown, what: string): asserts holds {
  if (!holds) throw new Error(what);
}

async function open(uri: vscode.Uri): Promise<vscode.TextDocument> {
  const document = await vscode.workspace.openTextDocument(uri);
  await vscode.window.showTextDocument(document);
  return document;
}

const whole = (document: vscode.TextDocument) => new vscode.Range(0, 0, document.lineCount, 0);

async function hints(document: vscode.TextDocument): Promise<string[]> {
  const command = 'vscode.executeInlayHintProvider';
  const found = await vscode.commands.executeCommand<vscode.InlayHint[] | undefined>(
    command,
    document.uri,
    whole(document),
  );
  return (found ?? []).map(({ label }) =>
    typeof label === 'string' ? label : label.map(({ value }) => value).join(''),
  );
}

const codes = (uri: vscode.Uri) =>
  vscode.languages
    .getDiagnostics(uri)
    .map(({ code }) => String(typeof code === 'object' ? code.value : code));

const tests: Record<string, () => Promise<void>> = {
  async 'the extension runs in a browser, on a folder that is on no disk'() {
    must(vscode.workspace.workspaceFolders?.[0]?.uri.scheme === 'memory', 'another folder is open');
    must(!('process' in globalThis), 'there is Node here');
    const document = await open(JOB);
    must(document.languageId === 'perpend', document.languageId);
    const extension = () => vscode.extensions.getExtension('perpend.perpend');
    await until('activation', extension, (found) => found?.isActive === true, FIRST_WAIT_MS);
  },

  async 'prices stand at the headings, from the firm’s file beside the job'() {
    const document = await open(JOB);
    const some = (found: string[]) => found.some((hint) => hint.includes('£'));
    await until('a hint with £', () => hints(document), some, FIRST_WAIT_MS);
    // A file that is long on its way is missed until it is there.
    const held = (list: string[]) =>
      list.length > 0 && !list.some((code) => code.startsWith('use-'));
    await until('findings, and none of a file that is missing', () => codes(JOB), held);
  },

  async 'a finding follows the text, and a change of the firm’s file'() {
    const uri = vscode.Uri.joinPath(JOB, '../other.perp');
    const text = (await open(JOB)).getText().replace(/^use ".*"$/m, 'use "own-firm.perp"');
    await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
    await open(uri);
    await until(
      'a missing file',
      () => codes(uri),
      (list) => list.includes('use-missing'),
    );
    const firm = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(JOB, USED));
    await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(JOB, '../own-firm.perp'), firm);
    await until(
      'it to be found',
      () => codes(uri),
      (list) => !list.includes('use-missing'),
    );
  },

  async 'a link is not followed: nobody sees where it leads'() {
    const uri = vscode.Uri.joinPath(JOB, '../by-link.perp');
    const text = (await open(JOB)).getText().replace(/^use ".*"$/m, 'use "link-firm.perp"');
    const firm = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(JOB, USED));
    await vscode.workspace.fs.writeFile(vscode.Uri.joinPath(JOB, '../link-firm.perp'), firm);
    await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
    await open(uri);
    await until(
      'it to be missing',
      () => codes(uri),
      (list) => list.includes('use-missing'),
    );
  },

  async 'a finding leads into the library that comes with the extension'() {
    await open(JOB);
    const found = await until(
      'a finding with a place in the library',
      () =>
        vscode.languages
          .getDiagnostics(JOB)
          .flatMap(({ relatedInformation }) => relatedInformation ?? [])
          .filter(({ location }) => location.uri.path.endsWith('/library/uk.perp')),
      (list) => list.length > 0,
    );
    const [{ location }] = found as [vscode.DiagnosticRelatedInformation];
    const library = await vscode.workspace.openTextDocument(location.uri);
    must(/^caution /.test(library.lineAt(location.range.start.line).text), 'no caution there');
  },

  async 'the preview opens'() {
    await open(JOB);
    await vscode.commands.executeCommand('perpend.preview');
    const tabs = () => vscode.window.tabGroups.all.flatMap((group) => group.tabs);
    const previews = () =>
      tabs().filter(
        ({ input }) =>
          input instanceof vscode.TabInputWebview && input.viewType.endsWith('perpend.preview'),
      );
    await until('a preview', previews, (found) => found.length > 0);
  },

  async 'the server starts again, and reads files again'() {
    const document = await open(JOB);
    await vscode.commands.executeCommand('perpend.restart');
    const some = (found: string[]) => found.some((hint) => hint.includes('£'));
    await until('a hint with £', () => hints(document), some, FIRST_WAIT_MS);
    const held = (list: string[]) => list.length > 0 && !list.includes('use-missing');
    await until('the firm’s file to be there', () => codes(JOB), held);
  },

  async 'a quote is written as a PDF'() {
    await open(JOB);
    const to = vscode.Uri.parse('memory:/jobs/quote.pdf');
    await vscode.commands.executeCommand('perpend.save', {
      uri: JOB,
      page: 'quote',
      form: 'pdf',
      to,
    });
    const bytes = await vscode.workspace.fs.readFile(to);
    console.log(`PERPEND-PDF ${btoa(String.fromCharCode(...bytes))}`);
  },
};

/** Where the job’s own firm file stands, as its `use` line says. */
const USED = '../../firm.perp';

/** What the server said of itself, to find out why a test failed. */
async function tellLog(): Promise<void> {
  await vscode.commands.executeCommand('perpend.log');
  const log = () =>
    vscode.workspace.textDocuments.find(({ uri }) => uri.scheme === 'output')?.getText();
  console.log(`Log: ${await until('the log', log, (text) => Boolean(text)).catch(String)}`);
}

/** @throws when a test failed */
export async function run(): Promise<void> {
  // A window that is slow to start may lose the extension that has the files, and waits for them without end. The
  // launcher opens one anew that does not come as far as this.
  await vscode.workspace.fs.stat(JOB);
  console.log('PERPEND-BEGINS');
  const results = [];
  for (const [title, test] of Object.entries(tests)) {
    const error = await test().then(
      () => undefined,
      (thrown: Error) => thrown.stack ?? String(thrown),
    );
    results.push({ title, state: error ? 'failed' : 'passed', error });
  }
  if (results.some(({ error }) => error)) await tellLog();
  console.log(`PERPEND-RESULTS ${JSON.stringify(results)}`);
  if (results.some(({ error }) => error)) throw new Error('tests failed');
}
