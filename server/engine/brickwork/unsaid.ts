/**
 * Measures still to be taken that the work can be laid without, and is wrong without: a damp course of `?`
 * courses, an opening whose sill is `?`. The rest stands, and every total it feeds knows.
 */
import type { ReadLine } from '../../../grammar/read/values';
import { BlockFacts } from '../resolve/env';
import type { Gap } from '../working/term';

/** Lines of the work itself, and of the openings and piers in it, by what they are called in a sentence. */
const OWN: ReadonlyMap<string, string> = new Map([
  ['dpc', 'the damp course'],
  ['top', 'a step of the top'],
  ['ground', 'a step of the ground'],
  ['band', 'a band'],
  ['plinth', 'the plinth'],
  ['coping', 'the coping'],
  ['bond', 'the number of the bond'],
]);
const INNER: ReadonlyMap<string, string> = new Map([
  ['from', 'the start'],
  ['width', 'the width'],
  ['sill', 'the sill'],
  ['height', 'the height'],
  ['size', 'the size'],
  ['head', 'the rise'],
  ['lintel', 'the lintel'],
  ['bearing', 'the bearing'],
]);

export function unsaidIn(facts: BlockFacts): Gap[] {
  const own = gapsIn(facts, OWN, facts.name);
  const inner = facts.heading.body.filter((line) => line.kind.body);
  return [...own, ...inner.flatMap((line) => unsaidInside(facts, line))];
}

function unsaidInside({ block, env }: BlockFacts, line: ReadLine): Gap[] {
  const facts = new BlockFacts(block, line, env);
  const name = `the ${line.kind.key} ${facts.name}`;
  const gaps = gapsIn(facts, INNER, name);
  if (line.kind.key !== 'pier' || facts.line('size')) return gaps;
  return [...gaps, { what: `the size of ${name} is not known`, origin: facts.origin }];
}

function gapsIn(facts: BlockFacts, lines: ReadonlyMap<string, string>, name: string): Gap[] {
  return facts.heading.body.flatMap((line) => {
    const called = lines.get(line.kind.key);
    const unknown = Object.values(line.values).find((value) => value?.kind === 'unknown');
    if (!called || !unknown) return [];
    const origin = { block: facts.block, span: unknown.span };
    return [{ what: `${called} of ${name} is still to be measured`, origin }];
  });
}
