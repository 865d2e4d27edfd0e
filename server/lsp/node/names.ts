/** A file on disk is called by its path; one that is on no disk by its address. */
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Names } from '../surroundings';
import { URI_NAMES } from '../uri-names';

export const NAMES: Names = {
  nameOf(uri) {
    try {
      return uri.startsWith('file:') ? path.normalize(fileURLToPath(uri)) : URI_NAMES.nameOf(uri);
    } catch {
      return uri;
    }
  },
  uriOf: (name) => (path.isAbsolute(name) ? pathToFileURL(name).href : name),
  hasPlace: (name) => path.isAbsolute(name) || URI_NAMES.hasPlace(name),
  wayTo(folder, file) {
    if (!path.isAbsolute(folder) || !path.isAbsolute(file)) return URI_NAMES.wayTo(folder, file);
    const way = path.relative(folder, file).split(path.sep);
    return way[0] === '..' || path.isAbsolute(way.join(path.sep)) ? undefined : way;
  },
};
