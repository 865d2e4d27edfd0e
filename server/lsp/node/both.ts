/** Files on disk and files that only the client can read, side by side: an editor may have folders of both. */
import path from 'node:path';
import type { ClientFiles } from '../client-files';
import type { ClientFolders } from '../client-folders';
import type { Files, JobFiles } from '../surroundings';
import { written } from '../uri-names';
import type { DiskFiles } from './files';
import { FOLDER } from './folder';
import { NAMES } from './names';

const onDisk = (name: string) => path.isAbsolute(name);
const offDisk = (name: string) => !path.isAbsolute(name);

export class BothFiles implements Files {
  constructor(
    private readonly disk: DiskFiles,
    private readonly client: ClientFiles,
  ) {}

  openFolders(folders: readonly string[]): void {
    this.disk.openFolders(folders);
    this.client.openFolders(folders);
  }

  changed(names?: readonly string[]): void {
    this.disk.changed();
    this.client.changed(names?.filter(offDisk));
  }

  get coming() {
    return this.client.coming;
  }

  set arrived(told: Files['arrived']) {
    this.client.arrived = told;
  }

  /** A text that is not saved yet may stand beside files of a disk. */
  resolve(from: string, to: string): string | undefined {
    if (onDisk(from)) return this.disk.resolve(from, to);
    const place = this.client.placeOf(from);
    if (place?.scheme !== 'file') return this.client.resolve(from, to);
    return this.disk.resolve(NAMES.nameOf(written(place)), to);
  }

  read(name: string): string | undefined {
    return onDisk(name) ? this.disk.read(name) : this.client.read(name);
  }

  bytes(name: string, most: number): Promise<Uint8Array | undefined> {
    return onDisk(name) ? this.disk.bytes(name, most) : this.client.bytes(name, most);
  }
}

export function bothFolders(client: ClientFolders): JobFiles {
  const of = (name: string): JobFiles => (onDisk(name) ? FOLDER : client);
  return {
    list: (folder) => of(folder).list(folder),
    stamp: (file) => of(file).stamp(file),
    read: (file) => of(file).read(file),
    join: (folder, name) => of(folder).join(folder, name),
    bring: (folders) => some(folders.filter(offDisk), (far) => client.bring(far)),
    again: (files) => some(files.filter(offDisk), (far) => client.again(far)),
  };
}

function some(
  names: readonly string[],
  work: (names: readonly string[]) => Promise<void> | undefined,
): Promise<void> | undefined {
  return names.length ? work(names) : undefined;
}
