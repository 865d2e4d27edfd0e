/** Why something has no other name, for the reader. */

import type { Slot } from '../../../grammar/lines/slots';
import { phrase } from '../../../shared/phrase';
import type { Span } from '../../../shared/span';
import { kindSaid } from '../kinds-said';
import type { SourceBlock, SourceFile } from '../workspace/source';
import { type Named, shortName } from './names';
import { onComment, onKey, type Spot, valueAt } from './spot';

export function noName(name: string): string {
  if (!name.trim()) return phrase`A thing has a name: write one.`;
  return phrase`“${name}” is no name. A name is one word that begins with a letter: letters, digits and hyphens, such as north-2.`;
}

export function ships({ kind, name }: Named, file: SourceFile): string {
  return phrase`The ${kindSaid(kind)} ${name} stands in ${shortName(file)}, a library that ships with the tool, and keeps its name. Give a ${kindSaid(kind)} of your own another name, and use that.`;
}

export function whyNot(spot: Spot | undefined): string {
  if (!spot?.syntax || onComment(spot)) return phrase`Nothing here has a name.`;
  if (!spot.read)
    return phrase`This line cannot be read, so nothing in it can be renamed. Mend it first.`;
  if (onKey(spot)) {
    return ofNotation(spot.syntax.key!.text);
  }
  const said = valueAt(spot);
  return said
    ? whyNotValue(said.slot, 'text' in said.value ? said.value.text : '')
    : phrase`Nothing here has a name.`;
}

function whyNotValue(slot: Slot, text: string): string {
  switch (slot.slot) {
    case 'name':
      return phrase`Nothing is called “${text}” in this file or those it uses, so there is nothing to rename.`;
    case 'text':
      if (slot.key === 'file')
        return phrase`This names a file. Give the file another name among the files of the folder: the lines that use it are mended then.`;
      return phrase`A text is no name: write it anew where it stands.`;
    case 'word':
    case 'choice':
    case 'code':
      return ofNotation(text);
    default:
      return phrase`This is an amount and has no name.`;
  }
}

function ofNotation(word: string): string {
  return phrase`“${word}” is a word of the notation and stays as it is. Names that you gave yourself can be changed.`;
}

export function takenBy({ kind, name }: Named, block: SourceBlock, span: Span): string {
  const line = block.firstLine + span.line + 1;
  return phrase`“${name}” is taken: ${shortName(block.file)} has a ${kindSaid(kind)} of that name in line ${line}. Choose another name.`;
}

/** `line`: counted from 1. */
export function readOtherwise(name: string, file: SourceFile, line: number): string {
  return phrase`“${name}” cannot be a name in line ${line} of ${shortName(file)}: it would be read as something else there. Choose another name.`;
}
