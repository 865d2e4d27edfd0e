/** The text of the page that a preview is shown by. Nothing of a job is in it: that is told to it, and looked at twice. */
import { escaped } from '../../shared/escaped';
import type { PageWords } from '../../shared/protocol/preview-words';

export interface PageParts {
  /** BCP 47, of the editor. */
  readonly lang: string;
  readonly title: string;
  readonly words: PageWords;
  /** Addresses of our one script and our one style sheet, and where such may be read from. */
  readonly script: string;
  readonly style: string;
  readonly source: string;
  /** Letters and figures that nobody can guess. */
  readonly nonce: string;
}

/** No address but those of our own files, nothing inline, nothing fetched. */
export function pageText({ lang, title, words, script, style, source, nonce }: PageParts): string {
  const policy = [
    "default-src 'none'",
    `style-src ${source}`,
    `script-src 'nonce-${nonce}'`,
    // The firm’s logo comes with the paper; nothing is fetched for it.
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!doctype html>
<html lang="${escaped(lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<link rel="stylesheet" href="${escaped(style)}">
</head>
<body data-words="${escaped(JSON.stringify(words))}">
<script nonce="${escaped(nonce)}" src="${escaped(script)}"></script>
</body>
</html>
`;
}
