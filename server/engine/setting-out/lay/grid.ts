import type { FacePiece, Joints, UnitSize } from '../types';

/** Steps to a brick with its joint: quarters and thirds of a brick are both whole numbers of them. */
export const BRICK = 12;
/** Positions nearer than this are the same, in steps. */
export const EPS = 1e-6;

/** The setting-out grid of a brick and its joint. Widths in steps take in one joint. */
export interface Grid {
  /** A brick with its joint, mm. */
  module: number;
  /** One step, mm. */
  step: number;
  joint: number;
  /** In half bricks. */
  thickness: number;
  /** Steps that a header takes; in a half-brick wall it is a half bat that shows as one. */
  header: number;
  /** Steps that a queen closer takes. */
  closer: number;
  /** Face length of each piece, mm; a `cut` has no one length. */
  face: Record<Exclude<FacePiece, 'cut'>, number>;
}

/**
 * Queen closer: half a header at the joint, (width - joint) / 2, so that header and closer with
 * their joints make three quarters of a brick. Half and three-quarter bats are cut to the same rule.
 * UK: 46.25, 102.5 and 158.75 mm; common practice, arithmetic on 215 x 102.5 with 10 mm joints.
 */
export function gridOf(unit: UnitSize, joints: Joints, thickness: number): Grid {
  const joint = joints.perpend;
  const module = unit.length + joint;
  const through = Math.max(2, Math.round((BRICK * (unit.width + joint)) / module));
  const header = thickness === 1 ? BRICK / 2 : through;
  return {
    module,
    step: module / BRICK,
    joint,
    thickness,
    header,
    closer: header / 2,
    face: {
      stretcher: unit.length,
      header: unit.width,
      half: module / 2 - joint,
      'three-quarter': (module * 3) / 4 - joint,
      closer: (unit.width - joint) / 2,
    },
  };
}

/** Remainder that is never negative. */
export function mod(value: number, by: number): number {
  const rest = value % by;
  return rest < 0 ? rest + by : rest;
}
