/**
 * Measures still to be taken that the work can be laid without, and is wrong without: a damp course of `?`
 * courses, an opening whose sill is `?`. The rest stands, and every total it feeds knows.
 */

import type { ReadLine } from '../../../grammar/read/values';
import { later, phrase, spoken } from '../../../shared/phrase';
import { kindSaid } from '../kinds-said';
import { BlockFacts } from '../resolve/env';
import type { Gap } from '../working/term';

/** Lines of the work itself, and of the openings and piers in it, by what they are called in a sentence. */
const OWN: ReadonlyMap<string, string> = new Map([
  ['dpc', later`the damp course`],
  ['top', later`a step of the top`],
  ['ground', later`a step of the ground`],
  ['band', later`a band`],
  ['plinth', later`the plinth`],
  ['coping', later`the coping`],
  ['bond', later`the number of the bond`],
]);
const INNER: ReadonlyMap<string, string> = new Map([
  ['from', later`the start`],
  ['width', later`the width`],
  ['sill', later`the sill`],
  ['height', later`the height`],
  ['size', later`the size`],
  ['head', later`the rise`],
  ['lintel', later`the lintel`],
  ['bearing', later`the bearing`],
]);

export function unsaidIn(facts: BlockFacts): Gap[] {
  const own = gapsIn(facts, OWN, facts.name);
  const inner = facts.heading.body.filter((line) => line.kind.body);
  return [...own, ...inner.flatMap((line) => unsaidInside(facts, line))];
}

function unsaidInside({ block, env }: BlockFacts, line: ReadLine): Gap[] {
  const facts = new BlockFacts(block, line, env);
  const name = phrase`the ${kindSaid(line.kind.key)} ${facts.name}`;
  const gaps = gapsIn(facts, INNER, name);
  if (line.kind.key !== 'pier' || facts.line('size')) return gaps;
  return [...gaps, { what: phrase`the size of ${name} is not known`, origin: facts.origin }];
}

function gapsIn(facts: BlockFacts, lines: ReadonlyMap<string, string>, name: string): Gap[] {
  return facts.heading.body.flatMap((line) => {
    const called = lines.get(line.kind.key);
    const unknown = Object.values(line.values).find((value) => value?.kind === 'unknown');
    if (!called || !unknown) return [];
    const origin = { block: facts.block, span: unknown.span };
    return [{ what: phrase`${spoken(called)} of ${name} is still to be measured`, origin }];
  });
}
