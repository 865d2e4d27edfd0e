/** Which faces of the work look other than before, and both of each on paper. */
import { phrase } from '../../shared/phrase';
import type { Comparison, WorkPair } from '../engine/compare';
import {
  A4_LANDSCAPE,
  LETTER_LANDSCAPE,
  type PiecesPlaced,
  type Sheet,
  toSheet,
  withChanges,
} from '../engine/drawing';
import type { Job } from '../engine/workspace/job';
import { drawingOf } from './work-drawing';

type Face = 'front' | 'back';

/** A face with pieces in it that are new, or gone, or lie elsewhere. */
export interface FaceChange {
  /** `new` and `gone`: the piece of work itself is. */
  readonly change: 'new' | 'gone' | 'changed';
  readonly name: string;
  readonly title: string;
  readonly face: Face;
  readonly placed: PiecesPlaced;
  /** As it was and as it is now, marked; one sheet where there is no other face to put beside it. */
  readonly sheets: () => readonly Sheet[];
}

/** In the order of the work, front before back. `only`: of the piece of work that has this name now, or had it. */
export function faceChanges(found: Comparison, only?: string): FaceChange[] {
  return found.pairs.flatMap((pair) => {
    const names = [pair.before?.name, pair.after?.name];
    if (only !== undefined && !names.includes(only)) return [];
    const faces: readonly Face[] = pair.before && pair.after ? ['front', 'back'] : ['front'];
    return faces.flatMap((face) => faceChange(pair, face, found) ?? []);
  });
}

function faceChange(pair: WorkPair, face: Face, found: Comparison): FaceChange | undefined {
  const before = faceOf(pair.before, face, found.before);
  const after = faceOf(pair.after, face, found.after);
  const { placed, ...drawn } = withChanges(before, after, face === 'back' ? shiftOf(pair) : 0);
  if (!placed.new && !placed.gone) return undefined;
  const { name, title } = (pair.after ?? pair.before)!;
  const change = pair.before ? (pair.after ? 'changed' : 'gone') : 'new';
  const paper = found.after.env.imperial ? LETTER_LANDSCAPE : A4_LANDSCAPE;
  const sheets = () =>
    [drawn.before, drawn.after].flatMap((drawing) => (drawing ? [toSheet(drawing, paper)] : []));
  return { change, name, title, face, placed, sheets };
}

/** Seen from behind, the end that lengths are measured from is the right one. */
function shiftOf({ before, after }: WorkPair): number {
  const long = (piece: WorkPair['before']) => piece?.work?.facts.settingOut?.spec.length ?? 0;
  return long(after) - long(before);
}

function faceOf(piece: WorkPair['before'], face: Face, { env }: Job) {
  if (!piece?.work) return undefined;
  const title = face === 'back' ? phrase`${piece.title}, back` : piece.title;
  return drawingOf(piece.work, env, { face, title });
}
