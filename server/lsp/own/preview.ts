/** The preview: what it shows now, and of a drawing that it has already, only what has changed. */
import type { CancellationToken } from 'vscode-languageserver';
import {
  type PictureChange,
  PREVIEW,
  type PreviewParams,
  type Shown,
} from '../../../shared/protocol/preview';
import { VERSION } from '../../../shared/version';
import { isHeld, type Previewed, previewOf } from '../../documents/preview';
import { changeSince, type State } from '../../documents/preview/change';
import type { Parts } from '../parts';
import type { OpenFile } from '../session';
import { Logos } from './logos';

/** So many drawings are remembered: one for each preview that anybody keeps open. */
const MOST_KEPT = 8;
/** Room that is asked for, mm: a drawing for a screen of any size, and no larger. */
const ROOM = { least: 20, most: 4000 };

type Asked = PreviewParams & { readonly textDocument: { readonly uri: string } };

export function registerPreview(parts: Parts): void {
  const { connection, answers, session } = parts;
  const [kept, logos] = [new Kept(), new Logos(parts)];
  const shown = answers.slow((params: Asked, file) => {
    const job = session().job(file);
    if (params.have !== undefined && isHeld(job, params)) return null;
    const asking = { ...params, room: within(params.room) };
    const { asides: logoAsides, ...logo } = logos.of(job);
    const around = { version: VERSION, logoAsides, ...logo };
    return told(previewOf(job, asking, around), file, params.have, kept, session().uriOf);
  });
  connection.onRequest<Shown | null, never>(
    PREVIEW,
    (params: PreviewParams, token: CancellationToken) =>
      shown({ ...params, textDocument: params }, token),
  );
}

function within({ width, height }: PreviewParams['room']): PreviewParams['room'] {
  const clamped = (side: number) => Math.min(ROOM.most, Math.max(ROOM.least, Number(side) || 0));
  return { width: clamped(width), height: clamped(height) };
}

/** As it goes out: lines by their addresses, a drawing as what has changed of it. */
export function told(
  { lines, drawn, ...rest }: Previewed,
  { uri, name, version }: OpenFile,
  have: string | undefined,
  kept: Kept,
  uriOf: (name: string) => string,
): Shown {
  const from = lines.map(({ file, ...line }) => {
    return file === name || uriOf(file) === uri ? line : { uri: uriOf(file), ...line };
  });
  return { ...rest, version, from, ...(drawn ? { picture: kept.change(drawn, have) } : {}) };
}

/** Drawings that went out, by the names they were given. */
export class Kept {
  private readonly states = new Map<string, State>();
  private count = 0;

  change(drawn: NonNullable<Previewed['drawn']>, have: string | undefined): PictureChange {
    const { width, height, gathered, units, keys, notes } = drawn;
    const { order, parts } = gathered;
    const before = have === undefined ? undefined : this.states.get(have);
    const is = this.keep({ order, parts }, have);
    const size = { is, width, height, units, keys, notes };
    return before
      ? { ...size, since: have, ...changeSince(before, { order, parts }) }
      : { ...size, order, parts };
  }

  /** The state before stays for a while: an answer may not have arrived. */
  private keep(state: State, have: string | undefined): string {
    this.count += 1;
    const is = `${this.count}`;
    const before = have === undefined ? undefined : this.states.get(have);
    if (before && have !== undefined) {
      this.states.delete(have);
      this.states.set(have, before);
    }
    this.states.set(is, state);
    for (const old of this.states.keys()) {
      if (this.states.size <= MOST_KEPT) break;
      this.states.delete(old);
    }
    return is;
  }
}
