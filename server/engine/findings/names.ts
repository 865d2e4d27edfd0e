/** A name that no file gives, or that two places give. */

import { listed } from '../../../grammar/read/numbers';
import { nearest } from '../../../shared/nearest';
import { phrase } from '../../../shared/phrase';
import type { Origin } from '../working/term';
import type { SourceBlock } from '../workspace/source';
import { headOrigin, type Remark, rewrite } from './remark';

/** Longer words are no slip of the pen, and comparing them letter by letter would take for ever. */
const LONGEST = 64;

/** As many names as are compared with each that is not known. */
const MOST_COMPARED = 400;

/** The name that was probably meant. */
export function meantBy(name: string, known: readonly string[]): string | undefined {
  if (name.length > LONGEST) return undefined;
  const some = known.slice(0, MOST_COMPARED).filter((each) => each.length <= LONGEST);
  return nearest(name, some);
}

/** ` There are a, b and c.`, after a sentence that says what there is not. */
export function thereAre(count: number, names: string): string {
  return count === 1 ? phrase` There is ${names}.` : phrase` There are ${names}.`;
}

export function nameUnknown(
  origin: Origin,
  kind: string,
  name: string,
  known: readonly string[],
): Remark {
  const meant = meantBy(name, known);
  const some = known.length
    ? thereAre(
        known.length,
        `${listed(known.slice(0, 8), 'and')}${known.length > 8 ? phrase` and others` : ''}`,
      )
    : '';
  const hint = meant ? phrase` Did you mean “${meant}”?` : some;
  const message = phrase`No ${kind} is called “${name}” in this file or those it uses.${hint} What hangs on it is left out of the totals.`;
  const ways = meant
    ? [{ title: phrase`Write ${meant}`, edits: [rewrite(origin, meant)], preferred: true }]
    : [];
  return { code: 'name-unknown', severity: 'error', origin, message, ways };
}

export function nameTwice(
  block: SourceBlock,
  first: SourceBlock,
  kind: string,
  name: string,
): Remark {
  const value = block.read.heading!.values.name!;
  return {
    code: 'name-twice',
    severity: 'error',
    origin: { block, span: value.span },
    message: phrase`Two of this file are a ${kind} called “${name}”. Both are priced, but a line that names it means the first. Give one of them another name.`,
    related: [{ origin: headOrigin(first), message: phrase`The first ${kind} ${name}` }],
  };
}
