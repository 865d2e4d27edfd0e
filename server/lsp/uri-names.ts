/** Files that are on no disk: called by their addresses (RFC 3986), each written in one way only. */
import type { Names } from './surroundings';

export interface Address {
  readonly scheme: string;
  readonly authority: string;
  /** The parts of its path, as they read. */
  readonly parts: readonly string[];
  /** With its question mark, as it is written. */
  readonly query: string;
}

const SHAPE = /^([a-z][a-z\d+.-]*):\/\/([^/?#]*)(\/[^?#]*)?(\?[^#]*)?(?:#.*)?$/i;
/** Without an authority: `untitled:/home/wall.perp`. */
const SHORT = /^([a-z][a-z\d+.-]*):()(\/[^?#]*)(\?[^#]*)?(?:#.*)?$/i;

/** Nothing for an address without a path in folders, such as `untitled:Untitled-1`, or one that is malformed. */
export function addressOf(uri: string): Address | undefined {
  const found = SHAPE.exec(uri) ?? SHORT.exec(uri);
  if (!found) return undefined;
  try {
    const parts = (found[3] ?? '/').slice(1).split('/').map(decodeURIComponent);
    // A slash or a zero within a name would mean another file than the one that is seen.
    if (parts.some((part) => /[/\0]/.test(part))) return undefined;
    const authority = found[2] ?? '';
    return { scheme: found[1]!.toLowerCase(), authority, parts, query: found[4] ?? '' };
  } catch {
    return undefined;
  }
}

export function written({ scheme, authority, parts, query }: Address): string {
  return `${scheme}://${authority}/${parts.map(encodeURIComponent).join('/')}${query}`;
}

/** Without the slash at its end that a folder may have. */
function trimmed(parts: readonly string[]): readonly string[] {
  return parts.at(-1) === '' ? parts.slice(0, -1) : parts;
}

/** The parts of the way from a folder to what stands in it. */
export function wayBetween(folder: Address, file: Address): readonly string[] | undefined {
  if (folder.scheme !== file.scheme || folder.authority !== file.authority) return undefined;
  return wayDown(folder, file);
}

/** The same by their paths alone: a text that is not saved yet has another scheme than its folder. */
export function wayDown(folder: Address, file: Address): readonly string[] | undefined {
  const above = trimmed(folder.parts);
  const inside = above.every((part, i) => part === file.parts[i]);
  return inside ? file.parts.slice(above.length) : undefined;
}

/** As `to` is read from a file: a path of its parts, up by `..`. Nothing where that leads above the top. */
export function beside(from: Address, to: string): Address | undefined {
  if (to.includes('\0')) return undefined;
  const parts = to.startsWith('/') ? [] : from.parts.slice(0, -1);
  for (const part of to.split('/')) {
    if (part === '..' && parts.pop() === undefined) return undefined;
    if (part !== '..' && part !== '.' && part !== '') parts.push(part);
  }
  return { ...from, parts };
}

export function folderOf(address: Address): Address {
  return { ...address, parts: address.parts.slice(0, -1) };
}

export const URI_NAMES: Names = {
  nameOf(uri) {
    const address = addressOf(uri);
    return address ? written(address) : uri;
  },
  uriOf: (name) => name,
  hasPlace: (name) => addressOf(name) !== undefined,
  wayTo(folder, file) {
    const [from, to] = [addressOf(folder), addressOf(file)];
    return from && to && wayBetween(from, to);
  },
};

/** How a file is named from another, both by their addresses: `../firm.perp`. Nothing where no way leads there. */
export function wayFrom(fromUri: string, toUri: string): string | undefined {
  const [from, to] = [addressOf(fromUri), addressOf(toUri)];
  if (!from || !to || from.scheme !== to.scheme || from.authority !== to.authority)
    return undefined;
  const [start, end] = [from.parts.slice(0, -1), to.parts];
  let shared = 0;
  while (shared < start.length && shared < end.length - 1 && start[shared] === end[shared])
    shared += 1;
  return [...start.slice(shared).map(() => '..'), ...end.slice(shared)].join('/');
}
