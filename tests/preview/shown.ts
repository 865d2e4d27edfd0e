/** A job in memory and the preview of it, as the server would tell it. */

import { type Previewed, previewOf } from '../../server/documents/preview';
import { Kept, told } from '../../server/lsp/own/preview';
import type { PreviewParams, Shown } from '../../shared/protocol/preview';
import { type Files, inRoot, workspaceOf } from '../engine/world';

export const ROOM = { width: 180, height: 130 };

export type Wished = Partial<Omit<PreviewParams, 'uri'>>;

export class Previewing {
  private readonly kept = new Kept();
  around: Parameters<typeof previewOf>[2] = { version: '1.0' };
  private readonly workspace;
  private version = 1;

  constructor(
    text: string,
    readonly files: Files = {},
    readonly name = 'job.perp',
  ) {
    this.workspace = workspaceOf({ ...files, [name]: text });
    this.workspace.opened(inRoot(name), text);
  }

  /** The whole text anew, as an edit of it, or of a file beside it. */
  edit(text: string, name = this.name): void {
    this.version += 1;
    const file = inRoot(name);
    if (name !== this.name) this.workspace.opened(file, text);
    else this.workspace.replaced(file, text);
  }

  get job() {
    return this.workspace.job(inRoot(this.name))!;
  }

  previewed(wished: Wished = {}): Previewed {
    return previewOf(this.job, { line: 0, show: 'front', room: ROOM, ...wished }, this.around);
  }

  shown(wished: Wished = {}): Shown {
    const name = inRoot(this.name);
    const file = { uri: `file://${name}`, name, version: this.version, eol: '\n' };
    return told(this.previewed(wished), file, wished.have, this.kept, (of) => `file://${of}`);
  }
}

/** The number of the first line that this matches. */
export function lineOf(text: string, pattern: RegExp): number {
  const line = text.split('\n').findIndex((each) => pattern.test(each));
  if (line < 0) throw new Error(`no line matches ${pattern}`);
  return line;
}

export const WALL = `perpend 1
use uk

job "A wall for looking at"
  ref     J-7
  client  "T. Alder"
  date    2026-03-02

wall north "North wall"
  brick     standard
  bond      flemish
  thick     1 brick
  length    5.39 m
  height    16 courses
  dpc       engineering 2 courses
  coping    brick-on-edge

  opening gate "Garden gate"
    from    left 1347.5 mm
    width   1010 mm

  opening hatch "Log hatch"
    from    right 1010 mm
    width   685 mm
    sill    4 courses
    height  6 courses
    head    soldier

pier lone "Lone pier"
  size      2 x 2 bricks
  height    12 courses
  cap       500 x 500 mm
`;
