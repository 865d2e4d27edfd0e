/** A heading under the pointer: the figures of its block, and how the main one came about. */

import type { ReadLine } from '../../../grammar/read/values';
import { phrase, spoken } from '../../../shared/phrase';
import type { WorkingView } from '../../../shared/views';
import { lengthShown } from '../brickwork/lengths';
import { wordOf } from '../resolve/book';
import { ofJobsAlike } from '../views/alike';
import { showTerm } from '../views/show';
import { workingOf } from '../views/working';
import type { Job } from '../workspace/job';
import { figuresOf } from './figures';
import { laterText } from './hover-key';
import { code, plain, workingList } from './markdown';
import type { Spot } from './spot';
import { rangeOf } from './totals';
import type { Linker } from './types';

/** A hover is read at a glance: the working goes this deep, and no longer. */
const GLANCE = { deep: 3, most: 16 };

export function hoverHeading(spot: Spot, job: Job, link: Linker): string {
  const heading = spot.read!;
  const parts = [titleText(heading)];
  if (spot.parents.length)
    return [...parts, ...innerText(spot, job), plain(spoken(heading.kind.means))].join('\n\n');
  const { figures, main } = figuresOf(spot.block, job);
  const views = figures.map((f) => workingOf(f.term, job.env));
  if (views.length) parts.push(table(views));
  if (heading.kind.key === 'job') parts.push(...rangeText(job));
  if (main) parts.push(workingList(workingOf(main.term, job.env), { ...GLANCE, link }));
  if (main && link.working) parts.push(link.working(phrase`The whole working`, main.key));
  if (!views.length) parts.push(plain(spoken(heading.kind.means)));
  return [...parts, ...laterText(heading.kind)].join('\n\n');
}

function titleText({ kind, values }: ReadLine): string {
  const name = [kind.key, wordOf(values.name)].filter(Boolean).join(' ');
  const title = wordOf(values.title);
  return title ? `**${plain(name)}** ${plain(title)}` : `**${plain(name)}**`;
}

function table(views: readonly WorkingView[]): string {
  const rows = views.map((v) => `| ${plain(v.label)} | ${shown(v)} | ${sumText(v)} |`);
  return ['| | | |', '|:--|--:|:--|', ...rows].join('\n');
}

function shown(view: WorkingView): string {
  const text = `**${plain(view.result)}**`;
  return view.missing?.length ? `${text} …` : text;
}

/** Sums that only say the value again are left out, and very long ones cut. */
function sumText(view: WorkingView): string {
  const sum = view.sum ?? '';
  if (!sum || sum.startsWith(view.result)) return '';
  return plain(`= ${sum.length > LONGEST ? `${sum.slice(0, LONGEST)}…` : sum}`);
}

const LONGEST = 60;

function rangeText(job: Job): string[] {
  const range = rangeOf(job);
  return range ? [`${ofJobsAlike(job.env)} ${plain(range)}.`] : [];
}

/** An opening or a pier of a wall: where it stands, as the setting-out has it. */
function innerText(spot: Spot, job: Job): string[] {
  const out = job.workAt(spot.block)?.facts.settingOut;
  const name = wordOf(spot.read!.values.name);
  const list = spot.read!.kind.key === 'pier' ? out?.spec.piers : out?.spec.openings;
  const found = list?.find((each) => each.name === name);
  if (!out || !found) return [];
  const text = (mm: number) => code(showTerm(lengthShown(job.env, '', mm), job.env));
  const [from, to] = [text(found.from), text(found.from + found.width)];
  const high = 'courses' in found ? phrase`, ${text(found.courses * out.gauge)} high` : '';
  return [phrase`From ${from} to ${to} of the wall${high}.`];
}
