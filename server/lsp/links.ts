/** Places in hovers and workings as links that an editor opens at the line. */
import type { Linker } from '../engine/ide/types';
import type { UriOf } from './to-proto';

/** The client’s command that shows how a figure came about. */
const WORKING = 'perpend.working';

/** The same with a way to the whole working of a figure of this file, for a client that has a page of it. */
export function linkerIn(uri: string, uriOf: UriOf, commands: ReadonlySet<string>): Linker {
  const link = linker(uriOf);
  if (!commands.has(WORKING)) return link;
  const working = (text: string, id: string) => {
    const given = encodeURIComponent(JSON.stringify([{ uri, id }])).replace(/[()']/g, hex);
    return `[${text}](command:${WORKING}?${given})`;
  };
  return Object.assign(link, { working });
}

function hex(sign: string): string {
  return `%${sign.charCodeAt(0).toString(16)}`;
}

export function linker(uriOf: UriOf): Linker {
  return (text, place) => {
    const uri = uriOf(place.file).replace(/[()<>\s]/g, (c) => encodeURIComponent(c));
    return `[${text}](${uri}#L${place.line + 1})`;
  };
}
