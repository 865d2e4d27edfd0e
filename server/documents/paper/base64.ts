/** Bytes as base 64 (RFC 4648, section 4), without what only Node or only a browser has. */
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
