import { execFileSync } from 'node:child_process';
import { zipSync, zlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { htmlOf, pictureSize } from '../../../server/documents/paper';
import { pdfOf } from '../../../server/documents/paper/heavy';
import type { Letterhead } from '../../../server/documents/paper/model';
import { rgbOf } from '../../../server/documents/paper/pdf/png';
import { fonts, inFile, paperOf, useFonts } from './samples';

useFonts();

interface Png {
  readonly width: number;
  readonly height: number;
  readonly bits: number;
  readonly colour: number;
  /** Rows with the number of their filter first. */
  readonly rows: readonly (readonly number[])[];
  readonly more?: Readonly<Record<string, readonly number[]>>;
  readonly interlaced?: boolean;
}

function chunk(name: string, body: Uint8Array): Buffer {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length);
  return Buffer.concat([length, Buffer.from(name, 'latin1'), body, Buffer.alloc(4)]);
}

function png({ width, height, bits, colour, rows, more = {}, interlaced }: Png): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width);
  head.writeUInt32BE(height, 4);
  head.set([bits, colour, 0, 0, interlaced ? 1 : 0], 8);
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
      chunk('IHDR', head),
      ...Object.entries(more).map(([name, body]) => chunk(name, Uint8Array.from(body))),
      chunk('IDAT', zlibSync(Uint8Array.from(rows.flat()))),
      chunk('IEND', new Uint8Array()),
    ]),
  );
}

const RED = { width: 2, height: 1, bits: 8, colour: 2, rows: [[0, 255, 0, 0, 255, 0, 0]] };
const dots = (of: Png) => [...rgbOf(png(of)).dots];

describe('a PNG as plain dots on white', () => {
  test('of each kind of colour (ISO/IEC 15948, table 11.1)', () => {
    expect(dots(RED)).toEqual([255, 0, 0, 255, 0, 0]);
    expect(dots({ ...RED, colour: 0, rows: [[0, 7, 200]] })).toEqual([7, 7, 7, 200, 200, 200]);
    // Half of black lets half of the white through.
    expect(dots({ ...RED, colour: 4, rows: [[0, 0, 128, 9, 255]] })).toEqual([
      127, 127, 127, 9, 9, 9,
    ]);
    expect(dots({ ...RED, colour: 6, rows: [[0, 1, 2, 3, 0, 1, 2, 3, 255]] })).toEqual([
      255, 255, 255, 1, 2, 3,
    ]);
    const palette = { PLTE: [1, 2, 3, 4, 5, 6], tRNS: [0] };
    expect(dots({ ...RED, colour: 3, rows: [[0, 1, 0]], more: palette })).toEqual([
      4, 5, 6, 255, 255, 255,
    ]);
  });

  test('of fewer and of more bits', () => {
    expect(dots({ width: 3, height: 1, bits: 1, colour: 0, rows: [[0, 0b10100000]] })).toEqual([
      255, 255, 255, 0, 0, 0, 255, 255, 255,
    ]);
    expect(dots({ width: 2, height: 1, bits: 4, colour: 0, rows: [[0, 0xf3]] })).toEqual([
      255, 255, 255, 51, 51, 51,
    ]);
    expect(dots({ width: 1, height: 1, bits: 16, colour: 0, rows: [[0, 200, 99]] })).toEqual([
      200, 200, 200,
    ]);
  });

  test('through each filter (clause 9.2)', () => {
    const of = (filter: number, second: number[]) =>
      dots({
        width: 2,
        height: 2,
        bits: 8,
        colour: 0,
        rows: [
          [0, 10, 20],
          [filter, ...second],
        ],
      }).filter((_, i) => i % 3 === 0);
    expect(of(1, [5, 5])).toEqual([10, 20, 5, 10]);
    expect(of(2, [5, 5])).toEqual([10, 20, 15, 25]);
    expect(of(3, [5, 5])).toEqual([10, 20, 10, 20]); // 5 + 10/2; 5 + (10 + 20)/2
    expect(of(4, [5, 5])).toEqual([10, 20, 15, 25]); // nearest to 10; 15 + 20 - 10 = 25 is nearest to 20
  });

  test('is refused where it is cut short or no such thing', () => {
    const whole = png(RED);
    expect(() => rgbOf(whole.slice(0, whole.length - 20))).toThrow();
    expect(() => rgbOf(png({ ...RED, bits: 3 }))).toThrow();
    expect(() => rgbOf(png({ ...RED, height: 5 }))).toThrow();
  });
});

describe('what may be a logo', () => {
  test.each([
    ['it is no PNG and no JPEG', new TextEncoder().encode('<svg onload="alert(1)"/>')],
    ['it is no PNG and no JPEG', zipSync({ a: new Uint8Array(3) })],
    ['it is larger than 1 MiB', new Uint8Array(1024 * 1024 + 1)],
    ['it is cut short', png(RED).slice(0, 20)],
    ['it is an interlaced PNG: save it without interlacing', png({ ...RED, interlaced: true })],
    ['it has no size', png({ ...RED, width: 0 })],
    [
      'it is 60000 by 60000 dots, and may have 4 million at most',
      png({ ...RED, width: 60000, height: 60000 }),
    ],
    [
      'it is no JPEG that can be read',
      Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xda, 0, 2, 0, 0, 0, 0, 0, 0]),
    ],
    [
      'it is no JPEG that can be read',
      Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
    ],
  ])('says %s', (why, bytes) => {
    expect(pictureSize(bytes)).toBe(why);
  });

  test('a JPEG has the size of its frame', () => {
    const jpeg = Uint8Array.from([
      0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xc0, 0, 17, 8, 0, 120, 1, 44, 3, 0, 0, 0, 0,
    ]);
    expect(pictureSize(jpeg)).toEqual({ type: 'jpeg', width: 300, height: 120 });
  });
});

describe('on a letterhead', () => {
  const bytes = png({ ...RED, colour: 6, rows: [[0, 1, 2, 3, 0, 1, 2, 3, 255]] });
  const head = (logo: Letterhead['logo']): Letterhead => ({
    name: 'Reed',
    address: [],
    contact: [],
    logo,
  });
  const paper = paperOf([{ part: 'words', text: 'a' }], {
    letterhead: head({ bytes, type: 'png', words: 'A "sign"' }),
  });

  test('it is a picture of the PDF, in words too', () => {
    const pdf = pdfOf(paper, fonts());
    expect(pdf.noLogo).toBe(false);
    const file = inFile(pdf.bytes, 'logo.pdf');
    const run = (program: string, ...args: string[]) =>
      execFileSync(program, [...args, file], { encoding: 'utf8' });
    expect(run('pdfimages', '-list')).toMatch(/\n +1 +0 image +2 +1 +rgb +3 +8 +image +no/);
    expect(run('pdfinfo', '-struct')).toContain('Figure');
    expect(run('qpdf', '--check')).toContain('No syntax or stream encoding errors found');
  });

  test('it is in the page of HTML, which fetches nothing', () => {
    const base = Buffer.from(bytes).toString('base64');
    expect(htmlOf(paper)).toContain(
      `<img src="data:image/png;base64,${base}" alt="A &quot;sign&quot;">`,
    );
  });

  test('one that only begins like a PNG is left out, and that is told', () => {
    const broken = { bytes: bytes.slice(0, bytes.length - 30), type: 'png', words: 'x' } as const;
    const { noLogo, bytes: pdf } = pdfOf({ ...paper, letterhead: head(broken) }, fonts());
    expect(noLogo).toBe(true);
    expect(Buffer.from(pdf).toString('latin1')).not.toContain('/Subtype /Image');
  });
});
