/** What stands over headings. */
import type { CodeLens, Command } from 'vscode-languageserver';
import type { Lens } from '../../engine/ide/lenses';
import { range } from './places';

/** `version`: of the text in which it stands there. */
export function codeLens({ line, kind }: Lens, uri: string, version: number): CodeLens {
  return { range: range({ line, start: 0, end: 0 }), data: { uri, line, kind, version } };
}

/** A text that leads nowhere. */
export function told(title: string): Command {
  return { title, command: '' };
}
