/** What leads out of a text. */
import type { DocumentLink } from 'vscode-languageserver';
import type { Link } from '../../engine/ide/links';
import { range } from './places';

/** Where a file lies is found when a reader goes there. */
export function documentLink({ span, tip, to }: Link, uri: string): DocumentLink {
  const link = { range: range(span), tooltip: tip };
  if ('address' in to) return { ...link, target: to.address };
  return { ...link, data: { uri, ...to } };
}
