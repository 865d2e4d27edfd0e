/**
 * A drawing of work, before it is put on any paper. Lengths are millimetres of the work, x to the
 * right from the wall's left end, y up from the ground; only sizes of letters are millimetres on
 * paper. What a style looks like is the business of whoever puts it on screen or paper.
 */

import type { Units } from './lengths';

export type Style =
  | 'stretcher'
  | 'header'
  | 'half'
  | 'three-quarter'
  | 'closer'
  | 'cut'
  | 'on-edge'
  | 'brickwork'
  | 'opening'
  | 'pier'
  | 'cap'
  | 'ground'
  | 'dpc'
  | 'movement'
  | 'course'
  | 'core'
  | 'precast'
  | 'lintel'
  | 'soldier'
  | 'voussoir'
  | 'mortar'
  | 'tile'
  | 'outline'
  | 'break'
  | 'hidden'
  | 'mark'
  | 'rod'
  | 'dimension'
  | 'band'
  | 'projecting'
  | 'block'
  | 'reused'
  | 'new-piece'
  | 'gone-piece';

export interface Point {
  x: number;
  y: number;
}

/** A rectangle from its lower left corner. */
export interface Box extends Point {
  style: Style;
  width: number;
  height: number;
}

/** A closed outline, filled like a box: a voussoir, a skewback, a brick cut on plan. Convex, three corners at least. */
export interface Shape {
  style: Style;
  points: readonly Point[];
}

export interface Stroke {
  style: Style;
  from: Point;
  to: Point;
}

/** Words centred on a point, or beginning or ending there. */
export interface Label extends Point {
  text: string;
  /** Height of the letters on paper, mm. */
  size: number;
  /** `middle` when left out. */
  align?: 'start' | 'middle' | 'end';
  /** Left out where, at the scale chosen, it does not go into this. */
  room?: { width: number; height: number };
  /** The length of a cut, mm, where this is its size: such a one is never left out, but stands by a letter for it. */
  cut?: number;
  /** The height that it names, mm, where it stands beside that. */
  at?: number;
}

/**
 * A row of dimensions along one side; the first given on a side stands nearest the work.
 * `between` names each distance; `running` gives each stop its distance from the wall's left end or the ground.
 */
export interface Chain {
  side: 'below' | 'right';
  form: 'between' | 'running';
  /** Positions along x (below) or y (right), rising. */
  stops: readonly number[];
  /** Where a running chain counts from; nought when left out. */
  origin?: number;
}

/** The gauge rod on the left: a mark for each course, numbered every so many. */
export interface Rod {
  gauge: number;
  courses: number;
  every: number;
}

/** What a style stands for. */
export interface Key {
  style: Style;
  text: string;
  /** Words after it, which go over as many rows as they take. */
  list?: readonly string[];
}

/** What of the work a drawing of several shows, for whoever asks where that comes from. Lengths as in the work, mm. */
export interface DrawnPart {
  /** The course that is seen from above, counted from 1. */
  course?: number;
  /** The run of a coping, or the cap, that is seen from above; `at` is its underside. */
  top?: { from: number; to: number; at: number };
  /** Where two walls meet: whether the work is the wall along the sheet or the one across it, which lies from and to there. */
  meets?: { own: 'along' | 'across'; side: 'left' | 'right'; from: number; to: number };
}

export interface Drawing {
  title: string;
  /** What its lengths are written in. */
  units: Units;
  /** What a reader who cannot see it is told. */
  description: string;
  extent: { left: number; right: number; bottom: number; top: number };
  boxes: readonly Box[];
  shapes: readonly Shape[];
  strokes: readonly Stroke[];
  labels: readonly Label[];
  chains: readonly Chain[];
  rod: Rod | null;
  part?: DrawnPart;
  keys: readonly Key[];
  notes: readonly string[];
}
