/** The jobs of folders that are on no disk, brought together before anybody looks through them. */
import type { Listed, Stamp } from '../engine/firm/disk-index';
import { type AskFor, MISSING, MOST_BYTES, textOf } from './client-files';
import type { JobFiles } from './surroundings';
import { addressOf, written } from './uri-names';

/** So many files of a folder; each is a question to the client, and may be one to a far machine. */
const MOST_FOUND = 2000;
/** So many questions at a time. */
const AT_ONCE = 8;

export type AskWhere = (folder: string, most: number) => Promise<readonly string[]>;

interface Kept extends Stamp {
  readonly text: string;
}

export class ClientFolders implements JobFiles {
  private readonly kept = new Map<string, Kept>();
  private readonly brought = new Map<string, Promise<void> | 'all'>();
  private next = 1;

  constructor(
    private readonly where: AskWhere,
    private readonly ask: AskFor,
  ) {}

  bring(folders: readonly string[]): Promise<void> | undefined {
    const waiting = folders.flatMap((folder) => {
      const known = this.brought.get(folder) ?? this.bringOne(folder);
      return known === 'all' ? [] : [known];
    });
    return waiting.length ? Promise.all(waiting).then(() => undefined) : undefined;
  }

  private bringOne(folder: string): Promise<void> {
    const work = this.allOf(folder).then(() => {
      this.brought.set(folder, 'all');
    });
    this.brought.set(folder, work);
    return work;
  }

  private async allOf(folder: string): Promise<void> {
    const uris = await this.where(folder, MOST_FOUND).catch(() => []);
    await this.again(uris.flatMap((uri) => nameIn(folder, uri)).slice(0, MOST_FOUND));
  }

  async again(files: readonly string[]): Promise<void> {
    const left = [...files];
    const one = async () => {
      for (let file = left.pop(); file !== undefined; file = left.pop()) await this.readAgain(file);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, one));
  }

  private async readAgain(file: string): Promise<void> {
    const folder = [...this.brought.keys()].find((each) => file.startsWith(inside(each)));
    if (!folder) return;
    const params = { uri: file, within: folder, most: MOST_BYTES };
    const read = await this.ask(params).catch(() => MISSING);
    const text = 'none' in read ? undefined : textOf(read, true);
    if (text === undefined) this.kept.delete(file);
    else this.kept.set(file, { text, size: text.length, changed: this.next++ });
  }

  /** Of those that were brought: names go on where the folder’s ends. */
  list(folder: string): readonly Listed[] {
    const found = new Map<string, Listed>();
    for (const file of this.kept.keys()) {
      if (!file.startsWith(inside(folder))) continue;
      const [first, ...more] = file.slice(inside(folder).length).split('/');
      const name = decodeURIComponent(first!);
      found.set(name, { name, is: more.length ? 'folder' : 'file' });
    }
    return [...found.values()];
  }

  stamp(file: string): Stamp | undefined {
    return this.kept.get(file);
  }

  read(file: string): string | undefined {
    return this.kept.get(file)?.text;
  }

  join(folder: string, name: string): string {
    return inside(folder) + encodeURIComponent(name);
  }
}

/** How the names of what stands in a folder begin; that of the top of all ends in its slash already. */
function inside(folder: string): string {
  return folder.endsWith('/') ? folder : `${folder}/`;
}

/** As the engine names it; nothing for one that does not stand there after all. */
function nameIn(folder: string, uri: string): string[] {
  const address = addressOf(uri);
  const name = address && written(address);
  return name?.startsWith(inside(folder)) ? [name] : [];
}
