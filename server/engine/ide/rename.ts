/** Another name for a thing, in every file that means it; or a sentence that says why not. */
import type { TextEdit } from '../../../shared/finding';
import type { Span } from '../../../shared/span';
import { meantAt } from './occurrences';
import { asSaid, trouble } from './rename-tried';
import { noName, ships, whyNot } from './rename-words';
import type { WideSight, World } from './sight';
import { spotAt } from './spot';
import { libraryWith, type Spread, spreadOf } from './spread';
import type { Position } from './types';

export interface Refused {
  /** For the reader. */
  readonly refused: string;
}

export interface Renamable {
  /** Where the name stands that is renamed, in its file. */
  readonly span: Span;
  readonly placeholder: string;
}

export function isRefused<T extends object>(found: T | Refused): found is Refused {
  return 'refused' in found;
}

/** The name at a position, as it would be renamed. */
export function renamableAt(job: WideSight, at: Position): Renamable | Refused {
  const spot = spotAt(job.file, at);
  const meant = meantAt(job, at);
  if (!spot || !meant) return { refused: whyNot(spot) };
  const { span, thing } = meant;
  const library = libraryWith(job, thing);
  if (library) return { refused: ships(thing, library) };
  return { span: { ...span, line: spot.block.firstLine + span.line }, placeholder: thing.name };
}

/** Edits by the name that is meant at a position. */
export function* renamed(
  job: WideSight,
  at: Position,
  name: string,
  world: World,
): Generator<void, { readonly edits: readonly TextEdit[] } | Refused> {
  const meant = meantAt(job, at);
  const can = renamableAt(job, at);
  if (isRefused(can) || !meant) return can as Refused;
  if (name === meant.thing.name) return { edits: [] };
  if (!NAME.test(name)) return { refused: noName(name) };
  const spread = yield* spreadOf(job, meant.thing, world, [meant.thing.name, name]);
  const refused = yield* trouble(spread, name);
  if (refused) return { refused };
  return { edits: editsOf(spread, name) };
}

/** A name begins with a letter, and is one word. Whether a line takes it is tried. */
const NAME = /^\p{L}[^\s"“”„#,+:?]*$/u;

function editsOf({ thing, sites }: Spread, name: string): TextEdit[] {
  return sites.flatMap(({ occurrences }) =>
    occurrences.map(({ block, span, text }) => ({
      place: block.place(span),
      text: asSaid(text, thing, name),
    })),
  );
}
