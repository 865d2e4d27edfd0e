/** A PNG as plain RGB on white paper (ISO/IEC 15948). pdfkit would take one apart on another thread, and never wait. */
import { unzlibSync } from 'fflate';

export interface Rgb {
  readonly width: number;
  readonly height: number;
  /** Three bytes a dot, row by row. */
  readonly dots: Uint8Array;
}

/** How many values a dot has, by the colour type. */
const VALUES: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

interface Chunks {
  readonly width: number;
  readonly height: number;
  readonly bits: number;
  readonly colour: number;
  readonly palette: Uint8Array;
  /** What is seen through of each colour of the palette. */
  readonly alpha: Uint8Array;
  readonly data: readonly Uint8Array[];
}

/** @throws where it is no whole PNG. Its size is checked before, and so bounds what this takes. */
export function rgbOf(bytes: Uint8Array): Rgb {
  const png = chunksOf(bytes);
  const values = VALUES[png.colour];
  if (!values || ![1, 2, 4, 8, 16].includes(png.bits)) throw new Error('no PNG of a known kind');
  const row = Math.ceil((png.width * values * png.bits) / 8);
  const out = new Uint8Array((row + 1) * png.height);
  const filtered = unzlibSync(joined(png.data), { out });
  if (filtered.length < out.length) throw new Error('cut short');
  const rows = unfiltered(filtered, row, png.height, Math.max(1, (values * png.bits) / 8));
  return { width: png.width, height: png.height, dots: onWhite(png, rows, row, values) };
}

function chunksOf(bytes: Uint8Array): Chunks {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: Record<string, Uint8Array> = {};
  const data: Uint8Array[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    const body = bytes.subarray(at + 8, at + 8 + length);
    if (body.length < length) throw new Error('cut short');
    if (name === 'IDAT') data.push(body);
    else parts[name] ??= body;
    at += 12 + length;
  }
  const none = new Uint8Array();
  const head = parts.IHDR ?? none;
  return {
    width: view.getUint32(16),
    height: view.getUint32(20),
    bits: head[8] ?? 0,
    colour: head[9] ?? -1,
    palette: parts.PLTE ?? none,
    alpha: head[9] === 3 ? (parts.tRNS ?? none) : none,
    data,
  };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Each row was written as what it differs by from its neighbours; `back` bytes are a dot. */
function unfiltered(from: Uint8Array, row: number, height: number, back: number): Uint8Array {
  const out = new Uint8Array(row * height);
  for (let y = 0; y < height; y++) {
    const filter = from[y * (row + 1)]!;
    for (let x = 0; x < row; x++) {
      const at = y * row + x;
      const left = x >= back ? out[at - back]! : 0;
      const up = y ? out[at - row]! : 0;
      const corner = y && x >= back ? out[at - row - back]! : 0;
      out[at] = from[y * (row + 1) + 1 + x]! + guess(filter, left, up, corner);
    }
  }
  return out;
}

function guess(filter: number, left: number, up: number, corner: number): number {
  if (filter === 0) return 0;
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  if (filter !== 4) throw new Error('no such filter');
  const base = left + up - corner;
  const [a, b, c] = [left, up, corner].map((value) => Math.abs(base - value)) as [
    number,
    number,
    number,
  ];
  if (a <= b && a <= c) return left;
  return b <= c ? up : corner;
}

/** Paper is white: what is seen through of a dot is so much of white. */
function onWhite(png: Chunks, rows: Uint8Array, row: number, values: number): Uint8Array {
  const { width, height } = png;
  const dots = new Uint8Array(width * height * 3);
  const colours = coloursOf(png, readerOf(png.bits, rows));
  const dot = [0, 0, 0, 255];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      colours(y * row, x * values, dot);
      const at = (y * width + x) * 3;
      for (let i = 0; i < 3; i++)
        dots[at + i] = Math.round(255 + ((dot[i]! - 255) * dot[3]!) / 255);
    }
  return dots;
}

/** The value at a place of the row that begins there. */
type Reader = (start: number, place: number) => number;
/** Puts red, green, blue and how much covers the paper into `dot`, 0..255 each. */
type Colours = (start: number, place: number, dot: number[]) => void;

function coloursOf({ bits, colour, palette, alpha }: Chunks, value: Reader): Colours {
  if (colour === 3)
    return (start, place, dot) => {
      const index = value(start, place);
      for (let i = 0; i < 3; i++) dot[i] = palette[index * 3 + i] ?? 0;
      dot[3] = alpha[index] ?? 255;
    };
  const grey = colour === 0 || colour === 4;
  const full = 255 / (2 ** Math.min(bits, 8) - 1);
  return (start, place, dot) => {
    for (let i = 0; i < 3; i++) dot[i] = value(start, place + (grey ? 0 : i)) * full;
    if (colour === 4 || colour === 6) dot[3] = value(start, place + (grey ? 1 : 3));
  };
}

/** Of more than eight bits the first eight. */
function readerOf(bits: number, rows: Uint8Array): Reader {
  const bytes = bits / 8;
  if (bits >= 8) return (start, place) => rows[start + place * bytes]!;
  const most = 2 ** bits - 1;
  return (start, place) => {
    const bit = place * bits;
    return (rows[start + (bit >> 3)]! >> (8 - bits - (bit & 7))) & most;
  };
}
