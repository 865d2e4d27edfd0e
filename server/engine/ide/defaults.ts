/** The line that holds where a job leaves one out, and where its value comes from. */
import type { LineKind } from '../../../grammar/lines';
import { type Book, type Setting, wordOf } from '../resolve/book';

export interface Default {
  readonly setting: Setting;
  /** The remark at the line's end, else the source of its block. */
  readonly source?: string;
}

/** The table says it in words: “the defaults’ brick-waste”. */
const OF_DEFAULTS = /^the defaults’ (\S+)$/;

export function defaultOf(kind: LineKind, book: Book): Default | undefined {
  const key = OF_DEFAULTS.exec(kind.unless ?? '')?.[1];
  const setting = key ? book.setting('defaults', key) : undefined;
  return setting && { setting, source: sourceOf(setting) };
}

export function sourceOf({ line, block }: Setting): string | undefined {
  const remark = line.syntax.comment?.text.replace(/^#\s*/, '').trim();
  if (remark) return remark;
  const sources = (block.read.heading?.body ?? []).filter((l) => l.kind.key === 'source');
  return sources.map((l) => wordOf(l.values.text)).join('; ') || undefined;
}

/** The name that holds where no line says another: the brick of the defaults, and so its mix and its bond. */
export function inForce(job: { readonly book: Book }, key: string): string | undefined {
  const value = job.book.setting('defaults', key)?.line.values[key];
  return value?.kind === 'word' ? value.text : undefined;
}
