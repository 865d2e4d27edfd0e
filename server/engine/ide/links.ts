/** What in a text leads out of it: files it names, addresses for mail, telephones, pages of the web. */
import type { ReadLine } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import type { Span } from '../../../shared/span';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { type FileSaid, filesSaid } from './used-file';

export interface Link {
  /** In the file, without quotation marks. */
  readonly span: Span;
  /** For the reader. */
  readonly tip: string;
  readonly to:
    | { readonly path: string; readonly library?: undefined }
    | { readonly library: string; readonly path?: undefined }
    | { readonly address: string; readonly path?: undefined; readonly library?: undefined };
}

export function linksOf(file: SourceFile): Link[] {
  return [...filesSaid(file).map(toFile), ...file.blocks.flatMap(toOthers)].sort(
    (a, b) => a.span.line - b.span.line || a.span.start - b.span.start,
  );
}

function toFile({ block, span, path, is }: FileSaid): Link {
  const tip = {
    used: phrase`Open the file that is used`,
    partner: phrase`Open the partner’s file`,
    picture: phrase`Open the picture`,
  }[is];
  return { span: inFile(block, within(block, span)), tip, to: { path } };
}

function toOthers(block: SourceBlock): Link[] {
  const { heading } = block.read;
  if (!heading) return [];
  return [...linksIn(block, heading), ...heading.body.flatMap((line) => linksIn(block, line))];
}

function linksIn(block: SourceBlock, line: ReadLine): Link[] {
  const { library, text } = line.values;
  if (line.kind.key === 'use' && library?.kind === 'word')
    return [
      {
        span: inFile(block, library.span),
        tip: phrase`Open the library`,
        to: { library: library.text },
      },
    ];
  const address = text?.kind === 'text' ? ADDRESSES[line.kind.key]?.(text.text) : undefined;
  const own =
    address && text
      ? [
          {
            span: inFile(block, within(block, text.span)),
            tip: address.tip,
            to: { address: address.uri },
          },
        ]
      : [];
  return own.length ? own : pagesIn(block, line);
}

interface Address {
  readonly uri: string;
  readonly tip: string;
}

/** Texts that are addresses by the line they stand in. What does not look like one leads nowhere. */
const ADDRESSES: Readonly<Record<string, (text: string) => Address | undefined>> = {
  email: (text) =>
    /^[^\s@<>?&]+@[^\s@<>?&]+$/.test(text)
      ? { uri: `mailto:${text}`, tip: phrase`Write to ${text}` }
      : undefined,
  phone: (text) => {
    const digits = text.replace(/\(0\)/g, '').replace(/[^\d+]/g, '');
    return /^[\d\s()+/.-]+$/.test(text) && digits.length > 2
      ? { uri: `tel:${digits}`, tip: phrase`Call ${text}` }
      : undefined;
  },
};

/** Pages of the web that a text names in full (RFC 3986), and nothing else: no other scheme is opened. */
const PAGE = /https?:\/\/[^\s"“”<>]+[^\s"“”<>.,;:)]/g;

function pagesIn(block: SourceBlock, line: ReadLine): Link[] {
  const { span } = line.syntax;
  const written = line.syntax.items.flatMap((item) => (item.kind === 'text' ? [item.span] : []));
  return written.flatMap((text) => {
    const said = block.lines[span.line]!.slice(text.start, text.end);
    return [...said.matchAll(PAGE)].map(({ 0: page, index }) => {
      const start = text.start + index;
      const place = { line: span.line, start, end: start + page.length };
      return { span: inFile(block, place), tip: phrase`Open the page`, to: { address: page } };
    });
  });
}

/** Between its quotation marks; the closing one may not be written yet. */
function within(block: SourceBlock, { line, start, end }: Span): Span {
  const closed = /["”“]/.test(block.lines[line]![end - 1] ?? '') && end - start > 1;
  return { line, start: start + 1, end: closed ? end - 1 : end };
}

function inFile(block: SourceBlock, span: Span): Span {
  return { ...span, line: block.firstLine + span.line };
}
