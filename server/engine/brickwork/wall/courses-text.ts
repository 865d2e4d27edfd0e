/** How the courses were laid, in words, for the working of their bricks. */
import { phrase } from '../../../../shared/phrase';
import type { Band, LaidRun, Patch, SettingOut } from '../../setting-out';
import { lengthText } from '../lengths';
import type { Masonry } from '../masonry';
import { pieceNamed } from '../pieces';
import { bondChoice } from './bond-choice';

/** Each stretch of each row, course pattern by course pattern; a wall of one row is told without its name. */
export function coursesText({ rows, patches = [] }: SettingOut, masonry: Masonry): string[] {
  const bonded = patches.flatMap((patch) => patchText(patch, masonry));
  if (rows.length === 1) return [...bandsText(rows[0]!.bands, masonry), ...bonded];
  const told = rows.flatMap(({ bands }, i) => [
    `${rowNamed(i, rows.length)}:`,
    ...bandsText(bands, masonry),
  ]);
  return [...told, ...bonded];
}

/** Round a wall that is bonded in, the pieces that no row tells. */
function patchText({ from, to, every, pieces, middle }: Patch, { env }: Masonry): string[] {
  const courses =
    every === 1 || from + every >= to
      ? `${from + 1}`
      : phrase`${from + 1}, ${from + every + 1} and so on below ${to + 1}`;
  const kinds = [...new Set(pieces.map(({ piece }) => piece))];
  const counts = kinds.map((kind) => {
    const count = pieces.filter(({ piece }) => piece === kind).length;
    return `${count} ${pieceNamed(kind, count)}`;
  });
  const said = counts.length ? counts.join(', ') : phrase`nothing but the wall that runs in`;
  return [
    phrase`Round the wall that runs in at ${lengthText(env, middle)}, course ${courses}: ${said}`,
  ];
}

function rowNamed(row: number, rows: number): string {
  if (row === 0) return phrase`Front`;
  return row === rows - 1 ? phrase`Back` : phrase`Core, in the courses that have one`;
}

function bandsText(bands: readonly Band[], masonry: Masonry): string[] {
  const lines: string[] = [];
  for (const band of bands)
    for (const segment of band.segments) {
      if (segment.runs.every(({ groups }) => groups.length === 0)) continue;
      const where = phrase`${lengthText(masonry.env, segment.from)} to ${lengthText(masonry.env, segment.to)}`;
      lines.push(phrase`Courses ${band.from + 1} to ${band.to}, from ${where}:`);
      lines.push(...distinctRuns(segment.runs).map((run) => `  ${runText(run, masonry)}`));
      lines.push(...bondChoice(segment, masonry).map((text) => `  ${text}`));
    }
  return lines;
}

/** Courses that are laid alike are told once. */
function distinctRuns(runs: readonly LaidRun[]): LaidRun[] {
  const seen = new Set<string>();
  return runs.filter((run) => {
    // Where a wall runs in a course is told on either side of it, and here is nothing.
    if (run.groups.length === 0) return false;
    const key = JSON.stringify(run.groups);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function runText(run: LaidRun, masonry: Masonry): string {
  const groups = run.groups.map(({ pieces, times }) => {
    const text = pieces
      .map(({ piece, count, length }) => {
        const of = piece === 'cut' ? phrase` of ${lengthText(masonry.env, length)}` : '';
        return `${count > 1 ? `${count} ` : ''}${pieceNamed(piece, count)}${of}`;
      })
      .join(', ');
    return times > 1 ? `${times} × (${text})` : text;
  });
  return phrase`${groups.join(', ')}; joints of ${lengthText(masonry.env, run.joint)}`;
}
