import type { LaidRun, Segment } from '../../server/engine/setting-out';

const LETTERS = {
  stretcher: 'S',
  header: 'H',
  half: 'h',
  'three-quarter': 'T',
  closer: 'c',
  cut: 'x',
};

/** A course as a bricklayer would say it: `H c H9 c H`. Lower-case h is a half bat, T a three-quarter, x a cut. */
export function sketch(run: LaidRun): string {
  const pieces: { letter: string; count: number }[] = [];
  for (const group of run.groups)
    for (let turn = 0; turn < group.times; turn++)
      for (const { piece, count } of group.pieces) {
        const last = pieces.at(-1);
        if (last?.letter === LETTERS[piece]) last.count += count;
        else pieces.push({ letter: LETTERS[piece], count });
      }
  return pieces.map(({ letter, count }) => `${letter}${count > 1 ? count : ''}`).join(' ');
}

export const sketches = (segment: Segment) => segment.runs.map(sketch);
