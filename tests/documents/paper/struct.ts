/** The structure of a PDF as pdf.js reads it: an outside check of our tags. */
import { getDocument, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface Tag {
  readonly role: string;
  readonly depth: number;
  readonly alt?: string;
}

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

/** Elements of a page from top to bottom, each under the ones it stands in. */
export async function structOf(bytes: Uint8Array, number: number): Promise<Tag[]> {
  const loading = getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS });
  const page = await (await loading.promise).getPage(number);
  const tree = (await page.getStructTree()) as Node;
  await loading.destroy();
  return tags(tree.children ?? [], 0);
}

function tags(nodes: readonly Node[], depth: number): Tag[] {
  return nodes.flatMap(({ role, alt, children = [] }) =>
    role ? [{ role, depth, alt }, ...tags(children, depth + 1)] : [],
  );
}
