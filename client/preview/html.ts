/** The page of a preview in an editor: where its script and its style sheet stand, and who may read them. */
import { env, l10n, Uri, type Webview } from 'vscode';
import { pageText } from './page-text';
import { pageWords } from './words';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789';

function nonceOf(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(32));
  return [...bytes].map((byte) => LETTERS[byte % LETTERS.length]).join('');
}

/** The only folder that the page may read from. */
export function pageFolder(extension: Uri): Uri {
  return Uri.joinPath(extension, 'dist', 'preview');
}

export function pageHtml(webview: Webview, extension: Uri): string {
  const folder = pageFolder(extension);
  const address = (name: string) => webview.asWebviewUri(Uri.joinPath(folder, name)).toString();
  return pageText({
    lang: env.language,
    title: l10n.t('Preview'),
    words: pageWords(),
    script: address('preview.js'),
    style: address('preview.css'),
    source: webview.cspSource,
    nonce: nonceOf(),
  });
}
