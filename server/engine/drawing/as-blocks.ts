import type { Drawing, Style } from './model';

const PIECES: readonly Style[] = ['stretcher', 'half', 'three-quarter'];

/** A face whose pieces are blocks: whole or cut, they are not told apart as bricks are. */
export function asBlocks(drawing: Drawing): Drawing {
  const block = <T extends { readonly style: Style }>(thing: T): T =>
    PIECES.includes(thing.style) ? { ...thing, style: 'block' } : thing;
  const others = drawing.keys.filter(({ style }) => !PIECES.includes(style));
  const boxes = drawing.boxes.map(block);
  const some = boxes.some(({ style }) => style === 'block');
  const key = { style: 'block' as const, text: 'block' };
  return { ...drawing, boxes, keys: some ? [key, ...others] : others };
}
