/** What the new job is told of itself, as lines of its `job` block. */
import type { Wishes } from './index';

/** By the line’s word. */
export type Told = ReadonlyMap<string, string>;

const quoted = (text: string) => `"${text.replace(/\s+/g, ' ').replace(/["\\]/g, '\\$&')}"`;

export function toldOver({ title, client, site, ref, date }: Wishes): Told {
  const lines: readonly (readonly [string, string | undefined])[] = [
    ['title', title === undefined ? undefined : quoted(title)],
    ['ref', ref === undefined ? undefined : /^[\w]+(-[\w]+)*$/.test(ref) ? ref : quoted(ref)],
    ['client', client === undefined ? undefined : quoted(client)],
    ['site', site === undefined ? undefined : quoted(site)],
    ['date', date],
  ];
  return new Map(lines.filter((line): line is [string, string] => line[1] !== undefined));
}
