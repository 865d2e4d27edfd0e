/** The cut list at a terminal: for each piece of work what is cut, in which courses, where, and out of what. */

import { phrase } from '../../../shared/phrase';
import { cutRow } from '../../engine/brickwork/cuts/rows';
import type { CutPart } from '../../engine/brickwork/cuts/sheet';
import { cuttingsText } from '../../engine/brickwork/cuts/text';
import { lengthText } from '../../engine/brickwork/lengths';
import type { Work } from '../../engine/brickwork/work';
import type { Env } from '../../engine/resolve/env';
import { type Row, table } from './table';

export function cutsReport(work: Work, env: Env): string {
  const parts = work.facts.cuts?.() ?? [];
  const name = work.name || phrase`the ${work.kind} without a name`;
  if (!parts.length) return phrase`${name}: nothing is cut.`;
  return parts.map((part) => partText(name, part, env)).join('\n\n');
}

function partText(name: string, part: CutPart, env: Env): string {
  const { needed, alike, onEdge } = part;
  const each = alike > 1 ? phrase`, each of ${alike} alike` : '';
  const head = `${name}, ${uncapped(part.label)} (${part.brick})${each}`;
  const rows = part.places.map((place) => cutRow(place, env));
  const heads: Row = [
    phrase`courses`,
    phrase`piece`,
    phrase`each`,
    phrase`in all`,
    phrase`from the left`,
  ];
  const lines = rows.length
    ? table([heads, ...rows], ['left', 'left', 'right', 'right', 'left'])
    : [];
  const cut = cuttingsText(needed, env).map((line) => `  ${line}`);
  const edge = onEdge ? [phrase`  ${onEdge} of these bricks cut on edge`] : [];
  const left = needed.bats.flatMap(({ count, length }) =>
    count ? [phrase`  ${count} bats of ${lengthText(env, length)} at hand are left`] : [],
  );
  return [head, ...lines, ...cut, ...edge, ...left].join('\n');
}

/** Within a sentence; names of bricks in it stay as they are written. */
function uncapped(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}
