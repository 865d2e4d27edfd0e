/** What the server is lent by where it runs: a process of Node, or a worker of a browser. It asks for nothing else. */
import type * as heavy from '../documents/paper/heavy';
import type { FolderHost } from '../engine/firm/disk-index';
import type { Host } from '../engine/resolve/uses';

/** The engine’s names of files, and the addresses that an editor knows them by. */
export interface Names {
  nameOf(uri: string): string;
  uriOf(name: string): string;
  /** Whether files can stand beside it: an untitled text has no neighbours. */
  hasPlace(name: string): boolean;
  /** The parts of the way from a folder to a file in it; nothing where it is not in it. */
  wayTo(folder: string, file: string): readonly string[] | undefined;
}

/** Files that a job may name: inside the open folders, or beside the job where none holds it. What is on no disk comes later. */
export interface Files extends Host {
  openFolders(folders: readonly string[]): void;
  /** Something changed outside; without names, anything may have. */
  changed(names?: readonly string[]): void;
  /** Settles when what was asked for so far has come; nothing when nothing is on its way. */
  readonly coming: Promise<unknown> | undefined;
  /** Called with the names of files that have come after they were asked for. */
  arrived: (names: readonly string[]) => void;
  /** A picture or the like, by the name that `resolve` gave. Nothing where it is not there or has more bytes. */
  bytes(name: string, most: number): Promise<Uint8Array | undefined>;
}

/** All jobs under the open folders, for who looks through them. */
export interface JobFiles extends FolderHost {
  /** Brings what a look through these folders needs. Nothing to wait for where there is a disk. */
  bring(folders: readonly string[]): Promise<void> | undefined;
  /** Brings these again, which have changed. */
  again(files: readonly string[]): Promise<void> | undefined;
}

/** What draws PDF and XLSX, read only when one is asked for. */
export interface Papers {
  writers(): Promise<typeof heavy>;
  fonts(): Promise<heavy.Fonts>;
}

/** Long enough for a file from a far machine, too short to be taken for a fault. */
export const PATIENCE_MS = 4000;

export interface Surroundings {
  readonly names: Names;
  readonly files: Files;
  readonly jobFiles: JobFiles;
  readonly papers: Papers;
  /** So long an answer waits for files that are on their way, in ms. */
  readonly patience: number;
  /** The engine’s name of a file of the library, under which an editor can open it. */
  libraryFile(file: string): string;
}
