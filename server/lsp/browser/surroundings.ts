/** In a browser there is no disk: whatever is read comes from the client. */
import { clientFiles } from '../client';
import type { Lend } from '../server';
import { PATIENCE_MS } from '../surroundings';
import { URI_NAMES } from '../uri-names';
import { papersFrom } from './papers';

/** Where no client says where our files are: a name that nobody can open. */
const NOWHERE = 'perpend-library:///';

export const inBrowser: Lend = ({ connection, options }) => {
  const home = options.home ? `${options.home}/library/` : NOWHERE;
  return {
    ...clientFiles(connection, options.readsFiles === true),
    names: URI_NAMES,
    papers: papersFrom(connection),
    patience: PATIENCE_MS,
    libraryFile: (file) => URI_NAMES.nameOf(home + file),
  };
};
