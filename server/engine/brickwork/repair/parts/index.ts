/** Every kind of mending, one a line, in the order a reader wants them. */
import type { Mending, MendingOf } from '../mending';
import type { Site } from '../site';
import { cutOut } from './cut-out';
import { makeGood } from './make-good';
import { rebed } from './rebed';
import { rebuild } from './rebuild';
import { recope } from './recope';
import { replace } from './replace';
import { repoint } from './repoint';
import { stitch } from './stitch';
import { toothIn } from './tooth-in';

const KINDS: readonly MendingOf[] = [
  // Off before what it lies on comes down.
  recope,
  rebuild,
  rebed,
  replace,
  cutOut,
  toothIn,
  stitch,
  repoint,
  makeGood,
];

/** What is mended, kind by kind; nothing of a kind that the repair has none of. */
export function mendingsOf(site: Site): readonly Mending[] {
  return KINDS.flatMap((kind) => kind(site) ?? []);
}
