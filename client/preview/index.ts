/** Previews beside the text: opened by a command, brought back when the window is. */
import {
  commands,
  Disposable,
  type ExtensionContext,
  l10n,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
} from 'vscode';
import { isLine, keptOf } from '../../shared/protocol/preview-page';
import type { Server } from '../server';
import { meant } from '../target';
import { PreviewPanel, type Print, type Wish } from './panel';

/** Named in the manifest: a window that had a preview starts the extension to have it again. */
export const VIEW_TYPE = 'perpend.preview';

/** True from the first preview on, however it came about: by it the first steps know that one has been seen. */
export const SEEN = 'perpend.previewSeen';

export class Previews extends Disposable {
  private readonly all = new Set<PreviewPanel>();
  private readonly registered: Disposable;

  constructor(
    private readonly context: ExtensionContext,
    private readonly server: Server,
    private readonly print: Print,
  ) {
    super(() => this.end());
    this.registered = Disposable.from(
      commands.registerCommand('perpend.preview', (given?: unknown) => this.open(given)),
      window.registerWebviewPanelSerializer(VIEW_TYPE, {
        deserializeWebviewPanel: async (panel, state) => this.restore(panel, state),
      }),
    );
  }

  private end(): void {
    this.registered.dispose();
    for (const each of this.all) each.dispose();
  }

  /** What previews show: for tests and for whoever writes what is shown as a file. */
  get shown() {
    return [...this.all].map(({ shows }) => shows);
  }

  /** One preview follows the text; it is shown again where there is one, if nobody has pinned it to something else. */
  open(given?: unknown): void {
    const wish = wishOf(given);
    if (!wish) {
      void window.showInformationMessage(
        l10n.t('Open a job first: a preview stands beside its text.'),
      );
      return;
    }
    const free = [...this.all].find(({ shows }) => !shows.pinned || isSame(shows.uri, wish.uri));
    if (free) {
      free.panel.reveal(free.panel.viewColumn, true);
      free.wish(wish);
      return;
    }
    const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    const panel = window.createWebviewPanel(VIEW_TYPE, l10n.t('Preview'), column, {});
    this.add(panel, wish);
  }

  private restore(panel: WebviewPanel, state: unknown): void {
    const kept = keptOf(state);
    const uri = kept && uriOf(kept.uri);
    if (kept && uri) this.add(panel, { ...kept, uri });
    else panel.dispose();
  }

  private add(panel: WebviewPanel, start: ConstructorParameters<typeof PreviewPanel>[4]): void {
    panel.iconPath = {
      light: Uri.joinPath(this.context.extensionUri, 'client/media/preview-light.svg'),
      dark: Uri.joinPath(this.context.extensionUri, 'client/media/preview-dark.svg'),
    };
    const { extensionUri } = this.context;
    const preview = new PreviewPanel(panel, this.server, extensionUri, this.print, start);
    this.all.add(preview);
    void commands.executeCommand('setContext', SEEN, true);
    panel.onDidDispose(() => {
      this.all.delete(preview);
      preview.dispose();
    });
  }
}

function isSame(a: Uri, b: Uri): boolean {
  return a.toString() === b.toString();
}

function uriOf(text: string): Uri | undefined {
  try {
    return Uri.parse(text, true);
  } catch {
    return undefined;
  }
}

/** From a button of an editor comes the file, from elsewhere what to show of it, from the palette nothing. */
function wishOf(given: unknown): Wish | undefined {
  const own = given instanceof Uri ? { uri: given } : asked(given);
  if (own) return own;
  const uri = meant()?.uri;
  return uri && { uri, ...(asked({ ...fields(given), uri }) ?? {}) };
}

function fields(given: unknown): object {
  return typeof given === 'object' && given !== null ? given : {};
}

function asked(given: unknown): Wish | undefined {
  const { uri, line, show } = fields(given) as Record<string, unknown>;
  const found = uri instanceof Uri ? uri : typeof uri === 'string' ? uriOf(uri) : undefined;
  if (!found) return undefined;
  return {
    uri: found,
    ...(isLine(line) ? { line } : {}),
    ...(typeof show === 'string' ? { show } : {}),
  };
}
