/** Bytes as base 64 (RFC 4648, section 4) and back, without what only Node or only a browser has. */
const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

export function base64(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b, c] = [bytes[i]!, bytes[i + 1], bytes[i + 2]];
    const all = (a << 16) | ((b ?? 0) << 8) | (c ?? 0);
    text += SIGNS[all >> 18]! + SIGNS[(all >> 12) & 63]!;
    text += b === undefined ? '=' : SIGNS[(all >> 6) & 63]!;
    text += c === undefined ? '=' : SIGNS[all & 63]!;
  }
  return text;
}

const VALUES = new Uint8Array(128);
for (let i = 0; i < SIGNS.length; i++) VALUES[SIGNS.charCodeAt(i)] = i;

/** The way back. What is no base 64 gives some bytes or other, never an error. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  const end = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  const bytes = new Uint8Array(Math.max(0, Math.floor((text.length * 3) / 4) - end));
  const value = (at: number) => VALUES[text.charCodeAt(at)] ?? 0;
  for (let i = 0, to = 0; to < bytes.length; i += 4) {
    const all = (value(i) << 18) | (value(i + 1) << 12) | (value(i + 2) << 6) | value(i + 3);
    bytes[to++] = all >> 16;
    bytes[to++] = all >> 8;
    bytes[to++] = all;
  }
  return bytes;
}
