// The letters of a PDF: Noto Sans, cut down to the alphabets and signs that a paper of this trade can hold.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import subsetFont from 'subset-font';
import { root } from './bundles.mjs';

const packages = path.join(root, 'node_modules/@expo-google-fonts');

/** Blocks of Unicode: Latin with its accents, Greek, Cyrillic, punctuation, raised figures, money, fractions. */
const LETTERS = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x2b0, 0x2ff],
  [0x300, 0x36f],
  [0x370, 0x3ff],
  [0x400, 0x52f],
  [0x1e00, 0x1fff],
  [0x2010, 0x205e],
  [0x2070, 0x209f],
  [0x20a0, 0x20cf],
  [0x2100, 0x218f],
  [0x2212, 0x2212],
  [0xfffd, 0xfffd],
];

/** What the letters' own font has not: arrows, signs of comparison, squares. The last stands for what no font has. */
const SIGNS = '←↑→↓↔↕⇒∅∆∑√∞≈≠≡≤≥⊥▪▲▶▼●○✓□';

function lettersOf(ranges) {
  const letters = ranges.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)),
  );
  return letters.join('');
}

/** The files as they ship, what they are cut from, and what of it is kept. */
const FACES = [
  ['NotoSans-Regular.ttf', 'noto-sans/400Regular/NotoSans_400Regular.ttf', lettersOf(LETTERS)],
  ['NotoSans-Bold.ttf', 'noto-sans/700Bold/NotoSans_700Bold.ttf', lettersOf(LETTERS)],
  ['NotoSansMath-Signs.ttf', 'noto-sans-math/400Regular/NotoSansMath_400Regular.ttf', SIGNS],
];

/** The packages that the fonts are cut from: their licences go into the notices. */
export const fontPackages = ['noto-sans', 'noto-sans-math'].map(
  (name) => `node_modules/@expo-google-fonts/${name}/`,
);

/** Both packages have the same licence under a line of copyright of their own. */
function licence() {
  const texts = ['noto-sans', 'noto-sans-math'].map((name) =>
    readFileSync(path.join(packages, name, 'LICENSE_FONT'), 'utf8').trim(),
  );
  const [copyright] = texts[1].split('\n');
  return `${copyright}\n${texts[0]}\n`;
}

/**
 * A font without some of its tables (OpenType 1.9, table directory). Substitutions are small capitals and other forms
 * that a paper never asks for, and looking for them is most of the time that setting a page takes.
 */
function without(font, tags) {
  const number = font.readUInt16BE(4);
  const all = Array.from({ length: number }, (_, i) => font.subarray(12 + 16 * i, 28 + 16 * i));
  const kept = all.filter((entry) => !tags.includes(entry.toString('latin1', 0, 4)));
  const head = Buffer.alloc(12 + 16 * kept.length);
  font.copy(head, 0, 0, 4);
  const power = 2 ** Math.floor(Math.log2(kept.length));
  const search = [kept.length, 16 * power, Math.log2(power), 16 * (kept.length - power)];
  for (const [i, value] of search.entries()) head.writeUInt16BE(value, 4 + 2 * i);
  const parts = [head];
  let at = head.length;
  for (const [i, entry] of kept.entries()) {
    const [offset, length] = [entry.readUInt32BE(8), entry.readUInt32BE(12)];
    entry.copy(head, 12 + 16 * i);
    head.writeUInt32BE(at, 20 + 16 * i);
    const table = Buffer.alloc(Math.ceil(length / 4) * 4); // tables begin at every fourth byte
    font.copy(table, 0, offset, offset + length);
    parts.push(table);
    at += table.length;
  }
  return Buffer.concat(parts);
}

/** Writes the fonts and their licence into a folder. The same packages give the same bytes. */
export async function makeFonts(folder) {
  mkdirSync(folder, { recursive: true });
  for (const [name, file, letters] of FACES) {
    const whole = readFileSync(path.join(packages, file));
    const cut = await subsetFont(whole, letters, { targetFormat: 'sfnt', noLayoutClosure: true });
    writeFileSync(path.join(folder, name), without(cut, ['GSUB', 'STAT']));
  }
  writeFileSync(path.join(folder, 'OFL.txt'), licence());
}
