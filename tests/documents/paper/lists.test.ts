import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../../server/documents/paper';
import { xlsxOf } from '../../../server/documents/paper/heavy';
import type { Row, Table } from '../../../server/documents/paper/model';
import { inFile, paperOf, rowOf, tableOf, useFonts } from './samples';

useFonts(); // for its folder

const textRow = (text: string): Row => ({ cells: [{ text }, { text: 'n/a' }] });
const FORMULAS = ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =1', '\uff1d1', '=cmd|calc'];

describe('a table as CSV', () => {
  test('is lines of fields by RFC 4180, figures as their exact digits', () => {
    const rows = [rowOf('Facing "red", hard', '1234.5'), textRow('two\nlines'), textRow('')];
    expect(csvOf(tableOf(rows))).toBe(
      'What,How many\r\n"Facing ""red"", hard",1234.5\r\n"two\nlines",n/a\r\n,n/a\r\n',
    );
    expect(csvOf(tableOf([]), { bom: true })).toBe('\ufeffWhat,How many\r\n');
  });

  test.each(FORMULAS)('makes no formula of %j', (text) => {
    const [, row = ''] = csvOf(tableOf([textRow(text)])).split('\r\n');
    expect(row.replace(/^"/, '')[0]).toBe("'");
  });

  test('a figure below nothing is one, and what is none is text', () => {
    expect(csvOf(tableOf([rowOf('a', '-3')]))).toContain('a,-3\r\n');
    const odd: Row = { cells: [{ text: 'a' }, { text: '-3 cm', value: '-3e5' }] };
    expect(csvOf(tableOf([odd]))).toContain("a,'-3 cm\r\n");
  });

  test('is read back by Python as it was', () => {
    const text = fc
      .string({ unit: 'grapheme', maxLength: 12 })
      .filter((each) => !/^\s*[=+\-@'\uff1d\uff0b\uff0d\uff20]|\u0000|[\r\n\t]/.test(each));
    const rows = fc.sample(text, { numRuns: 60, seed: 7 });
    const csv = csvOf(tableOf(rows.map(textRow)));
    const read = python(
      'import csv,io,json,sys; print(json.dumps([r[0] for r in csv.reader(io.StringIO(sys.stdin.buffer.read().decode(), newline=""))][1:]))',
      csv,
    );
    expect(read).toEqual(rows);
  });
});

function python(program: string, input: string | Uint8Array): unknown {
  const said = execFileSync('/usr/bin/python3', ['-c', program], { input, encoding: 'utf8' });
  return JSON.parse(said);
}

/** Every cell of a workbook as openpyxl reads it: an outside reader. */
const READ = `
import json,sys,io,openpyxl
book = openpyxl.load_workbook(io.BytesIO(sys.stdin.buffer.read()))
print(json.dumps([[s.title, [[[c.value, c.data_type, c.number_format, bool(c.font.b)] for c in r] for r in s.iter_rows()]] for s in book]))
`;

type Cells = [string, [unknown, string, string, boolean][][]][];

describe('tables as XLSX', () => {
  const named = (table: Table, caption: string): Table => ({ ...table, caption });

  test('are read by openpyxl: figures as figures with their decimals, all else as text', () => {
    const rows = [rowOf('Facing', '1234.50'), textRow('=1+1'), rowOf('Sum', '7', 'total')];
    const [[title, cells] = ['', []]] = python(READ, xlsxOf(paperOf([tableOf(rows)]))) as Cells;
    expect(title).toBe('bricks');
    expect(cells).toEqual([
      [
        ['What', 's', '@', true],
        ['How many', 's', '@', true],
      ],
      [
        ['Facing', 's', '@', false],
        [1234.5, 'n', '#,##0.00', false],
      ],
      [
        ['=1+1', 's', '@', false],
        ['n/a', 's', '@', false],
      ],
      [
        ['Sum', 's', '@', true],
        [7, 'n', '#,##0', true],
      ],
    ]);
  });

  test('have sheets of names that a sheet can have, each once', () => {
    const table = tableOf([rowOf('a', '1')]);
    const long = 'Bricks for the long wall along the lane';
    const parts = [long, long, 'a/b:[c]*?', 'A b', 'a b', "'quoted'"].map((name) =>
      named(table, name),
    );
    const read = python(READ, xlsxOf(paperOf([{ part: 'together', parts }]))) as Cells;
    const names = read.map(([name]) => name);
    expect(names[0]).toBe('Bricks for the long wall along');
    expect(names[1]).toBe('Bricks for the long wall alon 2');
    expect(names).toHaveLength(6);
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(6);
    for (const name of names) expect(name).toMatch(/^[^[\]:*?/\\]{1,31}$/);
  });

  test('hold whatever text there is', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 12 });
    const rows = fc
      .sample(text, { numRuns: 60, seed: 7 })
      .filter((each) => !/[\u0000-\u001f]/.test(each) && each);
    const [[, cells] = ['', []]] = python(
      READ,
      xlsxOf(paperOf([tableOf(rows.map(textRow))])),
    ) as Cells;
    expect(cells.slice(1).map((row) => row[0]![0])).toEqual(rows);
  });

  test('are the same bytes each time, in every time zone', () => {
    const paper = paperOf([tableOf([rowOf('a', '1')])]);
    const bytes = Buffer.from(xlsxOf(paper));
    expect(Buffer.compare(bytes, xlsxOf(paper))).toBe(0);
    const file = inFile(bytes, 'a.xlsx');
    const dates = python(
      'import json,sys,zipfile; z=zipfile.ZipFile(sys.stdin.read()); print(json.dumps([z.testzip()]+[list(i.date_time) for i in z.infolist()]))',
      file,
    ) as unknown[];
    expect(dates[0]).toBeNull();
    expect(dates.slice(1)).toEqual(dates.slice(1).map(() => [1980, 1, 1, 0, 0, 0]));
  });
});
