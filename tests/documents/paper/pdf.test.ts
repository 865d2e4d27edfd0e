import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pdfOf } from '../../../server/documents/paper/heavy';
import type { Paper, Part } from '../../../server/documents/paper/model';
import { hatchesDrawn } from '../../../server/documents/paper/pdf/hatch';
import { LOOKS } from '../../../server/documents/svg-looks';
import { DRAWING, EACH, fonts, inFile, paperOf, rowOf, tableOf, useFonts } from './samples';
import { structOf, type Tag } from './struct';

useFonts();

const A4 = 'Page size:       595.276 x 841.89 pts (A4)';

/** What poppler says of a paper, a reader that we did not write. */
function poppler(program: string, paper: Paper, ...args: readonly string[]): string {
  const file = inFile(pdfOf(paper, fonts()).bytes, 'paper.pdf');
  const after = program === 'pdftotext' ? ['-'] : [];
  return execFileSync(program, [...args, file, ...after], { encoding: 'utf8' });
}

const textOf = (paper: Paper, ...args: string[]) => poppler('pdftotext', paper, '-layout', ...args);

function pagesOf(paper: Paper): string[] {
  return textOf(paper).split('\f').slice(0, -1);
}

describe('a paper as a PDF', () => {
  test('is a file that qpdf finds no fault in', () => {
    const said = poppler('qpdf', EACH, '--check');
    expect(said).toContain('No syntax or stream encoding errors found');
  });

  test('is the same bytes each time, and hangs on no clock', () => {
    const again = pdfOf(EACH, fonts()).bytes;
    expect(Buffer.compare(pdfOf(EACH, fonts()).bytes, again)).toBe(0);
    expect(poppler('pdfinfo', EACH)).toContain('CreationDate:    Mon Mar  2 00:00:00 2026');
    expect(poppler('pdfinfo', { ...EACH, date: '' })).toContain('Jan  1 00:00:00 1970');
    const other = pdfOf({ ...EACH, date: '2026-03-03' }, fonts()).bytes;
    expect(Buffer.compare(other, again)).not.toBe(0);
  });

  test('says what it is: title, whose, language, tagged, on the paper of the country', () => {
    const info = poppler('pdfinfo', EACH);
    for (const line of [
      'Tagged:          yes',
      'Author:          Tamsin Reed',
      'Pages:           3',
      A4,
    ])
      expect(info).toContain(line);
    expect(info).toMatch(/Title: +Quote 26-041 · Orchard wall/);
    expect(poppler('pdfinfo', { ...EACH, size: 'Letter' })).toContain('612 x 792 pts (letter)');
    const raw = execFileSync('qpdf', [
      '--qdf',
      '--object-streams=disable',
      inFile(pdfOf(EACH, fonts()).bytes, 'q.pdf'),
      '-',
    ]).toString('latin1');
    expect(raw).toContain('/Lang (en-GB)');
    expect(raw).toContain('/DisplayDocTitle true');
  });

  test('has its fonts in it, and no other', () => {
    const rows = poppler('pdffonts', EACH).trim().split('\n').slice(2);
    expect(rows).toHaveLength(3);
    for (const row of rows) expect(row).toMatch(/NotoSans.* CID TrueType +Identity-H +yes yes yes/);
  });

  test('has its title in XMP as text, whatever it holds', () => {
    const title = '</rdf:li><x> & "Wall" \u202e \u0007';
    const said = poppler('pdfinfo', { ...EACH, title }, '-meta');
    expect(said).toContain('&lt;/rdf:li&gt;&lt;x&gt; &amp; "Wall" \ufffd \ufffd</rdf:li>');
    expect(said).toContain('<pdfuaid:part>1</pdfuaid:part>');
  });
});

