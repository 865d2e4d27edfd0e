import type { JointLimits, UnitSize } from '../types';
import { type Fit, type FitQuestion, fitRun } from './fit';

/** A course of brick on edge or on end over a wall or pier. */
export interface CopingQuestion {
  unit: UnitSize;
  /** Along the wall, mm. */
  length: number;
  /** Of the wall below, in half bricks. */
  thickness: 1 | 2 | 3 | 4;
  /** 0 free ends, 1 or 2 butted to something. */
  endJoints: 0 | 1 | 2;
  limits: JointLimits;
  /** On edge when left out. */
  on?: 'edge' | 'end';
  /** A pier, where a cap would do instead. */
  cap?: boolean;
  /** Kinds of way, most welcome first. */
  prefer?: FitQuestion['prefer'];
}

export interface Coping {
  fit: Fit;
  /** Whole and half bricks that one row across the wall takes. */
  across: { wholes: number; halves: number };
}

/**
 * Brick on edge across a wall: each takes its height and a joint along it, 65 + 10 = 75 mm, 13.33 to
 * a metre (published as 13.33 a metre; arithmetic on the UK brick). One brick reaches over a wall of
 * up to one brick, one and a half over one and a half, two over two.
 *
 * Brick on end takes as much along the wall, stands as high as it is long, and is a brick’s width through it: one
 * to each half brick of the wall (common practice).
 */
export function fitCoping(question: CopingQuestion): Coping {
  const { unit, length, thickness, endJoints, limits, cap, prefer } = question;
  const fit = fitRun({ length, piece: unit.height, half: null, endJoints, limits, cap, prefer });
  if (question.on === 'end') return { fit, across: { wholes: thickness, halves: 0 } };
  const bricks = Math.max(2, thickness) / 2;
  return { fit, across: { wholes: Math.floor(bricks), halves: bricks % 1 === 0 ? 0 : 1 } };
}
