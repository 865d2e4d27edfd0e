/** What a run of coping is made of: pieces side by side along it, each through the whole of the work below. */
import { phrase } from '../../../../shared/phrase';
import type { LineFacts } from '../../resolve/env';
import { fitCoping, type UnitSize } from '../../setting-out';
import { type Brick, brickOf } from '../goods';
import type { Masonry } from '../masonry';

export interface CopingMade {
  readonly kind: 'brick-on-edge' | 'brick-on-end' | 'precast';
  /** The brick; a precast length has none. */
  readonly brick?: Brick;
  /** Of one piece along the run, mm. */
  readonly along: number;
  /** Of one piece as it stands, mm; 0 where no line says. */
  readonly high: number;
  /** Through the work: sides of its pieces, mm, a joint between each two. */
  readonly deep: readonly number[];
  /** Whole and half bricks of one row through the work. */
  readonly across: { readonly wholes: number; readonly halves: number };
  /** Of its pieces in a millimetre of them, mm²: joints left out. */
  readonly solid: number;
  /** What its pieces are called. */
  readonly pieces: string;
  /** What so many of them are, in the working: `40 on edge`. */
  readonly said: string;
}

/** Through the work with its joints, mm. */
export function depthOf({ deep }: CopingMade, joint: number): number {
  return deep.reduce((sum, side) => sum + side, 0) + (deep.length - 1) * joint;
}

/** Bricks on edge or on end over so many half bricks, in the brick the line names. Nothing when that is not known. */
export function bricksMade(
  line: LineFacts,
  halves: number,
  masonry: Masonry,
  on: 'edge' | 'end',
  key = 'brick',
): CopingMade | undefined {
  const brick = copingBrick(line, masonry, key);
  const unit = brick.size;
  if (!unit) return undefined;
  const thickness = Math.min(4, Math.max(1, halves)) as 1 | 2 | 3 | 4;
  const limits = { least: 0, best: 0, most: 0, leastCut: 0 };
  const one = { unit, length: unit.height, endJoints: 0, limits } as const;
  const { across } = fitCoping({ ...one, thickness, on });
  return on === 'edge' ? onEdge(brick, unit, across) : onEnd(brick, unit, across);
}

/** The brick that a coping line names, else the wall’s own. */
export function copingBrick(line: LineFacts, masonry: Masonry, key = 'brick'): Brick {
  return line.values[key] ? brickOf(line, masonry.env, line.origin, key) : masonry.brick;
}

type Across = CopingMade['across'];

function onEdge(brick: Brick, { length, width, height }: UnitSize, across: Across): CopingMade {
  const deep = [
    ...Array<number>(across.wholes).fill(length),
    ...Array<number>(across.halves).fill(width),
  ];
  const solid = deep.reduce((sum, side) => sum + side, 0) * width;
  const words = { pieces: phrase`bricks on edge`, said: phrase`on edge` };
  return {
    kind: 'brick-on-edge',
    brick,
    along: height,
    high: width,
    deep,
    across,
    solid,
    ...words,
  };
}

function onEnd(brick: Brick, { length, width, height }: UnitSize, across: Across): CopingMade {
  const deep = Array<number>(across.wholes).fill(width);
  const solid = across.wholes * width * length;
  const words = { pieces: phrase`bricks on end`, said: phrase`on end` };
  return {
    kind: 'brick-on-end',
    brick,
    along: height,
    high: length,
    deep,
    across,
    solid,
    ...words,
  };
}

/** Precast lengths as a line sizes them: along, through, and high where it says so. */
export function precastMade(line: LineFacts): CopingMade | undefined {
  const [along, wide, high = 0] = line.sides('size') ?? [];
  if (!along || !wide) return undefined;
  return {
    kind: 'precast',
    along,
    high,
    deep: [wide],
    across: { wholes: 0, halves: 0 },
    solid: wide * high,
    pieces: phrase`lengths of coping`,
    said: phrase`whole lengths`,
  };
}
