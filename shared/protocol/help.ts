/** Pages of help: what a finding means, why it matters and what to do. They come with the tool, in one file. */

/** The scheme of their addresses in an editor: `perpend-help:/fit-run.md`. */
export const HELP_SCHEME = 'perpend-help';

/** The file in `dist` that holds them, in Markdown, by the code of the finding. */
export const HELP_FILE = 'help.json';

/** The page for a code. A caution of a firm's own has the page of all cautions. */
export function pageFor(
  pages: Readonly<Record<string, unknown>>,
  code: string,
): string | undefined {
  const general = code.startsWith('caution-') ? 'caution' : '';
  const found = [code, general].find((key) => Object.hasOwn(pages, key));
  const page = found ? pages[found] : undefined;
  return typeof page === 'string' ? page : undefined;
}
