/** Mortar as it is mixed, batch by batch, and what is left of what was bought. */
import { type MortarOf, mortarIn } from '../../engine/mortar/figures';
import { showTerm, showValue } from '../../engine/views/show';
import type { Job } from '../../engine/workspace/job';
import { rowOf, tableOf, tableUnder, termCell } from '../cells';
import { framed } from '../framed';
import type { Letterhead, Paper, Part, Row } from '../paper/model';
import { mixParts } from '../site/mixes';
import type { MortarWords } from '../words';

export function mortarPage(job: Job, letterhead: Letterhead | undefined, version: string): Paper {
  return framed({
    job,
    letterhead,
    version,
    kind: 'mortar',
    title: (words) => words.pages.mortar.title,
    parts(words) {
      const { mortar } = words.pages;
      const parts = [...mixParts(job, words.site), ...leftOver(job, mortar)];
      return parts.length ? parts : [{ part: 'words', text: mortar.nothing }];
    },
  });
}

/** What is left in the last packs, and what the mixes made of it would lay. */
function leftOver(job: Job, words: MortarWords): Part[] {
  const packs = job.price.purchases.flatMap(({ title, left }) =>
    left && !left.gaps.length ? [rowOf(title, termCell(left, job), '')] : [],
  );
  if (!packs.length) return [];
  const mixes = mortarIn(job.price, job.env).flatMap((mortar) => madeOfIt(mortar, job, words));
  const heads = [words.material, words.leftOver, ''];
  return tableUnder(words.left, tableOf('left', heads, [...packs, ...mixes], [1]));
}

function madeOfIt({ mix, left }: MortarOf, job: Job, words: MortarWords): Row[] {
  if (!left || left.mortar.gaps.length) return [];
  const { bricks, pointing, joints } = left;
  const long = joints ? showValue(joints.value.toDecimalPlaces(0), joints.unit, job.env) : '';
  const ways = [
    ...(bricks ? [words.lays(showTerm(bricks, job.env))] : []),
    ...(pointing ? [words.points(showTerm(pointing, job.env), long)] : []),
  ];
  return [rowOf(words.made(mix.title), termCell(left.mortar, job), words.either(ways))];
}
