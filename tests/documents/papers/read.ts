/** Every form of a paper as what a reader, or a search, finds in it. */
import { execFileSync } from 'node:child_process';
import { unzipSync } from 'fflate';
import { csvOf, htmlOf, markdownOf, type Paper, tablesOf } from '../../../server/documents/paper';
import { pdfOf, xlsxOf } from '../../../server/documents/paper/heavy';
import { fonts, inFile } from '../paper/samples';

const ENTITIES: Readonly<Record<string, string>> = {
  lt: '<',
  gt: '>',
  quot: '"',
  '#39': "'",
  amp: '&',
};

/** With its drawings, and without its looks: `10%` of a style is no rate. */
export function htmlText(paper: Paper): string {
  const html = htmlOf(paper).replace(/<style>[\s\S]*?<\/style>/g, '');
  const drawn = [...html.matchAll(/data:image\/svg\+xml,([^"]*)/g)].map((found) =>
    decodeURIComponent(found[1]!.replaceAll('&#39;', "'")),
  );
  const texts = drawn.flatMap((svg) => [...svg.matchAll(/>([^<]+)</g)].map((t) => t[1]!));
  return [html.replace(/data:image\/svg\+xml,[^"]*/g, ''), ...texts]
    .join('\n')
    .replace(/&(lt|gt|quot|#39|amp);/g, (_, name: string) => ENTITIES[name]!);
}

export function pdfText(paper: Paper): string {
  const file = inFile(pdfOf(paper, fonts()).bytes, 'paper.pdf');
  return execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
}

/** Without its drawings. */
export function markdownText(paper: Paper): string {
  return markdownOf(paper)
    .replace(/data:image\/svg\+xml[^)]*/g, '')
    .replace(/\\(.)/g, '$1');
}

export function xlsxText(paper: Paper): string {
  const files = unzipSync(xlsxOf(paper));
  const texts = Object.entries(files).filter(([name]) => /sheet\d|sharedStrings/.test(name));
  return texts.map(([, bytes]) => new TextDecoder().decode(bytes)).join('\n');
}

/** By form; a space is a space. */
export function formsOf(paper: Paper): Record<string, string> {
  const forms = {
    html: htmlText(paper),
    markdown: markdownText(paper),
    pdf: pdfText(paper),
    csv: tablesOf(paper.parts)
      .map((table) => csvOf(table))
      .join('\n'),
    xlsx: xlsxText(paper),
  };
  return Object.fromEntries(
    Object.entries(forms).map(([name, text]) => [name, text.replaceAll('\u00a0', ' ')]),
  );
}
