/** What one line of a piece of work comes to: a length in bricks and joints, a number of courses as a height. */

import type { ReadLine } from '../../../grammar/read/values';
import { phrase } from '../../../shared/phrase';
import { lengthShown, lengthText } from '../brickwork/lengths';
import type { Figure } from '../brickwork/needs';
import type { Work } from '../brickwork/work';
import { wordOf } from '../resolve/book';
import type { Env } from '../resolve/env';
import type { Segment, SettingOut } from '../setting-out';
import { showTerm } from '../views/show';

/** Nothing for a line that works out to nothing but itself. */
export function lineText(
  line: ReadLine,
  parent: ReadLine,
  work: Work,
  env: Env,
): string | undefined {
  const out = work.facts.settingOut;
  if (line.kind.key === 'length' && out && work.kind === 'wall') return lengthWorks(out, env);
  if (line.kind.key !== 'height') return undefined;
  return parent.kind.top ? ownHeight(line, work, env) : pierHeight(line, parent, out, env);
}

/** `16½ bricks, joints 10.1 mm`; each stretch by itself where openings or piers part it. */
function lengthWorks(out: SettingOut, env: Env): string | undefined {
  const runs = stretches(out);
  if (!runs.length || runs.length > 4) return undefined;
  const bricks = runs.map((run) => inBricks(run.halves)).join(' + ');
  const joints = [...new Set(runs.map((run) => lengthText(env, run.runs[0]?.joint ?? 0)))];
  const cut = runs.every((run) => run.fits) ? '' : phrase`, with a cut`;
  const word = runs.length === 1 && runs[0]!.halves === 2 ? phrase`brick` : phrase`bricks`;
  return phrase`${bricks}\u00a0${word}, joints ${joints.join(phrase` and `)}${cut}`;
}

/** Stretches between fixed points, each once, from the left. */
export function stretches(out: SettingOut): Segment[] {
  const found: Segment[] = [];
  for (const band of out.bands)
    for (const segment of band.segments)
      if (!found.some((s) => s.from === segment.from && s.to === segment.to)) found.push(segment);
  return found.sort((a, b) => a.from - b.from || a.to - b.to);
}

function inBricks(halves: number): string {
  const whole = Math.floor(halves / 2);
  return `${whole || (halves % 2 ? '' : '0')}${halves % 2 ? '½' : ''}`;
}

/** Said in courses, its height; said as a length, its courses. */
function ownHeight(line: ReadLine, work: Work, env: Env): string | undefined {
  const figure = heightFigure(line, work);
  return figure && showTerm(figure.term, env);
}

/** Of the work itself; nothing where it is not known. */
export function heightFigure(line: ReadLine, work: Work): Figure | undefined {
  const key = line.values.courses ? 'height' : 'courses';
  const figure = work.figures.find((f) => f.key === key);
  return figure?.term.gaps.length === 0 ? figure : undefined;
}

function pierHeight(
  line: ReadLine,
  parent: ReadLine,
  out: SettingOut | undefined,
  env: Env,
): string | undefined {
  const pier = out?.spec.piers.find((p) => p.name === wordOf(parent.values.name));
  if (!out || !pier || parent.kind.key !== 'pier') return undefined;
  if (!line.values.courses) return `${pier.courses}\u00a0courses`;
  return showTerm(lengthShown(env, 'height', pier.courses * out.gauge), env);
}
