/** Files that the client reads for us. The engine asks at once and is told "not there" until they have come. */

import { fromBase64 } from '../../shared/base64';
import type { FileRead, ReadParams } from '../../shared/protocol/files';
import { MOST_CHARACTERS } from '../engine/workspace/source';
import { placed } from './placed';
import type { Files } from './surroundings';
import { type Address, addressOf, beside, folderOf, wayBetween, written } from './uri-names';

/** More bytes than the most characters that the engine takes can have. */
export const MOST_BYTES = 3 * MOST_CHARACTERS + 4;

/** Of so many characters that the engine refuses it, and says so. */
const TOO_LARGE = ' '.repeat(MOST_CHARACTERS + 1);

export type AskFor = (file: ReadParams) => Promise<FileRead>;

export class ClientFiles implements Files {
  arrived: (names: readonly string[]) => void = () => undefined;
  private folders: readonly Address[] = [];
  /** What may be read, each with the folder that it has to stand in. */
  private granted = new Map<string, string>();
  /** What has come and was not taken yet; what is not there stays, so that nobody asks twice. */
  private come = new Map<string, string | undefined>();
  private asked = new Map<string, Promise<void>>();

  constructor(private readonly ask: AskFor) {}

  openFolders(folders: readonly string[]): void {
    this.folders = folders.flatMap((uri) => addressOf(uri) ?? []);
    this.granted.clear();
    this.changed();
  }

  /** Of a folder, whatever is in it. */
  changed(names?: readonly string[]): void {
    for (const name of [...this.come.keys(), ...this.asked.keys()]) {
      const other = names?.every((each) => each !== name && !name.startsWith(`${each}/`));
      if (other) continue;
      this.come.delete(name);
      this.asked.delete(name); // what is on its way may be of before the change
    }
  }

  get coming(): Promise<unknown> | undefined {
    return this.asked.size ? Promise.all(this.asked.values()) : undefined;
  }

  /** Where a text stands for what it names. */
  placeOf(from: string): Address | undefined {
    return placed(from, this.folders);
  }

  resolve(from: string, to: string): string | undefined {
    const place = this.placeOf(from);
    // Never read: it has the shape of no name that was given out.
    if (!place) return `${from}#${to}`;
    const target = beside(place, to);
    const root = target && this.rootsOf(place).find((each) => wayBetween(each, target));
    if (!target || !root) return undefined;
    const name = written(target);
    this.granted.set(name, written(root));
    return name;
  }

  /** The open folders, or its own where none holds it. */
  private rootsOf(place: Address): readonly Address[] {
    const open = this.folders.some((folder) => wayBetween(folder, place));
    return open ? this.folders : [folderOf(place)];
  }

  read(name: string): string | undefined {
    const within = this.granted.get(name);
    if (within === undefined) return undefined;
    const text = this.come.get(name);
    if (text !== undefined)
      this.come.delete(name); // whoever asked keeps it
    else if (!this.come.has(name) && !this.asked.has(name)) this.bring(name, within);
    return text;
  }

  private bring(name: string, within: string): void {
    const answer = this.text(name, within).then((text) => {
      if (this.asked.get(name) !== answer) return;
      this.asked.delete(name);
      this.come.set(name, text);
      this.arrived([name]);
    });
    this.asked.set(name, answer);
  }

  private async text(uri: string, within: string): Promise<string | undefined> {
    return textOf(await this.ask({ uri, within, most: MOST_BYTES }).catch(() => MISSING));
  }

  async bytes(name: string, most: number): Promise<Uint8Array | undefined> {
    const within = this.granted.get(name);
    if (within === undefined) return undefined;
    const read = await this.ask({ uri: name, within, most }).catch(() => MISSING);
    return 'base64' in read ? fromBase64(read.base64) : undefined;
  }
}

export const MISSING: FileRead = { none: 'missing' };

/** @param strictly what is no UTF-8 is no text of ours; else its letters show as boxes, and the reader sees why */
export function textOf(read: FileRead, strictly = false): string | undefined {
  if (!('base64' in read)) return read.none === 'large' ? TOO_LARGE : undefined;
  try {
    return new TextDecoder('utf-8', { fatal: strictly }).decode(fromBase64(read.base64));
  } catch {
    return undefined;
  }
}
