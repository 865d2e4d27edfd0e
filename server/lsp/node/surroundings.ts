/** The disk, what the client reads for us, and the files beside the bundle. */
import path from 'node:path';
import { clientFiles } from '../client';
import type { Lend } from '../server';
import { PATIENCE_MS } from '../surroundings';
import { BothFiles, bothFolders } from './both';
import { DiskFiles } from './files';
import { NAMES } from './names';
import { PAPERS } from './papers';

/** Library files are copied beside the bundle, so that an editor can open the lines a figure came from. */
const LIBRARY_FOLDER = path.join(__dirname, 'library');

export const inNode: Lend = ({ connection, options }) => {
  const client = clientFiles(connection, options.readsFiles === true);
  return {
    names: NAMES,
    files: new BothFiles(new DiskFiles(), client.files),
    jobFiles: bothFolders(client.jobFiles),
    papers: PAPERS,
    patience: PATIENCE_MS,
    libraryFile: (file) => path.join(LIBRARY_FOLDER, file),
  };
};
