/** What is promised of a repair, in sentences. */

import { exact } from '../../../../shared/exact';
import { phrase } from '../../../../shared/phrase';
import { showNumber } from '../../../../shared/show';
import { type Env, factsNamed, type LineFacts } from '../../resolve/env';
import { showTerm } from '../../views/show';
import { fact } from '../../working/term';
import { inUnit, unitNames } from '../lengths';
import { amountSaid, lengthSaid, type Said, saidFrom, sizeSaid } from '../said';
import type { Site } from './site';

export function rebuiltSaid(line: LineFacts, site: Site): Said[] {
  const what = partSaid(line, site);
  if (!what) return [];
  const reused = site.facts.line('salvage') ? phrase`, reusing the bricks that clean up` : '';
  const match = site.facts.line('match');
  return [
    ...saidFrom([phrase`Take down ${what}, and build it again${reused}.`], line),
    ...saidFrom(match ? [phrase`New bricks are ${site.match.title}.`] : [], match),
  ];
}

function partSaid(line: LineFacts, site: Site): string {
  const metres = (key: string) => amountSaid(line, key, (mm) => lengthSaid(mm, site.env));
  const courses = coursesSaid(amountSaid(line, 'courses', whole));
  const bricks = amountSaid(line, 'bricks', whole);
  if (bricks) return bricksOf(bricks === '1' ? phrase`a brick` : phrase`${bricks} bricks`, site);
  const length = metres('length');
  const height = metres('height');
  if (site.pier) return topSaid(courses, height || length);
  const high = courses ? phrase`${courses} high` : height && phrase`${height} high`;
  const size = [length && phrase`${length} long`, high].filter(Boolean).join(phrase` and `);
  return size && phrase`a part of the wall ${size}`;
}

function bricksOf(bricks: string, { pier }: Site): string {
  return pier ? phrase`${bricks} of the pier` : phrase`${bricks} of the wall`;
}

function topSaid(courses: string, height: string): string {
  if (courses) return phrase`the topmost ${courses} of the pier`;
  return height && phrase`the topmost ${height} of the pier`;
}

function coursesSaid(count: string): string {
  if (!count) return '';
  return count === '1' ? phrase`1 course` : phrase`${count} courses`;
}

function whole(n: number): string {
  return showNumber(exact(n), 0);
}

export function recopeSaid(line: LineFacts, env: Env): string[] {
  const coping = amountSaid(line, 'length', (mm) => lengthSaid(mm, env));
  return coping ? [phrase`Take off ${coping} of the coping and lay it again, bricks on edge.`] : [];
}

export function cutOutSaid(line: LineFacts): string[] {
  const count = amountSaid(line, 'bricks', whole);
  if (!count) return [];
  return [
    phrase`Cut out and replace ${count === '1' ? phrase`1 damaged brick` : phrase`${count} single damaged bricks`}.`,
  ];
}

export function repointSaid(line: LineFacts, env: Env): string[] {
  const face = amountSaid(line, 'area', (m2) => areaSaid(m2, env));
  const joints = amountSaid(line, 'joints', (mm) => lengthSaid(mm, env));
  const depth = line.number('depth');
  const deep = depth ? phrase` ${sizeSaid(depth, env)} deep` : '';
  const open = [line.values.area, line.values.joints].some((value) => value?.kind === 'unknown');
  const known = face ? phrase`over ${face} of the face` : joints && phrase`${joints} of them`;
  const where = known || (open ? phrase`as many as are found when they can be seen` : '');
  return where ? [phrase`Rake out perished joints${deep} and repoint them, ${where}.`] : [];
}

function areaSaid(m2: number, env: Env): string {
  const area = inUnit(fact(phrase`area`, exact(m2), 'm2'), unitNames(env).area);
  return showTerm(area, env).replaceAll('\u00a0', ' ');
}

export function rebedSaid(line: LineFacts, site: Site): string[] {
  const length = amountSaid(line, 'length', (mm) => lengthSaid(mm, site.env));
  const pieces = amountSaid(line, 'pieces', whole);
  if (length) return [phrase`Lift ${length} of the coping, clean it and bed it again.`];
  if (!pieces) return [];
  if (pieces === '1')
    return [
      phrase`Lift ${site.pier ? phrase`the cap` : phrase`a length of the coping`}, clean it and bed it again.`,
    ];
  const what = site.pier ? phrase`caps` : phrase`pieces of the coping`;
  return [phrase`Lift ${pieces} ${what}, clean them and bed them again.`];
}

export function replaceSaid(line: LineFacts, { env }: Site): string[] {
  const pieces = amountSaid(line, 'pieces', whole);
  const name = line.word('material');
  const title = factsNamed(env, 'material', name)?.title ?? name;
  if (!pieces) return [];
  const old = pieces === '1' ? phrase`the old piece` : phrase`the old pieces`;
  return [phrase`Take off ${old} and bed ${pieces} new: ${title}.`];
}

export function toothInSaid(line: LineFacts): string[] {
  const courses = coursesSaid(amountSaid(line, 'courses', whole));
  return courses
    ? [
        phrase`Cut indents in the standing work for every second of ${courses}, and tooth the new work into them.`,
      ]
    : [];
}

export function stitchSaid(line: LineFacts, rule: LineFacts, env: Env): string[] {
  const crack = amountSaid(line, 'length', (mm) => lengthSaid(mm, env));
  const [long, apart] = [rule.number('length'), rule.number('apart')];
  if (!crack || !long || !apart) return [];
  return [
    phrase`Stitch ${crack} of crack with bars ${lengthSaid(long, env)} long, set in raked bed joints ${sizeSaid(apart, env)} apart.`,
  ];
}

export function makeGoodSaid(line: LineFacts, env: Env): string[] {
  const area = amountSaid(line, 'area', (m2) => areaSaid(m2, env));
  const what = line.word('what').replace(/[.\s]+$/, '');
  return area ? [phrase`Make good ${area}: ${what}.`] : [];
}
