/** Pages of help in the editor: a finding’s code leads to one. They come with the extension and need no network. */
import { Disposable, l10n, type TextDocumentContentProvider, type Uri, workspace } from 'vscode';
import { HELP_FILE, HELP_SCHEME, pageFor } from '../shared/protocol/help';
import { partBytes } from './parts';

export class HelpPages extends Disposable implements TextDocumentContentProvider {
  private readonly provider: Disposable;
  private pages: Promise<Readonly<Record<string, unknown>>> | undefined;

  constructor(private readonly extension: Uri) {
    super(() => this.provider.dispose());
    this.provider = workspace.registerTextDocumentContentProvider(HELP_SCHEME, this);
  }

  /** `perpend-help:/fit-run.md` */
  async provideTextDocumentContent({ path }: Uri): Promise<string> {
    const code = path.replace(/^\//, '').replace(/\.md$/, '');
    this.pages ??= read(this.extension);
    return pageFor(await this.pages, code) ?? l10n.t('There is no page about “{0}”.', code);
  }
}

/** Nothing where the file cannot be read: then there is no page. */
async function read(extension: Uri): Promise<Readonly<Record<string, unknown>>> {
  try {
    const bytes = await partBytes(extension, HELP_FILE);
    return JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return {};
  }
}
