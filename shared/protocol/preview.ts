/**
 * The live preview: what the client asks of the server, and what it is given. A drawing goes out as parts, each
 * under a key; who says which drawing it has is sent only the parts that have changed.
 */
import type { FileParams } from '../protocol';

/**
 * Asks what a preview shows now: {@link PreviewParams} in, {@link Shown} out. Null for a file that is not open, and where
 * what is there stays: the work that is drawn cannot be drawn while one of its lines is being written.
 */
export const PREVIEW = 'perpend/preview';

/** Views of a piece of work, in the order a reader wants them. */
export const DRAWINGS = ['front', 'back', 'plan', 'top', 'rod'] as const;

/** Keeps whatever kind of thing is shown while the cursor moves about. */
export const FRONT = DRAWINGS[0];

export interface PreviewParams extends FileParams {
  /** Where the cursor is, counted from 0. */
  readonly line: number;
  /** What to show: one of {@link DRAWINGS}, or the name of a paper or page. */
  readonly show: string;
  /** The key of the piece of work that was shown last. It is shown again where the line is in none, or while pinned. */
  readonly work?: string;
  /** Stay with that piece of work, wherever the cursor is. */
  readonly pinned?: boolean;
  /** Room that a drawing has on the screen, mm. */
  readonly room: Room;
  /** The drawing that is there already: changes of it will do. */
  readonly have?: string;
}

export interface Room {
  readonly width: number;
  readonly height: number;
}

export interface Choice {
  readonly id: string;
  readonly label: string;
  /** Words of the list it stands in: "Drawings", "Papers". */
  readonly group: string;
}

/** A line that something on the drawing or the paper comes from. Lines count from 0. */
export interface From {
  /** The file that it stands in, where that is another than the one asked about. */
  readonly uri?: string;
  readonly line: number;
  /** The last of the lines that belong to it. */
  readonly last: number;
  /** What a reader calls it: "length", "opening Garden gate". */
  readonly label: string;
  /** It is most of what is drawn: too much to be marked. */
  readonly most?: boolean;
}

export interface Shown {
  /** The version of the text that this is of. */
  readonly version: number;
  readonly show: string;
  /** Key of the piece of work that is drawn. */
  readonly work?: string;
  readonly title: string;
  /** What a reader who cannot see it is told. */
  readonly described: string;
  readonly choices: readonly Choice[];
  /** Pieces of work that can be drawn. */
  readonly works: readonly WorkChoice[];
  /** What marks name by its place in this list. */
  readonly from: readonly From[];
  readonly picture?: PictureChange;
  readonly paper?: PaperShown;
  /** Why there is nothing to show. */
  readonly nothing?: string;
}

export interface WorkChoice {
  readonly key: string;
  readonly label: string;
  readonly line: number;
}

/** A paper or a page: HTML in which whatever comes from a line says so by `data-from`, a place in the list of lines. */
export interface PaperShown {
  /** BCP 47. */
  readonly lang: string;
  readonly html: string;
  /** Drawings on it, where `data-picture` names them by their place. */
  readonly pictures: readonly Picture[];
  /** What the firm should know beside it; no part of the paper. */
  readonly asides: readonly string[];
}

export type Parts = Readonly<Record<string, Part>>;

/** A whole drawing, mm on the screen at its own size. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** In the order they are painted. */
  readonly order: readonly string[];
  readonly parts: Parts;
}

export interface PictureChange {
  /** Names this state of the drawing. */
  readonly is: string;
  /** The state that this changes; without it, it is whole. */
  readonly since?: string;
  readonly width: number;
  readonly height: number;
  readonly order?: readonly string[];
  readonly parts: Parts;
  /** What its lengths are said in. */
  readonly units: 'millimetres' | 'feet';
  /** What stands for each style. */
  readonly keys: readonly KeyShown[];
  readonly notes: readonly string[];
}

export interface KeyShown {
  readonly ink: string;
  readonly text: string;
}

/** Lengths of the work are whole tenths of a millimetre; places on the screen whole hundredths. */
export type Part = FramePart | RowPart | PatternPart | MarksPart;

/** Where a drawing of the work stands: the place of its origin, and how much of the work goes into one of the screen. */
export interface FramePart {
  readonly kind: 'frame';
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  /** What it is called among others. */
  readonly title: string;
}

/** Pieces side by side: bricks of a course. Many courses have one pattern. */
export interface RowPart {
  readonly kind: 'row';
  /** Keys of its frame and its pattern. */
  readonly frame: string;
  readonly pattern: string;
  readonly y: number;
  readonly height: number;
  /** Counted from 1, of a course of an elevation. */
  readonly course?: number;
}

/** A row’s pieces one after another: how far along, how long, its style, the line it comes from or -1. */
export interface PatternPart {
  readonly kind: 'pattern';
  readonly pieces: readonly number[];
}

/** Everything else: lines, outlines, words and dimensions. */
export interface MarksPart {
  readonly kind: 'marks';
  /** `work` is drawn, `figures` measures it; a reader goes through both. */
  readonly of: 'work' | 'figures';
  readonly lines: readonly LineMark[];
  readonly shapes: readonly ShapeMark[];
  readonly texts: readonly TextMark[];
}

export interface LineMark {
  readonly ink: number;
  readonly from: number;
  /** x1 y1 x2 y2, and so on. */
  readonly at: readonly number[];
}

export interface ShapeMark {
  readonly ink: number;
  readonly from: number;
  /** x y of each corner. */
  readonly at: readonly number[];
}

export interface TextMark {
  readonly from: number;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly align: 'start' | 'middle' | 'end';
  readonly turned?: boolean;
  readonly backed?: boolean;
  readonly bold?: boolean;
  readonly text: string;
}

/** Styles by their numbers in patterns and marks. Only ever added to at the end. */
export const INKS = [
  'stretcher',
  'header',
  'half',
  'three-quarter',
  'closer',
  'cut',
  'on-edge',
  'brickwork',
  'opening',
  'pier',
  'cap',
  'ground',
  'dpc',
  'movement',
  'course',
  'core',
  'precast',
  'lintel',
  'soldier',
  'voussoir',
  'mortar',
  'tile',
  'outline',
  'break',
  'hidden',
  'mark',
  'rod',
  'dimension',
  'band',
  'projecting',
  'block',
  'reused',
  'new-piece',
  'gone-piece',
] as const;
