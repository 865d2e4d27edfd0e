/** Pictures that a firm puts on its papers. A file of that name may hold anything: only what is checked is taken. */
import type { Picture } from './model';

/** A sign on a letterhead is small; what is larger is a photograph, or meant to do harm. */
export const MOST_PICTURE_BYTES = 1024 * 1024;
const MOST_SIDE = 4000;
const MOST_PIXELS = 4_000_000;

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

export interface PictureSize {
  readonly type: Picture['type'];
  readonly width: number;
  readonly height: number;
}

/** What the file says it is by its first bytes, whatever its name; else a sentence that says what is wrong. */
export function pictureSize(bytes: Uint8Array): PictureSize | string {
  if (bytes.length > MOST_PICTURE_BYTES) return 'it is larger than 1 MiB';
  const found = startsWith(bytes, PNG)
    ? pngSize(bytes)
    : startsWith(bytes, [0xff, 0xd8, 0xff])
      ? jpegSize(bytes)
      : 'it is no PNG and no JPEG';
  if (typeof found === 'string') return found;
  const { width, height } = found;
  if (!width || !height) return 'it has no size';
  if (Math.max(width, height) > MOST_SIDE || width * height > MOST_PIXELS)
    return `it is ${width} by ${height} dots, and may have 4 million at most`;
  return found;
}

function startsWith(bytes: Uint8Array, first: readonly number[]): boolean {
  return first.every((byte, i) => bytes[i] === byte);
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function pngSize(bytes: Uint8Array): PictureSize | string {
  if (bytes.length < 33) return 'it is cut short';
  const view = viewOf(bytes);
  if (view.getUint32(12) !== 0x49484452) return 'it is no PNG that can be read'; // IHDR
  if (bytes[28] !== 0) return 'it is an interlaced PNG: save it without interlacing';
  return { type: 'png', width: view.getUint32(16), height: view.getUint32(20) };
}

/** Goes from segment to segment to the one that begins the frame (ISO/IEC 10918-1, B.2). */
function jpegSize(bytes: Uint8Array): PictureSize | string {
  const view = viewOf(bytes);
  for (let at = 2; at + 9 < bytes.length; ) {
    const marker = view.getUint16(at);
    if (marker < 0xff01) return 'it is no JPEG that can be read';
    const frame =
      marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker);
    if (frame) {
      if (![1, 3].includes(bytes[at + 9]!)) return 'it is a JPEG in other colours than RGB';
      return { type: 'jpeg', height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    }
    if (marker === 0xffda) break; // the scan begins without a frame
    at += 2 + view.getUint16(at + 2);
  }
  return 'it is no JPEG that can be read';
}
