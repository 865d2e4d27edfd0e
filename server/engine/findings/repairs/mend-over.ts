/** More mended than there is of what it is in: coping, indents, a face to point, bricks to cut out, a crack to stitch. */

import { phrase } from '../../../../shared/phrase';
import { lengthText } from '../../brickwork/lengths';
import { measuredWithin } from '../../brickwork/repair/as-it-stands';
import type { Site } from '../../brickwork/repair/site';
import type { LineFacts } from '../../resolve/env';
import { coursesText, coursesTold } from '../courses';
import { type Remark, type RemarkWay, rewrite, takenOut } from '../remark';
import { areaText, bricksBuilt, piecesOn, type Standing, saidIn, standingOf } from './standing';

/** Lines that draw on the same: together they are no more than stands. */
interface Shared {
  readonly lines: readonly LineFacts[];
  readonly key: string;
  readonly most: number;
  /** Gone already. */
  readonly taken?: number;
  /** Each line by itself is held against what stands. */
  readonly apart?: boolean;
  /** More than this over it is not how it was measured. */
  readonly near?: number;
  /** So much of it, for a sentence. */
  readonly text: (amount: number) => string;
  /** So much of it as a line of the job says it, where that is not the same. */
  readonly written?: (amount: number) => string;
  /** “which is 2240 mm long”. */
  readonly stands: string;
}

export function mendOver(site: Site): Remark[] {
  if (!site.called) return [];
  const standing = standingOf(site);
  return [
    ...onTop(site),
    ...indents(site),
    ...pieces(site),
    ...(standing ? inFaces(site, standing) : []),
  ].flatMap((shared) => overIn(shared, site));
}

/** Coping and what lies on top is no longer than the wall. */
function onTop({ facts, size: { length }, env }: Site): Shared[] {
  if (!length) return [];
  const lines = ['recope', 'rebed'].flatMap((key) => facts.lines(key));
  const text = (mm: number) => lengthText(env, mm);
  return [
    {
      lines,
      key: 'length',
      most: length,
      near: measuredWithin(env),
      text,
      stands: phrase`${text(length)} long`,
    },
  ];
}

/** Where it steps, its height is that of its left end alone, and nothing is held against it. */
function indents({ facts, size: { courses }, stands }: Site): Shared[] {
  if (!courses || stands.line('top') || stands.line('ground')) return [];
  const text = coursesTold;
  const lines = facts.lines('tooth-in');
  return [
    {
      lines,
      key: 'courses',
      most: courses,
      apart: true,
      text,
      written: coursesText,
      stands: phrase`${text(courses)} high`,
    },
  ];
}

/** Those of one material lie on one thing. */
function pieces(site: Site): Shared[] {
  const lines = ['replace', 'rebed'].flatMap((key) => site.facts.lines(key));
  const materials = new Set(lines.map((line) => line.word('material')));
  return [...materials].flatMap((material) => {
    const group = lines.filter((line) => line.word('material') === material);
    const most = piecesOn(group[0]!, site);
    if (!most) return [];
    const text = (some: number) => (some === 1 ? phrase`1 piece` : phrase`${some} pieces`);
    const written = (some: number) => `${some} ${some === 1 ? 'piece' : 'pieces'}`;
    return [
      {
        lines: group,
        key: 'pieces',
        most,
        text,
        written,
        stands: phrase`covered by ${text(most)} of that size`,
      },
    ];
  });
}

function inFaces(site: Site, standing: Standing): Shared[] {
  const { facts, env } = site;
  const { length, high, faces, bricks, joints } = standing;
  const area = (m2: number) => areaText(env, m2);
  const mm = (of: number) => lengthText(env, of);
  const seen = phrase`${area(faces)} to look at, both faces, its ends and its top`;
  const some = (count: number) => phrase`${count} bricks`;
  const written = (count: number) => `${count} bricks`;
  const across = length + high;
  return [
    { lines: facts.lines('repoint'), key: 'area', most: faces, text: area, stands: seen },
    { lines: facts.lines('make-good'), key: 'area', most: faces, text: area, stands: seen },
    {
      lines: facts.lines('repoint'),
      key: 'joints',
      most: joints,
      text: mm,
      stands: phrase`jointed for at most ${mm(joints)}, both faces together`,
    },
    {
      lines: facts.lines('stitch'),
      key: 'length',
      most: across,
      apart: true,
      text: mm,
      stands: phrase`${mm(across)} along its length and up its height`,
    },
    {
      lines: facts.lines('rebuild'),
      key: 'bricks',
      most: bricks,
      text: some,
      written,
      stands: phrase`no more than ${some(bricks)}`,
    },
    {
      lines: facts.lines('cut-out'),
      key: 'bricks',
      most: bricks,
      taken: bricksBuilt(site),
      text: some,
      written,
      stands: phrase`no more than ${some(bricks)}`,
    },
  ];
}

function overIn(shared: Shared, site: Site): Remark[] {
  const { lines, key, most, near = 0, apart } = shared;
  let before = shared.taken ?? 0;
  return lines.flatMap((line) => {
    const said = saidIn(line, key);
    if (said === undefined) return [];
    const all = before + said;
    if (!apart) before = all;
    return all > most + near ? [over(line, shared, all, said, site)] : [];
  });
}

function over(line: LineFacts, shared: Shared, all: number, said: number, site: Site): Remark {
  const { key, text, stands } = shared;
  const others = all > said + 1e-9 ? phrase`, with what other lines take` : '';
  const message = phrase`${text(all)} are mended of ${site.called}${others}, which is ${stands}. It is counted as it is written. Write what is done.`;
  const origin = line.at(key);
  const ways = [wayOut(line, shared, shared.most - (all - said))];
  return { code: 'mend-over', severity: 'warning', origin, message, ways };
}

function wayOut(
  line: LineFacts,
  { key, text, written = text, most }: Shared,
  left: number,
): RemarkWay {
  if (left > 0) {
    const title =
      left === most ? phrase`All of it: ${text(left)}` : phrase`What is left: ${text(left)}`;
    return { title, edits: [rewrite(line.at(key), written(left))] };
  }
  return takenOut(line);
}
