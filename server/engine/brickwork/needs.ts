/** What a piece of work takes. Parts of the job are added up by these before anything is bought. */

import type { Remark } from '../findings/remark';
import type { Ends } from '../resolve/ends';
import type { Partner } from '../resolve/partners';
import type { CoursePlan, Joints, PierPlan, SettingOut, UnitSize } from '../setting-out';
import type { Origin, Term } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import type { CutPart } from './cuts/sheet';
import type { Matching } from './matching/types';
import type { FaceEnd } from './wall/meet/arms';

/** Bricks of one kind, bats and closers counted as the bricks they are cut from. */
export interface BrickNeed {
  readonly brick: string;
  readonly block?: SourceBlock;
  readonly bricks: Term;
  readonly origin: Origin;
}

/** Mortar or concrete of one mix, in litres as laid, nothing lost. */
export interface MixNeed {
  readonly mix: string;
  readonly block?: SourceBlock;
  readonly litres: Term;
  readonly origin: Origin;
  readonly lays?: Lays;
  /** Of a part of the work that has a mix of its own: its damp course, its coping. */
  readonly apart?: boolean;
}

/** What a mix is used for in a piece of work: how fast it goes, and what more of it would do. */
export interface Lays {
  /** As laid: so much of it goes into the bricks, in these hours. */
  readonly litres: Term;
  /** Of the whole gang, in which it is laid. */
  readonly hours?: Term;
  /** Bricks that are laid in it. */
  readonly bricks?: Term;
  /** Where not all of it goes at one pace: its parts, in the order they are done. */
  readonly paces?: readonly Pace[];
  /** What the joints of a square metre (or foot) of face take to be pointed, and how long they are. */
  readonly pointing?: Term;
  readonly joints?: Term;
}

/** So much mortar, as laid, in so many hours of the gang. */
export interface Pace {
  readonly litres: Term;
  readonly hours: Term;
}

/** Things bought by the piece. */
export interface PieceNeed {
  readonly material: string;
  readonly block?: SourceBlock;
  readonly count: Term;
  readonly origin: Origin;
  /** Of one, mm, as far as lines of the job give its sides. */
  readonly size?: readonly number[];
  /** The same, between what and what each lies: it is lifted whole, so its weight is feared at the worst. */
  readonly ends?: readonly Ends[];
}

/** What is taken away: its volume loose, its mass. */
export interface WasteNeed {
  readonly volume: Term;
  readonly mass: Term;
}

/** Time of the whole gang together, in hours. */
export interface TaskNeed {
  readonly task: string;
  readonly hours: Term;
  /** Done by a partner firm: no hours of the firm’s own. */
  readonly by?: Partner;
}

export interface Needs {
  readonly bricks: readonly BrickNeed[];
  readonly mixes: readonly MixNeed[];
  readonly pieces: readonly PieceNeed[];
  readonly tasks: readonly TaskNeed[];
  /** Its amounts hang on ranges in a way that they do not say: they are sampled by doing the work again. */
  readonly opened?: boolean;
  /** Days that its height takes, however few the hours. */
  readonly leastDays?: Term;
  /** What is taken away. */
  readonly waste?: WasteNeed;
}

/** A figure that a reader can ask for by name. */
export interface Figure {
  /** The last part of its id: `bricks`, `gate.width`. */
  readonly key: string;
  readonly term: Term;
}

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

export interface Work {
  readonly block: SourceBlock;
  readonly kind: string;
  readonly name: string;
  readonly title: string;
  readonly figures: readonly Figure[];
  readonly needs: Needs;
  readonly remarks: readonly Remark[];
  readonly facts: WorkFacts;
  readonly notes: readonly string[];
}

/** Where a wall meets another wall of the job. */
export interface WallJoin {
  readonly kind: 'quoin' | 'tee';
  /** The end of this wall. */
  readonly side: 'left' | 'right';
  /** The other wall, by name, and which of its ends a corner is made with. */
  readonly wall: string;
  readonly otherSide?: 'left' | 'right';
  /** The course of this wall, and that of the other, that stands on the ground there. */
  readonly ground?: number;
  readonly otherGround?: number;
  /** Of a tee, mm from the other wall’s left end to the near side of this one. */
  readonly distance?: number;
  /** Of the other wall, mm. */
  readonly thickness: number;
  /** The front of this wall is on the inner side of the corner. */
  readonly inside: boolean;
  /** In which courses this wall stops behind the other: 0 the lowest and every second one, 1 the others. */
  readonly givesWay?: 0 | 1;
}

/** What others may ask of a piece of work: a repair of its wall, a drawing, a quote, a caution. */
export interface WorkFacts {
  /** Of a wall, as its face shows: at a quoin like a stopped end. */
  readonly settingOut?: SettingOut;
  /** The same as it lies on plan, without what is another wall's at a quoin; left out where it is no other. */
  readonly laid?: SettingOut;
  /** Corners it makes with other walls of the job, and other walls it runs into. */
  readonly joins?: readonly WallJoin[];
  readonly tees?: readonly WallJoin[];
  readonly tops?: readonly TopRun[];
  /** The cut list, made when somebody asks for it. */
  readonly cuts?: () => readonly CutPart[];
  /** A pier that stands alone: one of those alike. */
  readonly pier?: PierFace;
  /** Piers of a wall whose pieces are known. */
  readonly piers?: readonly WallPierFace[];
  /** A skin behind the face: how it is set out, and mm from the back of the face to its own face. */
  readonly backing?: { readonly settingOut: SettingOut; readonly behind: number };
  /** A wall with heads let into it over its openings: what `settingOut` is without them. */
  readonly carved?: SettingOut;
  /** Where walls run into it: its face (carved) with room for them, and what of them shows in it in one course. */
  readonly met?: {
    readonly settingOut: SettingOut;
    readonly ends: (face: 'front' | 'back', course: number) => readonly FaceEnd[];
  };
  /** In the order they are drawn, over the bricks. */
  readonly shapes?: readonly FaceShape[];
  /** Its lowest courses, and its topmost, that stand out. */
  readonly plinth?: FaceProjection;
  readonly corbel?: FaceProjection;
  /** What a repair builds again of a wall or a pier: how it is laid, and how much of its brick is what came down, 0 to 1. */
  readonly rebuilt?: {
    readonly settingOut?: SettingOut;
    readonly pier?: PierFace;
    readonly reused: number;
  };
  /** What a repair might buy, compared with what stands there. */
  readonly matching?: Matching;
  /** Height over all, coping included, mm. */
  readonly height?: number;
  readonly does: ReadonlySet<string>;
  /** Sentences for the client: what will be done. */
  readonly says: readonly string[];
}
