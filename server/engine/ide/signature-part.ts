/** What is told of one part of a line: what may stand there, and an example. */

import type { LineKind, Slot } from '../../../grammar/lines';
import { describe } from '../../../grammar/read/describe';
import { phrase } from '../../../shared/phrase';
import { cover } from '../../../shared/span';
import type { Job } from '../workspace/job';
import type { SourceBlock } from '../workspace/source';
import { wordsFor } from './complete-words';
import { exampleOf } from './example';
import { code, plain } from './markdown';
import { namedThings } from './names';
import type { Part } from './signature-forms';

/** So many names are told; the completion has them all. */
const MOST_NAMES = 6;

export interface Asked {
  readonly kind: LineKind;
  readonly block: SourceBlock | undefined;
  readonly job: Job;
}

/** Markdown. */
export function partText({ slot, text }: Part, asked: Asked): string {
  if (slot === 'on')
    return phrase`More of the same may follow, such as ${code(asked.kind.example)}`;
  const word = slot.slot === 'literal' ? text : onlyWord(slot);
  if (word) return phrase`The word ${code(word)}, as it stands`;
  const what = capital(plain(describe(slot)));
  const names = here(slot, asked);
  if (names.length) return withExample(what, names.map(code).join(', '));
  const example = inExample(slot, asked.kind);
  const fits = example && (slot.slot !== 'choice' || slot.of.includes(example));
  return fits && !what.includes(plain(example)) ? withExample(what, code(example)) : what;
}

function onlyWord(slot: Slot): string | undefined {
  return slot.slot === 'choice' && slot.of.length === 1 ? slot.of[0] : undefined;
}

/** Where the slot in words gives an example of its own already, the line’s stands behind it. */
function withExample(what: string, example: string): string {
  return /\d/.test(what) ? phrase`${what}. Here: ${example}` : phrase`${what}, such as ${example}`;
}

/** Names that the job knows for it, or words that the slot is known to take. */
function here(slot: Slot, { block, job }: Asked): string[] {
  if (slot.slot === 'word')
    return wordsFor(slot.what, block, job)
      .slice(0, MOST_NAMES)
      .map((word) => word.label);
  if (slot.slot !== 'name') return [];
  const names = namedThings(job, slot.of, block).map((thing) => thing.name);
  return [...new Set(names)].slice(0, MOST_NAMES);
}

/** What stands there in the line’s own example, where that is written in this way. */
function inExample(slot: Slot, kind: LineKind): string | undefined {
  const key = 'key' in slot ? slot.key : undefined;
  const said = exampleOf(kind).said.filter((s) => 'key' in s.slot && s.slot.key === key);
  const [first, second] = said.map((s) => s.value.span);
  if (!first) return undefined;
  const whole = slot.slot === 'counted' ? cover(first, second ?? first) : first;
  return kind.example.slice(whole.start, whole.end);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
