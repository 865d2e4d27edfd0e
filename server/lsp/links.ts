/** Places in hovers and workings as links that an editor opens at the line. */
import type { Linker } from '../engine/ide/types';
import type { UriOf } from './to-proto';

export function linker(uriOf: UriOf): Linker {
  return (text, place) => {
    const uri = uriOf(place.file).replace(/[()<>\s]/g, (c) => encodeURIComponent(c));
    return `[${text}](${uri}#L${place.line + 1})`;
  };
}
