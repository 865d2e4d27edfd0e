/** The files that a job made of a template uses: a template from elsewhere names them otherwise, or not at all. */
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
  const { blocks } = new SourceFile('', text);
  return blocks.some(({ kind, read }) => kind === 'use' && read.heading?.values.file !== undefined);
}

/** With the firm’s file before what else it uses, so that the firm is believed first. */
export function withFirm(text: string, firm: string): string {
  const file = new SourceFile('', text);
  const use = file.blocks.find(({ kind }) => kind === 'use');
  const job = file.blocks.find(({ kind }) => kind === 'job');
  const line = `use "${firm.replace(/["\\]/g, '\\$&')}"`;
  const lines = [...file.lines];
  if (use) lines.splice(use.firstLine + use.read.syntax.heading!.span.line, 0, line);
  else if (job) {
    const last = Math.max(...job.read.syntax.lines.map((l) => l.span.line));
    lines.splice(job.firstLine + last + 1, 0, '', line, '');
  } else lines.push('', line);
  return lines.join('\n');
}
