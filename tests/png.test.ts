/** Pictures with a palette (W3C PNG, third edition), read back. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { chunk, readPng, SIGNATURE, withPalette } from '../.scripts/png.mjs';
import { root } from './tree';

test('a picture with a palette is one, and keeps its size', () => {
  const icon = readFileSync(path.join(root, 'client/media/icon.png'));
  expect(readPng(icon)).toMatchObject({ width: 256, height: 256, size: 1 });
});

test('pictures that ship are small', () => {
  const bytes = readFileSync(path.join(root, 'client/media/editor.png')).length;
  expect(bytes).toBeLessThan(100 * 1024);
});

/** Three bytes a pixel, no filter. */
function trueColour(width: number, pixels: readonly number[][]): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(pixels.length / width, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = pixels.flatMap((pixel, i) => (i % width ? pixel : [0, ...pixel]));
  const data = deflateSync(Buffer.from(rows));
  return Buffer.concat([SIGNATURE, chunk('IHDR', head), chunk('IDAT', data)]);
}

test('each pixel keeps its colour where the palette has room for all, and a near one where not', () => {
  const [red, blue, dark] = [
    [200, 0, 0],
    [0, 0, 200],
    [0, 0, 190],
  ] as const;
  const pixels = [red, blue, blue, red, dark, red].map((each) => [...each]);
  const shown = (most: number) => {
    const png = withPalette(trueColour(3, pixels), most);
    const at = Buffer.from(png).indexOf('PLTE') + 4;
    return [...readPng(png).pixels].map((i) => [...png.subarray(at + 3 * i, at + 3 * i + 3)]);
  };
  expect(shown(256)).toEqual(pixels);
  expect(shown(2)).toEqual(pixels.map((each) => (each[2] === 190 ? [...blue] : each)));
});

test('what is no PNG is refused', () => {
  expect(() => withPalette(new Uint8Array(20))).toThrow(/no PNG/);
});
