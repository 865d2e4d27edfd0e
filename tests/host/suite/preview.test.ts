import * as vscode from 'vscode';
import { JOB, lineOf, open, openText } from './files';
import { FIRST_WAIT_MS, until } from './wait';

/** Titles of the previews that are open: an editor puts a name of its own before the kind. */
function titles(): string[] {
  return vscode.window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(
      ({ input }) =>
        input instanceof vscode.TabInputWebview && input.viewType.endsWith('perpend.preview'),
    )
    .map(({ label }) => label);
}

async function closePreviews(): Promise<void> {
  const tabs = vscode.window.tabGroups.all.flatMap((group) => group.tabs);
  const own = tabs.filter(({ input }) => input instanceof vscode.TabInputWebview);
  if (own.length) await vscode.window.tabGroups.close(own);
}

async function goTo(document: vscode.TextDocument, pattern: RegExp): Promise<void> {
  const editor = await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
  const at = new vscode.Position(lineOf(document, pattern), 2);
  editor.selection = new vscode.Selection(at, at);
}

const shows = (title: RegExp) =>
  until(
    `a preview called ${title}`,
    titles,
    (found) => found.length === 1 && title.test(found[0]!),
    FIRST_WAIT_MS,
  );

describe('the preview', () => {
  afterEach(closePreviews);

  it('opens beside the text, and shows the wall that the cursor is in', async () => {
    const document = await open(JOB);
    await goTo(document, /^wall north/);
    await vscode.commands.executeCommand('perpend.preview');
    await shows(/^North boundary$/);
    const active = () => vscode.window.activeTextEditor?.document === document;
    await until('the text to keep the focus', active, Boolean);
  });

  it('follows the cursor to other work, and to another file', async () => {
    const two = (await open(JOB))
      .getText()
      .replace(/^cost/m, 'pier lone "Lone pier"\n  size 2 x 2 bricks\n  height 9 courses\n\ncost');
    const document = await openText('two-works.perp', two);
    await goTo(document, /^wall north/);
    await vscode.commands.executeCommand('perpend.preview');
    await shows(/^North boundary$/);
    await goTo(document, /^pier lone/);
    await shows(/^Lone pier$/);
    const gate = await open('arched-gate/job.perp');
    await goTo(gate, /^wall/);
    await shows(/^Yard wall$/);
  });

  it('shows what it is asked for, in the preview that is there', async () => {
    const document = await open(JOB);
    await vscode.commands.executeCommand('perpend.preview', { uri: document.uri, show: 'front' });
    await shows(/^North boundary$/);
    const uri = document.uri.toString();
    await vscode.commands.executeCommand('perpend.preview', { uri, show: 'quote' });
    await shows(/^Quote$/);
    await vscode.commands.executeCommand('perpend.preview', { uri, show: 'plan' });
    await shows(/plan$/);
  });
});
