/** Jobs of a given length to measure on: walls as people write them, thirteen lines each. */
const HEAD =
  'perpend 1\n\njob "Measured"\n\nuse uk\n\nlabour\n  bricklayer  £27.50 per h\n  gang        1 bricklayer\n\nbrick face\n  size   215 x 102.5 x 65 mm\n  price  £0.92 each\n\n';

function wall(i: number): string {
  return `wall w${i} "Wall ${i}"
  brick     face
  bond      flemish
  thick     1 brick
  length    ${(5005 + (i % 37) * 112.5).toFixed(1)} mm
  height    16 courses
  exposure  zone-1
  coping    brick-on-edge

  opening gate
    from   left 1 m
    width  1010 mm

`;
}

/** At least `lines` lines. `edit` is a digit of a wall’s length in the middle of it. */
export function jobText(lines: number): { text: string; edit: { line: number; column: number } } {
  const head = HEAD.split('\n').length - 1;
  const walls = Math.ceil((lines - head) / 13);
  const text = HEAD + Array.from({ length: walls }, (_, i) => wall(i)).join('');
  const line = head + (walls >> 1) * 13 + 4;
  return { text, edit: { line, column: 13 } };
}
