import { execFileSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { htmlOf } from '../../../server/documents/paper';
import { pdfOf } from '../../../server/documents/paper/heavy';
import type { Table } from '../../../server/documents/paper/model';
import { fonts, inFile, paperOf, useFonts } from './samples';

useFonts();

const table: Table = {
  part: 'table',
  name: 'leaves',
  columns: [
    { title: 'What', holds: 'text' },
    { title: '', holds: 'text' },
  ],
  rows: [{ cells: [{ text: 'Profit' }, { text: '16.7% of the price' }] }],
};

// WCAG 2.2, H51 and H63: a header cell names its column; one with nothing in it names nothing.
test('a column without a title has no header for whoever hears the table', () => {
  const paper = paperOf([table]);
  expect(htmlOf(paper)).toContain('<tr><th scope="col">What</th><td></td></tr>');
  const file = inFile(pdfOf(paper, fonts()).bytes, 'untitled.pdf');
  const tree = execFileSync('pdfinfo', ['-struct', file], { encoding: 'utf8' });
  expect(tree.match(/\bT[HD]\b/g)).toEqual(['TH', 'TD', 'TH', 'TD']);
});
