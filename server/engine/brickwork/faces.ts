/** What drawings need to know of work: what stands on it, out of it and in its face. */
import type { CoursePlan, Joints, PierPlan, SettingOut, UnitSize } from '../setting-out';

/** What a brick on edge, a cap or a pier's plan looks like from the side: kept for the drawing. */
export interface TopRun {
  readonly from: number;
  readonly to: number;
  /** Course that it stands on, counted from the ground. */
  readonly on: number;
  /** Mm above that course, where something lies between. */
  readonly over?: number;
  readonly kind: 'brick-on-edge' | 'brick-on-end' | 'precast' | 'tiles' | 'cap';
  readonly pieces: readonly { readonly length: number; readonly cut: boolean }[];
  readonly joint: number;
  readonly height: number;
  /** Through the work: sides of the pieces of one row, mm, a joint between each two. Left out where no line says. */
  readonly deep?: readonly number[];
  /** Where rows through the work have joints of their own: each from the front, one for each of `deep`. */
  readonly rows?: readonly TopRow[];
  /** Joint between rows, mm; as along the work when left out. */
  readonly between?: number;
  /** What it lies over the middle of, mm from the wall's front; the faces of the wall or pier when left out. */
  readonly faces?: { readonly front: number; readonly back: number };
}

export interface TopRow {
  readonly pieces: readonly { readonly length: number; readonly cut: boolean }[];
  readonly joint: number;
}

/** Where the pieces of a pier lie. */
export interface Placed {
  /** Course by course from the bottom, over and over: every piece on plan, and the core that is left open. */
  readonly placed: readonly CoursePlan[];
  /** Half bats that the whole pier can hide: salvaged ones go there first. */
  readonly coreHalves: number;
}

/** A pier alone, as its drawing needs it: its plan and courses, and what they are laid of. Not placed where its counts cannot be laid. */
export interface PierFace extends Partial<Placed> {
  readonly plan: PierPlan;
  readonly unit: UnitSize;
  readonly joints: Joints;
}

/** Mm along the wall, and up from its lowest ground. */
export interface FacePoint {
  readonly x: number;
  readonly y: number;
}

/** What spans an opening or lies at its foot, as its elevation shows it; convex. */
export interface FaceShape {
  readonly style:
    | 'lintel'
    | 'soldier'
    | 'brick-on-edge'
    | 'voussoir'
    | 'mortar'
    | 'opening'
    | 'cut';
  readonly points: readonly FacePoint[];
  /** Where only one of them shows it. */
  readonly face?: 'front' | 'back';
}

/** Part of a face: mm along the wall, and courses from its lowest ground, the last not included. */
export interface FaceArea {
  readonly from: number;
  readonly to: number;
  readonly courses: { readonly from: number; readonly to: number };
}

/** Courses that stand out before a face. */
export interface FaceProjection {
  readonly areas: readonly FaceArea[];
  /** Mm before the face; where `each` is set, of each course before the one below it. */
  readonly out: number;
  readonly each: boolean;
  /** Out of both faces, not of the front alone. */
  readonly both: boolean;
  /** Where it has bricks of its own before the face: how they are laid, and how many rows of them there are. */
  readonly laid?: SettingOut;
  readonly rows?: number;
  /** Where the wall makes corners: those rows one by one, as they lie. */
  readonly turned?: readonly ProjectingRow[];
  /** Courses of the wall itself that are laid longer or shorter at its corners than the wall is. */
  readonly past?: readonly CoursePast[];
}

/** How far something goes on past the ends of its wall, mm; negative where it stops short of them. */
export interface Past {
  readonly left: number;
  readonly right: number;
}

export interface CoursePast extends Past {
  readonly course: number;
}

/** One row of bricks before a face, in courses in which it ends alike. */
export interface ProjectingRow {
  readonly face: 'front' | 'back';
  /** 1 against the wall. */
  readonly row: number;
  /** Where it shows, where it is left out for another wall that stands there; else wherever the projection does. */
  readonly areas?: readonly FaceArea[];
  /** As it lies on plan: in every second course its end may be the other wall’s row. */
  readonly laid: SettingOut;
  readonly zones: readonly {
    readonly from: number;
    readonly to: number;
    readonly courses: { readonly from: number; readonly to: number | null };
  }[];
  readonly past: Past;
}

/** A pier of a wall, as its drawing needs it: mm from the wall’s left end and from its front face. */
export interface WallPierFace extends Placed {
  readonly name: string;
  readonly from: number;
  /** Of its front face: negative where it stands out before the wall. */
  readonly y: number;
  readonly width: number;
  readonly depth: number;
  /** Courses, and the one it starts at. */
  readonly base: number;
  readonly courses: number;
  /** Bonded into the wall: its courses reach into it, or the wall’s into them. */
  readonly attached: boolean;
  /** Where it is higher than that wall: its courses from its course `from` on. None placed where its counts cannot be laid. */
  readonly above?: { readonly from: number; readonly placed: readonly CoursePlan[] };
}
