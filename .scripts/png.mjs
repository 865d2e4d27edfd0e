// A PNG with a palette (W3C PNG, third edition): pictures of a window have few colours, and weigh a third of it.
import { deflateSync, inflateSync } from 'node:zlib';

export const SIGNATURE = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
/** Bytes a pixel, by the colour type of the header: grey has no use here. Of a palette they are its places. */
const CHANNELS = { 2: 3, 3: 1, 6: 4 };

function chunksOf(png) {
  if (!SIGNATURE.equals(png.subarray(0, 8))) throw new Error('This is no PNG.');
  const found = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    found.push([type, png.subarray(at + 8, at + 8 + length)]);
    at += length + 12;
  }
  return found;
}

/** What the bytes to the left, above, and above to the left foretell: PNG 9.4, `Paeth`. */
function paeth(a, b, c) {
  const [da, db, dc] = [Math.abs(b - c), Math.abs(a - c), Math.abs(a + b - 2 * c)];
  if (da <= db && da <= dc) return a;
  return db <= dc ? b : c;
}

const FORETOLD = [
  () => 0,
  (a) => a,
  (_a, b) => b,
  (a, b) => (a + b) >> 1,
  (a, b, c) => paeth(a, b, c),
];

/** @returns width, height, and the pixels, each of three or four bytes, or of one for a palette */
export function readPng(png) {
  const chunks = chunksOf(png);
  const [, head] = chunks[0];
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const size = CHANNELS[head[9]];
  if (head[8] !== 8 || !size || head[12] !== 0) throw new Error('This kind of PNG is not read.');
  const packed = chunks.filter(([type]) => type === 'IDAT').map(([, data]) => data);
  const pixels = unfiltered(inflateSync(Buffer.concat(packed)), width * size, height, size);
  return { width, height, size, pixels };
}

function unfiltered(data, row, height, size) {
  const out = Buffer.alloc(row * height);
  for (let y = 0; y < height; y++) {
    const foretell = FORETOLD[data[y * (row + 1)]];
    for (let x = 0; x < row; x++) {
      const at = y * row + x;
      const a = x >= size ? out[at - size] : 0;
      const b = y > 0 ? out[at - row] : 0;
      const c = x >= size && y > 0 ? out[at - row - size] : 0;
      out[at] = data[y * (row + 1) + 1 + x] + foretell(a, b, c);
    }
  }
  return out;
}

/** How many pixels have each colour; a colour is its four bytes as one number. */
function counted({ pixels, size }) {
  const counts = new Map();
  for (let at = 0; at < pixels.length; at += size) {
    const alpha = size === 4 ? pixels[at + 3] : 255;
    const key = pixels[at] * 2 ** 24 + pixels[at + 1] * 2 ** 16 + pixels[at + 2] * 256 + alpha;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

const bytesOf = (key) => [
  Math.floor(key / 2 ** 24),
  Math.floor(key / 2 ** 16) % 256,
  Math.floor(key / 256) % 256,
  key % 256,
];

/** Colours, with the channel in which they lie farthest apart, and how far. */
function boxOf(colours) {
  const [least, most] = [Array(4).fill(255), Array(4).fill(0)];
  for (const { bytes } of colours)
    for (let i = 0; i < 4; i++) {
      least[i] = Math.min(least[i], bytes[i]);
      most[i] = Math.max(most[i], bytes[i]);
    }
  const spans = most.map((value, i) => value - least[i]);
  const span = Math.max(...spans);
  const channel = spans.indexOf(span);
  return { colours, span, channel, middle: (least[channel] + most[channel]) / 2 };
}

/** Boxes of colours that look alike: the widest is cut through its middle, until there are as many as asked for. */
function boxes(counts, most) {
  const all = [boxOf([...counts].map(([key, count]) => ({ key, count, bytes: bytesOf(key) })))];
  while (all.length < most) {
    const widest = all.reduce((a, b) => (b.span > a.span ? b : a));
    if (widest.span === 0) break;
    const { colours, channel, middle } = widest;
    const below = colours.filter(({ bytes }) => bytes[channel] <= middle);
    const above = colours.filter(({ bytes }) => bytes[channel] > middle);
    all.splice(all.indexOf(widest), 1, boxOf(below), boxOf(above));
  }
  return all.map(({ colours }) => colours);
}

/** The colour that most pixels of a box have: letters keep the ground that they stand on. */
const mostOf = (box) => box.reduce((a, b) => (b.count > a.count ? b : a));

const CRC = Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

/** A piece of a PNG: its length, its type, its bytes, and the sum over them. */
export function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  let crc = 0xffffffff;
  for (const byte of body) crc = CRC[(crc ^ byte) & 255] ^ (crc >>> 8);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE((crc ^ 0xffffffff) >>> 0, body.length + 4);
  return out;
}

/**
 * The same picture with so many colours at most. What has no more of them keeps each as it is.
 * @param png 8 bits a channel, with or without alpha
 */
export function withPalette(png, most = 256) {
  const picture = readPng(png);
  const { width, height, size, pixels } = picture;
  const found = boxes(counted(picture), most).sort((a, b) => mostOf(b).count - mostOf(a).count);
  const index = new Map(found.flatMap((box, i) => box.map(({ key }) => [key, i])));
  const rows = Buffer.alloc((width + 1) * height);
  for (let at = 0, i = 0; at < pixels.length; at += size, i++) {
    const alpha = size === 4 ? pixels[at + 3] : 255;
    const key = pixels[at] * 2 ** 24 + pixels[at + 1] * 2 ** 16 + pixels[at + 2] * 256 + alpha;
    rows[Math.floor(i / width) * (width + 1) + 1 + (i % width)] = index.get(key);
  }
  const colours = found.map((box) => mostOf(box).bytes);
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 3, 0, 0, 0], 8);
  const alphas = Buffer.from(colours.map((bytes) => bytes[3]));
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', head),
    chunk('PLTE', Buffer.from(colours.flatMap((bytes) => bytes.slice(0, 3)))),
    ...(alphas.some((alpha) => alpha < 255) ? [chunk('tRNS', alphas)] : []),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
