/** Papers for the tests of the writers. All names are invented. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { makeFonts } from '../../../.scripts/fonts.mjs';
import type { Fonts } from '../../../server/documents/paper/heavy';
import type { Paper, Part, Row, Table } from '../../../server/documents/paper/model';
import { elevation, toSheet } from '../../../server/engine/drawing';
import { setOut } from '../../../server/engine/setting-out';
import { wall } from '../../setting-out/fixtures';

let folder = '';

/** Cuts the fonts once for a file of tests, into a folder that is gone after them. */
export function useFonts(): void {
  beforeAll(async () => {
    folder = mkdtempSync(path.join(tmpdir(), 'perpend-fonts-'));
    await makeFonts(folder);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
}

export function fonts(): Fonts {
  const read = (name: string) => new Uint8Array(readFileSync(path.join(folder, name)));
  return {
    regular: read('NotoSans-Regular.ttf'),
    bold: read('NotoSans-Bold.ttf'),
    signs: read('NotoSansMath-Signs.ttf'),
  };
}

/** Writes bytes where a program outside can read them. */
export function inFile(bytes: Uint8Array, name: string): string {
  const file = path.join(folder, name);
  writeFileSync(file, bytes);
  return file;
}

export function paperOf(parts: readonly Part[], more: Partial<Paper> = {}): Paper {
  return {
    kind: 'quote',
    lang: 'en-GB',
    date: '2026-03-02',
    size: 'A4',
    title: 'Quote 26-041 · Orchard wall',
    letterhead: undefined,
    parts,
    foot: 'Rounded halves up.',
    running: 'Reed · Quote 26-041',
    ...more,
  };
}

const drawn = elevation(setOut(wall({ length: 1270 })), { title: 'Wall with a cut' });

export const DRAWING: Part = {
  part: 'drawing',
  sheet: toSheet(drawn, { width: 200, height: 150, margin: 3 }, true),
  words: 'Elevation of a wall with a cut',
};

export function tableOf(rows: readonly Row[], name = 'bricks'): Table {
  return {
    part: 'table',
    name,
    columns: [
      { title: 'What', holds: 'text' },
      { title: 'How many', holds: 'number' },
    ],
    rows,
  };
}

export function rowOf(text: string, value: string, role?: Row['role']): Row {
  return { cells: [{ text }, { text: `${value} bricks`, value, unit: 'brick' }], role };
}

/** One of each part. */
export const EACH: Paper = paperOf(
  [
    { part: 'warning', strong: 'NOT A QUOTE.', text: 'No amount is offered.' },
    { part: 'heading', level: 1, text: 'Quote', under: 'Orchard wall' },
    {
      part: 'facts',
      rows: [
        { label: 'For', lines: ['Żaneta Wiśniewska', 'Ελένη Παπαδοπούλου'] },
        { label: 'Site', lines: ['Садовая улица, дом 4'] },
      ],
    },
    { part: 'heading', level: 2, text: 'What will be done' },
    { part: 'heading', level: 3, text: 'Wall' },
    { part: 'list', items: [['Build ½ × ¾ → ≥ 3 m².'], ['Point it.', 'By hand.']] },
    { part: 'list', ordered: true, items: [['Dig.'], ['Lay.']] },
    DRAWING,
    tableOf([rowOf('Facing', '1234.5'), rowOf('Total', '1234.5', 'grand')]),
    { part: 'together', parts: [{ part: 'words', text: 'Payment in 10 days.', strong: true }] },
    { part: 'new-page' },
    { part: 'words', text: 'Small print.', small: true },
  ],
  { letterhead: { name: 'Tamsin Reed', address: ['4 Kiln Row'], contact: ['01632 960 144'] } },
);
