/** A job as a tree of its parts. */
import type { FileParams } from '../../../shared/protocol';
import {
  type JobParts,
  PART_TOLD,
  PARTS,
  type Part,
  type PartTold,
  type PartToldParams,
} from '../../../shared/protocol/parts';
import { type JobPart, partsOf, partTold } from '../../engine/ide/parts';
import type { Parts } from '../parts';
import type { UriOf } from '../to-proto/places';
import { onFile } from './asked';

export function registerParts(parts: Parts): void {
  const { session } = parts;
  const uriOf: UriOf = (name) => session().uriOf(name);
  onFile<FileParams, JobParts>(parts, PARTS, (_, file) => {
    const found = partsOf(session().job(file));
    return found && { ...found, parts: found.parts.map((part) => toPart(part, uriOf)) };
  });
  onFile<PartToldParams, PartTold>(parts, PART_TOLD, ({ figure }, file) =>
    partTold(session().job(file), figure),
  );
}

function toPart(part: JobPart, uriOf: UriOf): Part {
  const { at, children, ...rest } = part;
  return {
    ...rest,
    at: at && { uri: uriOf(at.file), line: at.line, start: at.start, end: at.end },
    children: children.map((child) => toPart(child, uriOf)),
  };
}