describe('its structure, as pdf.js reads it', () => {
  test('is that of the paper, in the order it is read', async () => {
    const { bytes } = pdfOf(EACH, fonts());
    const found = await structOf(bytes, 1);
    expect(found.map(outline)).toEqual([
      'Document',
      ' P',
      ' P',
      ' P',
      ' P',
      ' H1',
      ' P',
      ' L',
      '  LI',
      '   Lbl',
      '   LBody',
      '  LI',
      '   Lbl',
      '   LBody',
      ' H2',
      ' H3',
      ' L',
      '  LI',
      '   Lbl',
      '   LBody',
      '  LI',
      '   Lbl',
      '   LBody',
      ' L',
      '  LI',
      '   Lbl',
      '   LBody',
      '  LI',
      '   Lbl',
      '   LBody',
      ' Figure',
    ]);
    expect(found.find(({ role }) => role === 'Figure')?.alt).toBe('Elevation of a wall with a cut');
    expect((await structOf(bytes, 2)).map(outline)).toEqual([
      'Document',
      ' Table',
      '  THead',
      '   TR',
      '    TH',
      '    TH',
      '  TBody',
      '   TR',
      '    TH',
      '    TD',
      '   TR',
      '    TH',
      '    TD',
      ' P',
    ]);
  });

  test('tells of each heading of a table what it is the heading of', () => {
    const said = poppler('pdfinfo', EACH, '-struct');
    expect(said.match(/^ *TH\b/gm)).toHaveLength(4);
    expect(said.match(/\/Scope \/Column/g)).toHaveLength(2);
    expect(said.match(/\/Scope \/Row/g)).toHaveLength(2);
    expect(said).toMatch(/Figure[\s\S]{0,200}\/BBox/);
  });

  test('holds all words, in every alphabet, and each once', () => {
    const said = poppler('pdfinfo', EACH, '-struct-text');
    for (const words of [
      'Żaneta Wiśniewska',
      'Ελένη Παπαδοπούλου',
      'Садовая улица, дом 4',
      'Build ½ × ¾ → ≥ 3 m².',
      'NOT A QUOTE.',
      'Small print.',
      'Rounded halves up.',
    ])
      expect(said.split(words)).toHaveLength(2);
    // What comes on every page is no part of what is read.
    expect(said).not.toContain('Page 1 of 3');
  });
});

const outline = ({ role, depth }: Tag) => ' '.repeat(depth) + role;

