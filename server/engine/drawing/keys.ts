import type { Box, Key, Style } from './model';
import { inMillimetres } from './model';

const WORDS: [Style, string][] = [
  ['stretcher', 'stretcher'],
  ['header', 'header'],
  ['half', 'half bat'],
  ['three-quarter', 'three-quarter bat'],
  ['closer', 'queen closer'],
  ['pier', 'pier'],
];

function cutKey(boxes: readonly Box[]): Key[] {
  const lengths = new Set<string>();
  for (const { style, width } of boxes) if (style === 'cut') lengths.add(inMillimetres(width));
  if (lengths.size === 0) return [];
  const listed = [...lengths].sort((a, b) => Number(a) - Number(b));
  const few = listed.length <= 4 ? ` ${listed.join(', ')} mm` : ` of ${listed.length} lengths`;
  return [{ style: 'cut', text: `cut${few}` }];
}

/** What each style in a drawing stands for, in a fixed order, and only those it has. */
export function keysOf(boxes: readonly Box[], dpc: boolean): Key[] {
  const used = new Set(boxes.map((box) => box.style));
  const keys = WORDS.filter(([style]) => used.has(style)).map(([style, text]) => ({ style, text }));
  const line: Key[] = dpc ? [{ style: 'dpc', text: 'damp-proof course' }] : [];
  return [...keys, ...cutKey(boxes), ...line];
}
