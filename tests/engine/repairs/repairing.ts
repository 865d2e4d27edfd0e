/** Repairs of one brick without waste, mixed in one mortar, so that every figure can be worked out by hand. */
import { figure, jobOf } from '../../examples/engine';

/** Work size of the brick: 215 x 102.5 x 65 mm, joints 10 mm, no frog. */
export const UNIT = 215 * 102.5 * 65;

const GOODS = `use uk

brick plain
  size   215 x 102.5 x 65 mm
  joint  10 mm
  price  £1 each
material slab "Slab"
  size   600 x 280 x 75 mm
  price  £20 each
material coin "Cap"
  size   400 x 400 x 60 mm
  price  £25 each
material stitch-bar
  price  £5 each
labour
  bricklayer  £30 per h
  gang        1 bricklayer
`;

/** A job with what stands there before the repair `r`, whose lines these are. */
export function repaired(lines: string, before = '') {
  const body = lines
    .trim()
    .split('\n')
    .map((line) => `  ${line.trim()}\n`)
    .join('');
  return jobOf(`${GOODS}\n${before}\nrepair r\n${body}`);
}

/** The figures of the repair, by the last part of their ids. */
export function figuresOf(lines: string, before = '') {
  const job = repaired(lines, before);
  return (key: string) => figure(job, `r.${key}`);
}

export const OWN = 'brick plain\nmix general\nthick 1 brick\nbond english\n';
export const THIN = 'brick plain\nmix general\n';

export const NORTH = `wall north
  brick   plain
  mix     general
  thick   1 brick
  bond    english
  length  4490 mm
  height  18 courses
  stands  held
  coping  precast 600 x 280 mm slab
  pier stub
    at      left
    size    1.5 x 1.5 bricks
    height  20 courses
`;

export const GATE = `pier gate
  brick   plain
  mix     general
  size    1.5 x 1.5 bricks
  height  20 courses
  cap     400 x 400 mm coin
`;
