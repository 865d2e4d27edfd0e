/** The files that a job made of a template uses: a template from elsewhere names them otherwise, or not at all. */
import { lineAfter, type RemarkEdit } from '../../findings/remark';
import { SourceFile } from '../../workspace/source';

/** With `use` lines as the new file reaches what they name. */
export function usesReached(text: string, reach: (file: string) => string): string {
  const file = new SourceFile('', text);
  const lines = [...file.lines];
  for (const block of file.blocks) {
    const used = block.kind === 'use' ? block.read.heading?.values.file : undefined;
    if (used?.kind !== 'text') continue;
    const at = block.firstLine + used.span.line;
    const { start, end } = used.span;
    lines[at] = `${lines[at]!.slice(0, start)}"${reach(used.text)}"${lines[at]!.slice(end)}`;
  }
  return lines.join('\n');
}

/** Whether it takes in any file, and not only libraries. */
export function usesFiles(text: string): boolean {
  return usesFile(new SourceFile('', text));
}

export function usesFile({ blocks }: SourceFile): boolean {
  return blocks.some(({ kind, read }) => kind === 'use' && read.heading?.values.file !== undefined);
}

/** With the firm’s file before what else it uses, so that the firm is believed first. */
export function withFirm(text: string, firm: string): string {
  const file = new SourceFile('', text);
  const { block, span, text: put } = firmPlace(file, `use "${firm.replace(/["\\]/g, '\\$&')}"`);
  const lines = [...file.lines];
  const at = block.firstLine + span.line;
  lines[at] = lines[at]!.slice(0, span.start) + put + lines[at]!.slice(span.end);
  return lines.join('\n');
}

/** Where such a line is put: before the other uses, else under the job, else under the edition. */
export function firmPlace(file: SourceFile, line: string): RemarkEdit {
  const use = file.blocks.find(({ kind }) => kind === 'use');
  if (use) {
    const at = use.read.syntax.heading!.span.line;
    return { block: use, span: { line: at, start: 0, end: 0 }, text: `${line}\n` };
  }
  const { blocks } = file;
  const block = blocks.find(({ kind }) => kind === 'job') ?? blocks.find((b) => b.read.heading)!;
  const last = Math.max(0, ...block.read.syntax.lines.map((each) => each.span.line));
  const parted = file.lines[block.firstLine + last + 1]?.trim();
  return lineAfter(block, last, `\n${line}${parted ? '\n' : ''}`);
}
