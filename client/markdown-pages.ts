/** Pages that are made once, such as what changed between two revisions: shown as Markdown is, and never edited. */
import {
  commands,
  Disposable,
  EventEmitter,
  type TextDocumentContentProvider,
  Uri,
  ViewColumn,
  window,
  workspace,
} from 'vscode';

const SCHEME = 'perpend-page';

/** Older ones are let go: a reader who still has one on screen keeps what it shows. */
const MOST = 20;

export class MarkdownPages extends Disposable implements TextDocumentContentProvider {
  private readonly changed = new EventEmitter<Uri>();
  readonly onDidChange = this.changed.event;
  private readonly provider: Disposable;
  private readonly pages = new Map<string, string>();

  constructor() {
    super(() => this.end());
    this.provider = workspace.registerTextDocumentContentProvider(SCHEME, this);
  }

  private end(): void {
    this.provider.dispose();
    this.changed.dispose();
  }

  provideTextDocumentContent(page: Uri): string {
    return this.pages.get(page.path) ?? '';
  }

  /** A page of the same title takes the place of the one before. */
  async show(title: string, markdown: string): Promise<Uri> {
    const page = Uri.from({ scheme: SCHEME, path: `/${title.replace(/[/\\]/g, '-')}.md` });
    this.pages.delete(page.path);
    this.pages.set(page.path, markdown);
    if (this.pages.size > MOST) this.pages.delete(this.pages.keys().next().value!);
    this.changed.fire(page);
    await showMarkdown(page);
    return page;
  }
}

/** Where an editor has no Markdown preview, it is readable as it is written. */
export async function showMarkdown(page: Uri, beside = false): Promise<void> {
  const viewColumn = beside ? ViewColumn.Beside : ViewColumn.Active;
  try {
    const command = beside ? 'markdown.showPreviewToSide' : 'markdown.showPreview';
    await commands.executeCommand(command, page);
  } catch {
    await window.showTextDocument(page, { viewColumn, preview: true });
  }
}
