/** The libraries as this host names them: not a path, so that no file on disk can stand in for one. */
import { shippedLibraries } from '../engine/shipped';

export const LIBRARIES = shippedLibraries((file) => `library:${file}`);