describe('pages', () => {
  const rows = Array.from({ length: 150 }, (_, i) =>
    rowOf(
      `Row ${i} ${i % 9 ? '' : 'with a long description of what is bought '.repeat(5)}`,
      `${i}`,
    ),
  );
  const long = paperOf([
    tableOf([...rows, rowOf('Sum', '9', 'total'), rowOf('All', '9', 'grand')]),
  ]);

  test('say their number and what they are of', () => {
    for (const [i, page] of pagesOf(long).entries()) {
      expect(page).toContain(`Page ${i + 1} of ${pagesOf(long).length}`);
      expect(page).toContain('Reed · Quote 26-041');
    }
  });

  test('that a table goes on to begin with its headings, read aloud once', () => {
    const pages = pagesOf(long);
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) expect(page.trimStart()).toMatch(/^What +How many/);
    expect(poppler('pdfinfo', long, '-struct-text').match(/"How many"/g)).toHaveLength(1);
  });

  test('cut no row of a table in two, and part no total from what it is the total of', () => {
    for (const page of pagesOf(long)) {
      const begun = page.match(/Row \d+/g) ?? [];
      const ended = page.match(/\d+ bricks/g) ?? [];
      expect(ended.length).toBeGreaterThanOrEqual(begun.length);
      // A long row has five times its words; all of them stand on one page.
      expect((page.match(/description/g)?.length ?? 0) % 5).toBe(0);
    }
    expect(pagesOf(long).at(-1)).toMatch(/Row 149[\s\S]*Sum[\s\S]*All/);
  });

  test('keep a heading with what is under it, and what is to stand together', () => {
    const filler = (n: number): Part[] =>
      Array.from({ length: n }, () => ({ part: 'words', text: 'Filler.' }));
    for (let n = 42; n < 47; n++) {
      const [first = ''] = pagesOf(
        paperOf([
          ...filler(n),
          { part: 'heading', level: 2, text: 'Terms' },
          { part: 'words', text: 'Paid in ten days.' },
        ]),
      );
      expect(first.includes('Terms')).toBe(first.includes('Paid in ten days.'));
      const words = (text: string): Part => ({ part: 'words', text });
      const parts: Part[] = [
        ...filler(n),
        { part: 'together', parts: [words('One.'), words('Two.'), words('Three.')] },
      ];
      const [top = ''] = pagesOf(paperOf(parts));
      expect(['One.', 'Two.', 'Three.'].filter((each) => top.includes(each)).length % 3).toBe(0);
    }
  });

  test('take what is to stand together and is too long for one, and a word too long for a line', () => {
    const parts: Part[] = Array.from({ length: 90 }, (_, i) => ({
      part: 'words',
      text: `Line ${i}.`,
    }));
    const all = pagesOf(paperOf([{ part: 'together', parts }]));
    expect(all.join('').match(/Line \d+\./g)).toHaveLength(90);
    expect(all[0]).toContain('Line 0.');
    const word = 'x'.repeat(3000);
    const said = textOf(paperOf([{ part: 'words', text: word }])).replace(/\s/g, '');
    expect(said.match(/x/g)).toHaveLength(3000);
  });

  test('turn where a new one is asked for, and no page is empty', () => {
    const parts: Part[] = [
      { part: 'new-page' },
      { part: 'words', text: 'A' },
      { part: 'new-page' },
      { part: 'new-page' },
      { part: 'words', text: 'B' },
    ];
    expect(pagesOf(paperOf(parts))).toHaveLength(2);
  });
});

describe('what the fonts have not', () => {
  const odd = paperOf([{ part: 'words', text: 'Wall 木 and 🧱, 木 again' }]);

  test('is told once, and a box stands for it', () => {
    expect(pdfOf(odd, fonts()).missing).toEqual(['木', '🧱']);
    expect(textOf(odd)).toContain('Wall □ and □, □ again');
    expect(pdfOf(EACH, fonts()).missing).toEqual([]);
  });

  test('marks that turn the direction of writing do not', () => {
    const said = textOf(paperOf([{ part: 'words', text: 'Price \u202e00.1£ and\u0007 end' }]));
    expect(said).toContain('Price \ufffd00.1£ and\ufffd end');
  });

  test('letters and their accents apart are one letter', () => {
    expect(textOf(paperOf([{ part: 'words', text: 'Łódz\u0301' }]))).toContain('Łódź');
  });
});

test('whatever texts hold, it is a whole file', () => {
  const text = fc.string({ unit: 'grapheme', maxLength: 60 });
  fc.assert(
    fc.property(text, text, (a, b) => {
      const paper = paperOf([{ part: 'words', text: a }, tableOf([rowOf(b, '1')])], {
        title: a,
        running: b,
      });
      const { bytes } = pdfOf(paper, fonts());
      expect(Buffer.from(bytes).toString('latin1')).toMatch(/^%PDF-1\.7\n[\s\S]*%%EOF\n$/);
    }),
    { numRuns: 25 },
  );
});

describe('a drawing', () => {
  const paper = paperOf([DRAWING]);

  test('is paths and words, no picture of dots', () => {
    expect(poppler('pdfimages', paper, '-list').trim().split('\n')).toHaveLength(2); // its two lines of headings
    expect(textOf(paper)).toContain('1270');
  });

  test('has every hatch that a look has', () => {
    const hatches = Object.values(LOOKS).flatMap(({ hatch }) => hatch ?? []);
    expect(hatches.filter((hatch) => !hatchesDrawn.includes(hatch))).toEqual([]);
  });
});
