/** A pdfkit document whose bytes hang on nothing but what is drawn in it. */
import PDFDocument, { type DocumentOptions } from 'pdfkit';
import type { Paper } from '../model';

/** mm of paper to points. */
export const MM = 72 / 25.4;

const SIZES = { A4: [210 * MM, 297 * MM], Letter: [612, 792] } as const;

/** No date is known: the beginning of the calendar that PDF counts by, and not the clock. */
const NO_DATE = '1970-01-01';

export class Document extends PDFDocument {
  /** Set while the constructor of pdfkit already writes: hence no initial value. */
  declare private chunks: Uint8Array[] | undefined;

  constructor(paper: Paper) {
    super(optionsOf(paper));
  }

  /** Everything is written by now, and nothing waits for a turn of the event loop. */
  override push(chunk: Uint8Array | null): boolean {
    if (chunk) (this.chunks ??= []).push(chunk);
    return true;
  }

  /** pdfkit puts texts into its XMP as they are; what a job says could be taken for XML. */
  override _addInfo(): void {
    const { info } = this;
    this.info = Object.fromEntries(
      Object.entries(info).map(([key, value]) => [
        key,
        typeof value === 'string' ? value.replace(/[&<>]/g, (sign) => XML[sign]!) : value,
      ]),
    );
    super._addInfo();
    this.info = info;
  }

  /** Ends the document. */
  bytes(): Uint8Array {
    this.end();
    const chunks = this.chunks ?? [];
    const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
    let at = 0;
    for (const chunk of chunks) {
      whole.set(chunk, at);
      at += chunk.length;
    }
    return whole;
  }
}

const XML: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

function optionsOf(paper: Paper): DocumentOptions {
  const date = new Date(`${paper.date || NO_DATE}T00:00:00Z`);
  return {
    size: SIZES[paper.size],
    margin: 0,
    pdfVersion: '1.7',
    subset: 'PDF/UA',
    tagged: true,
    lang: paper.lang,
    displayTitle: true,
    bufferPages: true,
    autoFirstPage: false,
    font: null,
    info: {
      Title: printable(paper.title),
      ...(paper.letterhead?.name ? { Author: printable(paper.letterhead.name) } : {}),
      Producer: 'Perpend',
      Creator: 'Perpend',
      CreationDate: date,
      ModDate: date,
    },
  };
}

/** What neither XML nor a title bar may hold. */
export function printable(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd')
    .replace(/[\u202a-\u202e\u2066-\u2069]/g, '\ufffd');
}
