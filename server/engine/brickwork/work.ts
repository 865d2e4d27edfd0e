/** A piece of work, worked out: what it takes, what is told of it, and what others may ask of it. */
import type { Remark } from '../findings/remark';
import type { SettingOut } from '../setting-out';
import type { SourceBlock } from '../workspace/source';
import type { CutPart } from './cuts/sheet';
import type { FaceProjection, FaceShape, PierFace, TopRun, WallPierFace } from './faces';
import type { Matching } from './matching/types';
import type { Figure, Needs } from './needs';
import type { Said } from './said';
import type { FaceEnd } from './wall/meet/arms';

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
  /** The same, each with the lines that it tells of. */
  readonly said?: readonly Said[];
}
