/** A job that takes a known volume of a mix: a strip of it, with a wall on top that takes another. */
import { allFigures } from '../../../server/engine/views/job-view';
import { showTerm } from '../../../server/engine/views/show';
import type { Term } from '../../../server/engine/working/term';
import type { Job } from '../../../server/engine/workspace/job';
import { jobOf } from '../world';

/** So many litres of the mix `trial`, and what is lost of it. `lines` are those of the mix; `more` other blocks. */
export function trial(litres: number, lines: string, more = '', use = 'uk', lost = '0%'): Job {
  const mix = `mix trial\n  waste ${lost}\n${indented(lines)}`;
  const other =
    'mix other\n  parts filler 1\n  joint 10 mm\n\nmaterial filler\n  loose 1000 kg/m3\n\n';
  const wall = `${other}wall w\n  mix other\n  length 1000 mm\n  height 2 courses\n  right butted\n  footing 1000 x ${litres} mm trial\n`;
  return jobOf(`perpend 1\nuse ${use}\n\n${more}\n${mix}\n${wall}`);
}

export function indented(lines: string): string {
  return lines
    .trim()
    .split('\n')
    .map((line) => `  ${line.trim()}\n`)
    .join('');
}

export function termOf(job: Job, key: string): Term {
  const found = allFigures(job).find((f) => f.key === key);
  if (!found) throw new Error(`there is no figure ${key}`);
  return found.term;
}

export function amountOf(job: Job, key: string): number {
  return termOf(job, key).value.toNumber();
}

export function textOf(job: Job, key: string): string {
  return showTerm(termOf(job, key), job.env).replaceAll('\u00a0', ' ');
}
